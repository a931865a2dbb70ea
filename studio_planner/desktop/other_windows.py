"""The windows beside the desk's own: the legend, sheets for paper, and the bench view."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.bench.bench_window import BenchWindow
    from studio_planner.desktop.legend import Legend
    from studio_planner.desktop.page import PageDesk
    from studio_planner.desktop.paper.paper_window import PaperWindow


class OtherWindows:
    """Each is made when it is first asked for, and closes with the desk."""

    def __init__(self, desk: PageDesk, parent: QWidget) -> None:
        """Belong to `desk`, whose window is `parent`."""
        self._desk = desk
        self._parent = parent

    @cached_property
    def legend(self) -> Legend:
        """What the signs mean."""
        from studio_planner.desktop.legend import Legend  # noqa: PLC0415 - when asked for

        return Legend(self._desk.canvas, self._parent)

    @cached_property
    def bench(self) -> BenchWindow:
        """The next thing to do, on the whole screen."""
        from studio_planner.desktop.bench.bench_window import BenchWindow  # noqa: PLC0415

        return BenchWindow(self._desk, self._parent)

    @cached_property
    def paper(self) -> PaperWindow:
        """The sheets for paper."""
        from studio_planner.desktop.paper.paper_window import PaperWindow  # noqa: PLC0415

        return PaperWindow(self._desk, self._parent)

    def show_paper(self, kind: str, key: str = "") -> None:
        """Show a sheet as it will be on paper."""
        from studio_planner.services.paper.choosing import SheetKind  # noqa: PLC0415

        self.paper.show_kind(SheetKind(kind), key)

    def show_legend(self) -> None:
        """Show what the signs mean, beside the desk."""
        self.legend.show()
        self.legend.raise_()

    def show_bench(self) -> None:
        """Take the whole screen for the next thing to do."""
        self.bench.begin()
