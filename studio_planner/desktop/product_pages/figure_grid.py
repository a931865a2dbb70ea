"""The sheet as a table: a row for each stage, a column for each temperature."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QGuiApplication, QKeySequence
from PySide6.QtWidgets import QGridLayout, QLineEdit, QWidget
from typing_extensions import override

from studio_planner.desktop.forms.undo_keys import UndoKeys
from studio_planner.desktop.layouts import take_out
from studio_planner.desktop.studio_pages.lines import Line

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from PySide6.QtGui import QFocusEvent, QKeyEvent

    from studio_planner.desktop.canvas import Canvas

_CELL_WIDTH = 92
_CELL_HEIGHT = 26
_BESIDE_NAME = 2
_WRONG = "\N{BLACK RIGHT-POINTING TRIANGLE}"


@dataclass(frozen=True, slots=True)
class Lines:
    """What a table shows: names of rows and columns, and the words in its cells.

    The last column, or the last row, may have an empty name: what is typed in its head makes a
    new one, and `hints` say so. Places are (row, column); row 0 are the names of columns,
    column 0 those of rows, of which `named_rows` can be typed.
    """

    rows: tuple[str, ...]
    columns: tuple[str, ...]
    cells: dict[tuple[int, int], str]
    hints: dict[tuple[int, int], str]
    named_rows: frozenset[int] = frozenset()


class FigureEdit(QLineEdit):
    """One cell: arrows and Return go up and down.

    Signals:
        entered: the maker has left it, and it reads otherwise than before.
        looked_at: the maker is in it.
        step_asked: by how many rows to go.
        sheet_pasted: more than one cell was pasted.
    """

    entered = Signal()
    looked_at = Signal()
    step_asked = Signal(int)
    sheet_pasted = Signal(str)

    def __init__(self, parent: QWidget) -> None:
        """Start empty."""
        super().__init__(parent)
        self._shown = ""
        self.setFixedHeight(_CELL_HEIGHT)
        self.setMinimumWidth(56)
        self.setMaximumWidth(_CELL_WIDTH)
        self.editingFinished.connect(self._finished)
        UndoKeys(self, lambda: self.text() != self._shown)

    def show_words(self, text: str) -> None:
        """Show what the sheet says."""
        self._shown = text
        self.setText(text)

    @property
    def in_hand(self) -> bool:
        """Whether the maker is typing in it."""
        return self.hasFocus() and self.text() != self._shown

    @property
    def refused(self) -> str:
        """What is said to be wrong with it; empty when nothing is."""
        return self.accessibleDescription()

    def _finished(self) -> None:
        if self.text() != self._shown:
            self._shown = self.text()
            self.entered.emit()

    @override
    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.looked_at.emit()

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        pasted = QGuiApplication.clipboard().text().strip()
        if event.matches(QKeySequence.StandardKey.Paste) and set(pasted) & {"\n", "\t"}:
            self.sheet_pasted.emit(pasted)
            return
        down = {Qt.Key.Key_Down, Qt.Key.Key_Return, Qt.Key.Key_Enter}
        if event.key() in down or event.key() == Qt.Key.Key_Up:
            self._finished()
            self.step_asked.emit(-1 if event.key() == Qt.Key.Key_Up else 1)
            return
        super().keyPressEvent(event)


class _RowName(Line):
    """The name of a row: on one line where there is room for it, else in several."""

    @override
    def sizeHint(self) -> QSize:
        across = self.fontMetrics().horizontalAdvance(self.text()) + _BESIDE_NAME
        return QSize(across, super().sizeHint().height())


class FigureGrid(QWidget):
    """Editors in rows and columns; what is wrong is said under its row and stays as typed.

    Signals:
        row_chosen: the maker is in a cell of that row, 1 for the first.
        sheet_pasted: lines or a table were pasted into a cell.
    """

    row_chosen = Signal(int)
    sheet_pasted = Signal(str)

    def __init__(
        self,
        canvas: Canvas,
        enter: Callable[[int, int, str], None],
        parent: QWidget | None = None,
    ) -> None:
        """Let `enter` take (row, column, text), or refuse it by ValueError in a sentence."""
        super().__init__(parent)
        self._canvas = canvas
        self._enter = enter
        self._lines = Lines((), (), {}, {})
        self.edits: dict[tuple[int, int], FigureEdit] = {}
        self._names: dict[int, Line] = {}
        self._wrong: dict[int, Line] = {}
        self._bad: set[tuple[int, int]] = set()
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(4)
        self._grid.setVerticalSpacing(2)

    def show_lines(self, lines: Lines, *, fresh: bool) -> None:
        """Show other words; cells being typed in, and wrong ones unless `fresh`, stay."""
        shape = (lines.rows, lines.columns, lines.named_rows)
        known = (self._lines.rows, self._lines.columns, self._lines.named_rows)
        before = self._lines
        self._lines = lines
        if fresh or shape != known:
            self._make_anew(before, fresh=fresh)
        for place, edit in self.edits.items():
            if not edit.in_hand and place not in self._bad:
                edit.show_words(lines.cells.get(place, ""))

    def _make_anew(self, before: Lines, *, fresh: bool) -> None:
        """Make all editors; typing goes on where it was, and wrong cells keep their words."""
        held = self._held(before) if not fresh else {}
        focused = next((p for p, edit in self.edits.items() if edit.hasFocus()), None)
        shown = (*self.edits.values(), *self._names.values(), *self._wrong.values())
        take_out(self._grid, *shown)
        self.edits, self._names, self._wrong, self._bad = {}, {}, {}, set()
        for row in range(len(self._lines.rows) + 1):
            self._make_row(row)
        for (row, column), (text, sentence) in held.items():
            edit = self.edits.get((row, column))
            if edit is not None:
                edit.show_words(text)
                self._say_wrong(row, column, sentence)
        if focused in self.edits and not fresh:
            self.edits[focused].setFocus()

    def _held(self, before: Lines) -> dict[tuple[int, int], tuple[str, str]]:
        """What is wrong, with its sentence, where its row and column are now."""
        held = {}
        for row, column in self._bad:
            names = before.rows[row - 1] if row else "", before.columns[column - 1]
            if row and names[0] in self._lines.rows and names[1] in self._lines.columns:
                place = (
                    self._lines.rows.index(names[0]) + 1,
                    self._lines.columns.index(names[1]) + 1,
                )
                held[place] = (self.edits[row, column].text(), self._wrong[row].text()[2:])
        return held

    def _make_row(self, row: int) -> None:
        line = 2 * row
        if row in self._lines.named_rows:
            self._add_edit(row, 0, line)
        elif row:
            name = _RowName(self._canvas, self._lines.rows[row - 1], self)
            self._names[row] = name
            self._grid.addWidget(name, line, 0)
        for column in range(1, len(self._lines.columns) + 1):
            named = self._lines.columns[column - 1] and (row == 0 or self._lines.rows[row - 1])
            if named or (row == 0 and not self._lines.columns[column - 1]):
                self._add_edit(row, column, line)
        wrong = Line(self._canvas, "", self, font="small", colour="now")
        wrong.hide()
        self._wrong[row] = wrong
        self._grid.addWidget(wrong, line + 1, 0, 1, len(self._lines.columns) + 1)

    def _add_edit(self, row: int, column: int, line: int) -> None:
        edit = FigureEdit(self)
        edit.setAccessibleName(self._spoken(row, column))
        if row == 0 or column == 0:
            edit.setFont(self._canvas.fonts.bold)
            edit.setPlaceholderText(self._lines.hints.get((row, column), ""))
        edit.entered.connect(lambda: self._entered(row, column))
        edit.looked_at.connect(lambda: self.row_chosen.emit(row))
        edit.sheet_pasted.connect(self.sheet_pasted)
        edit.step_asked.connect(lambda by: self._step(row, column, by))
        self.edits[row, column] = edit
        self._grid.addWidget(edit, line, column)

    def _spoken(self, row: int, column: int) -> str:
        names: Sequence[str] = (
            self._lines.rows[row - 1] if row else "",
            self._lines.columns[column - 1] if column else "",
        )
        said = ", ".join(name for name in names if name)
        return said or self._lines.hints.get((row, column), "")

    def _step(self, row: int, column: int, by: int) -> None:
        edit = self.edits.get((row + by, column))
        if edit is not None:
            edit.setFocus()
            edit.selectAll()

    def _entered(self, row: int, column: int) -> None:
        edit = self.edits[row, column]
        self._bad.discard((row, column))
        edit.setAccessibleDescription("")
        if not any(place[0] == row for place in self._bad):
            self._wrong[row].say("")
        try:
            self._enter(row, column, edit.text().strip())
        except ValueError as error:
            self._say_wrong(row, column, str(error))

    def _say_wrong(self, row: int, column: int, sentence: str) -> None:
        self._bad.add((row, column))
        self.edits[row, column].setAccessibleDescription(sentence)
        self._wrong[row].say(f"{_WRONG} {sentence}")

    def wrong_in(self, row: int) -> str:
        """What is said to be wrong under a row; empty when nothing is."""
        return "" if self._wrong[row].isHidden() else self._wrong[row].text()[2:]
