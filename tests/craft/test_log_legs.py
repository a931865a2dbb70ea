"""Where a poured piece was from when, as the log tells it."""

from __future__ import annotations

from datetime import time, timedelta

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.log_legs import legs_from, legs_of, legs_of_pours, rested, stays_along
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Spot
from studio_planner.craft.products import SheetPoint
from studio_planner.craft.studio import Studio
from studio_planner.craft.timing import Timing
from studio_planner.science.stages import Edge, Stage
from tests.craft.nouns import coat, piece, place, resin, utc

NOON = utc(2026, 11, 13, 12)
HOUR = timedelta(hours=1)
OPENS = tuple(
    SheetPoint(stage=Stage.RECOAT_OPENS, celsius=celsius, from_hours=hours)
    for celsius, hours in ((20.0, 8.0), (30.0, 4.0))
)
SHELF, BOX = (
    Spot(key=key, name=key, length_mm=600, width_mm=400, height_mm=200) for key in ("s1", "b1")
)


def poured(name: str, hours: float, spot: str = "s1") -> Poured:
    start = NOON + hours * HOUR
    return Poured(piece="coaster", coat=name, start=start, end=start + HOUR, spot=spot)


def moved(number: int, hours: float, spot: str = "b1") -> LogEntry:
    at = NOON + hours * HOUR
    return LogEntry(
        number=number, kind=EntryKind.MOVED, at=at, written=at, piece="coaster", spot=spot
    )


def studio(*log: LogEntry, pours: tuple[Poured, ...]) -> Studio:
    room = place(PatternPoint(at=time(0), celsius=20), spots=(SHELF,))
    warm = PatternPoint(at=time(0), celsius=30)
    box = Place(key="box", name="Box", kind=PlaceKind.WARM_BOX, pattern=(warm,), spots=(BOX,))
    return Studio(
        name="Harbour studio",
        places=(room, box),
        products=(resin(sheet=OPENS),),
        pieces=(piece(coat("seal"), coat("flood")),),
        poured=pours,
        log=log,
    )


def test_a_piece_that_was_carried_nowhere_is_where_it_was_poured() -> None:
    seal = poured("seal", 0)
    assert legs_of_pours(studio(pours=(seal,))) == {("coaster", "seal"): (("s1", NOON),)}


def test_a_move_belongs_to_the_coat_that_is_on_by_then() -> None:
    pours = poured("seal", 0), poured("flood", 30, "b1")
    told = moved(1, -1), moved(2, 6), moved(3, 12, "s1"), moved(4, 31, "s1")
    legs = legs_of_pours(studio(*told, pours=pours))
    assert legs["coaster", "seal"] == (
        ("s1", NOON),
        ("b1", NOON + 6 * HOUR),
        ("s1", NOON + 12 * HOUR),
    )
    assert legs["coaster", "flood"] == (("b1", NOON + 30 * HOUR), ("s1", NOON + 31 * HOUR))


def test_a_move_right_at_the_pour_is_a_pour_there() -> None:
    there = legs_of_pours(studio(pours=(poured("seal", 0, "b1"),)))
    assert legs_of_pours(studio(moved(1, 0), pours=(poured("seal", 0),))) == there


def test_a_spot_that_is_gone_and_a_life_that_is_over_tell_nothing() -> None:
    seal = poured("seal", 0)
    bare = LogEntry(
        number=2,
        kind=EntryKind.STRIPPED,
        at=NOON + 7 * HOUR,
        written=NOON,
        piece="coaster",
    )
    plain = legs_of_pours(studio(pours=(seal,)))
    assert legs_of_pours(studio(moved(1, 6, "moon"), pours=(seal,))) == plain
    assert legs_of_pours(studio(moved(1, 6), bare, pours=(seal,))) == plain


def test_equivalent_age_adds_up_over_the_legs() -> None:
    # ASTM C1074: shares of a stage add up, whatever the temperature of each stretch.
    workshop = studio(pours=())
    timing = Timing(workshop, NOON - HOUR, NOON + 400 * HOUR)
    product = workshop.products[0]

    # Five of eight hours at 20 °C, so three eighths of the four at 30 °C are left.
    legs = [("room", NOON), ("box", NOON + 5 * HOUR)]
    found = timing.reached(product, Stage.RECOAT_OPENS, Edge.LIKELY, legs)
    assert found is not None
    assert abs(found - (NOON + 6.5 * HOUR)) < timedelta(seconds=1)


def test_a_piece_rests_once_it_can_be_handled_until_it_is_carried_on() -> None:
    legs = [("shelf", 0), ("box", 6)]
    assert rested(legs, None, "room") == legs
    assert rested(legs, 9, "room") == [*legs, ("room", 9)]
    assert rested(legs, 4, "room") == [("shelf", 0), ("room", 4), ("box", 6)]


def test_legs_from_an_instant_on_begin_where_the_piece_is_by_then() -> None:
    legs = [("shelf", 0), ("box", 6), ("room", 9)]
    assert legs_from(legs, 0) == legs
    assert legs_from(legs, 6) == [("box", 6), ("room", 9)]
    assert legs_from(legs, 20) == [("room", 20)]
    assert legs_from(legs, -1) == [("shelf", -1), *legs[1:]]


def test_a_stay_ends_where_the_piece_is_carried_on_and_none_begins_after_the_last_second() -> (
    None
):
    legs = [("shelf", 0), ("box", 6), ("room", 12)]
    assert list(stays_along(legs, 9)) == [("shelf", 0, 6), ("box", 6, 9)]
    assert list(stays_along(legs, 4)) == [("shelf", 0, 4)]
    assert list(stays_along(legs, 0)) == []


def test_who_is_never_taken_away_stays_for_good() -> None:
    legs = [("shelf", NOON), ("box", NOON + HOUR)]
    there = [("shelf", NOON, NOON + HOUR), ("box", NOON + HOUR, None)]
    assert list(stays_along(legs, None)) == there


def test_a_coat_of_which_no_pour_is_told_is_on_its_own_spot() -> None:
    seal, flood = poured("seal", 0), poured("flood", 30, "b1")
    carried = legs_of_pours(studio(moved(1, 6), pours=(seal,)))
    assert legs_of(carried, seal) == (("s1", NOON), ("b1", NOON + 6 * HOUR))
    assert legs_of(carried, flood) == (("b1", flood.start),)
