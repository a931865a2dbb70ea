"""A pour held over another time: what it would break is found, and said."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import timedelta
from itertools import permutations
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.grid import nearest_on_grid
from studio_planner.craft.hands import Absence
from studio_planner.craft.pins import Pin
from studio_planner.planning.checker import check_plan
from studio_planner.planning.checking.findings import Finding
from studio_planner.planning.checking.findings import Rule as Checked
from studio_planner.planning.quick import quick_plan
from studio_planner.services.desk import DeskView
from studio_planner.services.moving.breaks import Rule
from studio_planner.services.moving.judging import Judge
from studio_planner.services.moving.moved_plan import moved_plan
from tests.planning.studios import Situation, studios
from tests.services.moving.test_comparing import plain_voice
from tests.services.small_studios import kept, planned_once

if TYPE_CHECKING:
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.moving.judging import Verdict

STEP = timedelta(minutes=5)
HOUR = timedelta(hours=1)
_NEAR, _FAR = st.integers(-20, 20), st.integers(-250, 250)
_DAYS = st.sampled_from([288, 576, 864])
_OF_A_POUR = {
    Checked.HANDS,
    Checked.ORDER,
    Checked.JOINT,
    Checked.WINDOW,
    Checked.TURN,
    Checked.SPOT,
    Checked.AIR,
    Checked.STEADY,
    Checked.DUST,
    Checked.TAPE,
    Checked.TRIM,
    Checked.BLOCK,
    Checked.MIX,
    Checked.POURED,
}


def view_of(studio: Studio) -> DeskView:
    return DeskView(studio, kept(studio).start)


def coat_of(studio: Studio, piece: str, coat: str) -> PlannedCoat:
    rows = kept(studio).coats
    return next(row for row in rows if (row.piece, row.coat) == (piece, coat))


def said(verdict: Verdict) -> str:
    return " ".join(one.words.words(plain_voice()) for one in verdict.breaks)


def rules(verdict: Verdict) -> set[Rule]:
    return {one.rule for one in verdict.hard}


def test_every_planned_pour_may_stay_where_it_is() -> None:
    view = view_of(planned_once())
    for coat in kept(view.studio).coats:
        if not coat.poured:
            verdict = Judge(view, coat).at(coat.start)
            assert verdict.allowed, said(verdict)


def test_a_poured_coat_cannot_be_taken_in_hand() -> None:
    view = view_of(planned_once())
    poured = next(coat for coat in kept(view.studio).coats if coat.poured)
    with pytest.raises(ValueError, match="to come"):
        Judge(view, poured)


def later_coat(studio: Studio) -> PlannedCoat:
    """A coat in a window, with another after it."""
    for coat in kept(studio).coats:
        piece = studio.piece(coat.piece)
        inner = 0 < piece.position(coat.coat) < len(piece.stack) - 1
        if inner and not coat.poured and coat.window is not None and coat.window.closes:
            return coat
    raise AssertionError


def test_before_its_window_it_says_when_that_opens_and_how_early_it_is() -> None:
    studio = planned_once()
    coat = later_coat(studio)
    assert coat.window is not None
    start = nearest_on_grid(coat.window.opens) - 4 * STEP
    verdict = Judge(view_of(studio), coat).at(start)
    assert Rule.TEST_FIRST in {one.rule for one in verdict.breaks}
    far = Judge(view_of(studio), coat).at(start - 3 * HOUR)
    assert Rule.WINDOW in rules(far)
    assert "early" in said(far)


def test_after_its_window_it_says_when_that_closes() -> None:
    studio = planned_once()
    coat = later_coat(studio)
    assert coat.window is not None
    assert coat.window.closes is not None
    judge, closes = Judge(view_of(studio), coat), nearest_on_grid(coat.window.closes)
    later = (judge.at(closes + hours * HOUR) for hours in range(1, 72))
    assert "closes" in said(next(one for one in later if Rule.WINDOW in rules(one)))


def test_the_past_is_over() -> None:
    studio = planned_once()
    coat = next(c for c in kept(studio).coats if not c.poured)
    verdict = Judge(view_of(studio), coat).at(kept(studio).start - HOUR)
    assert Rule.PAST in rules(verdict)


def test_at_night_nobody_can_work_and_an_absence_is_named() -> None:
    studio = planned_once()
    coat = next(c for c in kept(studio).coats if not c.poured)
    night = nearest_on_grid(coat.start.replace(hour=2, minute=0) + 24 * HOUR)
    verdict = Judge(view_of(studio), coat).at(night)
    assert Rule.HANDS in rules(verdict)
    assert "it is night" in said(verdict)
    away = Absence(start=coat.start - HOUR, end=coat.end + 3 * HOUR)
    gone = tuple(replace(person, absences=(away,)) for person in studio.people)
    verdict = Judge(view_of(replace(studio, people=gone)), coat).at(coat.start)
    assert "is away until" in said(verdict)


def test_hands_that_are_busy_are_named_with_what_they_do() -> None:
    studio = planned_once()
    coats = [c for c in kept(studio).coats if not c.poured]
    # What is no longer than the other has the hours that the other has.
    one, other = next(
        (one, other)
        for one, other in permutations(coats, 2)
        if one.mix != other.mix
        if one.person == other.person
        if other.end - other.start <= one.end - one.start
    )
    verdict = Judge(view_of(studio), other).at(one.start)
    assert Rule.HANDS in rules(verdict)
    assert studio.piece(one.piece).name in said(verdict)


def test_a_later_coat_that_no_longer_fits_is_moved_unless_it_is_pinned() -> None:
    studio = planned_once()
    coat = later_coat(studio)
    verdict = Judge(view_of(studio), coat).at(coat.start + 30 * HOUR)
    assert Rule.LATER in {one.rule for one in verdict.breaks}
    assert Rule.LATER not in rules(verdict)
    piece = studio.piece(coat.piece)
    after = coat_of(studio, coat.piece, piece.stack[piece.position(coat.coat) + 1].key)
    pin = Pin(piece=after.piece, coat=after.coat, start=after.start)
    held = replace(studio, pins=(pin,))
    verdict = Judge(view_of(held), coat).at(coat.start + 30 * HOUR)
    assert Rule.LATER in rules(verdict)


def test_what_was_rehearsed_of_a_pour_does_not_go_along() -> None:
    studio = planned_once()
    first = later_coat(studio)
    known = replace(first, held=0.9, wrong_first=0.1)
    plan = replace(
        kept(studio), coats=tuple(known if c is first else c for c in kept(studio).coats)
    )
    judge = Judge(view_of(replace(studio, plan=plan)), known)
    moved = judge.at(known.start + timedelta(minutes=5)).coats
    assert {(coat.held, coat.wrong_first) for coat in moved} == {(None, None)}


def test_the_nearest_allowed_time_is_offered() -> None:
    studio = planned_once()
    coat = next(c for c in kept(studio).coats if not c.poured)
    judge = Judge(view_of(studio), coat)
    night = nearest_on_grid(coat.start.replace(hour=2, minute=0) + 24 * HOUR)
    nearest = judge.nearest(night)
    assert nearest is not None
    assert nearest.allowed


def test_a_drop_moves_the_coat_in_the_plan_and_numbers_it_in_order() -> None:
    studio = planned_once()
    coat = later_coat(studio)
    verdict = Judge(view_of(studio), coat).at(coat.start + 20 * HOUR)
    plan = moved_plan(kept(studio), verdict)
    moved = next(c for c in plan.coats if (c.piece, c.coat) == (coat.piece, coat.coat))
    assert moved.start == coat.start + 20 * HOUR
    assert [c.number for c in plan.coats] == list(range(1, len(plan.coats) + 1))
    starts = [c.start for c in plan.coats]
    assert starts == sorted(starts)
    mine = sorted((c for c in plan.coats if c.piece == coat.piece), key=lambda c: c.start)
    order = [studio.piece(coat.piece).position(c.coat) for c in mine]
    assert order == sorted(order)


def concerned(verdict: Verdict, found: Finding) -> bool:
    """Whether a finding is about the moved pour, not about what planning will move after it.

    Where later coats no longer fit they are put anywhere behind it, and may meet anything.
    """
    if found.rule not in _OF_A_POUR:
        return False
    if (found.piece, found.coat) in {(c.piece, c.coat) for c in verdict.coats}:
        return True
    later = {(c.piece, c.coat) for c in verdict.after}
    unsettled = any(one.rule is Rule.LATER for one in verdict.breaks)
    return not unsettled and (found.piece, found.coat) not in later


def test_what_is_judged_clean_passes_the_checker_and_what_is_not_does_not() -> None:
    seen: Counter[str] = Counter()

    # Some studios cannot be planned: enough are looked at that many of both are seen.
    most = max(120, settings().max_examples)

    @settings(suppress_health_check=list(HealthCheck), max_examples=most)
    @given(studios(most_pieces=4), st.integers(0, 30), st.one_of(_NEAR, _FAR, _DAYS))
    def judge(situation: Situation, which: int, steps: int) -> None:
        try:
            plan = quick_plan(situation.studio, situation.start)
        except NoPlanPossible:
            return
        coming = [coat for coat in plan.coats if not coat.poured]
        if not coming:
            return
        coat = coming[which % len(coming)]
        studio = replace(situation.studio, plan=plan)
        verdict = Judge(DeskView(studio, situation.start), coat).at(coat.start + steps * STEP)
        report = check_plan(studio, moved_plan(plan, verdict))
        found = [one for one in report.broken if concerned(verdict, one)]
        if verdict.allowed:
            assert not found, "\n".join([one.words for one in found])
            seen["clean"] += 1
        else:
            assert report.broken, said(verdict)
            seen["broken"] += 1

    judge()
    assert seen["clean"] > 5, seen
    assert seen["broken"] > 5, seen
