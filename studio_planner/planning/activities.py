"""The bare problem under every plan: activities sharing capacities, lags between starts.

The studio's own problem is this one with clocks in place of lags. On its own it is the problem
with generalised precedence that published test sets pose (K. Neumann, C. Schwindt and
J. Zimmermann, Project Scheduling with Time Windows and Scarce Resources, Springer, 2003), so
that the solver can be measured where others have been. Times are whole numbers in any unit.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations
from math import isfinite
from typing import TYPE_CHECKING

from studio_planner.planning.gaps import follow_through, unknown_gaps, widen
from studio_planner.planning.solver import Model, Search, Status

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from studio_planner.planning.gaps import Gaps
    from studio_planner.planning.solver import Answer, Span, Unknown


@dataclass(frozen=True, slots=True)
class Activity:
    """Something that lasts `length` and meanwhile takes up `needs[k]` of capacity k."""

    length: int
    needs: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class Lag:
    """`later` starts at least `least` after the start of `earlier`.

    A negative `least` is a maximum lag seen from the other end: `earlier` starts no more than
    `-least` after `later`.
    """

    earlier: int
    later: int
    least: int


@dataclass(frozen=True, slots=True)
class Problem:
    """Activities, what there is of each capacity at any time, and lags (by position).

    Raises
    ------
    ValueError
        When a length, a need or a capacity is negative, an activity has not one need for each
        capacity, or a lag names no activity.
    """

    activities: tuple[Activity, ...]
    capacities: tuple[int, ...] = ()
    lags: tuple[Lag, ...] = ()

    def __post_init__(self) -> None:
        """Refuse what makes no sense."""
        if any(capacity < 0 for capacity in self.capacities):
            raise ValueError("A capacity is below 0; give what there is of it, 0 or more.")
        for number, activity in enumerate(self.activities):
            if activity.length < 0 or any(need < 0 for need in activity.needs):
                raise ValueError(
                    f"Activity {number} has a length or a need below 0; give 0 or more."
                )
            if len(activity.needs) != len(self.capacities):
                raise ValueError(
                    f"Activity {number} has {len(activity.needs)} needs for "
                    f"{len(self.capacities)} capacities; give one for each."
                )
        count = len(self.activities)
        for lag in self.lags:
            if not (0 <= lag.earlier < count and 0 <= lag.later < count):
                raise ValueError(
                    f"The lag from {lag.earlier} to {lag.later} names an activity that is not "
                    f"there; there are {count}, counted from 0."
                )


@dataclass(frozen=True, slots=True)
class Shortest:
    """What was found: a start for each activity and the time at which all have ended.

    `starts` is empty and `whole` None unless something was found; no whole time is below
    `bound` (None where nothing is possible at all).
    """

    status: Status
    starts: tuple[int, ...] = ()
    whole: int | None = None
    bound: int | None = None


def shortest(
    problem: Problem,
    search: Search,
    better: Callable[[int], bool] | None = None,
) -> Shortest:
    """Find the starts from 0 on at which everything ends as soon as can be.

    Parameters
    ----------
    problem
        What is to be done.
    search
        How long and how it is looked for.
    better
        Gets the whole time of each better answer; True ends the search.
    """
    if not problem.activities:
        return Shortest(Status.PROVED, (), 0, 0)
    gaps = known_gaps(problem)
    if gaps is None:
        return Shortest(Status.IMPOSSIBLE)
    posed = _Posed(problem, gaps)
    answer = posed.model.solve(search, None if better is None else posed.telling(better))
    return posed.read(answer)


def known_gaps(problem: Problem) -> Gaps | None:
    """The gaps between all starts that follow from the lags and from pairs that cannot overlap.

    None when that alone shows that nothing is possible. The last row and column belong to the
    beginning (0), which everything follows.
    """
    if any(_too_much(problem, (activity,)) for activity in problem.activities):
        return None
    begin = len(problem.activities)
    gaps = unknown_gaps(begin + 1)
    gaps[begin] = [0] * (begin + 1)
    for lag in problem.lags:
        known = gaps[lag.earlier][lag.later]
        gaps[lag.earlier][lag.later] = lag.least if known is None else max(known, lag.least)
    follow_through(gaps)
    if any(row[node] != 0 for node, row in enumerate(gaps)):
        return None
    return gaps if _ordered(problem, gaps) else None


def _too_much(problem: Problem, together: Sequence[Activity]) -> bool:
    """Tell whether activities need more than there is when they run at the same time."""
    return all(activity.length for activity in together) and any(
        sum(activity.needs[k] for activity in together) > most
        for k, most in enumerate(problem.capacities)
    )


def _ordered(problem: Problem, gaps: Gaps) -> bool:
    """Put pairs that cannot overlap in the order that the gaps leave; False: none is left."""
    open_pairs = pairs_apart(problem)
    changed = True
    while changed:
        changed = False
        for one, other in open_pairs:
            forward = _may_follow(problem, gaps, one, other)
            backward = _may_follow(problem, gaps, other, one)
            if not forward and not backward:
                return False
            if forward and not backward:
                changed |= widen(gaps, one, other, problem.activities[one].length)
            if backward and not forward:
                changed |= widen(gaps, other, one, problem.activities[other].length)
    return True


def pairs_apart(problem: Problem) -> list[tuple[int, int]]:
    """The pairs of activities that cannot run at the same time."""
    numbered = enumerate(problem.activities)
    return [
        (i, j)
        for (i, one), (j, other) in combinations(numbered, 2)
        if _too_much(problem, (one, other))
    ]


def _may_follow(problem: Problem, gaps: Gaps, one: int, other: int) -> bool:
    """Tell whether `other` may start when `one` has ended."""
    back = gaps[other][one]
    return back is None or back + problem.activities[one].length <= 0


class _Posed:
    """A problem as the solver gets it."""

    def __init__(self, problem: Problem, gaps: Gaps) -> None:
        self.model = Model()
        self._activities = problem.activities
        begin = len(problem.activities)
        # All can be done one after the other, each with the longest lag after it, if at all.
        horizon = sum(
            max([activity.length, *(lag.least for lag in problem.lags if lag.earlier == i)])
            for i, activity in enumerate(problem.activities)
        )
        tails = [_tail(problem, row) for row in gaps[:begin]]
        self._least = max(_tail(problem, gaps[begin]), _work_bound(problem))
        horizon = max(horizon, self._least)
        self.starts: list[Unknown] = [
            self.model.between(gaps[begin][i] or 0, horizon - tails[i]) for i in range(begin)
        ]
        self.whole = self.model.between(self._least, horizon)
        for i, start in enumerate(self.starts):
            self.model.at_least(self.whole, start + tails[i])
        self._spans = [
            self.model.span(start, activity.length, start + activity.length)
            for start, activity in zip(self.starts, problem.activities, strict=True)
        ]
        self._keep_gaps(gaps)
        self._keep_capacities(problem)
        self._keep_apart(problem)
        self.model.aim(self.whole)

    def _keep_gaps(self, gaps: Gaps) -> None:
        for i, start in enumerate(self.starts):
            for j, other in enumerate(self.starts):
                gap = gaps[i][j]
                if i != j and gap is not None:
                    self.model.at_least(other, start + gap)

    def _keep_capacities(self, problem: Problem) -> None:
        for k, most in enumerate(problem.capacities):
            users = [i for i, activity in enumerate(problem.activities) if activity.needs[k]]
            if sum(problem.activities[i].needs[k] for i in users) > most:
                spans = [self._spans[i] for i in users]
                needs = [problem.activities[i].needs[k] for i in users]
                self.model.capacity(spans, needs, most)

    def _keep_apart(self, problem: Problem) -> None:
        for group in groups_apart(problem):
            spans: list[Span] = [self._spans[i] for i in group]
            self.model.one_at_a_time(spans)

    def telling(self, better: Callable[[int], bool]) -> Callable[[Answer], bool]:
        """Pass on the whole time of an answer."""
        return lambda answer: better(answer.of(self.whole))

    def read(self, answer: Answer) -> Shortest:
        """What the solver's answer means."""
        if answer.status is Status.IMPOSSIBLE:
            return Shortest(answer.status)
        # A search that ended at once has no bound of its own yet.
        known = answer.bound is not None and isfinite(answer.bound)
        bound = max(self._least, round(answer.bound or 0)) if known else self._least
        if not answer.found:
            return Shortest(answer.status, bound=bound)
        starts = tuple(answer.of(start) for start in self.starts)
        ends = [s + a.length for s, a in zip(starts, self._activities, strict=True)]
        return Shortest(answer.status, starts, max(ends), bound)


def _tail(problem: Problem, row: Sequence[int | None]) -> int:
    """How long after a start the last activity known to depend on it has ended at least."""
    lengths = [activity.length for activity in problem.activities]
    pairs = zip(row, lengths, strict=False)
    return max(gap + length for gap, length in pairs if gap is not None)


def _work_bound(problem: Problem) -> int:
    """No capacity can give more than it has: the whole time that the work itself takes."""
    return max(
        (
            -(-sum(a.length * a.needs[k] for a in problem.activities) // most)
            for k, most in enumerate(problem.capacities)
            if most
        ),
        default=0,
    )


def groups_apart(problem: Problem) -> list[tuple[int, ...]]:
    """Groups of activities no two of which can overlap; each such pair is in one of them."""
    neighbours: dict[int, set[int]] = {}
    for one, other in pairs_apart(problem):
        neighbours.setdefault(one, set()).add(other)
        neighbours.setdefault(other, set()).add(one)
    left = {frozenset(pair) for pair in pairs_apart(problem)}
    groups: list[tuple[int, ...]] = []
    while left:
        group = sorted(min(left, key=sorted))
        common = set.intersection(*(neighbours[i] for i in group))
        while common:
            chosen = max(sorted(common), key=lambda i: len(neighbours[i] & common))
            group.append(chosen)
            common &= neighbours[chosen]
        left -= {frozenset(pair) for pair in combinations(group, 2)}
        groups.append(tuple(sorted(group)))
    return groups
