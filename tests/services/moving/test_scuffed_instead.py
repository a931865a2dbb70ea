"""A pour past its window may follow on washed and sanded ground, where all of that fits."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.grid import nearest_on_grid
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind
from studio_planner.planning.checker import check_plan
from studio_planner.planning.checking.findings import Rule as Checked
from studio_planner.services.desk import DeskView
from studio_planner.services.editing.pins import dropped
from studio_planner.services.moving.breaks import Rule
from studio_planner.services.moving.judging import Judge
from studio_planner.services.moving.moved_plan import moved_plan
from tests.services.moving.test_comparing import plain_voice
from tests.services.small_studios import kept, planned_once

if TYPE_CHECKING:
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.moving.judging import Verdict

STEP = timedelta(minutes=5)


def view_of(studio: Studio) -> DeskView:
    return DeskView(studio, kept(studio).start)


def past_their_windows(studio: Studio) -> list[tuple[PlannedCoat, Judge]]:
    """Pours to come that stand in a window that closes, each with its judge."""
    view = view_of(studio)
    return [
        (coat, Judge(view, coat))
        for coat in kept(studio).coats
        if not coat.poured and coat.window is not None and coat.window.closes is not None
    ]


def words(verdict: Verdict, rule: Rule = Rule.SCUFF) -> str:
    return " ".join(b.words.words(plain_voice()) for b in verdict.breaks if b.rule is rule)


def sanded_first(studio: Studio) -> tuple[PlannedCoat, Verdict]:
    """The first pour that may be held past its window when it is sanded first."""
    for coat, judge in past_their_windows(studio):
        assert coat.window is not None
        assert coat.window.closes is not None
        for hours in range(1, 120):
            verdict = judge.at(nearest_on_grid(coat.window.closes) + timedelta(hours=hours))
            if verdict.allowed and Rule.SCUFF in {one.rule for one in verdict.breaks}:
                return coat, verdict
    raise AssertionError


def test_past_its_window_a_pour_is_offered_washed_and_sanded_first() -> None:
    studio = planned_once()
    coat, verdict = sanded_first(studio)
    mine = next(c for c in verdict.coats if c.coat == coat.coat)
    assert mine.joint is Joint.SCUFFED
    assert mine.window is None
    (sanding,) = (s for s in verdict.steps if s.kind is StepKind.SAND and s.piece == coat.piece)
    piece = studio.piece(coat.piece)
    assert sanding.end - sanding.start == piece.count * timedelta(
        minutes=studio.settings.sand_minutes
    )
    settled = sanding.end + timedelta(minutes=studio.settings.settle_minutes)
    assert settled <= verdict.start
    assert "It is washed and sanded first" in words(verdict)


def test_its_sanding_is_drawn_on_the_lane_while_it_is_held() -> None:
    studio = planned_once()
    coat, verdict = sanded_first(studio)
    lanes = Judge(view_of(studio), coat).shown(verdict)
    lane = next(lane for lane in lanes if lane.piece.key == coat.piece)
    drawn = {bar.planned for bar in lane.bars}
    assert {step for step in verdict.steps if step.piece == coat.piece} <= drawn


def test_a_drop_that_is_sanded_first_breaks_no_rule_of_the_checker_and_is_one_change() -> None:
    studio = planned_once()
    coat, verdict = sanded_first(studio)
    change = dropped(verdict.coats, lambda plan: moved_plan(plan, verdict), "Pour later")
    after = change.make(studio)
    mine = {(c.piece, c.coat) for c in verdict.coats}
    report = check_plan(after, kept(after))
    broken = [one for one in report.broken if (one.piece, one.coat) in mine]
    # What it means for packing is put right by the plan that follows.
    assert not [one.words for one in broken if one.rule is not Checked.PACK]
    sandings = [s for s in kept(after).steps if s.kind is StepKind.SAND]
    assert len([s for s in sandings if (s.piece, s.coat) == (coat.piece, coat.coat)]) == 1


def unsandable_below(studio: Studio, coat: PlannedCoat) -> Studio:
    piece = studio.piece(coat.piece)
    below = piece.below(piece.position(coat.coat))
    stack = tuple(
        replace(one, sandable=False) if index == below else one
        for index, one in enumerate(piece.stack)
    )
    pieces = (replace(p, stack=stack) if p.key == piece.key else p for p in studio.pieces)
    return replace(studio, pieces=tuple(pieces))


def test_where_the_coat_below_cannot_be_sanded_it_says_so() -> None:
    studio = planned_once()
    coat, before = sanded_first(studio)
    hard = unsandable_below(studio, coat)
    same = next(c for c in kept(hard).coats if (c.piece, c.coat) == (coat.piece, coat.coat))
    verdict = Judge(view_of(hard), same).at(before.start)
    assert not verdict.allowed
    assert "can't be sanded to make up for it" in words(verdict)


def test_too_soon_after_its_window_it_says_from_when_on_it_can_be_sanded() -> None:
    studio = planned_once()
    for coat, judge in past_their_windows(studio):
        assert coat.window is not None
        assert coat.window.closes is not None
        verdict = judge.at(nearest_on_grid(coat.window.closes) + STEP)
        if "can be sanded from" in words(verdict):
            assert not verdict.allowed
            return
    raise AssertionError


def test_without_free_hands_or_clean_air_nothing_is_sanded_and_it_says_so() -> None:
    studio = planned_once()
    coat, verdict = sanded_first(studio)
    slow = replace(studio, settings=replace(studio.settings, sand_minutes=540))
    same = next(c for c in kept(slow).coats if (c.piece, c.coat) == (coat.piece, coat.coat))
    held = Judge(view_of(slow), same).at(verdict.start + timedelta(days=3))
    assert "to wash and sand it before that" in words(held)
    assert not held.allowed


def test_before_its_window_sanding_is_no_way_out() -> None:
    studio = planned_once()
    for coat, judge in past_their_windows(studio):
        assert coat.window is not None
        verdict = judge.at(nearest_on_grid(coat.window.opens) - timedelta(hours=3))
        assert not words(verdict)
