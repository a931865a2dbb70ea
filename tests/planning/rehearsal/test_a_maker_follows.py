"""What a maker does when a week is not as planned; times by the pencil of the hand-made plan.

Everything happens at 20 °C: recoat opens after 4 h and closes after 24 h, sandable 16 h,
handle 20 h, print-free 48 h, each times the factor by which the laws are slow.
"""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import datetime, time
from typing import TYPE_CHECKING

from studio_planner.craft.hands import WorkHours
from studio_planner.craft.plans import StepKind
from studio_planner.planning.rehearsal.chances import NORMAL_90
from studio_planner.planning.rehearsal.following import follow
from tests.planning.checker.hand_made import (
    PLAN,
    STUDIO,
    at,
    moved,
    step_moved,
    with_coat,
    without_coat,
)
from tests.planning.rehearsal.worlds import likely_world

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.rehearsal.fates import Fate, Followed


def followed(
    plan: Plan = PLAN, studio: Studio = STUDIO, *, slow: float = 1.0, **world: object
) -> Followed:
    """One week in which every law takes `slow` times as long; the band is 1.1 at 90 %."""
    off = math.log(slow) / math.log(1.1) * NORMAL_90
    return follow(studio, plan, likely_world(studio, plan, off=off, **world))  # type: ignore[arg-type]


def fate(found: Followed, piece: str, coat: str) -> Fate:
    number = next(c.number for c in PLAN.coats if (c.piece, c.coat) == (piece, coat))
    return found.coats[number]


def left(found: Followed, order: str) -> datetime:
    return datetime.fromtimestamp(float(found.leaves[order][0]), tz=at(0, "0:00").tzinfo)


def test_a_window_that_is_not_open_yet_is_waited_for() -> None:
    # The tray's glitter is planned 4 h 45 min after its flood, which opens after 6 h.
    found = followed(slow=1.5)
    assert fate(found, "tray", "glitter").held.all()


def test_a_maker_who_does_not_test_begins_too_early() -> None:
    found = followed(slow=1.5, tests=False)
    glitter = fate(found, "tray", "glitter")
    assert glitter.poured.all()
    assert glitter.early.all()
    assert not glitter.held.any()


def test_a_coat_whose_window_has_closed_is_scuffed() -> None:
    # The dish was poured on Sunday at 18:00, so its window closes on Monday at 18:00.
    plan = moved(PLAN, "dish", "lock", at(0, "19:00"))
    lock = fate(followed(plan), "dish", "lock")
    assert lock.poured.all()
    assert lock.scuffed.all()
    assert not lock.held.any()


def test_a_coat_that_still_was_open_at_its_start_but_not_at_its_end_missed_its_window() -> None:
    plan = moved(PLAN, "dish", "lock", at(0, "17:30"))
    lock = fate(followed(plan), "dish", "lock")
    assert lock.poured.all()
    assert not lock.scuffed.any()
    assert not lock.held.any()


def test_a_minute_after_closing_is_no_missed_window() -> None:
    plan = moved(PLAN, "dish", "lock", at(0, "17:15"))
    assert fate(followed(plan), "dish", "lock").held.all()


def test_a_piece_that_cannot_be_sanded_is_lost_and_its_order_never_leaves() -> None:
    # Glitter at 13:30 to 14:15 on Monday closes on Tuesday at 13:30.
    plan = moved(PLAN, "tray", "lock", at(1, "14:00"))
    found = followed(plan)
    assert not fate(found, "tray", "lock").poured.any()
    assert found.leaves["shop"][0] == math.inf
    assert fate(found, "tray", "glitter").held.all()


def test_a_missed_working_time_is_scuffed_once_the_coat_below_can_be_sanded() -> None:
    # Half as long as on the sheet, the colour's working time ends before its block does.
    veil = fate(followed(slow=0.3), "east", "veil")
    assert veil.scuffed.all()


def test_a_planned_sanding_waits_until_the_coat_below_can_be_sanded() -> None:
    # Coasters: flood until 10:10 on Monday, sandable after 24 h instead of 16.
    found = followed(slow=1.5)
    assert fate(found, "coasters", "top").held.all()
    careless = followed(slow=1.5, tests=False)
    assert not fate(careless, "coasters", "top").held.any()


def test_packing_waits_for_the_gate() -> None:
    # Print-free after 72 h instead of 48: Thursday 19:25, so the parcel goes on Friday.
    assert left(followed(), "shop") == at(3, "16:00")
    assert left(followed(slow=1.5), "shop") == at(4, "16:00")


def test_a_maker_who_does_not_test_packs_what_has_not_cured() -> None:
    found = followed(slow=1.5, tests=False)
    assert found.raw["shop"].all()
    assert left(found, "shop") == at(3, "16:00")
    assert not followed().raw["shop"].any()


def test_a_piece_is_packed_in_the_first_hands_after_it_has_cured() -> None:
    # The board is coated underneath until 11:55 on Tuesday and can be handled 20 h later; it is
    # packed at eight, when somebody works again. A market order is there when it is packed.
    assert left(followed(), "fair") == at(2, "08:15")


def test_a_maker_who_does_not_test_packs_when_the_plan_says() -> None:
    assert left(followed(tests=False), "fair") == at(2, "10:15")
    # The plan lets 22 h pass for 20 h of cure: half an hour later, it is half an hour later.
    plan = step_moved(PLAN, StepKind.PACK, "board", at(2, "09:55"))
    assert left(followed(plan, late_minutes=30.0, tests=False), "fair") == at(2, "10:40")


def test_nothing_is_packed_before_the_plan_begins() -> None:
    plan = replace(PLAN, start=at(2, "09:00"))
    assert left(followed(plan), "fair") == at(2, "09:15")


def test_an_order_with_a_piece_that_is_not_planned_never_leaves() -> None:
    assert followed().leaves["lost"][0] == math.inf


def test_who_is_late_begins_and_ends_later() -> None:
    # Coated underneath from 11:20 to 12:14, handled at 08:14, packed from 08:24 on in 18 min.
    assert left(followed(late_minutes=10.0, slower=1.2), "fair") == at(2, "08:42")


def test_what_misses_the_hours_and_the_one_after_them_takes_the_next_ones() -> None:
    plan = step_moved(PLAN, StepKind.PACK, "board", at(2, "21:50"))
    people = tuple(replace(one, sleeps=time(0, 0)) for one in STUDIO.people)
    studio = replace(STUDIO, people=people)
    assert left(followed(plan, studio, late_minutes=65.0, tests=False), "fair") == at(
        2, "23:10"
    )
    assert left(followed(plan, studio, late_minutes=75.0, tests=False), "fair") == at(
        3, "08:15"
    )


def test_what_would_not_be_done_soon_after_bedtime_takes_the_next_hours() -> None:
    plan = step_moved(PLAN, StepKind.PACK, "board", at(2, "21:50"))
    people = tuple(replace(one, sleeps=time(22, 0)) for one in STUDIO.people)
    studio = replace(STUDIO, people=people)

    def packed(slower: float) -> datetime:
        return left(followed(plan, studio, slower=slower, tests=False), "fair")

    assert packed(2.6) == at(2, "22:29")
    assert packed(2.8) == at(3, "08:42")


def test_an_order_never_leaves_when_there_are_no_more_hands() -> None:
    until = WorkHours(rule="FREQ=DAILY;UNTIL=20260303T000000", start=time(8), end=time(22))
    people = tuple(replace(one, work=(until,)) for one in STUDIO.people)
    found = followed(studio=replace(STUDIO, people=people))
    assert found.leaves["fair"][0] == math.inf


def test_a_spot_is_waited_for_until_its_piece_can_be_handled() -> None:
    # The dish can be handled at 14:45 on Monday; sealed on its spot from then on, the board
    # gets its flood at 17:30, is turned at 14:15 on Tuesday, and coated underneath at 14:25.
    plan = with_coat(without_coat(PLAN, "dish", "lock"), "board", "seal", spot="F")
    assert left(followed(plan), "fair") == at(2, "11:25")


def test_a_turned_piece_waits_until_what_it_will_lie_on_can_be_handled() -> None:
    under = fate(followed(slow=1.5), "board", "under")
    assert under.held.all()
    assert left(followed(slow=1.5), "fair") > left(followed(), "fair")
