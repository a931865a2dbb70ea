"""Plans that foresee shared mixes: quick plans as if every coat paid only a part of its set-up.

Such a plan is less late, but true only if mixes are shared; the solver then looks for a plan
near it in which they are. The quick plan itself shares none, and from there it is a long way.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.planning.exact.lanes import lanes_of
from studio_planner.planning.problem import build_chains

if TYPE_CHECKING:
    from collections.abc import Sequence
    from random import Random

    from studio_planner.planning.exact.part import Parts, Standing
    from studio_planner.planning.problem import Chain, Task
    from studio_planner.planning.rounds import Rounds

_SHARES = (0.5, 0.75, 0.6, 0.85, 0.4)
"""The parts of its set-up that a coat is thought to pay, in the order in which they are tried:
three to five coats of a full evening come out of one mix."""

_PASSES = 4

_DRAWN, _DRAWS = (0.45, 0.85), 2
"""Where parts of set-ups are drawn from later on, and how often before it is given up."""


class Foreseen:
    """Foreseen plans of one studio, each once."""

    def __init__(self, rounds: Rounds, parts: Parts) -> None:
        """Plan with the rounds of a quick plan."""
        self._rounds = rounds
        self._parts = parts
        self._shares = list(_SHARES)
        self._known: set[tuple[int, float]] = set()
        self._chains = build_chains(rounds.studio, twins=True)[0]
        self._kinds = Counter(
            _kind(task) for chain in self._parts.chains for task in chain.tasks[chain.first :]
        )

    @property
    def opening(self) -> bool:
        """Whether there are still plans to be tried before all else."""
        return bool(self._shares)

    def less_late(self, standing: Standing, random: Random) -> Standing | None:
        """A plan that promises less lateness than one that stands, with the same lanes.

        It is no plan yet: blocks are shorter than a mix of their own allows. After the first
        ones some late orders, drawn at random, go before all others.
        """
        while self._shares:
            found = self._made(self._shares.pop(0), (), standing)
            if found is not None:
                return found
        late = sorted(_late_orders(standing))
        for _ in range(_DRAWS):
            first = random.sample(late, min(len(late), random.randrange(3)))
            found = self._made(random.uniform(*_DRAWN), first, standing)
            if found is not None:
                return found
        return None

    def _made(self, share: float, first: Sequence[str], standing: Standing) -> Standing | None:
        chains = [self._thrifty(chain, share) for chain in self._chains]
        found = self._rounds.best(chains, first, _PASSES)
        known = found.worth[:2] in self._known
        if known or found.stuck or found.worth[:2] >= standing.worth[:2]:
            return None
        self._known.add(found.worth[:2])
        made = self._parts.standing(lanes_of(found.placed, [], self._parts.chains))
        return made if _names(made) == _names(standing) else None

    def _thrifty(self, chain: Chain, share: float) -> Chain:
        tasks = tuple(self._shorter(task, share) for task in chain.tasks)
        return replace(chain, tasks=tasks)

    def _shorter(self, task: Task, share: float) -> Task:
        alone = self._kinds[_kind(task)] < _FEWEST
        if task.fixed is not None or task.lead or alone:
            return task
        saved = round((1.0 - share) * task.coat.setup_minutes) * 60
        return replace(task, block=task.block - saved)


_FEWEST = 2
"""Coats of a kind from which on a mix can be shared."""


def _kind(task: Task) -> tuple[str, tuple[str, ...]]:
    return task.product.key, task.coat.colour_names


def _late_orders(standing: Standing) -> set[str]:
    return {
        one.chain.order.key
        for one in standing.placed
        if one.chain.order is not None and one.score[0] > 0
    }


def _names(standing: Standing) -> list[list[str]]:
    return [[piece.key for piece in lane.chain.pieces] for lane in standing.lanes]
