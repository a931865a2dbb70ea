"""What work on the plan asks of the window it is done in."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from studio_planner.desktop.page import PageDesk

if TYPE_CHECKING:
    from studio_planner.desktop.timeline_work.work_line import WorkLine


class WorkDesk(PageDesk, Protocol):
    """A desk with a line that says how work on the plan goes."""

    @property
    def work_line(self) -> WorkLine:
        """The line over the timeline."""
        ...
