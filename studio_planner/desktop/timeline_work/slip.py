"""A slip of paper beside a pour in the hand: a heading and every sentence about it, whole."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, NamedTuple

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import QFontMetricsF, QPen

if TYPE_CHECKING:
    from PySide6.QtCore import QSizeF
    from PySide6.QtGui import QPainter

    from studio_planner.desktop.fonts import Fonts
    from studio_planner.desktop.theme import Theme

_WIDEST = 420.0
_PAD, _GAP = 8.0, 3.0
_SIGN = 16.0
"""Left of a sentence there is room for the sign that says whether it forbids the drop."""

_WRAPPED = Qt.TextFlag.TextWordWrap
_CLEAR = 4.0


@dataclass(frozen=True, slots=True)
class SlipLine:
    """A sentence of a slip, and whether it forbids the drop."""

    words: str
    forbids: bool = False


@dataclass(frozen=True, slots=True)
class Slip:
    """What is written on a slip."""

    heading: str
    lines: tuple[SlipLine, ...] = ()

    @property
    def forbidden(self) -> bool:
        """Whether any sentence forbids the drop."""
        return any(line.forbids for line in self.lines)


class LaidSlip(NamedTuple):
    """A slip with a place for each of its parts, from its upper left corner on."""

    slip: Slip
    size: QRectF
    heading: QRectF
    lines: tuple[QRectF, ...]


def laid_out(slip: Slip, fonts: Fonts, room: float) -> LaidSlip:
    """Wrap a slip so that it is no wider than `room` pixels; nothing is cut short."""
    bold, small = QFontMetricsF(fonts.bold), QFontMetricsF(fonts.small)
    widest = max(min(_WIDEST, room), 6.0 * _SIGN) - 2.0 * _PAD
    head = bold.boundingRect(QRectF(0.0, 0.0, widest, 1e4), _WRAPPED, slip.heading)
    y = _PAD + head.height()
    lines: list[QRectF] = []
    for line in slip.lines:
        area = QRectF(0.0, 0.0, widest - _SIGN, 1e4)
        found = small.boundingRect(area, _WRAPPED, line.words)
        y += _GAP
        lines.append(QRectF(_PAD + _SIGN, y, found.width() + 1.0, found.height()))
        y += found.height()
    width = max([head.width() + 2.0, *(line.width() + _SIGN for line in lines)])
    heading = QRectF(_PAD, _PAD, width, head.height())
    return LaidSlip(slip, QRectF(0.0, 0.0, width + 2.0 * _PAD, y + _PAD), heading, tuple(lines))


def beside(laid: LaidSlip, lane: QRectF, x: float, view: QSizeF) -> QPointF:
    """Where a slip lies: above a lane where there is room, else below it, inside the view."""
    width, height = laid.size.width(), laid.size.height()
    above, below = lane.top() - height - _CLEAR, lane.bottom() + _CLEAR
    y = above if above >= 0.0 else below
    if y + height > view.height():
        y = max(view.height() - height - _CLEAR, 0.0)
    left = min(max(x, 2.0), max(view.width() - width - 2.0, 2.0))
    return QPointF(round(left) + 0.5, round(y) + 0.5)


def draw_slip(
    painter: QPainter, laid: LaidSlip, at: QPointF, theme: Theme, fonts: Fonts
) -> None:
    """Draw a slip with its upper left corner at a point."""
    slip = laid.slip
    painter.save()
    painter.translate(at)
    painter.setPen(QPen(theme.colour("now" if slip.forbidden else "ink"), 1.4))
    painter.setBrush(theme.colour("panel"))
    painter.drawRect(laid.size)
    painter.setPen(theme.colour("ink"))
    painter.setFont(fonts.bold)
    painter.drawText(laid.heading, _WRAPPED, slip.heading)
    painter.setFont(fonts.small)
    for line, place in zip(slip.lines, laid.lines, strict=True):
        _draw_sign(painter, QPointF(_PAD + 4.0, place.top()), theme, fonts, line)
        painter.setPen(theme.colour("ink"))
        painter.drawText(place, _WRAPPED, line.words)
    painter.restore()


def _draw_sign(
    painter: QPainter, at: QPointF, theme: Theme, fonts: Fonts, line: SlipLine
) -> None:
    """A cross beside what forbids the drop, a short dash beside what only follows from it."""
    middle = at.y() + fonts.small_height / 2.0
    left, right = at.x(), at.x() + 6.0
    if line.forbids:
        painter.setPen(QPen(theme.colour("now"), 1.8))
        up, down = middle - 3.0, middle + 3.0
        painter.drawLines([QLineF(left, up, right, down), QLineF(left, down, right, up)])
    else:
        painter.setPen(QPen(theme.colour("quiet"), 1.4))
        painter.drawLine(QLineF(left, middle, right, middle))
