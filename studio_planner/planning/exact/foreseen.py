"""Plans that foresee shared mixes: quick plans as if every coat paid only a part of its set-up.

Such a plan is less late, but true only if mixes are shared; the solver then looks for a plan
near it in which they are. The quick plan itself shares none, and from there it is a long way.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.planning.exact.lanes import lanes_of
from studio_planner.planning.exact.queues import in_turn, less_late
from studio_planner.planning.problem import build_chains

if TYPE_CHECKING:
    from collections.abc import Iterable
    from random import Random

    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.exact.part import Parts, Standing
    from studio_planner.planning.exact.queues import Placed
    from studio_planner.planning.problem import Chain, Task
    from studio_planner.planning.rounds import Rounds

_SHARES = (0.5, 0.6, 0.55, 0.5, 0.7)
"""The parts of its set-up that a coat is thought to pay, in the order in which they are tried,
and from which others are drawn later on: three to five coats of a full evening come out of one
mix."""

_PASSES = 4

_MOVES = 20
"""Orders of the chains that are tried for one plan."""

_DRAWS = 2
"""How often a plan is looked for before it is given up."""


class Foreseen:
    """Foreseen plans of one studio, each once."""

    def __init__(self, rounds: Rounds, parts: Parts, standing: Standing, first: int) -> None:
        """Plan with the rounds of a quick plan; so many are tried before all else.

        What has no place in the plan that stands has none in those either.
        """
        self._rounds = rounds
        self._parts = parts
        self._shares = list(_SHARES[:first])
        self._known: set[tuple[tuple[int, ...], ...]] = set()
        self._begun: dict[float, Placed] = {}
        self._ends: dict[float, Placed] = {}
        missing = {lane.key for lane in standing.lanes if lane.placed is None}
        chains = build_chains(rounds.studio, twins=True)[0]
        self._left_out = [chain for chain in chains if _keys(chain) & missing]
        self._chains = [chain for chain in chains if not _keys(chain) & missing]
        self._kinds = Counter(
            _kind(task) for chain in self._parts.chains for task in chain.tasks[chain.first :]
        )

    @property
    def opening(self) -> bool:
        """Whether there are still plans to be tried before all else."""
        return bool(self._shares)

    def less_late(self, standing: Standing, random: Random) -> Standing | None:
        """A plan that promises less lateness than one that stands, with the same lanes.

        It is no plan yet: blocks are shorter than a mix of their own allows.
        """
        for _ in range(_DRAWS):
            found = self._drawn(standing, random)
            if found is not None:
                return found
        return None

    def _drawn(self, standing: Standing, random: Random) -> Standing | None:
        """The rounds' own plan, or one that was found, with its chains in other orders."""
        share = self._shares.pop(0) if self._shares else random.choice(_SHARES)
        ends = [self._start(share), self._ends.get(share)]
        begun = random.choice([end for end in ends if end is not None])
        found = less_late(self._rounds, begun, _MOVES, random)
        if found.stuck or found.rank[1] >= standing.worth.late:
            return None
        self._ends[share] = found
        starts = tuple(one.starts for one in found.placements)
        if starts in self._known:
            return None
        self._known.add(starts)
        lanes = lanes_of(found.placements, self._left_out, self._parts.chains)
        return self._parts.standing(lanes) if _names(lanes) == _names(standing.lanes) else None

    def _start(self, share: float) -> Placed:
        """The plan of the rounds themselves, when coats pay that part of their set-up."""
        if share not in self._begun:
            chains = [self._thrifty(chain, share) for chain in self._chains]
            first = self._rounds.best(chains, (), _PASSES)
            queue = [one.chain for one in first.placed] + [one.chain for one in first.stuck]
            self._begun[share] = in_turn(self._rounds, queue)
        return self._begun[share]

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


def _keys(chain: Chain) -> set[str]:
    return {piece.key for piece in chain.pieces}


def _names(lanes: Iterable[Lane]) -> list[tuple[bool, list[str]]]:
    return [(lane.placed is None, [piece.key for piece in lane.chain.pieces]) for lane in lanes]
