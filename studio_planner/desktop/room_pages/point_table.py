"""The points of an expected week as a table whose cells can be typed into."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QAbstractItemView, QHeaderView, QTableWidget, QTableWidgetItem

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.settings import Units
from studio_planner.desktop import words
from studio_planner.desktop.quantities import (
    Quantity,
    number_of,
    number_words,
    scale_of,
)
from studio_planner.desktop.room_pages.day_words import day_of, day_word, time_of
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.air_weeks import in_order

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.places import PatternPoint
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.editing.air_weeks import Pattern

DAY, TIME, WARMTH, DAMP = range(4)
_MOST_ROWS = 8


class PointTable(QTableWidget):
    """One row for each point; a cell that makes no sense keeps what was typed.

    Signals:
        entered: the pattern with what was typed.
        wrong: what is wrong with what was typed.
        remove_asked: the row's point is to go.
    """

    entered = Signal(object)
    wrong = Signal(str)
    remove_asked = Signal()

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show nothing yet."""
        super().__init__(0, 4, parent)
        self._canvas = canvas
        self._pattern: Pattern = ()
        self._units = Units()
        self.setAccessibleName(translate("room", "Points of the expected air"))
        self.verticalHeader().hide()
        self.setShowGrid(False)
        self.setTabKeyNavigation(False)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectItems)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.horizontalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.horizontalHeader().setHighlightSections(False)
        self.cellChanged.connect(self._typed)
        delete = QShortcut(QKeySequence(QKeySequence.StandardKey.Delete), self)
        delete.setContext(Qt.ShortcutContext.WidgetShortcut)
        delete.activated.connect(self.remove_asked)

    def show_pattern(self, pattern: Pattern, units: Units) -> None:
        """Show the points in the studio's units; the chosen cell stays chosen."""
        self._pattern, self._units = pattern, units
        row, column = self.currentRow(), self.currentColumn()
        self.blockSignals(True)  # noqa: FBT003 - Qt's own
        self.setRowCount(len(pattern))
        self.setHorizontalHeaderLabels(
            [
                translate("room", "Day"),
                translate("room", "Time"),
                translate("room", "Temperature, {unit}").format(
                    unit=scale_of(Quantity.TEMPERATURE, units).unit
                ),
                translate("room", "Humidity, %"),
            ]
        )
        for index, point in enumerate(pattern):
            for cell, text in enumerate(self._texts(point)):
                self.setItem(index, cell, QTableWidgetItem(text))
        self.setCurrentCell(min(max(row, 0), len(pattern) - 1), max(column, 0))
        self.blockSignals(False)  # noqa: FBT003 - Qt's own
        self._fit()

    def _fit(self) -> None:
        high = round(self._canvas.fonts.plain_height) + 10
        self.verticalHeader().setDefaultSectionSize(high)
        shown = min(len(self._pattern), _MOST_ROWS)
        self.setFixedHeight(shown * high + self.horizontalHeader().sizeHint().height() + 6)

    def _texts(self, point: PatternPoint) -> tuple[str, str, str, str]:
        scale = scale_of(Quantity.TEMPERATURE, self._units)
        damp = point.humidity_pct
        return (
            day_word(point.day),
            words.time_of_day(point.at, self._units.clock),
            number_words(round(scale.shown(point.celsius), 2)),
            "" if damp is None else number_words(round(damp, 1)),
        )

    def _typed(self, row: int, column: int) -> None:
        item = self.item(row, column)
        if item is None:
            return
        text = item.text()
        point = self._pattern[row]
        if text.strip() == self._texts(point)[column]:
            return
        try:
            new = self._with(point, column, text)
        except ValueError as error:
            self.wrong.emit(str(error))
            return
        except InvalidEntry as error:
            self.wrong.emit(" ".join(rule.sentence for rule in error.broken))
            return
        self.wrong.emit("")
        points = (*self._pattern[:row], new, *self._pattern[row + 1 :])
        self.entered.emit(in_order(points))

    def _with(self, point: PatternPoint, column: int, text: str) -> PatternPoint:
        if column == DAY:
            return replace(point, day=day_of(text))
        if column == TIME:
            return replace(point, at=time_of(text))
        if column == WARMTH:
            scale = scale_of(Quantity.TEMPERATURE, self._units)
            return replace(point, celsius=scale.inside(number_of(text)))
        empty = not text.strip().rstrip("%")
        return replace(point, humidity_pct=None if empty else number_of(text.rstrip("% ")))
