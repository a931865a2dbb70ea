"""A pour held over a time: its coats there, with its pieces' lanes as they would be."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import legs_from, stays_along
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind
from studio_planner.craft.sheet_stages import handle_stage
from studio_planner.services.ribbons import Lane, PlannedStudio, Ribbon

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence
    from datetime import datetime

    from studio_planner.craft.plans import PlannedCoat, PlannedStep

_ALONG = {StepKind.TURN}
"""Steps that belong right before a pour and move along with it."""

_WITH_A_POUR = {StepKind.SAND, StepKind.TURN, StepKind.TAPE, StepKind.TRIM}


@dataclass(frozen=True, slots=True)
class Goes:
    """A piece goes to `spot` (a key) for the `coats` (keys) that it gets on one stay there."""

    spot: str
    coats: frozenset[str]


class Held:
    """The coats of one mix at another `start`; nothing is computed before it is asked for.

    `lanes` are those of its pieces, each without the kept windows and ready times that no
    longer hold.
    """

    def __init__(
        self,
        whole: PlannedStudio,
        mix: Sequence[PlannedCoat],
        start: datetime,
        goes: Goes | None = None,
    ) -> None:
        """Hold the coats of `mix` over `start` (aware), its first piece on another spot."""
        self.whole = whole
        self.mix = tuple(mix)
        self.start = start
        self.delta = start - mix[0].start
        self.end = mix[0].end + self.delta
        self._goes = goes
        self.coats = tuple(
            self._put(replace(coat, start=start, end=self.end, window=None)) for coat in mix
        )

    def _put(self, coat: PlannedCoat) -> PlannedCoat:
        goes = self._goes
        if goes is None or coat.piece != self.mix[0].piece or coat.coat not in goes.coats:
            return coat
        return replace(coat, spot=goes.spot)

    @cached_property
    def lanes(self) -> tuple[Lane, ...]:
        """The lanes of its pieces as they would be."""
        return tuple(self._lane(coat) for coat in self.coats)

    def _lane(self, coat: PlannedCoat) -> Lane:
        key, plan = coat.piece, self.whole.plan
        assert plan is not None  # noqa: S101 - a coat of it is held
        rows = (self._put(row) for row in plan.coats if row.piece == key)
        coats = (self._other(row, coat) for row in rows)
        steps = tuple(row for row in plan.steps if row.piece == key)
        return Lane(
            self.whole, self.whole.studio.piece(key), tuple(coats), self._moved(steps, coat)
        )

    def _other(self, row: PlannedCoat, coat: PlannedCoat) -> PlannedCoat:
        if row.coat == coat.coat:
            return coat
        return row if row.start < coat.start or row.poured else replace(row, window=None)

    def _moved(
        self, steps: Iterable[PlannedStep], coat: PlannedCoat
    ) -> tuple[PlannedStep, ...]:
        return tuple(
            self.along(step) if step.coat == coat.coat and step.kind in _ALONG else step
            for step in steps
        )

    def along(self, step: PlannedStep) -> PlannedStep:
        """A step that moves along with the pour."""
        return replace(step, start=step.start + self.delta, end=step.end + self.delta)

    @cached_property
    def turns(self) -> tuple[PlannedStep, ...]:
        """The turning that moves along, where it would be."""
        plan, keys = self.whole.plan, {(coat.piece, coat.coat) for coat in self.mix}
        return tuple(
            self.along(step)
            for step in (plan.steps if plan else ())
            if step.kind in _ALONG and (step.piece, step.coat) in keys
        )

    @cached_property
    def bars(self) -> tuple[Ribbon, ...]:
        """The held coats on their lanes, in the order of `coats`."""
        return tuple(
            ribbon_of(lane, coat.coat)
            for lane, coat in zip(self.lanes, self.coats, strict=True)
        )


def kept_steps(
    steps: Iterable[PlannedStep], coats: Iterable[PlannedCoat], new: Iterable[PlannedStep]
) -> list[PlannedStep]:
    """The steps that stay as they were when `coats` are moved and `new` steps go with them."""
    moved = {(coat.piece, coat.coat): coat for coat in coats}
    sanded = {(step.piece, step.coat) for step in new if step.kind is StepKind.SAND}
    again = {key for key, coat in moved.items() if coat.joint is not Joint.SCUFFED} | sanded
    return [
        step
        for step in steps
        if (key := (step.piece, step.coat)) not in moved
        or (step.kind is StepKind.SAND and key not in again)
        or step.kind not in _WITH_A_POUR
    ]


def ribbon_of(lane: Lane, coat: str) -> Ribbon:
    """The ribbon of a coat (a key) on a lane that has it."""
    return ribbons_of(lane)[coat]


def ribbons_of(lane: Lane) -> Mapping[str, Ribbon]:
    """The ribbons of a lane by their coats' keys."""
    return {bar.planned.coat: bar for bar in lane.ribbons}


def handled(lane: Lane, coat: PlannedCoat) -> datetime | None:
    """When a coat can be handled where it stands, for sure; None: not within this record.

    Where it was carried since it was poured it stands there.
    """
    return handled_from(lane, coat, coat.end)


def handled_from(lane: Lane, coat: PlannedCoat, since: datetime) -> datetime | None:
    """As `handled`, for a coat of that kind that is spread at `since`; leaf at once."""
    product = lane.studio.product(lane.piece.coat(coat.coat).product)
    stage = handle_stage(product)
    if stage is None:
        return since if product.kind == "leaf" else None
    legs = [(lane.studio.place_of_spot(spot).key, at) for spot, at in lane.stands(coat)]
    return lane.timing.safe(product, stage, legs_from(legs, since))


@dataclass(frozen=True, slots=True)
class Stay:
    """A piece on a spot (a key) from a pour until it is handled or goes on.

    Or since it was carried there with the coat on. `end` None: for good.
    """

    lane: Lane
    coat: PlannedCoat
    spot: str
    start: datetime
    end: datetime | None

    def meets(self, other: Stay) -> bool:
        """Whether both would be on their spot at once."""
        mine = self.end is None or other.start < self.end
        return mine and (other.end is None or self.start < other.end)


def stays_of(lane: Lane, coats: Iterable[PlannedCoat] | None = None) -> tuple[Stay, ...]:
    """Where a piece stands from when to when; of all its coats, or of some."""
    found: list[Stay] = []
    for coat in lane.coats if coats is None else coats:
        index = lane.coats.index(coat)
        after = lane.coats[index + 1] if index + 1 < len(lane.coats) else None
        end = handled(lane, coat)
        if after is not None and (end is None or after.start < end):
            end = after.start
        found += (Stay(lane, coat, *stay) for stay in stays_along(lane.stands(coat), end))
    return tuple(found)


def stays_on(lane: Lane, spot: str) -> tuple[Stay, ...]:
    """When a piece stands on a spot (a key)."""
    there = [coat for coat in lane.coats if any(on == spot for on, _ in lane.stands(coat))]
    return tuple(stay for stay in stays_of(lane, there) if stay.spot == spot)
