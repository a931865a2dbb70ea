"""What was found in one line of a pasted data sheet, and what was not understood."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.products import SheetPoint
from studio_planner.craft.tongue import marked
from studio_planner.science.stages import Stage
from studio_planner.services.data_sheets.times import PrintedTime

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.services.data_sheets.words import Named

NO_TEMPERATURE = marked(
    "sheets", "it names no temperature; say above which one its times hold at."
)


@dataclass(frozen=True, slots=True)
class Unread:
    """A line that gave nothing, and why; lines count from 1."""

    number: int
    line: str
    reason: str


@dataclass(frozen=True, slots=True)
class Finding:
    """One figure with the line that it is from; a mass only means something for cup life."""

    number: int
    line: str
    stage: Stage
    celsius: float
    time: PrintedTime
    grams: float | None = None

    def point(self) -> SheetPoint:
        """The figure for a product's sheet; InvalidEntry when it is out of every range."""
        return SheetPoint(
            stage=self.stage,
            celsius=round(self.celsius, 4),
            from_hours=self.time.from_hours,
            to_hours=self.time.to_hours,
            mass_g=self.grams if self.stage is Stage.CUP_LIFE else None,
        )

    def refused(self, reason: str) -> Unread:
        """The line as one that gave nothing."""
        return Unread(self.number, self.line, reason)


def window_findings(
    row: tuple[int, str], named: Named, celsius: float, times: Sequence[PrintedTime]
) -> list[Finding]:
    """What times beside the name of both ends mean, for a line (number, text).

    Two times open and close the window, and so does one range of a window; else one time is
    when it opens.
    """
    opens, closes = named.stages
    if len(times) > 1:
        ends = (times[0], times[-1])
    elif named.window and times[0].to_hours is not None:
        ends = (PrintedTime(times[0].from_hours), PrintedTime(times[0].to_hours))
    else:
        return [Finding(*row, opens, celsius, times[0])]
    pairs = zip((opens, closes), ends, strict=True)
    return [Finding(*row, stage, celsius, time) for stage, time in pairs]
