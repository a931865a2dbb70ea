"""The stack of a piece in section, worked on by mouse and keys."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from typing_extensions import override

from studio_planner.craft.pieces import CoatKind
from studio_planner.desktop.piece_pages.section_board import STEP, SectionBoard
from studio_planner.desktop.piece_pages.section_drag import Drag, dragged_film
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtCore import QPointF
    from PySide6.QtGui import QKeyEvent, QMouseEvent, QWheelEvent

    from studio_planner.craft.pieces import Coat
    from studio_planner.desktop.piece_pages.section_picture import SectionPicture

_START_DRAG = 6.0
FILM_STEP_MM = 0.1
_KEYS = Qt.Key


class StackSection(SectionBoard):
    """A piece in section; a coat is chosen, moved and made thicker on it.

    Signals:
        coat_chosen: the key of a coat.
        film_asked: (key, mm) a coat's film was drawn to another thickness.
        move_asked: (key, key) a coat takes the place of another in the stack.
        add_asked, copy_asked, remove_asked: what keys ask for the chosen coat.
        cannot: a sentence on why a key did nothing.
    """

    coat_chosen = Signal(str)
    film_asked = Signal(str, float)
    move_asked = Signal(str, str)
    add_asked = Signal()
    copy_asked = Signal()
    remove_asked = Signal()
    cannot = Signal(str)

    # The mouse

    @override
    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.setFocus(Qt.FocusReason.MouseFocusReason)
        picture, point = self.picture, event.position()
        if picture is None or event.button() is not Qt.MouseButton.LeftButton:
            return
        grip = self._free_grip(picture, point)
        key = grip or picture.coat_at(point)
        if not key:
            return
        scale = self.scale if grip else 0.0
        self._drag = Drag(key, point, film_start=self._film_of(key), scale=scale)
        if key != self.chosen:
            self.choose(key)
            self.coat_chosen.emit(key)

    def _free_grip(self, picture: SectionPicture, point: QPointF) -> str:
        key = picture.grips(point, self.chosen)
        if not key or picture.said[key].poured:
            return ""
        return "" if picture.piece.coat(key).kind is CoatKind.LEAF else key

    def _film_of(self, key: str) -> float:
        return self._piece.coat(key).film_mm if self._piece else 0.0

    @override
    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        picture, drag, point = self.picture, self._drag, event.position()
        if picture is None:
            return
        if drag is None:
            self._show_cursor(picture, point)
            return
        if (point - drag.start).manhattanLength() < _START_DRAG and not drag.moved:
            return
        drag.moved, drag.at = True, point
        if drag.scale:
            stratum = picture.shape.stratum(drag.key)
            if stratum is not None:
                drag.film = dragged_film(drag, stratum.outward, FILM_STEP_MM)
            self._lay_out()
        else:
            drag.target = picture.dropped_on(drag.key, point)
            self.update()

    def _show_cursor(self, picture: SectionPicture, point: QPointF) -> None:
        grip = self._free_grip(picture, point)
        stratum = picture.shape.stratum(grip)
        shape = Qt.CursorShape.ArrowCursor
        if stratum is not None:
            upright = stratum.outward.y() != 0.0
            shape = Qt.CursorShape.SizeVerCursor if upright else Qt.CursorShape.SizeHorCursor
        elif picture.coat_at(point):
            shape = Qt.CursorShape.PointingHandCursor
        self.setCursor(shape)

    @override
    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        drag, self._drag = self._drag, None
        self._lay_out()
        if drag is None or not drag.moved:
            return
        if drag.film is not None and drag.film != drag.film_start:
            self.film_asked.emit(drag.key, drag.film)
        elif drag.target:
            self.move_asked.emit(drag.key, drag.target)

    @override
    def wheelEvent(self, event: QWheelEvent) -> None:
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.nearer(STEP if event.angleDelta().y() > 0 else 1.0 / STEP)
            event.accept()
        else:
            event.ignore()

    # Keys

    @override
    def keyPressEvent(self, event: QKeyEvent) -> None:
        alt = bool(event.modifiers() & Qt.KeyboardModifier.AltModifier)
        does = self._key_verbs(alt=alt).get(_KEYS(event.key()))
        if does is None or self.picture is None:
            super().keyPressEvent(event)
            return
        does()

    def _key_verbs(self, *, alt: bool) -> dict[Qt.Key, Callable[[], object]]:
        if alt:
            return {
                _KEYS.Key_Up: lambda: self._move(-1),
                _KEYS.Key_Down: lambda: self._move(1),
            }
        return {
            _KEYS.Key_Up: lambda: self._step(-1),
            _KEYS.Key_Down: lambda: self._step(1),
            _KEYS.Key_Right: lambda: self._thicken(1),
            _KEYS.Key_Left: lambda: self._thicken(-1),
            _KEYS.Key_Plus: self.nearer,
            _KEYS.Key_Minus: lambda: self.nearer(1.0 / STEP),
            _KEYS.Key_Insert: self.add_asked.emit,
            _KEYS.Key_Delete: self.remove_asked.emit,
            _KEYS.Key_Escape: self._let_go,
        }

    def _step(self, by: int) -> None:
        other = self.picture.neighbour(self.chosen, by) if self.picture else ""
        if other and other != self.chosen:
            self.choose(other)
            self.coat_chosen.emit(other)

    def _move(self, by: int) -> None:
        other = self.picture.beside(self.chosen, by) if self.picture else ""
        if other:
            self.move_asked.emit(self.chosen, other)
        else:
            self.cannot.emit(
                translate("pieces", "There is no coat on that side to change places with.")
            )

    def _thicken(self, by: int) -> None:
        coat = self._chosen_coat
        if coat is None or coat.kind is CoatKind.LEAF:
            return
        film = round(round(coat.film_mm / FILM_STEP_MM + by) * FILM_STEP_MM, 4)
        if film >= FILM_STEP_MM:
            self.film_asked.emit(coat.key, film)

    @property
    def _chosen_coat(self) -> Coat | None:
        stack = self._piece.stack if self._piece else ()
        return next((coat for coat in stack if coat.key == self.chosen), None)

    def _let_go(self) -> None:
        self._drag = None
        self._lay_out()
