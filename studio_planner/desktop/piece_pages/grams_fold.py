"""How the grams of a coat come about, folded away until the maker asks."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget

from studio_planner.craft.settings import MassUnit
from studio_planner.desktop import words
from studio_planner.desktop.forms.fold import Fold
from studio_planner.desktop.quantities import Quantity, scale_of
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.grams import adding_up, together

if TYPE_CHECKING:
    from studio_planner.craft.amounts import CoatParts
    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas

_STEPS = {MassUnit.GRAM: 0.1, MassUnit.OUNCE: 0.001}
"""What `words.mass` shows of each unit, in that unit."""


class GramsFold(QWidget):
    """A verb, and under it a line for each part of the grams of one coat, with their sum."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Be folded, and about nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._lines: list[tuple[Line, Line]] = []
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(12)
        self._grid.setVerticalSpacing(1)
        self._grid.setColumnStretch(1, 1)
        self.fold = Fold(translate("pieces", "How these grams come about"), self._grid, self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.fold)

    @property
    def rows(self) -> list[tuple[str, str]]:
        """What stands there: the grams of each part and what it is."""
        shown = (pair for pair in self._lines if not pair[0].isHidden())
        return [(grams.text(), name.text()) for grams, name in shown]

    def show_parts(self, parts: CoatParts | None, units: Units) -> None:
        """Show where the grams of a coat go; None where there are none."""
        self.setVisible(parts is not None)
        if parts is None:
            return
        step = scale_of(Quantity.MASS, units).inside(_STEPS[units.mass])
        shown = adding_up(together([parts]), step)
        rows = [(words.mass(part, units), _name(key)) for key, part in shown.items() if part]
        whole = translate("pieces", "for this coat in all")
        rows.append((words.mass(sum(shown.values()), units), whole))
        cups = translate(
            "pieces",
            "more stays in its cups, if it is mixed by itself; a shared mix loses it once",
        )
        rows.append((words.mass(parts.cups, units), cups))
        self._say(rows)

    def _say(self, rows: list[tuple[str, str]]) -> None:
        while len(self._lines) < len(rows):
            self._add_row()
        for index, (grams, name) in enumerate(self._lines):
            said = rows[index] if index < len(rows) else ("", "")
            for line, text in zip((grams, name), said, strict=True):
                line.say(text)

    def _add_row(self) -> None:
        row = len(self._lines)
        grams = Line(self._canvas, "", self.fold, font="small_bold")
        grams.setWordWrap(False)
        name = Line(self._canvas, "", self.fold, font="small")
        top = Qt.AlignmentFlag.AlignTop
        self._grid.addWidget(grams, row, 0, top | Qt.AlignmentFlag.AlignRight)
        self._grid.addWidget(name, row, 1, top)
        self._lines.append((grams, name))


def _name(part: str) -> str:
    names = {
        "film": translate("pieces", "on its faces: area times film times density"),
        "edges": translate("pieces", "on the edge and the walls of a rim"),
        "drips": translate("pieces", "drips off"),
        "absorbed": translate("pieces", "is drunk by the bare blank"),
        "reserve": translate("pieces", "is put by in reserve"),
    }
    return names[part]
