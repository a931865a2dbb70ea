"""How things stand with a piece, from what stands in the log."""

from __future__ import annotations

from datetime import time, timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.mixes import WeighedMix
from studio_planner.craft.places import PatternPoint
from studio_planner.craft.plans import StepKind
from studio_planner.craft.standing import (
    bare_since,
    done_steps,
    is_spoiled,
    last_of,
    lies_on,
    life_of,
    packed_at,
    shipped_at,
)
from studio_planner.craft.studio import Studio
from tests.craft.nouns import coat, piece, place, resin, utc

if TYPE_CHECKING:
    from datetime import datetime

NOON = utc(2026, 11, 13, 12)
HOUR = timedelta(hours=1)


def after(hours: float) -> datetime:
    return NOON + hours * HOUR


def entry(number: int, kind: EntryKind, **facts: Any) -> LogEntry:  # noqa: ANN401 - anything
    given: dict[str, Any] = {"piece": "coaster", "at": after(number), "written": NOON} | facts
    return LogEntry(number=number, kind=kind, **given)


def studio(*log: LogEntry, **facts: Any) -> Studio:  # noqa: ANN401 - likewise
    given: dict[str, Any] = {
        "name": "Harbour studio",
        "places": (place(PatternPoint(at=time(0), celsius=20)),),
        "products": (resin(),),
        "pieces": (piece(coat("seal"), coat("flood")),),
        "log": log,
    }
    return Studio(**(given | facts))


def test_a_life_begins_anew_when_the_piece_is_a_bare_blank_again() -> None:
    turned, spoiled = entry(1, EntryKind.TURNED), entry(2, EntryKind.SPOILED)
    assert is_spoiled(life_of(studio(turned, spoiled), "coaster"))
    bare = entry(3, EntryKind.STRIPPED)
    assert life_of(studio(turned, spoiled, bare), "coaster") == ()
    again = entry(4, EntryKind.TURNED)
    life = life_of(studio(turned, spoiled, bare, again), "coaster")
    assert life == (again,)
    assert not is_spoiled(life)
    assert life_of(studio(), "nobody") == ()
    assert bare_since(studio(turned, spoiled, bare, again), "coaster") == bare.at
    assert bare_since(studio(turned), "coaster") is None


def test_a_piece_lies_where_it_was_poured_or_moved_last() -> None:
    pour = Poured(piece="coaster", coat="seal", start=after(2), end=after(3), spot="shelf 1")
    early, late = (
        entry(n, EntryKind.MOVED, spot="box", at=after(at)) for n, at in ((1, 1), (2, 4))
    )
    assert lies_on(studio(), "coaster") is None
    assert lies_on(studio(early), "coaster") == "box"
    assert lies_on(studio(early, poured=(pour,)), "coaster") == "shelf 1"
    assert lies_on(studio(late, poured=(pour,)), "coaster") == "box"
    assert lies_on(studio(poured=(pour,)), "coaster") == "shelf 1"


def test_what_is_weighed_belongs_to_no_life() -> None:
    mix = WeighedMix(entry=1, batch=1, product="resin", at=NOON, a_grams=9.0)
    weighed = entry(1, EntryKind.WEIGHED, piece="", batch=1)
    assert done_steps(studio(weighed, mixes=(mix,))) == frozenset()


def test_a_piece_is_packed_when_it_is_shipped_at_the_latest() -> None:
    shipped = life_of(studio(entry(5, EntryKind.SHIPPED)), "coaster")
    assert (packed_at(shipped), shipped_at(shipped)) == (after(5), after(5))
    packed = life_of(studio(entry(4, EntryKind.PACKED)), "coaster")
    assert (packed_at(packed), shipped_at(packed)) == (after(4), None)
    both = life_of(studio(entry(4, EntryKind.PACKED), entry(5, EntryKind.SHIPPED)), "coaster")
    assert (packed_at(both), shipped_at(both)) == (after(4), after(5))
    assert packed_at(()) is None


def test_the_last_entry_of_a_kind_is_found_by_its_coat() -> None:
    seal = entry(1, EntryKind.TAPED, coat="seal")
    flood = entry(2, EntryKind.TAPED, coat="flood")
    life = (seal, flood)
    assert last_of(life, EntryKind.TAPED) == flood
    assert last_of(life, EntryKind.TAPED, "seal") == seal
    assert last_of(life, EntryKind.TRIMMED) is None


def test_steps_that_were_done_are_named_as_in_a_plan() -> None:
    log = (
        entry(1, EntryKind.TAPED, coat="seal"),
        entry(2, EntryKind.SANDED, coat="flood"),
        entry(3, EntryKind.PACKED),
        entry(4, EntryKind.MOVED, spot="shelf 1"),
    )
    assert done_steps(studio(*log)) == {
        (StepKind.TAPE, "coaster", "seal"),
        (StepKind.SAND, "coaster", "flood"),
        (StepKind.PACK, "coaster", None),
    }


def test_a_piece_is_turned_for_the_first_coat_that_was_not_poured_then() -> None:
    seal, flood = (
        Poured(piece="coaster", coat=key, start=at, end=at + HOUR, spot="shelf 1")
        for key, at in (("seal", after(0)), ("flood", after(9)))
    )
    turned = entry(2, EntryKind.TURNED)
    expected = {(StepKind.TURN, "coaster", "flood")}
    assert done_steps(studio(turned, poured=(seal,))) == expected
    assert done_steps(studio(turned, poured=(seal, flood))) == expected
    late = entry(11, EntryKind.TURNED)
    assert done_steps(studio(late, poured=(seal, flood))) == frozenset()
