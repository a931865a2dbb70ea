"""What is written down once for all: entries, corrections, mixes, and what is gone."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, time, timedelta
from typing import Any

import pytest

from studio_planner.craft.log import EntryKind, Gone, GoneKind, LogEntry, Poured, standing_of
from studio_planner.craft.log_rules import gone_of
from studio_planner.craft.mixes import MixedFor, WeighedColour, WeighedMix
from studio_planner.craft.pieces import Joint
from studio_planner.craft.places import PatternPoint
from studio_planner.craft.studio import Studio
from studio_planner.craft.touches import Touch
from tests.craft.nouns import broken, order, piece, place, resin, utc

NOON = utc(2026, 11, 13, 12)
POUR: dict[str, Any] = {
    "kind": EntryKind.POURED,
    "piece": "coaster",
    "coat": "flood",
    "end": NOON + timedelta(hours=1),
    "spot": "shelf 1",
    "joint": Joint.BARE,
}


def entry(number: int = 1, kind: EntryKind = EntryKind.TURNED, **facts: Any) -> LogEntry:  # noqa: ANN401 - anything
    given: dict[str, Any] = {"kind": kind, "at": NOON, "written": NOON} | facts
    return LogEntry(number=number, **given)


def turned(number: int = 1, **facts: Any) -> LogEntry:  # noqa: ANN401 - likewise
    return entry(number, **({"piece": "coaster"} | facts))


def mix(**facts: Any) -> WeighedMix:  # noqa: ANN401 - likewise
    given: dict[str, Any] = {
        "entry": 1, "batch": 7, "product": "resin", "at": NOON, "a_grams": 100.0,
    }  # fmt: skip
    return WeighedMix(**(given | facts))


def weighed(number: int = 1, **facts: Any) -> LogEntry:  # noqa: ANN401 - likewise
    return entry(number, EntryKind.WEIGHED, **({"batch": 7} | facts))


def studio(*log: LogEntry, **facts: Any) -> Studio:  # noqa: ANN401 - likewise
    given: dict[str, Any] = {
        "name": "Harbour studio",
        "places": (place(PatternPoint(at=time(0), celsius=20)),),
        "products": (resin(),),
        "pieces": (piece(),),
        "orders": (order(),),
        "log": log,
    }
    return Studio(**(given | facts))


def refused(*log: LogEntry, **facts: Any) -> dict[str, str]:  # noqa: ANN401 - likewise
    return broken(lambda: studio(*log, **facts))


@pytest.mark.parametrize(
    ("facts", "field"),
    [
        (POUR | {"end": None}, "end"),
        (POUR | {"spot": ""}, "spot"),
        (POUR | {"joint": None}, "joint"),
        (POUR | {"end": NOON}, "end"),
        (POUR | {"end": datetime(2026, 11, 13, 13)}, "end"),  # noqa: DTZ001 - meant
        (POUR | {"touch": Touch.TACK}, "touch"),
        (POUR | {"batch": 0}, "batch"),
        ({"kind": EntryKind.TOUCHED, "piece": "p", "coat": "c"}, "verdict"),
        ({"kind": EntryKind.TAPED, "piece": "p"}, "coat"),
        ({"kind": EntryKind.PACKED}, "piece"),
        ({"kind": EntryKind.PACKED, "piece": "p", "coat": "c"}, "coat"),
        ({"kind": EntryKind.SHIPPED}, "piece"),
        ({"kind": EntryKind.WITHDRAWN}, "corrects"),
        ({"kind": EntryKind.WITHDRAWN, "corrects": 1}, "corrects"),
        ({"kind": EntryKind.WITHDRAWN, "corrects": 0}, "corrects"),
        ({"kind": EntryKind.PACKED, "piece": "p", "number": 0}, "number"),
        ({"at": datetime(2026, 11, 13, 13), "piece": "p"}, "at"),  # noqa: DTZ001 - likewise
        ({"written": datetime(2026, 11, 13, 13), "piece": "p"}, "written"),  # noqa: DTZ001 - likewise
    ],
)
def test_an_entry_says_what_its_kind_needs_and_nothing_else(
    facts: dict[str, Any], field: str
) -> None:
    assert field in broken(entry, **facts)


def test_what_stands_is_neither_corrected_nor_withdrawn_and_in_the_order_of_time() -> None:
    first = turned(1, at=NOON + timedelta(hours=3))
    again = turned(2, at=NOON + timedelta(hours=2), corrects=1)
    early = turned(3, at=NOON + timedelta(hours=1))
    wrong = turned(4)
    gone = entry(5, EntryKind.WITHDRAWN, corrects=4)
    assert standing_of((first, again, early, wrong, gone)) == (early, again)
    assert studio(first, again, early, wrong, gone).standing == (early, again)


@pytest.mark.parametrize(
    "log",
    [
        (turned(2), turned(1)),
        (turned(1), turned(1)),
        (turned(2, corrects=1),),
        (turned(1), turned(2, corrects=1), turned(3, corrects=1)),
        (turned(1), entry(2, EntryKind.WITHDRAWN, corrects=1), turned(3, corrects=2)),
        (turned(1), entry(2, EntryKind.PACKED, piece="coaster", corrects=1)),
        (turned(1, piece="nobody"),),
        (entry(1, EntryKind.SHIPPED, order="nobody"),),
    ],
)
def test_an_entry_must_fit_what_is_there(log: tuple[LogEntry, ...]) -> None:
    assert f"log, entry {log[-1].number}" in refused(*log)


def test_a_spoiled_piece_is_packed_only_when_it_is_bare_again_or_was_none() -> None:
    spoiled = entry(1, EntryKind.SPOILED, piece="coaster")
    later = NOON + timedelta(hours=1)
    packed = entry(9, EntryKind.PACKED, piece="coaster", at=later)
    assert "spoiled" in refused(spoiled, packed)["log, entry 9"]
    assert studio(spoiled, entry(2, EntryKind.STRIPPED, piece="coaster"), packed).standing
    assert studio(spoiled, entry(2, EntryKind.WITHDRAWN, corrects=1), packed).standing
    assert studio(spoiled, replace(packed, at=NOON - timedelta(hours=1))).standing


def test_what_is_gone_stays_in_the_log_and_its_key_is_not_given_again() -> None:
    old = Gone(kind=GoneKind.PIECE, key="old", name="Old coaster", order="o1")
    kept = studio(turned(1, piece="old"), gone=(old,))
    assert gone_of(kept, GoneKind.PIECE, "old") == old
    assert gone_of(kept, GoneKind.ORDER, "old") is None
    again = refused(gone=(Gone(kind=GoneKind.PIECE, key="coaster", name="Coaster"),))
    assert "use another key" in again["piece, key"]
    assert {"key", "name"} == set(broken(Gone, kind=GoneKind.ORDER, key=" ", name=""))


def test_a_mix_is_written_down_by_one_entry_and_a_corrected_one_keeps_its_number() -> None:
    right = mix(entry=2, a_grams=101.0)
    kept = studio(weighed(1), weighed(2, corrects=1), mixes=(mix(), right))
    assert kept.standing_mixes == (right,)
    assert "mix 7" in refused(mixes=(mix(),))
    assert "mix 7" in refused(weighed(batch=8), mixes=(mix(),))
    assert "mix 7" in refused(weighed(), mixes=(mix(), mix()))
    assert "mixes" in refused(weighed(1), weighed(2), mixes=(mix(), right))


def test_a_mix_names_what_is_there_or_was() -> None:
    assert "mix 7" in refused(weighed(), mixes=(mix(product="none"),))
    stranger = mix(coats=(MixedFor(piece="none", coat="flood"),))
    assert "mix 7" in refused(weighed(), mixes=(stranger,))
    known = mix(coats=(MixedFor(piece="coaster", coat="flood"),))
    assert studio(weighed(), mixes=(known,)).standing_mixes == (known,)


def test_a_pour_comes_from_a_mix_that_was_weighed() -> None:
    pour = Poured(
        piece="coaster", coat="flood", start=NOON, end=NOON + timedelta(hours=1),
        spot="shelf 1", batch=7,
    )  # fmt: skip
    assert "no mix 7" in refused(poured=(pour,))["pour of coaster, flood"]
    assert studio(weighed(), mixes=(mix(),), poured=(pour,)).poured == (pour,)


@pytest.mark.parametrize(
    ("facts", "field"),
    [
        ({"a_grams": -1.0}, "a_grams"),
        ({"a_grams": float("nan")}, "a_grams"),
        ({"a_grams": 0.0}, "a_grams"),
        ({"b_grams": -0.1}, "b_grams"),
        ({"batch": 0}, "batch"),
        ({"at": datetime(2026, 11, 13, 13)}, "at"),  # noqa: DTZ001 - meant
        ({"coats": (MixedFor(piece="p", coat="c"),) * 2}, "coats"),
    ],
)
def test_a_mix_has_a_number_and_a_mass(facts: dict[str, Any], field: str) -> None:
    assert field in broken(mix, **facts)


def test_a_mix_weighs_all_that_is_in_it() -> None:
    blue = WeighedColour(name="blue", grams=1.5)
    assert mix(b_grams=50.0, colourants=(blue,)).grams == pytest.approx(151.5)
    assert {"name", "grams"} == set(broken(WeighedColour, name="", grams=-1))
