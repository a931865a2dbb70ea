"""The legend: every sign of the desk, drawn as it is drawn there, with what it means."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPen, QPolygonF
from PySide6.QtWidgets import QDialog, QGridLayout, QLabel, QWidget
from typing_extensions import override

from studio_planner.desktop.film_brushes import FilmBrushes
from studio_planner.desktop.ground_painter import draw_now
from studio_planner.desktop.ribbon_strokes import Strokes, draw_strokes
from studio_planner.desktop.tongue import marked, translate

if TYPE_CHECKING:
    from collections.abc import Callable

    from PySide6.QtGui import QPaintEvent

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.theme import Theme

    Draw = Callable[[QPainter, Theme], None]

_WIDE, _HIGH = 52, 26
_BAND = QRectF(8.0, 5.0, 36.0, 6.0)
_FILM = QRectF(2.0, 7.0, 48.0, 14.0)
_FRAME = [
    QLineF(8.0, 22.0, 8.0, 5.0),
    QLineF(8.0, 5.0, 44.0, 5.0),
    QLineF(44.0, 5.0, 44.0, 22.0),
]
_BLOCK = QRectF(23.0, 5.0, 5.0, 17.0)
_STEP = QRectF(22.0, 5.0, 8.0, 17.0)


def _shade(painter: QPainter, theme: Theme, *, colour: str, area: QRectF) -> None:
    painter.fillRect(area, theme.colour(colour))


def _now(painter: QPainter, theme: Theme) -> None:
    draw_now(painter, _HIGH, theme, _WIDE / 2.0)


def _film(painter: QPainter, theme: Theme) -> None:
    steps = round(_FILM.width())
    for step in range(steps):
        left = _FILM.left() + _FILM.width() * step / steps
        area = QRectF(left, _FILM.top(), _FILM.width() / steps, _FILM.height())
        painter.fillRect(area, theme.film_colour(step / (steps - 1)))
    wet = QRectF(_FILM.left(), _FILM.top(), _FILM.width() / 2.0, _FILM.height())
    _strokes(painter, theme, Strokes(ripples=[wet], edges=[_FILM]))


def _strokes(painter: QPainter, theme: Theme, strokes: Strokes) -> None:
    draw_strokes(painter, strokes, theme, FilmBrushes(theme))


def _drawn(strokes: Strokes) -> Draw:
    return lambda painter, theme: _strokes(painter, theme, strokes)


def _scuffs() -> list[QLineF]:
    return [QLineF(x, 21.0, x + 3.0, 14.0) for x in (11.0, 14.0, 17.0)]


_FLAG = QPolygonF([QPointF(24.0, 4.0), QPointF(31.0, 7.0), QPointF(24.0, 10.0)])

SIGNS: tuple[tuple[str, Draw], ...] = (
    (
        marked("legend", "Hands: somebody can work"),
        partial(_shade, colour="hands", area=QRectF(4.0, 11.0, 44.0, 4.0)),
    ),
    (
        marked("legend", "Night: nobody is awake"),
        partial(_shade, colour="night", area=QRectF(4, 0, 44, _HIGH)),
    ),
    (marked("legend", "Now"), _now),
    (marked("legend", "Work on a coat: weigh, mix, pour"), _drawn(Strokes(blocks=[_BLOCK]))),
    (marked("legend", "Film: amber and rippled while wet, plain when hard"), _film),
    (
        marked("legend", "Doorway: recoat is open, from post to post"),
        _drawn(Strokes(open=[_BAND], posts=_FRAME)),
    ),
    (
        marked("legend", "Hatched doorway: open, but nobody can work"),
        _drawn(Strokes(open=[_BAND], nobody=[_BAND], posts=_FRAME)),
    ),
    (
        marked("legend", "Dotted doorway: the plan does not use it"),
        _drawn(Strokes(open=[_BAND], missed=_FRAME)),
    ),
    (
        marked("legend", "Scuff mark: sand before this coat"),
        _drawn(Strokes(scuffs=_scuffs(), blocks=[_BLOCK])),
    ),
    (
        marked("legend", "Ring: test before this coat"),
        _drawn(Strokes(touches=[QPointF(17.0, 9.0)], blocks=[_BLOCK])),
    ),
    (
        marked("legend", "Wedges: pinned, planning leaves this coat at its time"),
        _drawn(Strokes(blocks=[_BLOCK], pins=[_BLOCK])),
    ),
    (marked("legend", "Step: turn, tape, trim or pack"), _drawn(Strokes(steps=[_STEP]))),
    (marked("legend", "Stippled step: sand"), _drawn(Strokes(steps=[_STEP], sanded=[_STEP]))),
    (
        marked("legend", "Flag: ready to handle, to pack, or fully cured"),
        _drawn(Strokes(poles=[QLineF(24.0, 4.0, 24.0, 22.0)], pennants=[_FLAG])),
    ),
)
"""What each sign means, and how it is drawn; the room says its own lines beside them."""


class Sign(QWidget):
    """One sign of the desk, by itself."""

    def __init__(self, canvas: Canvas, draw: Draw, parent: QWidget | None = None) -> None:
        """Draw with the colours of `canvas`."""
        super().__init__(parent)
        self._canvas = canvas
        self._draw = draw
        self.setFixedSize(_WIDE, _HIGH)
        canvas.redrawn.connect(self.update)

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        theme = self._canvas.theme
        with QPainter(self) as painter:
            painter.fillRect(self.rect(), theme.colour("paper"))
            self._draw(painter, theme)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(theme.colour("faint_rule"), 1.0))
            painter.drawRect(QRectF(0.5, 0.5, _WIDE - 1.0, _HIGH - 1.0))


class Legend(QDialog):
    """A small window beside the desk; the desk can be used while it stands."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """List every sign."""
        super().__init__(parent)
        self.setWindowTitle(translate("legend", "Legend"))
        layout = QGridLayout(self)
        layout.setContentsMargins(14, 12, 16, 12)
        layout.setHorizontalSpacing(12)
        layout.setVerticalSpacing(2)
        for row, (meaning, draw) in enumerate(SIGNS):
            layout.addWidget(Sign(canvas, draw, self), row, 0)
            layout.addWidget(QLabel(translate("legend", meaning), self), row, 1)
