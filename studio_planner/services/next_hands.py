"""What needs hands in the next hours, sorted by deadline.

The kept plan is taken as what is being done: a coat whose planned block lies before the moment
asked about counts as poured at its planned time. Until it is written down as poured it stays
on the list while it can still be poured in its window, and then the window's closing does.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import legs_from, legs_of, legs_of_pours
from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.craft.plans import StepKind
from studio_planner.craft.standing import done_steps
from studio_planner.craft.timing import Timing
from studio_planner.craft.tongue import translate
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.hands_items import KIND_OF_STEP, HandsItem, HandsKind, if_left

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.plans import Plan, PlannedCoat, PlannedStep
    from studio_planner.craft.studio import Studio

HOURS_AHEAD = 12.0
_RECORD = timedelta(days=3)
"""How far the rooms are looked at beyond the plan's own times (our choice)."""


def next_hands(
    studio: Studio,
    plan: Plan,
    now: datetime,
    hours: float = HOURS_AHEAD,
    timing: Timing | None = None,
) -> tuple[HandsItem, ...]:
    """Give everything that has to be begun or ended within `hours` of `now` (aware).

    `timing` are clocks that are there already, over a record that holds the plan.
    """
    until = now + timedelta(hours=hours)
    items = _Items(studio, plan, now, timing).all(until)
    due = (item for item in items if item.end > now or item.deadline > now)
    wanted = (item for item in due if item.start < until or item.deadline < until)
    return tuple(sorted(wanted, key=lambda i: (i.deadline, i.start, i.piece, i.kind)))


def asking_ahead(
    studio: Studio, plan: Plan, now: datetime, timing: Timing, hours: float = HOURS_AHEAD
) -> Iterator[None]:
    """Ask the clocks that `next_hands` asks, a few in each part: it answers at once then."""
    for _ in _Items(studio, plan, now, timing).all(now + timedelta(hours=hours)):
        yield


def first_after(
    studio: Studio, plan: Plan, now: datetime, timing: Timing | None = None
) -> HandsItem | None:
    """Give the first thing of the plan that starts at or after `now`, or None."""
    items = [item for item in _Items(studio, plan, now, timing).all() if item.start >= now]
    return min(items, key=lambda item: (item.start, item.deadline), default=None)


class _Items:
    """All things to do of a plan, seen at a moment."""

    def __init__(
        self, studio: Studio, plan: Plan, now: datetime, timing: Timing | None
    ) -> None:
        self._studio = studio
        self._plan = plan
        self._now = now
        starts = [now, plan.start, *(coat.start for coat in plan.coats)]
        ends = [now, *(coat.end for coat in plan.coats)]
        self._timing = timing or Timing(studio, min(starts) - _RECORD, max(ends) + _RECORD)
        self._coats = {(coat.piece, coat.coat): coat for coat in plan.coats}
        self._carried = legs_of_pours(studio)
        self._pours = {(pour.piece, pour.coat): pour for pour in studio.poured}

    def all(self, until: datetime | None = None) -> Iterator[HandsItem]:
        """Everything, in no order; of coats that start after `until` nothing is asked."""
        for coat in self._plan.coats:
            if until is None or coat.start < until:
                pour = self._pours.get((coat.piece, coat.coat))
                yield from self._of_coat(coat if pour is None else coat.as_it_was(pour))
        done = done_steps(self._studio)
        for step in self._plan.steps:
            if (step.kind, step.piece, step.coat) not in done:
                yield self._of_step(step)

    def _of_coat(self, coat: PlannedCoat) -> Iterator[HandsItem]:
        if not coat.poured:
            pour = self._pour(coat)
            missed = coat.end <= self._now < pour.deadline
            yield replace(pour, missed=missed)
            closes = None if coat.window is None else coat.window.closes
            if closes is not None and max(coat.end, pour.deadline) <= self._now:
                yield self._closing(coat, closes)
        if self._kind(coat) is not CoatKind.LEAF:
            yield from self._while_wet(coat)

    def _pour(self, coat: PlannedCoat) -> HandsItem:
        closes = None if coat.window is None else coat.window.closes
        latest = coat.start if closes is None else closes - (coat.end - coat.start)
        opens = coat.start if coat.window is None else coat.window.opens
        return self._item(
            HandsKind.POUR,
            coat,
            (coat.start, coat.end),
            (min(opens, coat.start), max(latest, coat.start)),
            translate("if left", "its next coats move later")
            if closes is None
            else self._lost(coat),
        )

    def _closing(self, coat: PlannedCoat, closes: datetime) -> HandsItem:
        opens = coat.window.opens if coat.window is not None else coat.start
        return self._item(
            HandsKind.WINDOW_CLOSES,
            coat,
            (closes, closes),
            (opens, closes),
            translate("if left", "if not poured: {what}").format(what=self._lost(coat)),
        )

    def _lost(self, coat: PlannedCoat) -> str:
        piece = self._studio.piece(coat.piece)
        at = piece.position(coat.coat)
        below = piece.below(at)
        if coat.joint is Joint.WET_IN_WET:
            return translate("if left", "the film below is no longer wet")
        sandable = below is not None and piece.stack[below].sandable
        if sandable and piece.stack[at].holds_on_sanded:
            return translate("if left", "wash and sand the one below first")
        return translate("if left", "no bond, and no sanding helps")

    def _while_wet(self, coat: PlannedCoat) -> Iterator[HandsItem]:
        torch = self._reached(coat, Stage.LAST_TORCH, Edge.EARLY, coat.start)
        if torch is not None:
            span = (min(coat.end, torch), torch)
            yield self._item(HandsKind.LAST_TORCH, coat, span, (coat.start, torch), "")
        cover = self._reached(coat, Stage.COVER, Edge.LATE, coat.end)
        if cover is not None:
            yield self._item(HandsKind.COVER, coat, (cover, cover), (cover, cover), "")

    def _of_step(self, step: PlannedStep) -> HandsItem:
        coat = self._coats.get((step.piece, step.coat or ""))
        opens = step.opens or step.start
        deadline = step.closes or self._last_start_end(step)
        kind = KIND_OF_STEP[step.kind]
        return HandsItem(
            kind=kind,
            piece=step.piece,
            coat=step.coat,
            number=None if coat is None else coat.number,
            start=step.start,
            end=step.end,
            opens=opens,
            deadline=max(deadline, step.end),
            person=step.person,
            spot=None,
            if_left=if_left(kind) or self._missed_promise(step),
        )

    def _last_start_end(self, step: PlannedStep) -> datetime:
        """The latest end of a step without a window of its own."""
        if step.kind is StepKind.PACK:
            order = self._studio.order_of(step.piece)
            return step.end if order is None else order.due(self._studio.time_zone)
        coat = self._coats.get((step.piece, step.coat or ""))
        if coat is None:
            return step.end
        settle = timedelta(minutes=self._studio.settings.settle_minutes)
        return coat.start - settle if step.kind is StepKind.SAND else coat.start

    def _missed_promise(self, step: PlannedStep) -> str:
        order = self._studio.order_of(step.piece)
        if order is None:
            return translate("if left", "it stays on the shelf")
        return translate("if left", "{order} leaves without it").format(order=order.name)

    def _reached(
        self, coat: PlannedCoat, stage: Stage, edge: Edge, start: datetime
    ) -> datetime | None:
        product = self._studio.product(self._studio.piece(coat.piece).coat(coat.coat).product)
        place_of, told = self._studio.place_of_spot, legs_of(self._carried, coat)
        legs = [(place_of(spot).key, at) for spot, at in told]
        return self._timing.reached(
            product, stage, edge, legs_from(legs, start.astimezone(UTC))
        )

    def _kind(self, coat: PlannedCoat) -> CoatKind:
        return self._studio.piece(coat.piece).coat(coat.coat).kind

    def _item(
        self,
        kind: HandsKind,
        coat: PlannedCoat,
        span: tuple[datetime, datetime],
        edges: tuple[datetime, datetime],
        otherwise: str,
    ) -> HandsItem:
        return HandsItem(
            kind=kind,
            piece=coat.piece,
            coat=coat.coat,
            number=coat.number,
            start=span[0],
            end=span[1],
            opens=edges[0],
            deadline=edges[1],
            person=coat.person,
            spot=coat.spot,
            if_left=otherwise or if_left(kind),
        )
