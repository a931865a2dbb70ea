"""The constraint solver behind the best plan: the one module that knows OR-Tools CP-SAT.

It is loaded with the first `Model` or by `load`, and only the solving process does either. All
quantities are whole numbers; the unit of time is whatever the caller counts in.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence

    from ortools.sat.python import cp_model, cp_model_helper

    Quantity = cp_model.LinearExpr | int
    """A sum of unknowns and whole numbers."""
    Unknown = cp_model.IntVar
    """A whole number to be found."""
    Flag = cp_model_helper.Literal
    """A yes or no to be found."""
    Span = cp_model.IntervalVar
    """A start, a length and an end."""


def load() -> None:
    """Load the solver before the first model asks for it: that takes a quarter of a second."""
    from ortools.sat.python import cp_model  # noqa: F401


class Status(StrEnum):
    """How a search ended."""

    PROVED = "proved"
    """The answer is the best there is."""
    FOUND = "found"
    """There is an answer; a better one may exist."""
    IMPOSSIBLE = "impossible"
    """There is no answer."""
    UNKNOWN = "unknown"
    """Neither an answer nor a proof that there is none was found in time."""


@dataclass(frozen=True, slots=True)
class Search:
    """How a search is made: seconds, work, workers, and the seed that makes it repeatable.

    `work` bounds the solver's own count of steps, which does not depend on the machine's load;
    with one worker the same seed and work give the same answer.
    """

    seconds: float
    work: float | None = None
    workers: int = 1
    seed: int = 0
    light: bool = False
    """Whether the model is small and one of many: less is thought about it beforehand."""
    near: float | None = None
    """An answer that is no more than this above the bound is good enough."""
    apart: bool = False
    """Whether each step looks harder at what cannot overlap.

    Steps are slower then: easy problems take twice as long. Of eight tight ones of 30 to 50
    activities six instead of five were proved by the same work (measured on two cores).
    """
    sums: int | None = None
    """How much of the model is also kept as sums for a linear bound: 0 nothing, 1 what is
    cheap, 2 most; None leaves it to the solver."""


class Answer:
    """What a search found: its status, the goal's value and best bound, and the unknowns."""

    def __init__(
        self,
        status: Status,
        value: float | None,
        bound: float | None,
        read: Callable[[Quantity], int],
    ) -> None:
        """Keep what the solver said."""
        self.status = status
        self.value = value
        self.bound = bound
        self._read = read

    @property
    def found(self) -> bool:
        """Whether there are values to be read."""
        return self.status in {Status.PROVED, Status.FOUND}

    def of(self, quantity: Quantity) -> int:
        """The value of a quantity."""
        return self._read(quantity)


class Model:
    """Unknowns, what must hold between them, and one goal that is made small."""

    def __init__(self) -> None:
        """Load the solver and start with nothing."""
        from ortools.sat.python import cp_model

        self._cp = cp_model
        self._model = cp_model.CpModel()
        self._goal: Quantity | None = None
        self._solver: cp_model.CpSolver | None = None

    # Unknowns

    def between(self, low: int, high: int, name: str = "") -> Unknown:
        """A whole number from `low` to `high`."""
        return self._model.new_int_var(low, high, name)

    def among(self, stretches: Iterable[tuple[int, int]], name: str = "") -> Unknown:
        """A whole number in one of some stretches (first, last)."""
        return self._model.new_int_var_from_domain(self._domain(stretches), name)

    def flag(self, name: str = "") -> Unknown:
        """A yes or no."""
        return self._model.new_bool_var(name)

    @property
    def yes(self) -> Unknown:
        """A flag that is always set."""
        return self._model.new_constant(1)

    def span(
        self, start: Quantity, length: Quantity, end: Quantity, when: Flag | None = None
    ) -> Span:
        """A stretch of time, there always or only when a flag is set."""
        if when is None:
            return self._model.new_interval_var(start, length, end, "")
        return self._model.new_optional_interval_var(start, length, end, when, "")

    def fixed_span(self, start: int, length: int, when: Flag | None = None) -> Span:
        """A stretch of time that is known already."""
        if when is None:
            return self._model.new_fixed_size_interval_var(start, length, "")
        return self._model.new_optional_fixed_size_interval_var(start, length, when, "")

    # What must hold

    def at_least(self, one: Quantity, other: Quantity, when: Sequence[Flag] = ()) -> None:
        """`one` is not below `other`, when all the flags are set."""
        constraint = self._model.add(one >= other)
        if when:
            constraint.only_enforce_if(*when)

    def equal(self, one: Quantity, other: Quantity, when: Sequence[Flag] = ()) -> None:
        """Both are the same, when all the flags are set."""
        constraint = self._model.add(one == other)
        if when:
            constraint.only_enforce_if(*when)

    def inside(
        self, one: Quantity, stretches: Iterable[tuple[int, int]], when: Sequence[Flag] = ()
    ) -> None:
        """`one` lies in one of some stretches (first, last), when all the flags are set."""
        constraint = self._model.add_linear_expression_in_domain(one, self._domain(stretches))
        if when:
            constraint.only_enforce_if(*when)

    def exactly_one(self, flags: Iterable[Flag]) -> None:
        """One of the flags is set."""
        self._model.add_exactly_one(flags)

    def at_most_one(self, flags: Iterable[Flag]) -> None:
        """No two of the flags are set."""
        self._model.add_at_most_one(flags)

    def some(self, flags: Iterable[Flag], when: Sequence[Flag] = ()) -> None:
        """At least one of the flags is set, when all the others are."""
        constraint = self._model.add_bool_or(*flags)
        if when:
            constraint.only_enforce_if(*when)

    def one_at_a_time(self, spans: Sequence[Span]) -> None:
        """No two spans overlap."""
        self._model.add_no_overlap(spans)

    def capacity(self, spans: Sequence[Span], needs: Sequence[int], most: int) -> None:
        """What the spans need at any time is never more than `most`."""
        self._model.add_cumulative(spans, needs, most)

    def largest(self, ones: Sequence[Quantity], low: int, high: int) -> Unknown:
        """A number that is none of `ones` exceeds; the goal has to press it down."""
        top = self.between(low, high)
        for one in ones:
            self.at_least(top, one)
        return top

    def weighed(self, rows: Sequence[tuple[int, Flag]]) -> Quantity:
        """The sum of what each flag counts where it is set; soon built, also of many."""
        weights, flags = [count for count, _ in rows], [flag for _, flag in rows]
        return self._cp.LinearExpr.weighted_sum(flags, weights)

    # The goal and the search

    def aim(self, goal: Quantity) -> None:
        """Make a quantity as small as can be; the goal before is forgotten."""
        self._goal = goal
        self._model.minimize(goal)

    def earliest_first(self, unknowns: Sequence[Unknown]) -> None:
        """Where nothing else says what to try, try the lowest of these at its lowest."""
        self._model.add_decision_strategy(
            unknowns, self._cp.CHOOSE_LOWEST_MIN, self._cp.SELECT_MIN_VALUE
        )

    def hint(self, values: Iterable[tuple[Unknown, int]]) -> None:
        """Start the search at these values; hints before are forgotten."""
        self._model.clear_hints()  # type: ignore[no-untyped-call]
        for unknown, value in values:
            self._model.add_hint(unknown, value)

    def solve(
        self,
        search: Search,
        better: Callable[[Answer], bool] | None = None,
    ) -> Answer:
        """Search; `better` gets each better answer, and ends the search by giving True."""
        solver = self._solver = self._cp.CpSolver()
        told = None if better is None else self._telling(solver, better)
        parameters = solver.parameters
        parameters.max_time_in_seconds = max(0.01, search.seconds)
        if search.work is not None:
            parameters.max_deterministic_time = search.work
        parameters.num_workers = search.workers
        # Ctrl-C is for the program to answer: the solver would end the process.
        parameters.catch_sigint_signal = False
        parameters.random_seed = search.seed
        parameters.use_strong_propagation_in_disjunctive = search.apart
        if search.light:
            parameters.linearization_level = 0
            parameters.max_presolve_iterations = 1
            parameters.cp_model_probing_level = 0
            parameters.symmetry_level = 0
            parameters.find_big_linear_overlap = False
        if search.near is not None:
            parameters.absolute_gap_limit = search.near
        if search.sums is not None:
            parameters.linearization_level = search.sums
        code = solver.solve(self._model, told)
        status = {
            self._cp.OPTIMAL: Status.PROVED,
            self._cp.FEASIBLE: Status.FOUND,
            self._cp.INFEASIBLE: Status.IMPOSSIBLE,
        }.get(code, Status.UNKNOWN)
        known = status in {Status.PROVED, Status.FOUND}
        value = solver.objective_value if known and self._goal is not None else None
        bounded = self._goal is not None and status is not Status.IMPOSSIBLE
        bound = solver.best_objective_bound if bounded else None
        return Answer(status, value, bound, solver.value)

    def halt(self) -> None:
        """End a search that goes on in another thread; it answers with what it has."""
        if self._solver is not None:
            self._solver.stop_search()

    def _telling(
        self, solver: cp_model.CpSolver, better: Callable[[Answer], bool]
    ) -> cp_model.CpSolverSolutionCallback:
        class Telling(self._cp.CpSolverSolutionCallback):  # type: ignore[name-defined,misc]
            def on_solution_callback(self) -> None:
                said = Answer(
                    Status.FOUND, self.objective_value, self.best_objective_bound, self.value
                )
                if better(said):
                    self.stop_search()

        del solver
        return Telling()

    def _domain(self, stretches: Iterable[tuple[int, int]]) -> cp_model.Domain:
        return self._cp.Domain.from_intervals([[a, b] for a, b in stretches])

    @property
    def size(self) -> tuple[int, int]:
        """How many unknowns and how many constraints there are."""
        proto = self._model.proto
        return len(proto.variables), len(proto.constraints)
