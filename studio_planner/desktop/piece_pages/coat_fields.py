"""The fields of a coat that only a coat has: its faces, and its colours."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QCheckBox, QGridLayout, QLineEdit, QWidget
from typing_extensions import override

from studio_planner.craft.pieces import EDGE, TOP, UNDERSIDE
from studio_planner.desktop.forms.field import Field
from studio_planner.desktop.forms.undo_keys import UndoKeys
from studio_planner.desktop.piece_pages.kind_words import face_word
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.desktop.canvas import Canvas

_FACES = (TOP, EDGE, UNDERSIDE)


class FacesField(Field):
    """The three faces to tick, and the names of areas of the top."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start without a face."""
        super().__init__(canvas, label, parent)
        self._shown = ""
        holder = QWidget(self)
        layout = QGridLayout(holder)
        layout.setContentsMargins(0, 0, 0, 0)
        self.boxes: dict[str, QCheckBox] = {}
        for column, face in enumerate(_FACES):
            box = QCheckBox(face_word(face), holder)
            box.setAccessibleName(f"{label}: {box.text()}")
            box.clicked.connect(lambda _checked: self.edited.emit())
            layout.addWidget(box, 0, column)
            self.boxes[face] = box
        self.areas = QLineEdit(holder)
        self.areas.setPlaceholderText(translate("pieces", "or areas by name: moon, river"))
        self.areas.setAccessibleName(translate("pieces", "Areas of the top, by name"))
        self.areas.editingFinished.connect(self._finished)
        UndoKeys(self.areas, self._unfinished)
        layout.addWidget(self.areas, 1, 0, 1, len(_FACES))
        self.hold(holder)
        self.setFocusProxy(self.boxes[TOP])

    def _unfinished(self) -> bool:
        return self.areas.text() != self._shown

    def _finished(self) -> None:
        if self._unfinished():
            self._shown = self.areas.text()
            self.edited.emit()

    @property
    @override
    def in_hand(self) -> bool:
        return self.areas.hasFocus() and self._unfinished()

    @override
    def value(self) -> frozenset[str]:
        ticked = {face for face, box in self.boxes.items() if box.isChecked()}
        named = {part.strip() for part in self.areas.text().split(",")} - {""}
        return frozenset(ticked | named)

    @override
    def show_value(self, value: Any) -> None:
        self.say_right()
        for face, box in self.boxes.items():
            box.setChecked(face in value)
        self._shown = ", ".join(sorted(set(value) - set(_FACES)))
        if self.areas.text() != self._shown:
            self.areas.setText(self._shown)
