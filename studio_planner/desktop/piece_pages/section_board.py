"""The stack of a piece in section, drawn, magnified, and with a coat chosen."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget
from typing_extensions import override

from studio_planner.craft.errors import InvalidEntry
from studio_planner.desktop import words
from studio_planner.desktop.piece_pages.section_painter import SectionPainter
from studio_planner.desktop.piece_pages.section_picture import SectionPicture
from studio_planner.desktop.piece_pages.section_shape import fitting_scale
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.grams import grams_of

if TYPE_CHECKING:
    from collections.abc import Mapping

    from PySide6.QtGui import QPaintEvent, QResizeEvent

    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.piece_pages.section_drag import Drag
    from studio_planner.services.editing.stack_faults import StackFault

_LEAST_ROOM, _MOST_ROOM = 120.0, 420.0
"""Pixels that the films of a stack fill when nothing is magnified."""

_NARROWEST = 320
STEP = 1.25
_LEAST_SCALE, _MOST_SCALE = 4.0, 600.0


class SectionBoard(QWidget):
    """A piece in section with one coat chosen; what a drag would make of it is drawn too."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._studio: Studio | None = None
        self._piece: Piece | None = None
        self._planned: Mapping[str, PlannedCoat] = {}
        self._faults: tuple[StackFault, ...] = ()
        self._near = 1.0
        self._room = _LEAST_ROOM
        self._drag: Drag | None = None
        self.chosen = ""
        self.picture: SectionPicture | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumWidth(_NARROWEST)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(translate("pieces", "The stack in section"))
        canvas.redrawn.connect(self.update)

    # What is shown

    def show_piece(
        self,
        studio: Studio | None,
        piece: Piece | None,
        planned: Mapping[str, PlannedCoat],
        faults: tuple[StackFault, ...],
    ) -> None:
        """Show a piece; the chosen coat stays chosen where it is in its stack."""
        self._studio, self._piece = studio, piece
        self._planned, self._faults = planned, faults
        keys = [coat.key for coat in piece.stack] if piece else []
        if self._drag is not None and self._drag.key not in keys:
            self._drag = None
        if self.chosen not in keys:
            self.chosen = keys[-1] if keys else ""
        self._lay_out()

    def choose(self, key: str) -> None:
        """Choose a coat."""
        self.chosen = key
        self._say()
        self.update()

    def nearer(self, times: float = STEP) -> None:
        """Magnify the films; less than 1 goes farther away."""
        if self._piece is not None:
            fitting = fitting_scale(self._piece, self._room)
            least, most = _LEAST_SCALE / fitting, _MOST_SCALE / fitting
            self._near = min(max(self._near * times, least), most)
            self._lay_out()

    def set_room(self, pixels: float) -> None:
        """Let the films of a whole stack fill so many pixels, within reason."""
        room = min(max(pixels, _LEAST_ROOM), _MOST_ROOM)
        if room != self._room:
            self._room = room
            self._lay_out()

    def whole(self) -> None:
        """Show the whole stack again."""
        self._near = 1.0
        self._lay_out()

    @property
    def _room_across(self) -> int:
        """The pixels that are seen: magnified, the section may be wider than that."""
        around = self.parentWidget()
        return self.width() if around is None else around.width()

    @property
    def scale(self) -> float:
        """Pixels to a mm of film."""
        if self._drag is not None and self._drag.scale:
            return self._drag.scale
        return self._near * (fitting_scale(self._piece, self._room) if self._piece else 1.0)

    def _lay_out(self) -> None:
        piece = self._dragged_piece()
        if self._studio is None or piece is None:
            self.picture = None
        else:
            size = (float(max(self._room_across, _NARROWEST)), self.scale)
            self.picture = SectionPicture(
                self._studio, piece, self._planned, self._faults, self._canvas.fonts, size
            )
            self.setFixedHeight(round(self.picture.height))
            self.setMinimumWidth(max(_NARROWEST, round(self.picture.least_width)))
        self._say()
        self.update()

    def _dragged_piece(self) -> Piece | None:
        drag, piece = self._drag, self._piece
        if drag is None or drag.film is None or piece is None:
            return piece
        stack = tuple(
            replace(coat, film_mm=drag.film) if coat.key == drag.key else coat
            for coat in piece.stack
        )
        try:
            return replace(piece, stack=stack)
        except InvalidEntry:
            return piece

    def _say(self) -> None:
        spoken = self.picture.spoken if self.picture else ""
        said = self.picture.said.get(self.chosen) if self.picture else None
        chosen = (
            translate("pieces", "Chosen: {coat}. ").format(coat=said.spoken) if said else ""
        )
        self.setAccessibleDescription(chosen + spoken)

    @override
    def sizeHint(self) -> QSize:
        return QSize(480, round(self.picture.height) if self.picture else 200)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self._lay_out()

    @override
    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() is QEvent.Type.FontChange:
            self._lay_out()

    # Painting

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self) as painter:
            if self.picture is not None:
                SectionPainter(painter, self._canvas, self.picture).paint(self.chosen)
                self._draw_drag(painter, self.picture)
            if self.hasFocus():
                painter.setPen(QPen(self._canvas.theme.colour("window"), 2.0))
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.drawRect(QRectF(self.rect()).adjusted(1, 1, -1, -1))

    def _draw_drag(self, painter: QPainter, picture: SectionPicture) -> None:
        drag = self._drag
        if drag is None or self._studio is None:
            return
        theme = self._canvas.theme
        if drag.target:
            stratum = picture.shape.stratum(drag.target)
            if stratum is not None:
                painter.setBrush(Qt.BrushStyle.NoBrush)
                painter.setPen(QPen(theme.colour("window"), 3.0))
                painter.drawPath(stratum.path)
        if drag.film is not None:
            _draw_tag(painter, self._canvas, drag.at, self.film_words)

    @property
    def film_words(self) -> str:
        """What stands beside a film that is being dragged: its thickness and its grams."""
        drag, studio, piece = self._drag, self._studio, self._dragged_piece()
        if drag is None or drag.film is None or studio is None or piece is None:
            return ""
        film = words.film(drag.film, studio.units)
        grams = grams_of(studio, piece, piece.coat(drag.key))
        if grams is None:
            return film
        return f"{film}, {words.mass(grams, studio.units)}"


def _draw_tag(painter: QPainter, canvas: Canvas, at: QPointF, text: str) -> None:
    font = canvas.fonts.bold
    metrics = QFontMetricsF(font)
    size = metrics.horizontalAdvance(text) + 14.0, metrics.height() + 6.0
    box = QRectF(at.x() + 14.0, max(at.y() - 30.0, 2.0), *size)
    painter.setPen(QPen(canvas.theme.colour("ink"), 1.0))
    painter.setBrush(QColor(canvas.theme.colour("field")))
    painter.drawRect(box)
    painter.setFont(font)
    painter.drawText(box, Qt.AlignmentFlag.AlignCenter, text)
