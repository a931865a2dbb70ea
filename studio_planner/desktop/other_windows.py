"""The windows beside the desk's own: the legend, sheets for paper, and the bench view."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING, Protocol

from studio_planner.desktop.page import Page, PageDesk
from studio_planner.desktop.page_keys import ORDERS

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.bench.bench_window import BenchWindow
    from studio_planner.desktop.legend import Legend
    from studio_planner.desktop.page_stack import PageStack
    from studio_planner.desktop.paper.paper_window import PaperWindow
    from studio_planner.desktop.timeline_work.working_timeline import WorkingTimeline
    from studio_planner.desktop.weigh.weigh_window import WeighWindow


class PagedDesk(PageDesk, Protocol):
    """The desk, as its other windows see it: what is in front tells what is meant."""

    pages: PageStack

    @property
    def timeline(self) -> WorkingTimeline:
        """The timeline."""
        ...


class OtherWindows:
    """Each is made when it is first asked for, and closes with the desk."""

    def __init__(
        self, desk: PagedDesk, data_folder: Callable[[], Path] | None, parent: QWidget
    ) -> None:
        """Belong to `desk`, whose window is `parent`; `data_folder` is the maker's own."""
        self._desk = desk
        self._data_folder = data_folder
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

        pages = self._desk.pages
        if kind == SheetKind.ORDER and not key and pages.current_key == ORDERS:
            page = pages.page(ORDERS)
            key = page.chosen if isinstance(page, Page) else ""
        self.paper.show_kind(SheetKind(kind), key)

    @cached_property
    def scale(self) -> WeighWindow:
        """One number after the other at the scale, on the whole screen."""
        from studio_planner.desktop.weigh.weigh_window import WeighWindow  # noqa: PLC0415

        return WeighWindow(self._desk, self._data_folder, self._parent)

    def show_legend(self) -> None:
        """Show what the signs mean, beside the desk."""
        self.legend.show()
        self.legend.raise_()

    def show_bench(self) -> None:
        """Take the whole screen for the next thing to do."""
        self.bench.begin()

    def show_scale(self, coat: tuple[str, str] | None = None) -> None:
        """Take the whole screen for the mix of a coat (piece, coat), or for the next one."""
        self.scale.begin(coat)

    def weigh(self, piece: str, coat: str) -> None:
        """Take the whole screen to weigh the mix that a coat is poured from."""
        self.show_scale((piece, coat))

    def weigh_chosen(self) -> None:
        """Weigh the mix of the chosen bar; where none is to be weighed, the next one."""
        bar = self._desk.timeline.chosen_bar()
        self.show_scale(None if bar is None else (bar.lane.piece.key, bar.coat.key))

    @property
    def mix_runs(self) -> bool:
        """Whether a mix of the desk's studio was begun at the scale and is not written down."""
        from studio_planner.services.mix_run.kept_file import kept_for  # noqa: PLC0415

        session = self._desk.session
        kept = None if session is None else kept_for(session.path, self._data_folder)
        return kept is not None and kept.path.exists()
