"""What is different between two plans of a studio, as values.

`compare(before, after)` takes two states of the studio, each with its kept plan, and gives the
pours that moved, the promises that changed, the joints that are others and the pieces that are
no longer, or newly, planned. `difference_words` says it in sentences.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Trust

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Outcome, Plan, PlannedCoat
    from studio_planner.craft.studio import Studio

_HOUR = 3600.0
_SAME_HOURS = 1.0 / 60.0
"""Promises that differ by less than a minute are the same."""


@dataclass(frozen=True, slots=True, kw_only=True)
class InBoth:
    """A pour to come that both plans have."""

    before: PlannedCoat
    after: PlannedCoat

    @property
    def piece(self) -> str:
        """The key of its piece."""
        return self.after.piece

    @property
    def coat(self) -> str:
        """The key of its coat."""
        return self.after.coat


@dataclass(frozen=True, slots=True, kw_only=True)
class MovedPour(InBoth):
    """A pour that is at another time or on another spot."""

    @property
    def hours_later(self) -> float:
        """How much later it starts [h]; below 0 when it starts sooner."""
        return (self.after.start - self.before.start).total_seconds() / _HOUR

    @property
    def on_other_spot(self) -> bool:
        """Whether it stands somewhere else."""
        return self.after.spot != self.before.spot


@dataclass(frozen=True, slots=True, kw_only=True)
class ChangedPromise:
    """An order that leaves at another time; None where a piece of it is not planned."""

    order: str
    due: datetime
    before: datetime | None
    after: datetime | None

    @property
    def hours_later(self) -> float | None:
        """How much later it leaves [h], below 0 when sooner; None where one is not known."""
        if self.before is None or self.after is None:
            return None
        return (self.after - self.before).total_seconds() / _HOUR

    @property
    def later(self) -> bool:
        """Whether it leaves later, or not at all any more."""
        hours = self.hours_later
        return self.after is None if hours is None else hours > 0.0

    @property
    def broken(self) -> bool:
        """Whether the promise was kept and no longer is."""
        return self._kept(self.before) and not self._kept(self.after)

    @property
    def mended(self) -> bool:
        """Whether the promise was not kept and now is."""
        return not self._kept(self.before) and self._kept(self.after)

    def _kept(self, leaves: datetime | None) -> bool:
        return leaves is not None and leaves <= self.due


@dataclass(frozen=True, slots=True, kw_only=True)
class ChangedJoint(InBoth):
    """A pour whose joint is another one: in the window, to test first, or scuffed."""

    @property
    def worse(self) -> bool:
        """Whether it ranks after the joint before: a safe window, a test first, scuffed."""
        return _rank(self.after) > _rank(self.before)


@dataclass(frozen=True, slots=True, kw_only=True)
class Difference:
    """All that is different, pours in the order of their new times.

    `lost` and `gained` are keys of pieces that are not planned any more, or only now.
    """

    moved: tuple[MovedPour, ...] = ()
    promises: tuple[ChangedPromise, ...] = ()
    joints: tuple[ChangedJoint, ...] = ()
    lost: tuple[str, ...] = ()
    gained: tuple[str, ...] = ()

    @property
    def nothing(self) -> bool:
        """Whether both plans are the same to a maker."""
        return self == Difference()

    @property
    def worsened(self) -> tuple[ChangedJoint, ...]:
        """The joints that became worse."""
        return tuple(joint for joint in self.joints if joint.worse)


def compare(before: Studio, after: Studio) -> Difference:
    """Tell what is different in the kept plan of a studio after something was changed.

    Pours that are done, in either, moved nowhere; coats and orders that only one of them has
    are left out, and so is everything where one of them has no plan.
    """
    old, new = before.plan, after.plan
    if old is None or new is None:
        return Difference()
    pairs = _pairs(old, new)
    return Difference(
        moved=tuple(
            MovedPour(before=one, after=other)
            for one, other in pairs
            if (one.start, one.spot) != (other.start, other.spot)
        ),
        promises=_promises(old, new),
        joints=tuple(
            ChangedJoint(before=one, after=other)
            for one, other in pairs
            if _rank(one) != _rank(other)
        ),
        lost=_stopped(new, old, before),
        gained=_stopped(old, new, after),
    )


def _pairs(old: Plan, new: Plan) -> list[tuple[PlannedCoat, PlannedCoat]]:
    there = {(coat.piece, coat.coat): coat for coat in old.coats if not coat.poured}
    coats = sorted(new.coats, key=lambda coat: (coat.start, coat.number))
    keys = [(coat, (coat.piece, coat.coat)) for coat in coats if not coat.poured]
    return [(there[key], coat) for coat, key in keys if key in there]


def _promises(old: Plan, new: Plan) -> tuple[ChangedPromise, ...]:
    there = {row.order: row for row in old.outcomes}
    return tuple(
        ChangedPromise(
            order=row.order, due=row.due, before=there[row.order].leaves, after=row.leaves
        )
        for row in new.outcomes
        if row.order in there and _differs(there[row.order], row)
    )


def _differs(one: Outcome, other: Outcome) -> bool:
    if one.leaves is None or other.leaves is None:
        return one.leaves is not other.leaves
    return abs((other.leaves - one.leaves).total_seconds()) / _HOUR >= _SAME_HOURS


def _stopped(plan: Plan, other: Plan, studio: Studio) -> tuple[str, ...]:
    """Pieces that a plan does not plan, though the `other` one plans them, in `studio`."""
    here = {row.piece for row in plan.unplanned} - {row.piece for row in other.unplanned}
    return tuple(piece.key for piece in studio.pieces if piece.key in here)


def _rank(coat: PlannedCoat) -> int:
    if coat.joint is Joint.SCUFFED:
        return 2
    tests = coat.window is not None and coat.window.trust is Trust.TEST_FIRST
    return 1 if tests else 0
