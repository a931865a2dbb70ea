"""Places the pieces of one order while all the others keep the places that a plan gave them."""

from __future__ import annotations

from copy import copy
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from itertools import count
from typing import TYPE_CHECKING

from studio_planner.planning.late.booked import EVERYTHING, Takes, book_plan
from studio_planner.planning.problem import build_chains
from studio_planner.planning.rounds import Rounds
from studio_planner.planning.writing import written_plan

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.clocks.clockwork import Clockworks
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.placing.placer import Placer, Stuck
    from studio_planner.planning.problem import Chain

_PATIENCE = 5.0
"""How much further than usual is looked when the plan is long or leaves a piece out."""

_NEVER = float("inf")


@dataclass(frozen=True, slots=True)
class Fit:
    """Where the chains of one order went, and which found no place."""

    placed: tuple[Placement, ...]
    stuck: tuple[Stuck, ...]
    whole: bool
    """Whether every piece of the order was looked at; one with a missing figure is not."""

    @property
    def late(self) -> float:
        """Weighted hours late; infinite when a piece finds no place."""
        if self.stuck or not self.whole or not self.placed:
            return _NEVER
        return max(one.score[0] for one in self.placed)

    @property
    def packed(self) -> int | None:
        """When its last piece is packed, in seconds; None when one finds no place."""
        if self.late == _NEVER:
            return None
        return max(pack.end for one in self.placed for pack in one.packed)

    @property
    def slowest(self) -> Placement | None:
        """The chain that is packed last."""
        return max(self.placed, key=lambda one: one.score[4], default=None)


class Stacks:
    """A studio's pieces as chains: with twins together, and each by itself."""

    def __init__(self, studio: Studio) -> None:
        """Build them; they hold for every studio that only has other spots, hours or air."""
        self.twins = build_chains(studio, twins=True)[0]
        self.apart = build_chains(studio, twins=False)[0]


class Fitter:
    """One studio, a plan that may be booked in it, and orders that are placed into the rest."""

    def __init__(
        self,
        studio: Studio,
        plan: Plan,
        clockworks: Clockworks,
        stacks: Stacks | None = None,
        until: datetime | None = None,
    ) -> None:
        """Look at a studio from the start of a plan that was made for it or for less.

        `stacks` are its pieces as chains, where they are known already. Nothing is poured from
        `until` on, if that was asked for.
        """
        self.studio = studio
        self.stacks = Stacks(studio) if stacks is None else stacks
        self._plan = plan
        self._rounds = _rounds(studio, plan, self.stacks.twins, clockworks, until)

    def after(self, plan: Plan) -> Fitter:
        """The same with another plan of the same studio."""
        other = copy(self)
        other._plan = plan  # noqa: SLF001 - a copy of itself
        return other

    def empty(self) -> Means:
        """The means of a workshop that holds only what is poured."""
        return self._rounds.placer().means

    def placer(self, order: Order, takes: Takes, without: Iterable[str] = ()) -> Placer:
        """A placer in a workshop that holds so much of the plan, without one order's pieces.

        `without` are pieces that it does not hold either.
        """
        placer = self._rounds.placer()
        if takes:
            left = {*order.pieces, *without}
            book_plan(self.studio, placer.means, self._plan, without=left, takes=takes)
        return placer

    def hands(self, order: Order) -> int:
        """Seconds of hands that an order still asks for, packing and all."""
        packing = 60 * order.packing_minutes * len(order.pieces)
        return packing + sum(chain.hands for chain in _of(self.stacks.twins, order))

    def fit(self, order: Order, takes: Takes = EVERYTHING, without: Iterable[str] = ()) -> Fit:
        """The best of placing an order's twins together, and each piece by itself.

        Among so much of the plan, but for the pieces that it is `without`.
        """
        together, apart = _of(self.stacks.twins, order), _of(self.stacks.apart, order)
        best = self._fit(order, self.placer(order, takes, without), together)
        if best.late > 0 and len(apart) > len(together):
            alone = self._fit(order, self.placer(order, takes, without), apart)
            best = min(best, alone, key=lambda one: one.late)
        return best

    def _fit(self, order: Order, placer: Placer, mine: list[Chain]) -> Fit:
        placed, stuck = placer.place_all(mine)
        seen = {piece.key for chain in mine for piece in chain.pieces}
        return Fit(tuple(placed), tuple(stuck), whole=seen >= set(order.pieces))

    def with_order_moved(self, order: Order) -> Plan | None:
        """The plan with one order placed anew and everything else as it was.

        None when it finds no place, or when a coat of it is poured from one mix with a coat of
        another order, which would have to change too.
        """
        if _shares_a_mix(self._plan, order):
            return None
        fit = self.fit(order)
        if fit.packed is None:
            return None
        now = self._plan.start
        part = written_plan(self._rounds.placer(), now, fit.placed, [], [])
        return merged(self._plan, part, order)


def _rounds(
    studio: Studio,
    plan: Plan,
    chains: list[Chain],
    clockworks: Clockworks,
    until: datetime | None,
) -> Rounds:
    """Rounds whose record covers all of the plan, or looks further for what found no place."""
    last = max((step.end for step in plan.steps), default=plan.start)
    rounds = Rounds(studio, plan.start, until, chains, clockworks)
    if plan.unplanned or last > rounds.timing.end:
        rounds = Rounds(studio, plan.start, until, chains, clockworks, patience=_PATIENCE)
    return rounds


def _of(chains: Iterable[Chain], order: Order) -> list[Chain]:
    """An order's chains: begun ones first, then what needs most hands."""
    mine = [one for one in chains if one.order is not None and one.order.key == order.key]
    return sorted(mine, key=lambda chain: (chain.first == 0, -chain.hands))


def _shares_a_mix(plan: Plan, order: Order) -> bool:
    mixes = {coat.mix for coat in plan.coats if coat.piece in order.pieces and not coat.poured}
    return any(c.mix in mixes for c in plan.coats if c.piece not in order.pieces)


def merged(plan: Plan, part: Plan, order: Order) -> Plan:
    """A plan in which the rows of one order come from another one."""
    mine = set(order.pieces)
    before = max((coat.mix for coat in plan.coats), default=0)
    moved = [replace(c, mix=c.mix + before) for c in part.coats if c.piece in mine]
    coats = [*(coat for coat in plan.coats if coat.piece not in mine), *moved]
    steps = [step for step in plan.steps if step.piece not in mine]
    steps += [step for step in part.steps if step.piece in mine]
    outcome = next(one for one in part.outcomes if one.order == order.key)
    return replace(
        plan,
        coats=_numbered(coats),
        steps=tuple(sorted(steps, key=lambda step: (step.start, step.piece))),
        ready=(
            *(row for row in plan.ready if row.piece not in mine),
            *(row for row in part.ready if row.piece in mine),
        ),
        outcomes=tuple(outcome if o.order == order.key else o for o in plan.outcomes),
        unplanned=tuple(row for row in plan.unplanned if row.piece not in mine),
        goals=(),
    )


def _numbered(coats: list[PlannedCoat]) -> tuple[PlannedCoat, ...]:
    """Coats and mixes numbered anew in the order of their starts."""
    fresh = count(1)
    mixes: dict[int, int] = {}
    rows = []
    for number, coat in enumerate(sorted(coats, key=lambda c: (c.start, c.piece)), start=1):
        if coat.mix not in mixes:
            mixes[coat.mix] = next(fresh)
        rows.append(replace(coat, number=number, mix=mixes[coat.mix]))
    return tuple(rows)


def leaves(studio: Studio, order: Order, fit: Fit) -> datetime | None:
    """When an order leaves that is packed as fitted; None when it is not."""
    return None if fit.packed is None else order.leaves(studio.time_zone, moment(fit.packed))


def moment(second: float) -> datetime:
    """The aware instant of a second."""
    return datetime.fromtimestamp(second, UTC)
