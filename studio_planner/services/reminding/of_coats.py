"""Reminders of pours: weighing, windows that open and close, and films while they are wet."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.craft.places import PlaceKind
from studio_planner.craft.reminders import Reminder, ReminderKind, Urgency
from studio_planner.science.stages import Edge, Stage
from studio_planner.services.reminding.scene import coat_below

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.services.reminding.scene import Opening, Scene
    from studio_planner.services.ribbons import Ribbon

_SOON = timedelta(minutes=30)
"""A pour that follows the opening of its window so closely needs no word of its own for it."""


def of_coats(scene: Scene) -> Iterator[Reminder]:
    """Everything there is to be told of the coats of a plan."""
    for bar in scene.ribbons():
        if not scene.is_poured(bar):
            yield from _of_pour(scene, bar)
        if bar.coat.kind is not CoatKind.LEAF and not _is_covered(scene, bar):
            yield from _while_wet(scene, bar)


def _of_pour(scene: Scene, bar: Ribbon) -> Iterator[Reminder]:
    pour = _Pour(scene, bar)
    yield from pour.weigh()
    yield from pour.window()
    yield from pour.warm_box()


class _Pour:
    """One pour to come: its window, and how bad it is to miss it."""

    def __init__(self, scene: Scene, bar: Ribbon) -> None:
        self._scene = scene
        self._bar = bar
        planned, opening = bar.planned, scene.opening(bar)
        self._opening: Opening | None = opening
        closes = None if opening is None else opening.closes
        # The whole block has to lie in the window.
        self._latest = None if closes is None else closes - (planned.end - planned.start)
        below = coat_below(bar)
        lost = self._latest is not None and below is not None and not below.sandable
        self._urgency = Urgency.LOST_LATER if lost else Urgency.CAN_WAIT

    def _reminder(
        self, kind: ReminderKind, moment: datetime, urgency: Urgency | None = None
    ) -> Reminder:
        planned = self._bar.planned
        urgency = urgency or self._urgency
        return self._scene.reminder(
            kind,
            (planned.piece, planned.coat),
            moment,
            urgency,
            saved_until=self._latest,
            together=f"mix {planned.mix}",
            piece=planned.piece,
            coat=planned.coat,
            strong=urgency is Urgency.LOST_LATER,
        )

    def weigh(self) -> Iterator[Reminder]:
        """Once something was poured from a mix, it was weighed."""
        if self._bar.planned.mix not in self._scene.begun:
            yield self._reminder(ReminderKind.WEIGH, self._bar.planned.start)

    def window(self) -> Iterator[Reminder]:
        """When it opens, when it is about to close, and when a pour has to begin."""
        planned, opening, latest = self._bar.planned, self._opening, self._latest
        if opening is None:
            return
        in_window = planned.joint is Joint.IN_WINDOW
        if in_window and planned.start - opening.opens > _SOON:
            yield self._reminder(ReminderKind.OPENS, opening.opens, Urgency.CAN_WAIT)
        if latest is None:
            return
        closing = self._closing(latest, opening.opens)
        strong = self._urgency is Urgency.LOST_LATER
        if strong or closing.due > planned.start:
            yield closing
        pour_by = self._reminder(ReminderKind.POUR_BY, latest)
        asleep = not strong and self._scene.quiet.around(latest) is not None
        if pour_by.due > max(planned.start, closing.due) and not asleep:
            yield pour_by

    def _closing(self, latest: datetime, opens: datetime) -> Reminder:
        """What closes in the quiet hours is told of before they begin, if it is open then."""
        closing = self._reminder(ReminderKind.CLOSING, latest)
        quiet = self._scene.quiet.around(latest)
        due = closing.due
        if quiet is not None:
            due = min(quiet[0] - (closing.moment - closing.due), due)
        due = min(max(due, opens), latest)
        return replace(closing, due=due, meant=due)

    def warm_box(self) -> Iterator[Reminder]:
        """A piece that was not poured there before has to be brought there."""
        planned, studio = self._bar.planned, self._scene.studio
        place = studio.place_of_spot(planned.spot)
        if place.kind is not PlaceKind.WARM_BOX:
            return
        before = [b for b in self._bar.lane.ribbons if b.start < self._bar.start]
        lay_on = [b.lane.lies_on(b.planned) for b in before[-1:]]
        stays = any(studio.place_of_spot(spot) == place for spot in lay_on)
        if not stays:
            yield self._scene.reminder(
                ReminderKind.WARM_BOX,
                (planned.piece, planned.coat),
                planned.start,
                saved_until=planned.start,
                together=f"mix {planned.mix}",
                piece=planned.piece,
                coat=planned.coat,
                place=place.key,
            )


def _is_covered(scene: Scene, bar: Ribbon) -> bool:
    over = bar.covered_by
    return over is not None and (over.piece, over.coat) in scene.studio.poured_keys


def _while_wet(scene: Scene, bar: Ribbon) -> Iterator[Reminder]:
    planned = bar.planned
    torch = bar.film.reached(Stage.LAST_TORCH, Edge.EARLY)
    if torch is not None:
        yield scene.reminder(
            ReminderKind.LAST_TORCH,
            (planned.piece, planned.coat),
            torch,
            Urgency.LOST_LATER,
            saved_until=torch,
            together=f"mix {planned.mix}",
            piece=planned.piece,
            coat=planned.coat,
        )
    cover = bar.film.reached(Stage.COVER, Edge.LATE)
    if cover is not None:
        yield scene.reminder(
            ReminderKind.COVER,
            (planned.piece, planned.coat),
            cover,
            together=f"mix {planned.mix}",
            piece=planned.piece,
            coat=planned.coat,
        )
