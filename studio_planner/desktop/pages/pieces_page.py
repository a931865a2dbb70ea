"""The page of pieces."""

from __future__ import annotations

from typing import TYPE_CHECKING

from typing_extensions import override

from studio_planner.desktop.page import Page

if TYPE_CHECKING:
    from studio_planner.services.desk import DeskView


class PiecesPage(Page):
    """Shows nothing yet."""

    @override
    def show_view(self, view: DeskView | None) -> None:
        return
