"""A kept plan as the next one looks at it: what is still to be done, coat by coat."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import StepKind, Trust
from studio_planner.planning.placing.chain_times import Allow, Ground
from studio_planner.planning.placing.placements import Packed
from studio_planner.planning.worth import starts_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping
    from datetime import datetime

    from studio_planner.craft.orders import Order
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.worth import Starts


def plan_that_counts(studio: Studio, plan: Plan | None, now: datetime) -> Plan | None:
    """The plan without coats that are no longer to be poured; None when nothing is left.

    A coat whose piece or stack is gone does not count, nor does one that is poured. A plan all
    of whose coats should have been poured before `now` is too old to hold anybody to it.
    """
    if plan is None:
        return None
    poured = studio.poured_keys
    there = {(piece.key, coat.key) for piece in studio.pieces for coat in piece.stack}
    coats = tuple(
        coat
        for coat in plan.coats
        if not coat.poured and (coat.piece, coat.coat) in there - poured
    )
    ahead = any(coat.start >= now for coat in coats)
    return replace(plan, coats=coats) if ahead else None


class KeptPlan:
    """Starts, spots, people, joints and packing of a plan; everything in seconds."""

    def __init__(self, studio: Studio, plan: Plan) -> None:
        """Read what a plan says of the coats that are still to be poured."""
        self.starts: Starts = starts_of(plan)
        self._coats = {(c.piece, c.coat): c for c in plan.coats if not c.poured}
        self._place = {s.key: place.key for place in studio.places for s in place.spots}
        self._spots = {spot.key: spot for spot in studio.spots}
        self._sandings = {
            (step.piece, step.coat): step for step in plan.steps if step.kind is StepKind.SAND
        }
        self._packs = {
            step.piece: Packed(
                int(step.start.timestamp()), int(step.end.timestamp()), step.person
            )
            for step in plan.steps
            if step.kind is StepKind.PACK
        }
        self._starts_in: dict[str, dict[int, int]] = {}
        self._ranks = {row.piece: rank for rank, row in enumerate(plan.ready)}
        self._late = {row.order: row.late_hours for row in plan.outcomes}

    def chains(self, twins: Iterable[Chain], apart: Iterable[Chain]) -> Iterator[Chain]:
        """Twins together where the plan has them together, else apart."""
        alone = {chain.key: chain for chain in apart}
        for chain in twins:
            if len(chain.pieces) > 1 and self._splits(chain):
                yield from (alone[piece.key] for piece in chain.pieces)
            else:
                yield chain

    def _splits(self, chain: Chain) -> bool:
        for task in chain.tasks:
            rows = [self._coats.get((piece.key, task.coat.key)) for piece in chain.pieces]
            if len({None if row is None else (row.start, row.mix) for row in rows}) > 1:
                return True
        return False

    def rank(self, chain: Chain) -> int:
        """Where in the plan a chain is written; what is new comes last."""
        return self._ranks.get(chain.key, len(self._ranks))

    def coat(self, chain: Chain, index: int) -> PlannedCoat | None:
        """How a chain's coat was planned; None for one that is poured or that is new."""
        task = chain.tasks[index]
        if task.fixed is not None:
            return None
        return self._coats.get((chain.key, task.coat.key))

    def starts_in(self, chain: Chain) -> Mapping[int, int]:
        """The old starts of a chain's coats, by their positions."""
        key = chain.key
        if key not in self._starts_in:
            rows = ((index, self.coat(chain, index)) for index in range(len(chain.tasks)))
            self._starts_in[key] = {
                index: int(row.start.timestamp()) for index, row in rows if row is not None
            }
        return self._starts_in[key]

    def grounds(self, chain: Chain) -> dict[int, Ground]:
        """The old grounds of a chain's coats that its pieces still fit on."""
        found = {}
        for index, task in enumerate(chain.tasks):
            rows = [self._coats.get((piece.key, task.coat.key)) for piece in chain.pieces]
            spots = tuple(row.spot for row in rows if row is not None)
            if len(spots) == len(rows) and task.fixed is None and self._fits(chain, spots):
                found[index] = Ground(self._place[spots[0]], spots)
        return found

    def _fits(self, chain: Chain, spots: tuple[str, ...]) -> bool:
        return (
            all(spot in self._spots for spot in spots)
            and len({self._place[spot] for spot in spots}) == 1
            and all(
                piece.fits(self._spots[spot])
                for piece, spot in zip(chain.pieces, spots, strict=True)
            )
        )

    def sandings(self, chain: Chain, length: int) -> dict[int, tuple[int, int]]:
        """When the joints of a chain were to be sanded, turning included, and how long it is.

        `length` seconds are what the sanding of one coat takes without turning.
        """
        found = {}
        for index, task in enumerate(chain.tasks):
            steps = [self._sandings.get((p.key, task.coat.key)) for p in chain.pieces]
            ends = [int(step.end.timestamp()) for step in steps if step is not None]
            if len(ends) == len(steps):
                found[index] = (max(ends) - length - task.lead, max(ends))
        return found

    def sander(self, chain: Chain, index: int) -> str | None:
        """Who was to sand for a coat."""
        step = self._sandings.get((chain.key, chain.tasks[index].coat.key))
        return None if step is None else step.person

    def packs(self, chain: Chain) -> tuple[Packed, ...] | None:
        """How a chain's pieces were to be packed; None when one was not."""
        rows = [self._packs.get(piece.key) for piece in chain.pieces]
        found = tuple(row for row in rows if row is not None)
        return found if len(found) == len(rows) else None

    def joints(self, chain: Chain) -> tuple[int, int]:
        """How many joints of a chain were to be scuffed and how many to be tested first.

        Without those that are sanded by now.
        """
        left = [index for index, task in enumerate(chain.tasks) if task.sanded is None]
        rows = [self.coat(chain, index) for index in left]
        scuffed = sum(row is not None and row.joint is Joint.SCUFFED for row in rows)
        tested = sum(
            row is not None and row.window is not None and row.window.trust is Trust.TEST_FIRST
            for row in rows
        )
        return scuffed, tested

    def allow(self, chain: Chain) -> Allow:
        """The joints that a chain had."""
        scuffed, tested = self.joints(chain)
        return Allow(test_first=tested > 0, scuff=scuffed > 0)

    def late(self, order: Order | None) -> float:
        """The weighted hours that an order was late; 0 for one that is new."""
        if order is None:
            return 0.0
        return (self._late.get(order.key) or 0.0) * order.weight
