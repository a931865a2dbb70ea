"""The best plan beside a general scheduling library, in one run; run it by hand, it is no test.

    python -m tests.benchmarks.peer [SECONDS [SEED ...]]

Both get the same studio at a constant 20 °C, where windows are plain lags
(`tests/benchmarks/steady_studio.py`), the same seconds (30 unless told otherwise) and two
workers. The library is pyjobshop, which builds a model for OR-Tools: coats and packing are
tasks of fixed length on a renewable of hands with breaks, windows are lags between starts, a
spot is held until handle or until the next coat takes it over (two optional tasks, one of them
chosen), and an order leaves with a pick-up: a task of one slot that fits only there. So both
count weighted lateness to the pick-up. Either looks only at starts on whole five minutes.

Printed are weighted hours late of both with what each has proved, and how long each took to get
as far as both did. Both answers are checked in the plain form. Exit 1 when an answer is broken,
or when one has found what the other has proved to be impossible; 2 when the library is missing.
"""

from __future__ import annotations

import importlib
import sys
from dataclasses import dataclass, field
from time import perf_counter
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.best import best_plan
from tests.benchmarks.plain_studio import broken, lateness
from tests.benchmarks.steady_studio import plain, starts_of_plan, steady
from tests.planning.benchmark_studios import START, benchmark_studio

if TYPE_CHECKING:
    from collections.abc import Sequence
    from typing import Any

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from tests.benchmarks.plain_studio import PlainPiece, PlainStudio, Slots, Starts

SIZES = ("S", "M", "L")
SEEDS = (0, 1, 2)
SECONDS = 30.0
WORKERS = 2
SLOTS_OF_AN_HOUR = 12
INSTALL = (
    "pyjobshop is missing: install the project's dependency group `bench` (pip install --group "
    "bench) into this environment."
)


@dataclass(slots=True)
class Side:
    """What one of the two found: starts, hours late, the bound, and when it was how good."""

    starts: Starts | None = None
    late: float | None = None
    bound: float = 0.0
    seconds: float = 0.0
    path: list[tuple[float, float]] = field(default_factory=list)

    def reached(self, late: float) -> float | None:
        """The seconds after which it was that good; None when it never was."""
        return next((when for when, found in self.path if found <= late + 1e-6), None)


def ours(studio: Studio, seconds: float, seed: int) -> Side:
    """The studio planner's side."""
    begun = perf_counter()
    side = Side()

    def told(plan: Plan) -> None:
        late = _goal(plan, Goal.LATENESS)[0]
        if not plan.unplanned and late is not None:
            side.path.append((perf_counter() - begun, late))

    plan = best_plan(studio, START, seconds=seconds, seed=seed, told=told)
    side.seconds = perf_counter() - begun
    told(plan)
    side.late, bound = _goal(plan, Goal.LATENESS)
    side.bound = bound or 0.0
    if not plan.unplanned:
        side.starts = starts_of_plan(plan, START)
    return side


def _goal(plan: Plan, goal: Goal) -> tuple[float | None, float | None]:
    return next(
        ((row.value, row.bound) for row in plan.goals if row.goal is goal), (None, None)
    )


class Peer:
    """A plain studio in the library's words."""

    def __init__(self, whole: PlainStudio) -> None:
        """Build the library's data."""
        from pyjobshop import Model  # noqa: PLC0415 - a choice, see INSTALL

        self._whole = whole
        self._model = Model()
        self._hands = self._model.add_renewable(whole.people, breaks=_between(whole.hours))
        self._spots = self._model.add_renewable(whole.spots)
        self.tasks: dict[tuple[str, str], tuple[Any, int]] = {}
        packs: dict[int, list[Any]] = {}
        for piece in whole.pieces:
            packs.setdefault(piece.order, []).append(self._piece(piece))
        for order, tasks in packs.items():
            self._order(order, tasks)
        self._model.set_objective(weight_total_tardiness=1)

    def _task(self, length: int, resource: Any, job: Any = None, **more: bool) -> Any:  # noqa: ANN401 - the library has no types
        task = self._model.add_task(job=job, latest_end=self._whole.end, **more)
        self._model.add_mode(task, [resource], length, [1])
        return task

    def _piece(self, piece: PlainPiece) -> Any:  # noqa: ANN401 - as above
        """The tasks of a piece's coats; gives the task of its packing."""
        model = self._model
        tasks = [self._task(coat.turning + coat.block, self._hands) for coat in piece.coats]
        pack = self._task(piece.packing, self._hands)
        self.tasks[piece.key, ""] = pack, 0
        for coat, task in zip(piece.coats, tasks, strict=True):
            self.tasks[piece.key, coat.key] = task, coat.turning
            model.add_start_before_start(task, pack, delay=coat.turning + coat.gate)
            for bound in coat.bounds:
                lower = tasks[bound.earlier]
                shift = piece.coats[bound.earlier].turning - coat.turning
                model.add_start_before_start(lower, task, delay=bound.least + shift)
                if bound.most is not None:
                    model.add_start_before_start(task, lower, delay=-bound.most - shift)
        self._hold(piece, tasks)
        return pack

    def _hold(self, piece: PlainPiece, tasks: list[Any]) -> None:
        """Keep a spot until handle, or until the next coat, which then keeps it."""
        model = self._model
        for index, (coat, task) in enumerate(zip(piece.coats, tasks, strict=True)):
            last = index + 1 == len(tasks)
            held = self._task(coat.handle, self._spots, optional=not last)
            model.add_start_at_start(task, held, delay=coat.turning)
            if last:
                continue
            following = piece.coats[index + 1].turning
            model.add_end_before_start(held, tasks[index + 1], delay=-following)
            handed = self._task(coat.block, self._spots, optional=True, allow_idle=True)
            model.add_start_at_start(task, handed, delay=coat.turning)
            model.add_end_at_start(handed, tasks[index + 1], delay=-following)
            model.add_select_exactly_one([held, handed])

    def _order(self, number: int, packs: list[Any]) -> None:
        """An order's job: its packing, or the pick-up after it."""
        order = self._whole.orders[number]
        # The task of a pick-up ends one slot after the order has left.
        due = order.due if order.pick_ups is None else order.due + 1
        job = self._model.add_job(weight=order.weight, due_date=due)
        if order.pick_ups is None:
            leaves = self._model.add_task(job=job, latest_end=self._whole.end)
            self._model.add_mode(leaves, [], 0)
        else:
            times = tuple((slot, slot + 1) for slot in order.pick_ups)
            courier = self._model.add_renewable(1, breaks=_between(times))
            leaves = self._task(1, courier, job)
        for pack in packs:
            self._model.add_end_before_start(pack, leaves)

    def solve(self, seconds: float, seed: int, begun: float) -> Side:
        """Search as the library does, but note when each better answer came."""
        from ortools.sat.python import cp_model  # noqa: PLC0415 - heavy
        from pyjobshop.solvers.ortools import CPModel  # noqa: PLC0415 - as above

        built = CPModel(self._model.data())
        side = Side()

        class Noting(cp_model.CpSolverSolutionCallback):
            def on_solution_callback(self) -> None:
                late = self.objective_value / SLOTS_OF_AN_HOUR
                side.path.append((perf_counter() - begun, late))

        solver = cp_model.CpSolver()
        solver.parameters.max_time_in_seconds = max(0.1, seconds - (perf_counter() - begun))
        solver.parameters.num_workers = WORKERS
        solver.parameters.random_seed = seed
        found = solver.solve(built.model, Noting()) in {cp_model.OPTIMAL, cp_model.FEASIBLE}
        side.seconds = perf_counter() - begun
        side.bound = max(0.0, solver.best_objective_bound / SLOTS_OF_AN_HOUR) if found else 0.0
        if found:
            side.late = solver.objective_value / SLOTS_OF_AN_HOUR
            numbers = {id(task): n for n, task in enumerate(self._model.tasks)}
            variables = built.variables.task_vars
            side.starts = {
                key: solver.value(variables[numbers[id(task)]].start) + turning
                for key, (task, turning) in self.tasks.items()
            }
        return side


def _between(open_times: Sequence[Slots]) -> list[Slots]:
    """The breaks around open times; after the last there is only break."""
    breaks: list[Slots] = []
    shut = 0
    for first, last in sorted(open_times):
        if first > shut:
            breaks.append((shut, first))
        shut = max(shut, last)
    return [*breaks, (shut, shut + 1_000_000)]


def theirs(whole: PlainStudio, seconds: float, seed: int) -> Side:
    """The library's side; building its model counts."""
    begun = perf_counter()
    return Peer(whole).solve(seconds, seed, begun)


def compared(seed: int, size: str, seconds: float) -> bool:
    """Run both on one studio and print a line; tell whether both answers hold together."""
    studio = steady(benchmark_studio(size, seed))
    whole = plain(studio, START)
    mine, other = ours(studio, seconds, seed), theirs(whole, seconds, seed)
    name = f"{size}, seed {seed}"
    print(f"{name:20} {_said(mine)}   {_said(other)}   {_ratio(mine, other)}", flush=True)
    faults = [*_faults(whole, mine, "ours"), *_faults(whole, other, "theirs")]
    for one, second, words in ((mine, other, "theirs"), (other, mine, "ours")):
        if one.late is not None and one.starts and one.late < second.bound - 1e-6:
            faults.append(f"{words} says {second.bound:.2f} at least, {one.late:.2f} was found")
    for fault in faults:
        print(f"  {fault}")
    return not faults


def _faults(whole: PlainStudio, side: Side, words: str) -> list[str]:
    if side.starts is None or side.late is None:
        return []
    faults = [f"{words}: {fault}" for fault in broken(whole, side.starts)]
    late = lateness(whole, side.starts) / SLOTS_OF_AN_HOUR
    if abs(late - side.late) > 1e-6:
        faults.append(f"{words}: {side.late:.2f} said, {late:.2f} hours late counted")
    return faults


def _said(side: Side) -> str:
    if side.late is None or side.starts is None:
        return f"{'none':>8} {'':8} in {side.seconds:5.1f} s"
    proved = "proved" if side.bound >= side.late - 1e-6 else f">={side.bound:.2f}"
    return f"{side.late:8.2f} {proved:8} in {side.seconds:5.1f} s"


def _ratio(mine: Side, other: Side) -> str:
    """The library's time over ours, to the value that both have reached."""
    values = [side.path[-1][1] for side in (mine, other) if side.path]
    if len(values) < 2:
        return "only one of them found a plan" if values else "neither found a plan"
    common = max(values)
    first, second = mine.reached(common), other.reached(common)
    if first is None or second is None:
        return "-"
    return f"{common:8.2f} after {first:6.2f} s / {second:6.2f} s: {second / first:6.1f} times"


def main(arguments: Sequence[str]) -> int:
    """Compare on studios of three sizes."""
    try:
        importlib.import_module("pyjobshop")
    except ModuleNotFoundError:
        print(INSTALL)
        return 2
    seconds = float(arguments[0]) if arguments else SECONDS
    seeds = [int(word) for word in arguments[1:]] or list(SEEDS)
    print("size                 ours: hours late           theirs: hours late        both at")
    kept = [compared(seed, size, seconds) for size in SIZES for seed in seeds]
    return 0 if all(kept) else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
