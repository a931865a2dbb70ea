"""What was found in one line of a pasted data sheet, and what was not understood."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.products import SheetPoint
from studio_planner.craft.tongue import marked, translate
from studio_planner.science.stages import Stage
from studio_planner.services.data_sheets.times import PrintedTime, shown_time

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
    """One figure with the line that it is from; a mass only means something for cup life.

    `either` tells that its range may as well be both ends of the recoat window.
    """

    number: int
    line: str
    stage: Stage
    celsius: float
    time: PrintedTime
    grams: float | None = None
    either: bool = False

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


def not_clear(finding: Finding, others: Sequence[Finding]) -> str:
    """What to write where a range may be both ends of the window; empty where it is clear.

    It is when the window opens where `others` close all windows later.
    """
    closings = [one.time.from_hours for one in others if one.stage is Stage.RECOAT_CLOSES]
    latest = finding.time.to_hours or finding.time.from_hours
    if not finding.either or (closings and latest < min(closings)):
        return ""
    return translate(
        "sheets",
        "it can be read two ways; write “Recoat window {time}” if the window opens and closes "
        "then, or “Recoat after {time}” if it opens somewhere between.",
    ).format(time=shown_time(finding.time))


def window_findings(
    row: tuple[int, str], named: Named, celsius: float, times: Sequence[PrintedTime]
) -> list[Finding]:
    """What times beside the name of both ends mean, for a line (number, text).

    Two times open and close the window, and so does one range of a window; else one time is
    when it opens, and of a range nobody can say.
    """
    opens, closes = named.stages
    if len(times) > 1:
        ends = (times[0], times[-1])
    elif named.window and times[0].to_hours is not None:
        ends = (PrintedTime(times[0].from_hours), PrintedTime(times[0].to_hours))
    else:
        ranged = times[0].to_hours is not None
        return [Finding(*row, opens, celsius, times[0], either=ranged)]
    pairs = zip((opens, closes), ends, strict=True)
    return [Finding(*row, stage, celsius, time) for stage, time in pairs]
