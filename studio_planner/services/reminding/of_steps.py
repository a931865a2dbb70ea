"""Reminders of the work beside the pours, and of orders that can go."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.plans import PlannedStep, StepKind
from studio_planner.craft.reminders import Reminder, ReminderKind, Urgency

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.services.reminding.scene import Scene

_KINDS = {
    StepKind.TAPE: ReminderKind.TAPE,
    StepKind.TRIM: ReminderKind.TRIM,
    StepKind.SAND: ReminderKind.SAND,
    StepKind.TURN: ReminderKind.TURN,
    StepKind.PACK: ReminderKind.PACK,
}
_BEFORE_A_COAT = {StepKind.SAND, StepKind.TURN}


def of_steps(scene: Scene) -> Iterator[Reminder]:
    """Everything that the plan has to be done to pieces, and the orders that leave."""
    starts = {(coat.piece, coat.coat): coat.start for coat in scene.plan.coats}
    for lane in scene.lanes:
        steps = (s for s in scene.plan.steps if s.piece == lane.piece.key)
        for step in steps:
            about = (step.kind, step.piece, step.coat)
            over = (
                step.kind in _BEFORE_A_COAT
                and (step.piece, step.coat) in scene.studio.poured_keys
            )
            if about not in scene.done and not over:
                yield _of_step(scene, step, starts.get((step.piece, step.coat or "")))
    yield from _of_orders(scene)


def _of_step(scene: Scene, step: PlannedStep, pour: datetime | None) -> Reminder:
    kind = _KINDS[step.kind]
    lost = step.kind is StepKind.TAPE and step.closes is not None
    return scene.reminder(
        kind,
        (step.piece,) if step.coat is None else (step.piece, step.coat),
        step.start,
        Urgency.LOST_LATER if lost else Urgency.CAN_WAIT,
        saved_until=_saved_until(scene, step, pour),
        together=step.start.isoformat(),
        piece=step.piece,
        coat=step.coat or "",
    )


def _saved_until(scene: Scene, step: PlannedStep, pour: datetime | None) -> datetime | None:
    """Until when a step can begin and nothing is lost or late by it."""
    studio = scene.studio
    if step.kind is StepKind.PACK:
        order = studio.order_of(step.piece)
        return None if order is None else order.due(studio.time_zone)
    if step.kind not in _BEFORE_A_COAT:
        return step.closes
    if pour is None:
        return None
    takes = step.end - step.start
    settles = timedelta(minutes=studio.settings.settle_minutes)
    return pour - takes - (settles if step.kind is StepKind.SAND else timedelta(0))


def _of_orders(scene: Scene) -> Iterator[Reminder]:
    orders = {order.key: order for order in scene.studio.orders}
    for outcome in scene.plan.outcomes:
        order = orders.get(outcome.order)
        if order is None or outcome.leaves is None or scene.has_left(order):
            continue
        yield scene.reminder(
            ReminderKind.SHIP,
            (order.key,),
            outcome.leaves,
            saved_until=outcome.leaves,
            order=order.key,
        )
