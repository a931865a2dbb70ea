"""A rehearsal as a whole: what its shares say, and what makes them smaller."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from itertools import pairwise
from statistics import mean
from typing import TYPE_CHECKING

import pytest
from scipy.stats import norm

from studio_planner.craft.hands import Absence
from studio_planner.planning.quick import quick_plan
from studio_planner.planning.rehearsal.chances import NOTHING_HAPPENS, Chances
from studio_planner.planning.rehearsal.rehearsed import with_rehearsal
from studio_planner.planning.rehearsal.rehearsing import rehearse
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.checker.hand_made import PLAN, STUDIO, at, hours, moved

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.rehearsal.rehearsed import OrderHeld

M = make_studio(2, 20, 5, 2)
M_PLAN = quick_plan(M, START)


def share_of(piece: str, coat: str, plan: Plan, chances: Chances, weeks: int = 2000) -> float:
    found = rehearse(STUDIO, plan, weeks=weeks, chances=chances)
    number = next(c.number for c in plan.coats if (c.piece, c.coat) == (piece, coat))
    return next(one.held for one in found.coats if one.number == number)


def dish_locked_by(end: datetime) -> Plan:
    """The hand-made plan with the dish's lock coat (45 min) ending at an instant."""
    return moved(PLAN, "dish", "lock", end - timedelta(minutes=45))


def test_the_same_seed_gives_the_same_weeks_and_another_one_others() -> None:
    first = rehearse(M, M_PLAN, weeks=100, seed=4)
    assert rehearse(M, M_PLAN, weeks=100, seed=4) == first
    assert rehearse(M, M_PLAN, weeks=100, seed=5).coats != first.coats


def test_weeks_are_counted_to_the_last_one() -> None:
    # More than are simulated at once: every share is a whole number of weeks.
    found = rehearse(STUDIO, PLAN, weeks=257)
    shares = [coat.held * 257 for coat in found.coats]
    assert shares == pytest.approx([round(share) for share in shares])
    assert found.weeks == 257


def test_no_week_is_no_rehearsal() -> None:
    with pytest.raises(ValueError, match="one week or more"):
        rehearse(STUDIO, PLAN, weeks=0)


@pytest.mark.parametrize("kind", ["room", "laws", "maker"])
def test_more_of_a_chance_never_makes_a_plan_surer(kind: str) -> None:
    spreads = (0.0, 0.5, 1.0, 2.0, 3.0)
    chances = [replace(NOTHING_HAPPENS, **{kind: spread}) for spread in spreads]
    held = [
        mean(coat.held for coat in rehearse(M, M_PLAN, weeks=300, chances=one).coats)
        for one in chances
    ]
    assert held[0] == 1.0
    margin = 0.005  # well above the error of a mean over 300 weeks of a hundred coats
    assert all(more <= less + margin for less, more in pairwise(held)), held
    assert held[-1] < 1.0, held


def test_a_window_holds_half_the_time_at_its_likely_edge_and_as_stated_at_its_safe_one() -> (
    None
):
    laws = replace(NOTHING_HAPPENS, laws=1.0)
    begun = at(-1, "18:00")
    likely = share_of("dish", "lock", dish_locked_by(hours(begun, 24.0)), laws)
    safe = share_of("dish", "lock", dish_locked_by(hours(begun, 24.0 / 1.1)), laws)
    assert likely == pytest.approx(0.5, abs=0.04)
    # 90 % in all: five of a hundred are faster than the early edge.
    assert safe == pytest.approx(norm.cdf(norm.ppf(0.95)), abs=0.015)
    assert safe >= 0.90


def test_the_pour_at_the_edge_of_its_window_is_the_one_that_held_least() -> None:
    plan = dish_locked_by(hours(at(-1, "18:00"), 24.0))
    found = rehearse(STUDIO, plan, weeks=200, chances=replace(NOTHING_HAPPENS, laws=1.0))
    locked = next(c for c in plan.coats if c.piece == "dish" and not c.poured)
    assert min(found.coats, key=lambda coat: coat.held).number == locked.number


def blamed(plan: Plan, piece: str, studio: Studio = STUDIO) -> dict[str, float]:
    """How often a piece goes wrong with each of its coats first."""
    names = {one.number: one.coat for one in plan.coats if one.piece == piece}
    found = rehearse(studio, plan, weeks=100).coats
    return {names[one.number]: one.wrong_first for one in found if one.number in names}


def test_a_coat_that_misses_is_blamed_and_what_follows_on_its_piece_is_not() -> None:
    # Glitter on the tray closes on Tuesday at 13:30.
    assert blamed(moved(PLAN, "tray", "lock", at(1, "15:00")), "tray")["lock"] > 0.9
    late = moved(moved(PLAN, "tray", "glitter", at(2, "15:00")), "tray", "lock", at(3, "16:00"))
    found = blamed(late, "tray")
    assert found["glitter"] > 0.9
    assert found["glitter"] + found["lock"] <= 1.0


def test_a_coat_that_slips_is_blamed_for_the_promise_that_is_broken_by_it() -> None:
    # The makers are gone when the board is to be sealed; that has no window to miss, and the
    # board is to be at a fair on Saturday morning.
    seal = next(c for c in PLAN.coats if (c.piece, c.coat) == ("board", "seal"))
    away = Absence(start=seal.start, end=at(4, "12:00"))
    people = tuple(replace(one, absences=(away,)) for one in STUDIO.people)
    found = blamed(PLAN, "board", replace(STUDIO, people=people))
    assert found["seal"] > 0.5
    assert found["seal"] == max(found.values())


def test_a_late_order_still_holds_the_day_that_the_plan_gives_it() -> None:
    early = replace(
        STUDIO,
        orders=tuple(
            replace(one, promised=one.promised - timedelta(days=7)) for one in STUDIO.orders
        ),
    )
    found = {one.order: one for one in rehearse(early, PLAN, weeks=200).orders}
    assert found["fair"].held == 0.0
    assert found["fair"].day_held is not None
    assert found["fair"].day_held > 0.9
    assert found["fair"].spare_hours is not None
    assert found["fair"].spare_hours < 0.0
    assert (found["lost"].day_held, found["lost"].spare_hours) == (None, None)


def test_the_rehearsed_spare_is_there_in_nine_weeks_of_ten() -> None:
    def fair(studio: Studio) -> OrderHeld:
        found = rehearse(studio, PLAN, weeks=500)
        return next(one for one in found.orders if one.order == "fair")

    spare = fair(STUDIO).spare_hours
    assert spare is not None
    opens = STUDIO.orders[1].due(STUDIO.time_zone) - timedelta(hours=spare)

    def opening(when: datetime) -> Studio:
        fair = replace(STUDIO.orders[1], promised=when.date(), opens=when.time())
        return replace(STUDIO, orders=(STUDIO.orders[0], fair, *STUDIO.orders[2:]))

    assert fair(opening(opens + timedelta(minutes=1))).held >= 0.9
    assert fair(opening(opens - timedelta(minutes=10))).held < 0.9


def test_what_was_poured_is_a_fact_and_has_no_share() -> None:
    plan = with_rehearsal(PLAN, rehearse(STUDIO, PLAN, weeks=50))
    assert {coat.held is None for coat in plan.coats if coat.poured} == {True}
    assert {coat.held is None for coat in plan.coats if not coat.poured} == {False}


def test_a_plan_carries_its_rehearsal_and_nothing_else_changes() -> None:
    found = rehearse(STUDIO, PLAN, weeks=50)
    plan = with_rehearsal(PLAN, found)
    assert plan.rehearsals == 50
    assert {one.order: one.held for one in plan.outcomes} == {
        one.order: one.held for one in found.orders
    }
    bare = replace(
        plan,
        rehearsals=0,
        coats=tuple(replace(one, held=None, wrong_first=None) for one in plan.coats),
        outcomes=tuple(
            replace(one, held=None, day_held=None, rehearsed_spare_hours=None)
            for one in plan.outcomes
        ),
    )
    assert bare == PLAN
    assert with_rehearsal(plan, replace(found, coats=(), orders=(), weeks=0)) == PLAN


def test_an_order_that_never_leaves_is_never_kept() -> None:
    found = {one.order: one for one in rehearse(STUDIO, PLAN, weeks=400).orders}
    assert found["lost"].held == 0.0
    assert found["fair"].held > 0.9


def test_a_promise_that_cannot_be_kept_holds_in_few_weeks() -> None:
    studio = make_studio(0, 20, 5, 2)
    plan = quick_plan(studio, START)
    late = max(plan.outcomes, key=lambda one: one.late_hours or 0.0)
    assert late.late_hours is not None
    assert late.late_hours > 72.0
    rehearsed = rehearse(studio, plan, weeks=50)
    found = next(one for one in rehearsed.orders if one.order == late.order)
    assert found.held < 0.2
