"""What reminders are made of: the studio, its plan, its lanes with their clocks, a moment."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from functools import cached_property
from typing import TYPE_CHECKING, Any

from studio_planner.craft.log import EntryKind
from studio_planner.craft.plans import Trust
from studio_planner.craft.reminders import Reminder, ReminderKind, Urgency, uid_of
from studio_planner.craft.sheet_stages import window_stages
from studio_planner.craft.standing import (
    done_steps,
    is_spoiled,
    lives_of,
    packed_at,
    shipped_at,
)
from studio_planner.craft.timing import Timing
from studio_planner.science.stages import Edge, safe_edge
from studio_planner.services.editing.changes import fitting
from studio_planner.services.lanes import lanes_of
from studio_planner.services.reminding.quiet import QuietHours

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.standing import Step
    from studio_planner.craft.studio import Studio
    from studio_planner.science.stages import Stage
    from studio_planner.services.ribbons import Lane, Ribbon

_BEFORE, _AFTER = timedelta(days=3), timedelta(days=10)


@dataclass(frozen=True, slots=True)
class Opening:
    """When a coat can be poured on the one below: from, and until; None: it never closes."""

    opens: datetime
    closes: datetime | None


@dataclass(frozen=True)
class Scene:
    """A studio and its kept plan, seen at `now` (aware)."""

    studio: Studio
    plan: Plan
    now: datetime

    @cached_property
    def timing(self) -> Timing:
        """The clocks, over a record that holds the plan and what was poured before it."""
        plan = self.plan
        starts = [plan.start, *(coat.start for coat in plan.coats)]
        ends = [plan.start, *(coat.end for coat in plan.coats)]
        return Timing(self.studio, min(starts) - _BEFORE, max(ends) + _AFTER)

    @cached_property
    def quiet(self) -> QuietHours:
        """The studio's quiet hours."""
        studio = self.studio
        return QuietHours(studio.reminding, studio.time_zone, studio.people)

    @cached_property
    def lanes(self) -> tuple[Lane, ...]:
        """One lane for each piece; of coats that the studio has no more nothing is told."""
        plan = fitting(self.plan, self.studio)
        return lanes_of(self.studio, plan, self.timing)

    @cached_property
    def done(self) -> frozenset[Step]:
        """The steps that were written down as done."""
        return done_steps(self.studio)

    @cached_property
    def over(self) -> frozenset[str]:
        """The pieces that ask for nothing any more: packed, left, or spoiled."""
        lives = lives_of(self.studio)
        return frozenset(
            piece
            for piece, life in lives.items()
            if is_spoiled(life) or packed_at(life) is not None
        )

    @cached_property
    def begun(self) -> frozenset[int]:
        """The mixes of the plan that something was poured from."""
        return frozenset(
            c.mix for c in self.plan.coats if (c.piece, c.coat) in self.studio.poured_keys
        )

    def has_left(self, order: Order) -> bool:
        """Whether an order, or every piece of it, was written down as shipped."""
        entries = (e for e in self.studio.standing if e.kind is EntryKind.SHIPPED)
        if any(entry.order == order.key for entry in entries):
            return True
        lives = lives_of(self.studio)
        return all(shipped_at(lives.get(piece, ())) for piece in order.pieces)

    def ribbons(self) -> Iterator[Ribbon]:
        """Every film of the plan, lane by lane."""
        for lane in self.lanes:
            yield from lane.ribbons

    def is_poured(self, bar: Ribbon) -> bool:
        """Whether a coat was written down as poured."""
        return (bar.planned.piece, bar.planned.coat) in self.studio.poured_keys

    def opening(self, bar: Ribbon) -> Opening | None:
        """The window of a coat: by the film as it lies where there is one, else as planned."""
        window = bar.planned.window
        if window is None:
            return None
        below = below_of(bar)
        if below is None or not self.is_poured(below):
            return Opening(window.opens, window.closes)
        opening, closing = window_stages(self.studio, bar.lane.piece, bar.position)

        def reached(stage: Stage) -> datetime | None:
            safe = window.trust is Trust.SAFE
            return below.film.reached(stage, safe_edge(stage) if safe else Edge.LIKELY)

        opens = below.planned.end if opening is None else reached(opening)
        closes = None if closing is None else reached(closing)
        return Opening(opens or window.opens, closes)

    def reminder(
        self,
        kind: ReminderKind,
        about: tuple[str, ...],
        moment: datetime,
        urgency: Urgency = Urgency.CAN_WAIT,
        **more: Any,  # noqa: ANN401 - fields of the reminder
    ) -> Reminder:
        """A reminder that rings its lead before `moment`; quiet hours are left to others."""
        moment = moment.astimezone(UTC)
        lead = timedelta(minutes=self.studio.reminding.lead(kind))
        return Reminder(
            uid=uid_of(kind, *about),
            kind=kind,
            urgency=urgency,
            due=moment - lead,
            meant=moment - lead,
            moment=moment,
            **more,
        )


def below_of(bar: Ribbon) -> Ribbon | None:
    """The film that a coat lies on; None on a bare face, or where the plan has none."""
    piece = bar.lane.piece
    position = piece.below(bar.position)
    if position is None:
        return None
    key = piece.stack[position].key
    return next((one for one in bar.lane.ribbons if one.planned.coat == key), None)


def coat_below(bar: Ribbon) -> Coat | None:
    """The coat of the stack that a coat lies on; None on a bare face."""
    position = bar.lane.piece.below(bar.position)
    return None if position is None else bar.lane.piece.stack[position]
