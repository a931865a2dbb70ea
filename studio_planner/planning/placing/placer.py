"""Finds the best place in the week for one chain, given what is already planned."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.planning.placing.chain_search import ChainSearch, Dead, Look
from studio_planner.planning.placing.chain_times import Allow, Ground, standing
from studio_planner.planning.placing.placements import Finisher, Laid, Placement

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.placing.chain_times import Means, PlacedJoint
    from studio_planner.planning.placing.placements import Score
    from studio_planner.planning.problem import Chain

_FEW, _MANY = 8, 60
_SPOTS_TRIED = 2


@dataclass(frozen=True, slots=True)
class Stuck:
    """A chain that found no place: the coat, and the search's last word on the best ground."""

    chain: Chain
    ground: Ground | None
    dead: Dead | None
    cured: bool = True

    @property
    def missed(self) -> bool:
        """Whether the window of a poured coat closes too soon, however long one looks ahead."""
        if self.dead is None or self.dead.each_alone:
            return False
        task = self.chain.tasks[self.dead.index]
        poured = task.below is not None and task.below < self.chain.first
        return poured and task.sheet_closes is not None and not task.may_scuff


class Placer:
    """Places chains one after another into a workshop."""

    def __init__(self, studio: Studio, means: Means) -> None:
        """Work for a studio with the means of one plan."""
        self.studio = studio
        self.means = means
        self.finisher = Finisher(studio, means)

    def place(self, chain: Chain) -> Placement | Stuck:
        """The best placement of a chain, by the plan's goals in their order."""
        best, stuck = self._best_of(chain, self.grounds(chain), Allow())
        if best is None or best.score[0] > 0:
            best = self._with_more_joints(chain, best)
        return best or stuck or Stuck(chain, None, None)

    def _with_more_joints(self, chain: Chain, safe: Placement | None) -> Placement | None:
        """The placement with safe joints alone, or one that other joints make less late."""
        best = safe
        grounds = self.grounds(chain) if safe is None else [[safe.laid.grounds[-1]]]
        for allow in reversed(list(self.more_joints(chain))):
            found, _ = self._best_of(chain, grounds, allow)
            if found is None or (safe is not None and found.score[0] >= safe.score[0]):
                # What all joints together don't gain, the gentler ones alone don't either.
                break
            if best is None or found.score < best.score:
                best = found
            if not found.score[1]:
                # Nothing is sanded though it may be: the gentler ones come to the same.
                break
        return best

    def place_all(self, chains: Iterable[Chain]) -> tuple[list[Placement], list[Stuck]]:
        """Place and book chains one after another; what found a place, and what did not."""
        placed: list[Placement] = []
        stuck: list[Stuck] = []
        for chain in chains:
            found = self.place(chain)
            if isinstance(found, Placement):
                self.finisher.book(found)
                placed.append(found)
            else:
                stuck.append(found)
        return placed, stuck

    def _best_of(
        self, chain: Chain, grounds: list[list[Ground]], allow: Allow
    ) -> tuple[Placement | None, Stuck | None]:
        found = [self._best_in(chain, places, allow) for places in grounds]
        placed = [one for one in found if isinstance(one, Placement)]
        stuck = [one for one in found if isinstance(one, Stuck)]
        best = min(placed, key=lambda one: one.score, default=None)
        return best, stuck[0] if stuck else None

    def _best_in(self, chain: Chain, grounds: list[Ground], allow: Allow) -> Placement | Stuck:
        """The best of one place's spots."""
        if chain.first == len(chain.tasks):
            # Nothing is left but to pack it.
            return self.try_on(chain, grounds[0], allow)
        best: Placement | Stuck | None = None
        if chain.first and grounds[0].spots == (self._own_spot(chain),):
            # A begun piece may go on there before it can be handled, and nowhere else.
            best = self.try_on(chain, grounds[0], allow)
            grounds = grounds[1:]
        if len(grounds) > 1:
            return self._best_of_many(chain, grounds, allow, best)
        return self._best_on(chain, grounds, allow, best)

    def _best_of_many(
        self, chain: Chain, grounds: list[Ground], allow: Allow, best: Placement | Stuck | None
    ) -> Placement | Stuck:
        """The best of spots that are alike: where it would be if it needed none, if it can."""
        alone = self.try_on(chain, Ground(grounds[0].place, ()), allow)
        if isinstance(alone, Stuck):
            return best or Stuck(chain, grounds[0], alone.dead, cured=alone.cured)
        if chain.first:
            return self._best_on(chain, grounds, allow, best, alone.score)
        span = self._span(chain, alone)
        free = self._free_all_along(grounds, alone.starts[0], alone.starts[0] + span)
        if free is not None:
            return alone.on(free)
        return self._best_on(chain, grounds[:_SPOTS_TRIED], allow, best, alone.score, span // 2)

    def _free_all_along(
        self, grounds: Iterable[Ground], begin: int, until: int
    ) -> Ground | None:
        """The first ground whose spots are free from `begin` to `until`."""
        spots = self.means.shop.spots
        for ground in grounds:
            if all(spots[spot].holds(begin, until) for spot in ground.spots):
                return ground
        return None

    def _best_on(  # noqa: PLR0913, PLR0917 - what is known so far, and how closely is looked
        self,
        chain: Chain,
        grounds: Iterable[Ground],
        allow: Allow,
        best: Placement | Stuck | None,
        ideal: Score | None = None,
        gap: int = 0,
    ) -> Placement | Stuck:
        """The best of what is found already and of grounds; no more when one is ideal."""
        for ground in grounds:
            if ideal is not None and isinstance(best, Placement) and best.score <= ideal:
                break
            found = self.try_on(chain, ground, allow, gap)
            better = isinstance(found, Placement) and (
                not isinstance(best, Placement) or found.score < best.score
            )
            best = found if best is None or better else best
        return best or Stuck(chain, None, None)

    def _span(self, chain: Chain, placement: Placement) -> int:
        """Seconds from a chain's first new pour until its last can be handled."""
        last = chain.tasks[-1]
        clock = self.means.edges.handle(last.product, placement.laid.grounds[-1].place)
        end = clock.at(placement.starts[-1] + last.block)
        return (self.means.end if end is None else end) - placement.starts[chain.first]

    def more_joints(self, chain: Chain) -> Iterator[Allow]:
        """Joints besides the safe ones that a chain may use, the gentler ones first."""
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
        seen_all = False
        for look in (Look(_FEW, gap), Look(3 * _FEW, gap), Look(_MANY)):
            if seen_all and look.gap == gap:
                # Nothing was left out at the last look: this one would find no more.
                continue
            search = ChainSearch(self.means, chain, ground, allow, look)
            solved = search.solve()
            if not isinstance(solved, Dead):
                placement = self.finisher.finished(_laid(chain, ground, *solved))
                return placement or Stuck(chain, ground, None, cured=False)
            seen_all = not search.truncated
        return Stuck(chain, ground, solved if isinstance(solved, Dead) else None)

    def grounds(self, chain: Chain) -> list[list[Ground]]:
        """The spots to try, place by place: wholly free ones first, then the soonest free."""
        count = len(chain.pieces)
        grounds: list[list[Ground]] = []
        for place in self.studio.places:
            fitting = [
                spot for spot in place.spots if all(piece.fits(spot) for piece in chain.pieces)
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
        return None if fixed is None else self.means.legs(fixed)[-1][0]

    def _free_from(self, spot: str) -> int:
        """When a spot is free for good; `now` for one that nothing is planned on."""
        last = self.means.shop.spots[spot].last_start
        return self.means.end if last is None else max(last, self.means.now)


def _laid(
    chain: Chain, ground: Ground, starts: Sequence[int], joints: Sequence[PlacedJoint]
) -> Laid:
    return Laid(chain, standing(chain, ground), tuple(starts), tuple(joints))
