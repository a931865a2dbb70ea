"""Whether sanding and wet work get into each other's way, over all lanes of a plan."""

from __future__ import annotations

from bisect import bisect_left
from typing import TYPE_CHECKING

from studio_planner.planning.exact.choices import is_wet

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.exact.frame import Frame
    from studio_planner.planning.exact.lanes import Lane, Spans


def dusty(frame: Frame, lanes: Sequence[Lane]) -> bool:
    """Tell whether anything is sanded while wet work is uncovered, or just before a pour."""
    sanding = [
        joint.sand
        for lane in lanes
        if lane.placed is not None
        for joint in lane.placed.laid.joints
        if joint.sand is not None
    ]
    wet = _wet(frame, lanes) if sanding else []
    settle = frame.means.shop.settle
    longest = max((end - start for start, end in wet), default=0)
    return any(_clash(wet, start, end + settle, longest) for start, end in sanding)


def _clash(wet: Spans, start: int, settled: int, longest: int) -> bool:
    first = bisect_left(wet, (start - longest, 0))
    for begin, covered in wet[first:]:
        if begin >= settled:
            return False
        if begin >= start or covered > start:
            return True
    return False


def _wet(frame: Frame, lanes: Sequence[Lane]) -> Spans:
    found: Spans = []
    for lane in lanes:
        if lane.placed is not None:
            laid = lane.placed.laid
            times = frame.finisher.times(laid)
            found += [
                (start, times.covered(index, start))
                for index, start in enumerate(laid.starts)
                if is_wet(laid.chain.tasks[index])
            ]
    return sorted(found)
