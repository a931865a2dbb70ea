"""The made-up studios: those of hypothesis are varied, those of the benchmark realistic."""

from __future__ import annotations

from collections import Counter

import pytest
from hypothesis import given, settings

from studio_planner.craft.log import EntryKind
from studio_planner.craft.orders import Promise
from studio_planner.craft.pieces import UNDERSIDE, CoatKind, Joint
from tests.planning.benchmark_studios import attended_share, make_studio
from tests.planning.studios import ZONES, Situation, studios

SEEN: Counter[str] = Counter()


@settings(max_examples=250, deadline=None, derandomize=True)
@given(studios())
def look_at(situation: Situation) -> None:
    studio = situation.studio
    coats = [coat for piece in studio.pieces for coat in piece.stack]
    SEEN.update([studio.zone, *(str(order.promise) for order in studio.orders)])
    SEEN.update({str(coat.kind) for coat in coats})
    facts = {
        "three coats or more": len(coats) >= 3,
        "wet in wet": any(coat.joint is Joint.WET_IN_WET for coat in coats),
        "taped": any(coat.taped for coat in coats),
        "trimmed": any(coat.trimmed for coat in coats),
        "underside": any(UNDERSIDE in coat.faces for coat in coats),
        "touch test": any(coat.test_first for coat in coats),
        "set": any(piece.count > 1 for piece in studio.pieces),
        "poured": bool(studio.poured),
        "log": any(place.readings for place in studio.places),
        "sanded": any(entry.kind is EntryKind.SANDED for entry in studio.log),
        "box": len(studio.places) > 1,
        "one spot": len(studio.spots) == 1,
        "two people": len(studio.people) > 1,
        "absence": any(person.absences for person in studio.people),
        "no humidity": studio.places[0].pattern[0].humidity_pct is None,
        "cold": min(point.celsius for point in studio.places[0].pattern) < 10.0,
        "all": True,
    }
    SEEN.update(name for name, is_so in facts.items() if is_so)


def test_hypothesis_makes_studios_of_every_kind() -> None:
    SEEN.clear()
    look_at()
    wanted = {
        *ZONES,
        *map(str, Promise),
        *(str(kind) for kind in CoatKind),
        *("wet in wet", "taped", "trimmed", "underside", "touch test", "set", "poured", "log"),
        "sanded",
        *("box", "one spot", "two people", "absence", "no humidity", "cold"),
    }
    assert wanted - set(SEEN) == set()
    assert SEEN["three coats or more"] > SEEN["all"] * 0.7


@pytest.mark.parametrize(("pieces", "weeks"), [(8, 2), (20, 2), (60, 4), (150, 8)])
@pytest.mark.parametrize("seed", range(3))
def test_hands_of_a_benchmark_studio_are_loaded_like_a_real_one(
    seed: int, pieces: int, weeks: int
) -> None:
    studio = make_studio(seed, pieces, 5, weeks)
    assert sum(len(piece.stack) for piece in studio.pieces) == 5 * pieces
    assert 0.58 <= attended_share(studio, weeks) <= 0.87
    assert len(studio.people) == (1 if pieces <= 20 else 2)
    assert {key for order in studio.orders for key in order.pieces} == {
        piece.key for piece in studio.pieces
    }


def test_a_seed_always_makes_the_same_benchmark_studio() -> None:
    assert make_studio(5, 12, 4, 2) == make_studio(5, 12, 4, 2)
    assert make_studio(5, 12, 4, 2) != make_studio(6, 12, 4, 2)
