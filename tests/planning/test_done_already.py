"""What the log says was done is not planned again: sanding, tape, drips."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Goal, StepKind
from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.search import Effort, PlanSearch
from studio_planner.planning.quick import quick_plan, quick_start
from studio_planner.planning.rehearsal.rehearsing import rehearse
from studio_planner.science.stages import Stage
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.happenings import poured_as_planned

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.products import Product, SheetPoint
    from studio_planner.craft.studio import Studio

_SETTLE = timedelta(minutes=30)


def _steps(plan: Plan, kind: StepKind, piece: str) -> list[str | None]:
    return [step.coat for step in plan.steps if (step.kind, step.piece) == (kind, piece)]


def _of(plan: Plan, piece: str, coat: str) -> PlannedCoat:
    return next(one for one in plan.coats if (one.piece, one.coat) == (piece, coat))


def _told(studio: Studio, kind: EntryKind, piece: str, coat: str, at: datetime) -> Studio:
    entry = LogEntry(
        number=len(studio.log) + 1, kind=kind, at=at, written=at, piece=piece, coat=coat
    )
    return replace(studio, log=(*studio.log, entry))


def _begun() -> Studio:
    """A studio in which the first coat of the first piece is on, and nothing else."""
    studio = make_studio(4, 4, 3, 1)
    piece, spot = studio.pieces[0], studio.spots[0]
    pour = Poured(
        piece=piece.key,
        coat=piece.stack[0].key,
        start=START,
        end=START + timedelta(hours=1),
        spot=spot.key,
    )
    settings = replace(studio.settings, settle_minutes=30)
    return replace(studio, settings=settings, poured=(pour,))


def _missed() -> tuple[Studio, datetime, str, str]:
    """The same eight days later, when the window has closed: now, the piece, its next coat."""
    studio = _begun()
    piece = studio.pieces[0]
    return studio, START + timedelta(days=8), piece.key, piece.stack[1].key


def test_what_was_sanded_is_not_sanded_again_and_waits_for_the_dust_alone() -> None:
    studio, now, piece, coat = _missed()
    before = quick_plan(studio, now)
    assert _steps(before, StepKind.SAND, piece) == [coat]
    then = _told(studio, EntryKind.SANDED, piece, coat, now)
    plan = quick_plan(then, now)
    planned = _of(plan, piece, coat)
    assert _steps(plan, StepKind.SAND, piece) == []
    assert (planned.joint, planned.window) == (Joint.SCUFFED, None)
    assert min(c.start for c in plan.coats if not c.poured) >= now + _SETTLE
    assert not check_plan(then, plan).broken
    scuffed = {goal.goal: goal.value for goal in plan.goals}[Goal.SCUFFED]
    assert scuffed == {goal.goal: goal.value for goal in before.goals}[Goal.SCUFFED] - 1


def test_a_kept_plan_stays_where_it_was_once_its_sanding_is_done() -> None:
    studio, now, piece, coat = _missed()
    kept = quick_plan(studio, now)
    sand = next(s for s in kept.steps if s.kind is StepKind.SAND and s.piece == piece)
    went = poured_as_planned(studio, kept, sand.end)
    then = _told(went, EntryKind.SANDED, piece, coat, sand.end)
    plan = quick_plan(then, sand.end)
    starts = {(c.piece, c.coat): c.start for c in kept.coats}
    assert all(c.start == starts[c.piece, c.coat] for c in plan.coats if not c.poured)
    assert _steps(plan, StepKind.SAND, piece) == []
    assert not check_plan(then, plan).broken


def test_the_exact_model_asks_for_no_sanding_that_was_done() -> None:
    studio, now, piece, coat = _missed()
    then = _told(studio, EntryKind.SANDED, piece, coat, now)
    search = PlanSearch(quick_start(then, now))
    search.run(Effort(600.0, 4, 5), lambda _: None, lambda: False)
    plan = search.plan()
    assert _steps(plan, StepKind.SAND, piece) == []
    assert _of(plan, piece, coat).joint is Joint.SCUFFED
    assert not check_plan(then, plan).broken


def test_a_joint_that_was_sanded_holds_in_every_rehearsed_week() -> None:
    studio, now, piece, coat = _missed()
    then = _told(studio, EntryKind.SANDED, piece, coat, now)
    plan = quick_plan(then, now)
    number = _of(plan, piece, coat).number
    coats = {row.number: row for row in rehearse(then, plan, weeks=20).coats}
    assert coats[number].held == 1.0


@pytest.mark.parametrize(
    ("told", "kind"),
    [(EntryKind.TAPED, StepKind.TAPE), (EntryKind.TRIMMED, StepKind.TRIM)],
    ids=["tape", "drips"],
)
def test_tape_that_was_pulled_and_drips_that_were_trimmed_are_left_alone(
    told: EntryKind, kind: StepKind
) -> None:
    studio, on = _begun(), START + timedelta(hours=1)
    piece, coat = studio.pieces[0], studio.pieces[0].stack[0]
    marked = replace(piece, stack=(_marked(coat, kind), *piece.stack[1:]))
    studio = replace(
        studio,
        pieces=(marked, *studio.pieces[1:]),
        products=tuple(replace(one, sheet=_with_drips(one)) for one in studio.products),
    )
    before = quick_plan(studio, on)
    assert _steps(before, kind, piece.key) == [coat.key]
    then = _told(studio, told, piece.key, coat.key, on)
    plan = quick_plan(then, on)
    assert _steps(plan, kind, piece.key) == []
    assert not check_plan(then, plan).broken


def _with_drips(product: Product) -> tuple[SheetPoint, ...]:
    """The sheet with figures for drips, which are those for tape."""
    drips = {Stage.TAPE_OPENS: Stage.TRIM_OPENS, Stage.TAPE_CLOSES: Stage.TRIM_CLOSES}
    more = (replace(p, stage=drips[p.stage]) for p in product.sheet if p.stage in drips)
    return (*product.sheet, *more)


def _marked(coat: Coat, kind: StepKind) -> Coat:
    """The coat with tape or drips."""
    return replace(coat, taped=kind is StepKind.TAPE, trimmed=kind is StepKind.TRIM)
