"""A model whose search starts at a plan that is known: every unknown gets its value."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from typing_extensions import override

from studio_planner.planning.solver import Model

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable

    from studio_planner.planning.solver import Answer, Unknown

_WORK, _SECONDS = 1.0, 5.0
"""What filling in may cost, by the solver's own count; seconds only for a machine gone slow."""

_CONFLICTS = 100
"""How often the solver may run into a dead end before it asks for less. With 20 most of what
could be gained by a hundred coats was left to the next steps, with 500 they took longer."""


class StartedModel(Model):
    """A model that can be started at values of some of its unknowns."""

    as_it_is = False
    """Whether nothing is thought about before a search that is told of its answers."""

    halves = False
    """Whether half of what may still be gained is asked for first, again and again.

    Where much can be gained and little room is left to search (a hundred coats that go back to
    where they were), this took a third of a second instead of three.
    """

    def start_at(self, values: Iterable[tuple[Unknown, int]]) -> None:
        """Start at these values and at what follows from them, if they can be.

        Give the goal first: what it presses down is pressed down here too. A start that lacks
        nothing is the first answer. It is for models in which any answer is hard to find; the
        others gain more from a start that leaves open what follows (small studios as a whole
        were proved less often with this one). A start that cannot be stays a hint: a plan may
        be a slot beside what the model holds for possible.
        """
        self.hint(values)
        solver = self._cp.CpSolver()
        parameters = solver.parameters
        parameters.max_time_in_seconds = _SECONDS
        parameters.max_deterministic_time = _WORK
        parameters.num_workers = 1
        parameters.linearization_level = 0
        parameters.max_presolve_iterations = 1
        parameters.cp_model_probing_level = 0
        parameters.symmetry_level = 0
        parameters.fix_variables_to_their_hinted_value = True
        code = solver.solve(self._model)
        if code not in {self._cp.OPTIMAL, self._cp.FEASIBLE}:
            return
        self._model.clear_hints()  # type: ignore[no-untyped-call]
        for index, value in enumerate(solver.response_proto.solution):
            self._model.add_hint(self._model.get_int_var_from_proto_index(index), value)

    @override
    def _telling(self, solver: Any, better: Callable[[Answer], bool]) -> Any:
        if self.as_it_is:
            solver.parameters.cp_model_presolve = False
        if self.halves:
            solver.parameters.binary_search_num_conflicts = _CONFLICTS
        return super()._telling(solver, better)
