"""Orders in which chains are placed one after another, moved about until less comes late.

A round places each chain at its best place among those before it, in some milliseconds for a
studio of a hundred coats; so many orders can be tried in the time of one search by the solver.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence
    from random import Random

    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.rounds import Rounds

_ORDERS, _CHAINS = 0.4, 0.7
"""How often a late order goes forward as a whole, and up to where one of its chains does;
otherwise any chain goes anywhere."""


@dataclass(frozen=True, slots=True)
class Placed:
    """Chains as they were placed in turn; `late` are the weighted hours of late orders."""

    queue: tuple[Chain, ...]
    placements: tuple[Placement, ...]
    stuck: int
    late: dict[str, float]

    @property
    def rank(self) -> tuple[int, float]:
        """What is better comes first."""
        return self.stuck, round(sum(self.late.values()), 6)


def in_turn(rounds: Rounds, queue: Sequence[Chain]) -> Placed:
    """Place chains in their order."""
    placed, stuck = rounds.placer().place_all(queue)
    return Placed(tuple(queue), tuple(placed), len(stuck), _hours_late(placed))


def less_late(rounds: Rounds, begun: Placed, moves: int, random: Random) -> Placed:
    """Make so many moves from one order and take each that is no worse; where that ends."""
    now = begun
    for _ in range(moves):
        if not now.late and not now.stuck:
            break
        found = in_turn(rounds, _moved(now, random))
        now = found if found.rank <= now.rank else now
    return now


def _moved(now: Placed, random: Random) -> list[Chain]:
    drawn = random.random()
    if drawn < _CHAINS and now.late:
        key = random.choice(sorted(now.late))
        late = [at for at, chain in enumerate(now.queue) if _key(chain) == key]
        going = late if drawn < _ORDERS else [random.choice(late)]
        return _put(now.queue, going, random.randrange(max(1, going[-1] - len(going) + 1)))
    at = random.randrange(len(now.queue))
    return _put(now.queue, [at], random.randrange(len(now.queue)))


def _put(queue: Sequence[Chain], going: Sequence[int], to: int) -> list[Chain]:
    """The queue with some chains taken out and put in again at one place."""
    left = [chain for at, chain in enumerate(queue) if at not in going]
    return [*left[:to], *(queue[at] for at in going), *left[to:]]


def _key(chain: Chain) -> str | None:
    return None if chain.order is None else chain.order.key


def _hours_late(placed: Sequence[Placement]) -> dict[str, float]:
    late: dict[str, float] = {}
    for one in placed:
        key = _key(one.chain)
        if key is not None and one.score[0] > 0:
            late[key] = max(late.get(key, 0.0), one.score[0])
    return late
