"""What stands on every sheet: the studio, when it was made, and that the data sheet decides."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate
from studio_planner.services.caution import deferral
from studio_planner.services.paper.pages import Sheet
from studio_planner.services.paper.wall_words import clock_said, local_day, long_date_said

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.services.desk import DeskView
    from studio_planner.services.paper.pages import PaperSize, Part


def headed(
    view: DeskView, paper: PaperSize, title: str, file_name: str, parts: Iterable[Part]
) -> Sheet:
    """A sheet of the studio as it is seen now; `file_name` is without an ending."""
    studio, now = view.studio, view.now
    made = translate("paper", "made {date}, {clock}")
    return Sheet(
        paper=paper,
        title=title,
        studio=studio.name,
        made=made.format(
            date=long_date_said(local_day(studio, now)), clock=clock_said(studio, now)
        ),
        caution=deferral(),
        file_name=file_name,
        parts=tuple(parts),
    )
