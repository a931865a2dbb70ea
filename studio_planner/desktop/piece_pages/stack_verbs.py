"""The verbs over a section, in words: add above, copy, remove, nearer, whole."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QMenu, QPushButton, QWidget

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import CoatKind
from studio_planner.desktop.piece_pages.section_fill import LETTERS
from studio_planner.desktop.studio_pages.lines import LEAST_TARGET, Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping

if TYPE_CHECKING:
    from studio_planner.desktop.canvas import Canvas

_ROOM_FOR_ARROW = 14


def section_hint(canvas: Canvas, parent: QWidget) -> Line:
    """A line on what mouse and keys do in a section."""
    said = translate(
        "pieces",
        "Drag a face to make its film thicker, a coat to move it. Keys: up and down "
        "choose, Alt moves, left and right change the film.",
    )
    return Line(canvas, said, parent, font="small", colour="quiet")


class StackVerbs(QWidget):
    """A row of verbs.

    Signals:
        add_asked: the kind of coat to add above the chosen one.
        copy_asked, remove_asked: what to do with the chosen coat.
        nearer_asked, whole_asked: how to look at it.
    """

    add_asked = Signal(CoatKind)
    copy_asked = Signal()
    remove_asked = Signal()
    nearer_asked = Signal()
    whole_asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        """Offer every kind of coat."""
        super().__init__(parent)
        self.add_button = QPushButton(translate("pieces", "Add above"), self)
        self.add_menu = QMenu(self.add_button)
        for kind in CoatKind:
            action = self.add_menu.addAction(f"{LETTERS[kind]}   {kind_word(kind)}")
            action.triggered.connect(lambda _on=False, kind=kind: self.add_asked.emit(kind))
        self.add_button.setMenu(self.add_menu)
        self.add_button.setMinimumHeight(LEAST_TARGET)
        self.add_button.setMinimumWidth(self.add_button.sizeHint().width() + _ROOM_FOR_ARROW)
        said = translate("pieces", "Add a coat above the chosen one")
        self.add_button.setAccessibleName(said)
        of, films = translate("pieces", "the chosen coat"), translate("pieces", "the films")
        self.copy_button = verb(
            translate("pieces", "Copy"), self.copy_asked.emit, self, about=of
        )
        self.remove_button = verb(
            translate("pieces", "Remove"), self.remove_asked.emit, self, about=of
        )
        self.nearer_button = verb(
            translate("pieces", "Nearer"), self.nearer_asked.emit, self, about=films
        )
        self.whole_button = verb(
            translate("pieces", "Whole"), self.whole_asked.emit, self, about=films
        )
        groups = Wrapping(across=24)
        groups.add(
            _group(self.add_button, self.copy_button, self.remove_button),
            _group(self.nearer_button, self.whole_button),
        )
        self.setLayout(groups)


def _group(*buttons: QPushButton) -> QWidget:
    """Buttons that stay side by side."""
    group = QWidget()
    row = QHBoxLayout(group)
    row.setContentsMargins(0, 0, 0, 0)
    row.setSpacing(6)
    for button in buttons:
        row.addWidget(button)
    return group
