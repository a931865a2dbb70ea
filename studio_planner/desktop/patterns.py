"""Hatchings and stipples that look alike at every scale of the screen."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtGui import QBrush, QTransform

if TYPE_CHECKING:
    from PySide6.QtCore import Qt
    from PySide6.QtGui import QColor, QPainter


def pattern(painter: QPainter, colour: QColor, style: Qt.BrushStyle) -> QBrush:
    """A brush of one of Qt's patterns, as coarse as on a screen of the plain scale.

    Qt draws a pattern in device pixels: at 200 % a stipple would be no more than a grey.
    """
    ratio = painter.device().devicePixelRatioF()
    brush = QBrush(colour, style)
    if ratio != 1.0:
        brush.setTransform(QTransform.fromScale(ratio, ratio))
    return brush
