"""A chain's place in the week: made complete from its starts, and booked into a workshop."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import stays_along
from studio_planner.craft.pieces import CoatKind
from studio_planner.craft.plans import Trust
from studio_planner.craft.products import ProductKind
from studio_planner.craft.sheet_stages import gate_coats, gate_stage, handle_stage
from studio_planner.planning.placing.chain_times import Allow, ChainTimes, standing
from studio_planner.planning.placing.workshop import Taken
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.placing.chain_times import Ground, Means, PlacedJoint
    from studio_planner.planning.problem import Chain

Score = tuple[float, int, int, float, float]
"""Weighted hours late, scuffed joints, joints to test first, hours of spare lacking, end."""


@dataclass(frozen=True, slots=True)
class Packed:
    """A pack step of one piece: start and end in seconds, and who does it."""

    start: int
    end: int
    person: str


@dataclass(frozen=True, slots=True)
class Laid:
    """Where and when a chain's coats are put on: grounds, starts [s] and joints, coat by coat.

    `mixes` name the mixes that coats share with those of other chains; empty for a mix of
    their own.
    """

    chain: Chain
    grounds: tuple[Ground, ...]
    starts: tuple[int, ...]
    joints: tuple[PlacedJoint, ...]
    mixes: tuple[str, ...] = ()

    def mix(self, index: int) -> str:
        """The name of a coat's shared mix; empty when it shares none."""
        return self.mixes[index] if self.mixes else ""


@dataclass(frozen=True, slots=True)
class Placement:
    """A chain in the week: its coats as laid, people, packing; everything in seconds."""

    laid: Laid
    people: tuple[str, ...]
    sanders: tuple[str | None, ...]
    packed: tuple[Packed, ...]
    score: Score

    @property
    def chain(self) -> Chain:
        """The chain that is placed."""
        return self.laid.chain

    @property
    def starts(self) -> tuple[int, ...]:
        """The starts of its coats."""
        return self.laid.starts

    def on(self, ground: Ground) -> Placement:
        """The same on other spots of its place, which are free all the while."""
        return replace(self, laid=replace(self.laid, grounds=standing(self.chain, ground)))


class Finisher:
    """Makes laid chains complete in a workshop: people, packing, and what it is worth."""

    def __init__(self, studio: Studio, means: Means) -> None:
        """Work for a studio with the means of one plan."""
        self._studio = studio
        self._means = means
        self._asked: tuple[Laid, ChainTimes] | None = None

    def times(self, laid: Laid) -> ChainTimes:
        """The stage times of a laid chain; those of the last one asked for are kept."""
        if self._asked is None or self._asked[0] is not laid:
            self._asked = laid, ChainTimes(self._means, laid.chain, laid.grounds, Allow())
        return self._asked[1]

    def finished(self, laid: Laid) -> Placement | None:
        """The whole placement; None when the chain cannot be packed in the record."""
        packed = self._packed(laid)
        if packed is None:
            return None
        shop = self._means.shop
        return Placement(
            laid=laid,
            people=tuple(self._person(laid, index) or "" for index in range(len(laid.starts))),
            sanders=tuple(
                None if joint.sand is None else shop.somebody(*joint.sand)
                for joint in laid.joints
            ),
            packed=packed,
            score=self.score(laid, packed),
        )

    def _person(self, laid: Laid, index: int) -> str | None:
        task, start = laid.chain.tasks[index], laid.starts[index]
        if task.fixed is not None:
            return None
        return self._means.shop.somebody(start - task.lead, start + task.block)

    def _packed(self, laid: Laid) -> tuple[Packed, ...] | None:
        order = laid.chain.order
        if order is None:
            return ()
        gate = self.gate(laid, order.gate.stage)
        if gate is None:
            return None
        last = laid.starts[-1] + laid.chain.tasks[-1].block
        return self.packs(laid.chain, max(gate, last, self._means.now))

    def packs(self, chain: Chain, after: int) -> tuple[Packed, ...] | None:
        """The packing of a chain's pieces one after another, as soon as hands are free."""
        length = 0 if chain.order is None else chain.order.packing_minutes * 60
        packed: list[Packed] = []
        for _ in chain.pieces:
            start = self._means.shop.earliest(after, length)
            if start is None:
                return None
            person = self._means.shop.somebody(start, start + length)
            if person is None:
                return None
            packed.append(Packed(start, start + length, person))
            after = start + length
        return tuple(packed)

    def gate(self, laid: Laid, wished: Stage) -> int | None:
        """When every coat of a chain has safely reached a gate; None when never."""
        gates = []
        for coat in gate_coats(self._studio, laid.chain.pieces[0], wished):
            index = laid.chain.pieces[0].position(coat.key)
            stage = gate_stage(laid.chain.tasks[index].product, wished)
            reached = None if stage is None else self._reached(laid, index, stage)
            if reached is None:
                return None
            gates.append(reached)
        return max(gates)

    def _reached(self, laid: Laid, index: int, stage: Stage) -> int | None:
        task = laid.chain.tasks[index]
        times = self.times(laid)
        edges, spread = self._means.edges, laid.starts[index] + task.block
        if times.rests_from(index):
            clock = edges.not_before(task.product, edges.rest, stage)
            return None if clock is None else clock.at(spread)
        legs = times.itinerary(laid.starts, index, spread)
        reached = edges.along(task.product, stage, Edge.LATE, legs)
        return None if reached is None else int(reached) + 2

    def score(self, laid: Laid, packed: Sequence[Packed]) -> Score:
        """What a placement is worth by itself."""
        chain = laid.chain
        new = laid.joints[chain.first :]
        # What was sanded already is a fact: no plan can do without.
        scuffed = sum(joint.sand is not None for joint in new)
        tested = sum(joint.trust is Trust.TEST_FIRST for joint in new)
        if chain.order is None or not packed:
            return (0.0, scuffed, tested, 0.0, laid.starts[-1] + chain.tasks[-1].block)
        zone = self._studio.time_zone
        last = packed[-1].end
        leaves = chain.order.leaves(zone, _moment(last)).timestamp()
        ahead = (chain.order.due(zone).timestamp() - leaves) / 3600.0
        late = max(0.0, -ahead) * chain.order.weight
        spare = max(0.0, self._studio.settings.spare_hours - max(0.0, ahead))
        return (late, scuffed, tested, spare, last)

    def book(self, placement: Placement) -> None:
        """Take the hands, spots and air that a placement needs."""
        self._means.shop.take(self.taken(placement))

    def taken(self, placement: Placement) -> Taken:
        """What a placement takes of hands, spots and air; what is poured takes nothing more."""
        laid = placement.laid
        times = self.times(laid)
        new = range(laid.chain.first, len(laid.starts))
        ends = [
            start + task.block
            for task, start in zip(laid.chain.tasks, laid.starts, strict=True)
        ]
        sandings = [
            (sander, joint.sand)
            for joint, sander in zip(laid.joints, placement.sanders, strict=True)
            if joint.sand is not None and sander is not None
        ]
        return Taken(
            hands=(
                *(
                    (placement.people[i], laid.starts[i] - laid.chain.tasks[i].lead, ends[i])
                    for i in new
                ),
                *((sander, *sand) for sander, sand in sandings),
                *((pack.person, pack.start, pack.end) for pack in placement.packed),
            ),
            spots=tuple(
                (spot, laid.starts[i], self.left(laid, i))
                for i in new
                for spot in laid.grounds[i].spots
            ),
            wet=tuple(
                (laid.starts[i], times.covered(i, laid.starts[i]))
                for i in new
                if laid.chain.tasks[i].coat.kind is not CoatKind.LEAF
            ),
            sanding=tuple(sand for _, sand in sandings),
        )

    def left(self, laid: Laid, index: int) -> int:
        """When a coat's stay on its spot ends, with the next coat at the latest."""
        until, after = self.freed(laid, index), laid.starts[index + 1 : index + 2]
        return min((until, *after))

    def freed(self, laid: Laid, index: int) -> int:
        """When a coat sets its spot free."""
        task = laid.chain.tasks[index]
        if task.stays and index + 1 < len(laid.starts):
            return laid.starts[index + 1]
        handled = self.times(laid).handled(index, laid.starts[index])
        return self._means.end if handled is None else handled


def _moment(second: float) -> datetime:
    return datetime.fromtimestamp(second, UTC)


def hold_poured(studio: Studio, means: Means, piece: Piece) -> None:
    """Put what is already poured of a piece on its spots, and note what is still wet.

    A pour holds its spot, or the one that it was carried to, until the next one is put on,
    which then holds its own.
    """
    pours = studio.pours_of(piece.key)
    for number, pour in enumerate(pours, start=1):
        product = studio.product(piece.coat(pour.coat).product)
        place = means.place_of(pour)
        start, end = int(pour.start.timestamp()), int(pour.end.timestamp())
        handled = means.edges.handle(product, place).at(end)
        stays = product.kind is ProductKind.SIZE and handle_stage(product) is None
        until = means.end if handled is None or stays else handled
        if number < len(pours):
            until = min(until, int(pours[number].start.timestamp()))
        for spot, since, left in stays_along(means.legs(pour), until):
            means.shop.lies(piece.key, spot, since, left)
        clock = means.edges.cover(product, place)
        if clock is not None:
            covered = clock.at(end)
            means.shop.add_wet(start, end if covered is None else max(covered, end))
