"""Why nobody is awake to pull tape or trim drips, whenever a coat is poured."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.saying import SILENT, Saying, saying
from studio_planner.craft.tongue import marked
from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.placing.chain_times import narrow_windows
from studio_planner.planning.saying import length_said
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.problem import Task
    from studio_planner.planning.spans import Stretches

_WORK = {
    Stage.TAPE_OPENS: marked("stuck", "its tape pulled"),
    Stage.TRIM_OPENS: marked("stuck", "its drips trimmed"),
}
_HOUR = 3600
_LOOKS = 400


def why_nobody_is_awake(means: Means, task: Task, place: str, handy: Stretches) -> Saying:
    """The step that nobody is awake for, to follow the coat's name; empty when there is none.

    `handy` are the starts with hands for the coat; one an hour is looked at.
    """
    starts = [s for low, high in handy for s in range(low, high + 1, _HOUR)][:_LOOKS]
    for opens, closes in narrow_windows(task):
        windows = list(_windows(means, task, place, starts, (opens, closes)))
        length = means.tape_seconds
        if any(means.shop.awake_within(*window, length) for window in windows):
            continue
        low, high = max(windows, key=lambda window: window[1] - window[0], default=(0, 0))
        if high - low < length:
            return saying(
                "stuck",
                "has to have {work} in {length}, and on the safe side the figures of "
                "{product} leave no time for that; look at them under Products, or do "
                "without.",
                work=saying("stuck", _WORK[opens]),
                length=length_said(length),
                product=task.product.name,
            )
        return saying(
            "stuck",
            "has to have {work} while the film is right for it, for {length} at most, and "
            "whenever it is poured nobody is awake then; add hours for it at another time of "
            "day, or do without.",
            work=saying("stuck", _WORK[opens]),
            length=length_said(high - low),
        )
    return SILENT


def _windows(
    means: Means, task: Task, place: str, starts: list[int], stages: tuple[Stage, Stage]
) -> Iterator[tuple[int, int]]:
    opening = means.edges.not_before(task.product, place, stages[0])
    closing = means.edges.not_after(task.product, place, stages[1])
    for start in starts:
        low = None if opening is None else opening.at(start + task.block)
        if low is not None:
            yield low, ALWAYS if closing is None else closing.at(start)
