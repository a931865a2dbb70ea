"""The timeline under the hands: pours are worked with, pieces are found, ghosts are drawn."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QPoint, Signal
from PySide6.QtGui import QPainter
from typing_extensions import override

from studio_planner.desktop.timeline import Timeline
from studio_planner.desktop.timeline_work.worked_table import WorkedTable
from studio_planner.desktop.tongue import translate
from studio_planner.services.moving.narrowing import Wanted, narrowed
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.timeline_work.plan_work import PlanWork
    from studio_planner.desktop.timeline_work.work_desk import WorkDesk
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Bar, Lane

_Index = QModelIndex | QPersistentModelIndex


class WorkingTimeline(WorkedTable, Timeline):
    """Cure ribbons that can be worked with.

    Signals:
        narrowed: how many lanes are shown now, and of how many.
        went_on: the maker has chosen another bar.
    """

    narrowed = Signal(int, int)
    went_on = Signal()
    _showing = True  # until there is something to choose by hand

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Draw what `canvas` shows; there is nothing to work with before `desk` is set."""
        super().__init__(canvas, parent)
        self.wanted = Wanted()
        self.setAccessibleDescription(
            translate(
                "work",
                "One row for each piece, one cell for each coat or step. Alt with left and "
                "right moves a pour by five minutes, with Shift by an hour.",
            )
        )
        self.drawing.nothing = translate("work", "No piece is like that. Esc shows all.")
        self._showing = False

    @cached_property
    @override
    def work(self) -> PlanWork:
        from studio_planner.desktop.timeline_work.plan_work import PlanWork  # noqa: PLC0415

        assert self.desk is not None  # noqa: S101 - set where the timeline is put into a desk
        work = PlanWork(self.desk, self)
        work.renewed.connect(self.viewport().update)
        work.left.connect(self.open_hand)
        work.shown.connect(self.choose_pour)
        return work

    def work_in(self, desk: WorkDesk) -> None:
        """Be worked on in a desk; what any change of its studio moves is told, too."""
        self.desk = desk
        desk.changes.changed.connect(self._changed)

    def _changed(self) -> None:
        if self.at_work is None:
            self.work.aftermath.changed()

    @property
    @override
    def at_work(self) -> PlanWork | None:
        work: PlanWork | None = self.__dict__.get("work")
        return work

    @override
    def bar_at(self, pos: QPoint) -> Bar | None:
        return self.lanes.bar(self.indexAt(pos))

    @override
    def bar_chosen(self) -> Bar | None:
        return self.lanes.bar(self.currentIndex())

    def chosen_bar(self) -> Ribbon | None:
        """The pour that is chosen; None where a step or nothing is."""
        bar = self.bar_chosen()
        return bar if isinstance(bar, Ribbon) else None

    def choose_pour(self, piece: str, coat: str) -> None:
        """Choose the pour of a coat, and bring it into view."""
        for row, lane in enumerate(self.lanes.lanes):
            if lane.piece.key != piece:
                continue
            for column, bar in enumerate(lane.bars):
                if isinstance(bar, Ribbon) and bar.coat.key == coat:
                    self.setCurrentIndex(self.lanes.index(row, column))

    @override
    def lanes_of(self, view: DeskView) -> tuple[Lane, ...]:
        return narrowed(view, self.wanted)

    def want(self, wanted: Wanted) -> None:
        """Show only the lanes that are wanted."""
        self.wanted = wanted
        self.show_lanes()

    @override
    def show_lanes(self) -> None:
        if self.at_work is not None:
            self.at_work.interrupt()
        self._showing = True
        super().show_lanes()
        self._showing = False
        view = self.canvas.view
        self.narrowed.emit(len(self.lanes.lanes), len(view.lanes) if view else 0)
        if self.at_work is not None:
            self.at_work.aftermath.view_shown()

    @override
    def currentChanged(self, current: _Index, previous: _Index) -> None:
        super().currentChanged(current, previous)
        if not self._showing:
            self.went_on.emit()

    # What is drawn over the ribbons

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if self.at_work is not None:
            with QPainter(self.viewport()) as painter:
                self.at_work.paint(painter)
