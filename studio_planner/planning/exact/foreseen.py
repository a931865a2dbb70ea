"""Plans that foresee shared mixes: quick plans as if every coat paid only a part of its set-up.

Such a plan is less late, but true only if mixes are shared; the solver then looks for a plan
near it in which they are. The quick plan itself shares none, and from there it is a long way.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.planning.exact.lanes import Lane, lanes_of
from studio_planner.planning.exact.letting_go import LettingGo
from studio_planner.planning.exact.rough_beside import RoughBeside
from studio_planner.planning.exact.rough_plan import RoughPlans
from studio_planner.planning.exact.ways import Blocks
from studio_planner.planning.exact.working_days import working_days
from studio_planner.planning.keeping.kept_plan import KeptPlan
from studio_planner.planning.problem import build_chains

if TYPE_CHECKING:
    from collections.abc import Iterable
    from random import Random

    from studio_planner.craft.plans import Plan
    from studio_planner.planning.exact.best_so_far import BestSoFar
    from studio_planner.planning.exact.part import Parts, Standing
    from studio_planner.planning.exact.working_days import WorkingDays
    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.placing.placer import Placer
    from studio_planner.planning.problem import Chain, Task
    from studio_planner.planning.rounds import Pass, Rounds

_SHARES = (0.5, 0.6, 0.55, 0.5, 0.7)
"""The parts of its set-up that a coat is thought to pay, in the order in which they are tried,
and from which others are drawn later on: three to five coats of a full evening come out of one
mix."""

_MOST_COATS = 400
"""New coats up to which plans are foreseen anew: one near is not found in time for more."""

_PASSES = 4

_TRIES = 50
"""How often some chains are let go for one plan."""

_DRAWS = 2
"""How often a plan is looked for before it is given up."""

_TRIES_BESIDE, _MOST_ELSEWHERE = 80, 8
"""How often chains of the plan that stands are let go before that is given up, and how many
chains may be elsewhere before it is begun from that plan again."""

_MOST_BESIDE = 5
"""Chains that are let go there beside what is late. Where a plan of sixty pieces nearly stood
still, four times as much was gained in the same time as with up to ten beside one chain; whole
searches came out alike, those of 150 pieces a little better."""

_FEWEST_COATS = 60
"""New coats from which on there are rough plans: fewer are soon looked at as a whole."""

_MOST_BOTH = 130
"""New coats up to which there are foreseen plans of both kinds."""

_FILLED = (0.88, 0.85, 0.8)
"""The shares of all hands that rough plans give, in the order in which they are tried."""

_PAID = 0.6
"""The part of its set-up that a coat is thought to pay in a rough plan."""

_LEAST_GAIN = 0.3
"""Hours less that are promised beside a plan at the least: parts find what is less."""


@dataclass(frozen=True, slots=True, eq=False)
class Wish:
    """A foreseen plan that a plan is looked for near to."""

    plan: Standing
    beside: Standing | None = None
    """The plan that stood, where only some lanes differ from it."""
    loosely: bool = False
    """Whether anything near it will do that is better than what stands."""
    days: WorkingDays | None = None
    """Where given, only the days of its coats are foreseen, not their times: of all lanes, or
    `beside` a plan of those that differ from it."""


class Foreseen:
    """Foreseen plans of one studio, each once."""

    def __init__(
        self, rounds: Rounds, parts: Parts, standing: Standing, first: int, before: Plan | None
    ) -> None:
        """Plan with the rounds of a quick plan; the `first` so many are tried before all else.

        What has no place in the plan that stands has none in those either. What is foreseen
        keeps to the plan `before` where it can.
        """
        self._rounds = rounds
        self._parts = parts
        coats = standing.new_coats
        self.rough = before is None and _FEWEST_COATS <= coats <= _MOST_COATS
        """Whether there are rough plans."""
        self.anew = coats <= (_MOST_BOTH if self.rough else _MOST_COATS)
        """Whether plans are foreseen as if coats paid only a part of their set-up: of a large
        studio not beside rough plans."""
        self._shares = list(_SHARES[: first if self.anew else 0])
        self._kept = None if before is None else KeptPlan(rounds.studio, before)
        self._known: set[tuple[tuple[int, ...], ...]] = set()
        self._plans: dict[float, list[Pass]] = {}
        missing = {lane.key for lane in standing.lanes if lane.placed is None}
        chains = build_chains(rounds.studio, twins=True)[0]
        if self._kept is not None:
            chains = list(self._kept.chains(chains, parts.chains))
        self._left_out = [chain for chain in chains if _keys(chain) & missing]
        self._chains = [chain for chain in chains if not _keys(chain) & missing]
        self._kinds = Counter(
            task.kind for chain in self._parts.chains for task in chain.tasks[chain.first :]
        )
        self._filled = list(_FILLED if self.rough else ())
        self._rough: RoughPlans | None = None
        self._rough_beside: RoughBeside | None = None

    @property
    def opening(self) -> bool:
        """Whether there are still plans to be tried before all else."""
        return bool(self._shares)

    def less_late(self, best: BestSoFar, random: Random) -> Wish | None:
        """A plan that promises less lateness than the best one, with the same lanes.

        It is no plan yet: blocks are shorter than a mix of their own allows. None, soon, when
        others find a plan meanwhile that cannot be less late.
        """
        for _ in range(_DRAWS):
            found = self._drawn(best, random)
            if found is not None:
                return Wish(found)
        return None

    def beside(self, best: BestSoFar, random: Random) -> Wish | None:
        """The plan that stands with some chains let go until it promises less lateness.

        All others keep the blocks that they have there. None, as above.
        """
        standing, share = best.standing, random.choice(_SHARES)
        chains = {lane.key: lane.chain for lane in standing.lanes}
        stood = {one.chain.key: one.starts for one in standing.placed}
        letting_go = LettingGo(
            self._rounds,
            self._kept,
            random,
            lambda chain: self._thrifty(chains[chain.key], share),
            _MOST_BESIDE,
        )
        first = plan = self._rounds.weighed(standing.placed, ())
        for _ in range(_TRIES_BESIDE):
            plan = letting_go.less_late(plan, 1, lambda: best.may_be_less_late)
            if plan.worth.late < standing.worth.late - _LEAST_GAIN:
                placed = {one.chain.key: one for one in plan.placed}
                lanes = [Lane(lane.chain, placed.get(lane.key)) for lane in standing.lanes]
                return Wish(self._parts.standing(lanes), standing)
            elsewhere = sum(one.starts != stood[one.chain.key] for one in plan.placed)
            plan = plan if elsewhere <= _MOST_ELSEWHERE else first
        return None

    def beside_by_days(self, best: BestSoFar, random: Random) -> Wish | None:
        """The plan that stands with a few lanes on other days, where that promises less.

        None when it is not found, soon.
        """
        standing = best.standing
        if not best.may_be_less_late:
            return None
        if self._rough_beside is None:
            ends = (one.score[4] for one in standing.placed)
            placer, days = self._in_days()
            until = round(max(ends, default=0))
            self._rough_beside = RoughBeside(placer, days, until, self._blocks())
        lanes = self._rough_beside.lanes(standing, random)
        if lanes is None:
            return None
        return Wish(self._parts.standing(lanes), standing, days=self._rough_beside.days)

    @property
    def by_days_first(self) -> bool:
        """Whether there are still rough plans to be tried before all else."""
        return bool(self._filled)

    def leave_rough_plans(self) -> None:
        """Try no more of them: what is less late is looked for beside the plan that stands."""
        self._filled.clear()

    def by_days(self, best: BestSoFar, random: Random) -> Wish | None:
        """A rough plan that promises less lateness than the best one; None as above."""
        standing = best.standing
        if not self._filled:
            # Another thread has left them since they were seen.
            return None
        if self._rough is None:
            placed = self._rounds.best(self._chains, (), 1).placed
            self._rough = RoughPlans(*self._in_days(), placed, self._blocks())
        found = self._rough.placed(self._filled.pop(0), random.randrange(1 << 30))
        if found is None:
            return None
        plan = self._standing(standing, found)
        if plan is None or plan.worth.late >= standing.worth.late:
            return None
        return Wish(plan, days=self._rough.days)

    def _in_days(self) -> tuple[Placer, WorkingDays]:
        placer = self._rounds.placer()
        return placer, working_days(self._rounds.studio, placer.means)

    def _blocks(self) -> Blocks:
        return Blocks(self._lasting, lambda task: self._paying(task, _PAID))

    def _lasting(self, task: Task) -> int:
        """The block of a coat as if another one like it were poured from its mix."""
        others = self._paying(task, 0.0)
        return task.block + others if others < task.block else task.block

    def _drawn(self, best: BestSoFar, random: Random) -> Standing | None:
        """A plan in which some chains were let go; the first time the best of all there are."""
        share = self._shares.pop(0) if self._shares else random.choice(_SHARES)
        first = share not in self._plans
        if first:
            self._plans[share] = self._first_plans(share)
        plans = self._plans[share]
        letting_go = LettingGo(self._rounds, self._kept, random)
        tried = range(len(plans)) if first else [random.randrange(len(plans))]
        for at in tried:
            plans[at] = letting_go.less_late(plans[at], _TRIES, lambda: best.may_be_less_late)
        found = min((plans[at] for at in tried), key=lambda one: one.worth)
        standing = best.standing
        if found.stuck or found.worth.late >= standing.worth.late:
            return None
        starts = tuple(one.starts for one in found.placed)
        if starts in self._known:
            return None
        self._known.add(starts)
        return self._standing(standing, found.placed)

    def _standing(self, standing: Standing, placed: Iterable[Placement]) -> Standing | None:
        """Placements as a plan of the lanes that stand; None when they have other ones."""
        lanes = lanes_of(placed, self._left_out, self._parts.chains)
        if _names(lanes) != _names(standing.lanes):
            return None
        # What is foreseen is shorter than can be: the chains to be placed are those that stand.
        pairs = zip(standing.lanes, lanes, strict=True)
        return self._parts.standing([Lane(own.chain, one.placed) for own, one in pairs])

    def _first_plans(self, share: float) -> list[Pass]:
        """The rounds' own plans when coats pay that part: one made anew, and the kept one."""
        chains = [self._thrifty(chain, share) for chain in self._chains]
        made = self._rounds.best(chains, (), _PASSES)
        if self._kept is None:
            return [made]
        return [made, self._rounds.passed(self._rounds.keeping(chains, self._kept), self._kept)]

    def _thrifty(self, chain: Chain, share: float) -> Chain:
        tasks = (replace(task, block=self._paying(task, share)) for task in chain.tasks)
        return replace(chain, tasks=tuple(tasks))

    def _paying(self, task: Task, share: float) -> int:
        """The block of a coat that pays a part of its set-up, where a mix can be shared."""
        alone = self._kinds[task.kind] < _FEWEST
        if task.fixed is not None or task.lead or alone:
            return task.block
        return task.block - round((1.0 - share) * task.coat.setup_minutes) * 60


_FEWEST = 2
"""Coats of a kind from which on a mix can be shared."""


def _keys(chain: Chain) -> set[str]:
    return {piece.key for piece in chain.pieces}


def _names(lanes: Iterable[Lane]) -> list[tuple[bool, list[str]]]:
    return [(lane.placed is None, [piece.key for piece in lane.chain.pieces]) for lane in lanes]
