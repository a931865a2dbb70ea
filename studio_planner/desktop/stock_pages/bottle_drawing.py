"""A bottle seen from the side: as full as it is, hatched as far as it is reserved."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainterPath, QPen

from studio_planner.desktop.patterns import pattern

if TYPE_CHECKING:
    from PySide6.QtGui import QFont, QPainter

    from studio_planner.desktop.theme import Theme
    from studio_planner.services.stocks.stock_view import LotRow

_CAP, _NECK, _SHOULDER = 0.09, 0.17, 0.31
"""Where cap, neck and shoulder end, as shares of the height."""

_NECK_WIDTH, _CAP_WIDTH, _ROUND = 0.34, 0.42, 0.09
"""Shares of the width."""

_FULL = 0.24
"""How far down the level of a full bottle stands, as a share of the height."""

_TONE = 0.34
_LABEL_WIDE, _LABEL_HIGH, _LABEL_AT = 0.62, 0.2, 0.56


@dataclass(frozen=True, slots=True, kw_only=True)
class Filled:
    """What a bottle shows: shares of what it held when new, and the letter of its part."""

    left: float
    reserved: float
    opened: bool
    letter: str = ""


def filled(row: LotRow, letter: str) -> Filled:
    """How a bottle of the stock is drawn."""
    new = row.lot.new_g
    return Filled(
        left=min(1.0, row.level.left_g / new),
        reserved=min(1.0, (row.level.left_g - row.free_g) / new),
        opened=row.lot.opened is not None,
        letter=letter,
    )


def draw_bottle(
    painter: QPainter, theme: Theme, rect: QRectF, shown: Filled, font: QFont
) -> None:
    """Draw one bottle that fills `rect`, in strokes that can be told apart without colour."""
    outline = _outline(rect)
    full = rect.top() + _FULL * rect.height()
    deep = rect.bottom() - full
    level, free = (rect.bottom() - share * deep for share in (shown.left, _free(shown)))
    painter.save()
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme.colour("field"))
    painter.drawPath(outline)
    painter.setClipPath(outline, Qt.ClipOperation.IntersectClip)
    body = QRectF(rect.left(), level, rect.width(), rect.bottom() - level)
    painter.fillRect(body, theme.film_colour(_TONE))
    hatched = QRectF(rect.left(), level, rect.width(), free - level)
    painter.fillRect(hatched, pattern(painter, theme.colour("ink"), Qt.BrushStyle.BDiagPattern))
    if shown.left > 0.0:
        painter.setPen(QPen(theme.colour("ink"), 1.6))
        painter.drawLine(QPointF(rect.left(), level), QPointF(rect.right(), level))
    painter.restore()
    painter.setPen(QPen(theme.colour("ink"), 1.4))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(outline)
    _draw_cap(painter, theme, rect, opened=shown.opened)
    _draw_label(painter, theme, rect, shown.letter, font)


def _free(shown: Filled) -> float:
    return max(0.0, shown.left - shown.reserved)


def _outline(rect: QRectF) -> QPainterPath:
    wide, high, middle = rect.width(), rect.height(), rect.center().x()
    neck = _NECK_WIDTH * wide / 2.0
    top, below = rect.top() + _CAP * high, rect.top() + _NECK * high
    shoulder, corner = rect.top() + _SHOULDER * high, _ROUND * wide
    path = QPainterPath(QPointF(middle - neck, top))
    path.lineTo(middle - neck, below)
    path.cubicTo(middle - neck, shoulder, rect.left(), below, rect.left(), shoulder)
    path.lineTo(rect.left(), rect.bottom() - corner)
    path.quadTo(rect.left(), rect.bottom(), rect.left() + corner, rect.bottom())
    path.lineTo(rect.right() - corner, rect.bottom())
    path.quadTo(rect.right(), rect.bottom(), rect.right(), rect.bottom() - corner)
    path.lineTo(rect.right(), shoulder)
    path.cubicTo(rect.right(), below, middle + neck, shoulder, middle + neck, below)
    path.lineTo(middle + neck, top)
    path.closeSubpath()
    return path


def _draw_cap(painter: QPainter, theme: Theme, rect: QRectF, *, opened: bool) -> None:
    wide = _CAP_WIDTH * rect.width()
    cap = QRectF(rect.center().x() - wide / 2.0, rect.top(), wide, _CAP * rect.height() - 1.0)
    if opened:  # the cap lies beside the neck, so the neck stands open
        return
    painter.setBrush(theme.colour("ink"))
    painter.drawRoundedRect(cap, 1.5, 1.5)


def _draw_label(
    painter: QPainter, theme: Theme, rect: QRectF, letter: str, font: QFont
) -> None:
    if not letter:
        return
    wide, high = _LABEL_WIDE * rect.width(), max(_LABEL_HIGH * rect.height(), 16.0)
    paper = QRectF(
        rect.center().x() - wide / 2.0, rect.top() + _LABEL_AT * rect.height(), wide, high
    )
    painter.setBrush(theme.colour("paper"))
    painter.setPen(QPen(theme.colour("ink"), 1.0))
    painter.drawRect(paper)
    painter.setFont(font)
    painter.drawText(paper, Qt.AlignmentFlag.AlignCenter, letter)
