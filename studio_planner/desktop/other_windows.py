"""The windows beside the desk's own: the legend, and the bench view on the whole screen."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.bench.bench_window import BenchWindow
    from studio_planner.desktop.legend import Legend
    from studio_planner.desktop.page import PageDesk


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

    def show_legend(self) -> None:
        """Show what the signs mean, beside the desk."""
        self.legend.show()
        self.legend.raise_()

    def show_bench(self) -> None:
        """Take the whole screen for the next thing to do."""
        self.bench.begin()
