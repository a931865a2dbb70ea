"""Finds the best place in the week for one chain, given what is already planned."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.craft.plans import Trust
from studio_planner.craft.products import ProductKind
from studio_planner.planning.chain_search import ChainSearch, Dead, Look
from studio_planner.planning.chain_times import Allow, ChainTimes, Ground, Means
from studio_planner.planning.problem import gate_coats, gate_stage, handle_stage
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.timing import Timing
    from studio_planner.planning.chain_times import PlacedJoint
    from studio_planner.planning.problem import Chain

_FEW, _MANY = 8, 60
_SPOTS_TRIED = 2

Score = tuple[float, int, int, float, float]
"""Weighted hours late, scuffed joints, joints to test first, hours of spare lacking, end."""


@dataclass(frozen=True, slots=True)
class Packed:
    """A pack step of one piece: start and end in seconds, and who does it."""

    start: int
    end: int
    person: str


@dataclass(frozen=True, slots=True)
class Placement:
    """A chain in the week: starts, joints, people, packing; everything in seconds."""

    chain: Chain
    ground: Ground
    starts: tuple[int, ...]
    joints: tuple[PlacedJoint, ...]
    people: tuple[str, ...]
    sanders: tuple[str | None, ...]
    packed: tuple[Packed, ...]
    score: Score


@dataclass(frozen=True, slots=True)
class Stuck:
    """A chain that found no place: the coat, and the search's last word on the best ground."""

    chain: Chain
    ground: Ground | None
    dead: Dead | None
    cured: bool = True


class Placer:
    """Places chains one after another into a workshop."""

    def __init__(self, studio: Studio, timing: Timing, means: Means) -> None:
        """Work for a studio with the means of one plan."""
        self.studio = studio
        self.timing = timing
        self.means = means

    def with_shop(self, means: Means) -> Placer:
        """The same placer on another state of the workshop."""
        return Placer(self.studio, self.timing, means)

    def place(self, chain: Chain) -> Placement | Stuck:
        """The best placement of a chain, by the plan's goals in their order."""
        best, stuck = self._best_of(chain, self._grounds(chain), Allow())
        for allow in self._more_joints(chain) if best is None or best.score[0] > 0 else ():
            grounds = self._grounds(chain) if best is None else [[best.ground]]
            found, _ = self._best_of(chain, grounds, allow)
            if found is not None and (best is None or found.score < best.score):
                best = found
        return best or stuck or Stuck(chain, None, None)

    def _best_of(
        self, chain: Chain, grounds: list[list[Ground]], allow: Allow
    ) -> tuple[Placement | None, Stuck | None]:
        found = [self._best_in(chain, places, allow) for places in grounds]
        placed = [one for one in found if isinstance(one, Placement)]
        stuck = [one for one in found if isinstance(one, Stuck)]
        best = min(placed, key=lambda one: one.score, default=None)
        return best, stuck[0] if stuck else None

    def _best_in(self, chain: Chain, grounds: list[Ground], allow: Allow) -> Placement | Stuck:
        """The best of one place's spots; no more are tried when one is ideal."""
        ideal: Score | None = None
        gap = 0
        if len(grounds) > 1 and not chain.first:
            alone = self.try_on(chain, Ground(grounds[0].place, ()), allow)
            if isinstance(alone, Stuck):
                return Stuck(chain, grounds[0], alone.dead, cured=alone.cured)
            ideal = alone.score
            gap = self._span(chain, alone) // 2
            grounds = self._likeliest(chain, grounds, alone)
        best: Placement | Stuck | None = None
        for ground in grounds:
            found = self.try_on(chain, ground, allow, gap)
            better = isinstance(found, Placement) and (
                not isinstance(best, Placement) or found.score < best.score
            )
            best = found if best is None or better else best
            if ideal is not None and isinstance(best, Placement) and best.score <= ideal:
                break
        return best or Stuck(chain, None, None)

    def _likeliest(self, chain: Chain, grounds: list[Ground], alone: Placement) -> list[Ground]:
        """The spots free all the time that a chain would like one; else the first few."""
        begin = alone.starts[chain.first]
        until = begin + self._span(chain, alone)
        spots = self.means.shop.spots
        free = [
            ground
            for ground in grounds
            if all(spots[spot].holds(begin, until) for spot in ground.spots)
        ]
        return free[:1] or grounds[:_SPOTS_TRIED]

    def _span(self, chain: Chain, placement: Placement) -> int:
        """Seconds from a chain's first new pour until its last can be handled."""
        last = chain.tasks[-1]
        clock = self.means.edges.handle(last.product, placement.ground.place)
        end = clock.at(placement.starts[-1] + last.block)
        return (self.means.end if end is None else end) - placement.starts[chain.first]

    def _more_joints(self, chain: Chain) -> Iterator[Allow]:
        todo = chain.tasks[chain.first :]
        tests = any(task.may_test for task in todo)
        if tests:
            yield Allow(test_first=True)
        if any(task.may_scuff for task in todo):
            yield Allow(test_first=tests, scuff=True)

    def try_on(
        self, chain: Chain, ground: Ground, allow: Allow, gap: int = 0
    ) -> Placement | Stuck:
        """Try one ground; look at few stretches and long gaps first, then at all."""
        solved: Dead | tuple[list[int], list[PlacedJoint]] | None = None
        for look in (Look(_FEW, gap), Look(3 * _FEW, gap), Look(_MANY)):
            search = ChainSearch(self.means, chain, ground, allow, look)
            solved = search.solve()
            if not isinstance(solved, Dead):
                placement = self._finished(chain, ground, *solved)
                return placement or Stuck(chain, ground, None, cured=False)
            if not search.truncated and not gap:
                break
        return Stuck(chain, ground, solved if isinstance(solved, Dead) else None)

    def _grounds(self, chain: Chain) -> list[list[Ground]]:
        """The spots to try, place by place: wholly free ones first, then the soonest free."""
        count = len(chain.pieces)
        grounds: list[list[Ground]] = []
        for place in self.studio.places:
            fitting = [
                spot
                for spot in place.spots
                if all(
                    spot.holds(piece.footprint, piece.body_mm + piece.cover_mm)
                    for piece in chain.pieces
                )
            ]
            fitting.sort(key=lambda spot: (self._free_from(spot.key), spot.length_mm))
            keys = [spot.key for spot in fitting]
            own = self._own_spot(chain)
            if own in keys:
                keys = [own, *(key for key in keys if key != own)]
            groups = [tuple(keys[i : i + count]) for i in range(len(keys) - count + 1)]
            if groups:
                grounds.append([Ground(place.key, group) for group in groups])
        return grounds

    def _own_spot(self, chain: Chain) -> str | None:
        fixed = chain.tasks[chain.first - 1].fixed if chain.first else None
        return None if fixed is None else fixed.spot

    def _free_from(self, spot: str) -> int:
        """When a spot is free for good; `now` for one that nothing is planned on."""
        last = self.means.shop.spots[spot].last_start
        return self.means.end if last is None else max(last, self.means.now)

    # A found chain made complete

    def _finished(
        self, chain: Chain, ground: Ground, starts: list[int], joints: list[PlacedJoint]
    ) -> Placement | None:
        packed = self._packed(chain, ground, starts)
        if packed is None:
            return None
        people = tuple(
            self._person(chain, index, start) or "" for index, start in enumerate(starts)
        )
        sanders = tuple(
            None if joint.sand is None else self.means.shop.somebody(*joint.sand)
            for joint in joints
        )
        return Placement(
            chain=chain,
            ground=ground,
            starts=tuple(starts),
            joints=tuple(joints),
            people=people,
            sanders=sanders,
            packed=packed,
            score=self._score(chain, starts, joints, packed),
        )

    def _person(self, chain: Chain, index: int, start: int) -> str | None:
        task = chain.tasks[index]
        if task.fixed is not None:
            return None
        return self.means.shop.somebody(start - task.lead, start + task.block)

    def _packed(
        self, chain: Chain, ground: Ground, starts: list[int]
    ) -> tuple[Packed, ...] | None:
        order = chain.order
        if order is None:
            return ()
        gate = self.gate(chain, ground, starts, order.gate.stage)
        if gate is None:
            return None
        after = max(gate, starts[-1] + chain.tasks[-1].block, self.means.now)
        length = order.packing_minutes * 60
        packed: list[Packed] = []
        for _ in chain.pieces:
            start = self.means.shop.earliest(after, length)
            person = None if start is None else self.means.shop.somebody(start, start + length)
            if start is None or person is None:
                return None
            packed.append(Packed(start, start + length, person))
            after = start + length
        return tuple(packed)

    def gate(
        self, chain: Chain, ground: Ground, starts: list[int], wished: Stage
    ) -> int | None:
        """When every coat of a chain has safely reached a gate; None when never."""
        gates = []
        for coat in gate_coats(self.studio, chain.pieces[0], wished):
            index = chain.pieces[0].position(coat.key)
            stage = gate_stage(chain.tasks[index].product, wished)
            reached = (
                None if stage is None else self._reached(chain, ground, starts, index, stage)
            )
            if reached is None:
                return None
            gates.append(reached)
        return max(gates)

    def _reached(
        self, chain: Chain, ground: Ground, starts: list[int], index: int, stage: Stage
    ) -> int | None:
        task = chain.tasks[index]
        times = ChainTimes(self.means, chain, ground, Allow())
        edges, spread = self.means.edges, starts[index] + task.block
        if {times.place(later) for later in range(index, len(starts))} == {edges.rest}:
            clock = edges.not_before(task.product, edges.rest, stage)
            return None if clock is None else clock.at(spread)
        reached = edges.along(
            task.product, stage, Edge.LATE, times.itinerary(starts, index, spread)
        )
        return None if reached is None else int(reached) + 2

    def _score(
        self,
        chain: Chain,
        starts: list[int],
        joints: list[PlacedJoint],
        packed: tuple[Packed, ...],
    ) -> Score:
        new = joints[chain.first :]
        scuffed = sum(joint.joint is Joint.SCUFFED for joint in new)
        tested = sum(joint.trust is Trust.TEST_FIRST for joint in new)
        if chain.order is None or not packed:
            return (0.0, scuffed, tested, 0.0, starts[-1] + chain.tasks[-1].block)
        zone = self.studio.time_zone
        last = packed[-1].end
        leaves = chain.order.leaves(zone, _moment(last)).timestamp()
        ahead = (chain.order.due(zone).timestamp() - leaves) / 3600.0
        late = max(0.0, -ahead) * chain.order.weight
        spare = max(0.0, self.studio.settings.spare_hours - max(0.0, ahead))
        return (late, scuffed, tested, spare, last)

    # Booking

    def book(self, placement: Placement) -> None:
        """Take the hands, spots and air that a placement needs."""
        shop, chain = self.means.shop, placement.chain
        times = ChainTimes(self.means, chain, placement.ground, Allow())
        for index, start in enumerate(placement.starts):
            task = chain.tasks[index]
            if task.fixed is not None:
                continue
            end = start + task.block
            shop.take_hands(placement.people[index], start - task.lead, end)
            until = self._freed(placement, index, end)
            for spot in placement.ground.spots:
                shop.take_spot(spot, start, until)
            if task.coat.kind is not CoatKind.LEAF:
                shop.add_wet(start, times.covered(task, start))
            sand, sander = placement.joints[index].sand, placement.sanders[index]
            if sand is not None and sander is not None:
                shop.take_hands(sander, *sand)
                shop.add_sanding(*sand)
        for pack in placement.packed:
            shop.take_hands(pack.person, pack.start, pack.end)

    def _freed(self, placement: Placement, index: int, end: int) -> int:
        """When a coat sets its spot free."""
        task = placement.chain.tasks[index]
        if task.stays and index + 1 < len(placement.starts):
            return placement.starts[index + 1]
        handled = self.means.edges.handle(task.product, placement.ground.place).at(end)
        return self.means.end if handled is None else handled


def _moment(second: float) -> datetime:
    return datetime.fromtimestamp(second, UTC)


def hold_poured(studio: Studio, means: Means, piece: Piece) -> None:
    """Put what is already poured of a piece on its spots, and note what is still wet."""
    for pour in studio.pours_of(piece.key):
        product = studio.product(piece.coat(pour.coat).product)
        place = means.place_of_spot[pour.spot]
        start, end = int(pour.start.timestamp()), int(pour.end.timestamp())
        handled = means.edges.handle(product, place).at(end)
        stays = product.kind is ProductKind.SIZE and handle_stage(product) is None
        until = means.end if handled is None or stays else handled
        means.shop.take_spot(pour.spot, start, until)
        for stage in (Stage.COVER, Stage.TACK_FREE, Stage.RECOAT_OPENS):
            clock = means.edges.not_before(product, place, stage)
            if clock is not None:
                covered = clock.at(end)
                means.shop.add_wet(start, end if covered is None else max(covered, end))
                break
