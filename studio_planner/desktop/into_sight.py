"""Scrolls the page until something on it is seen."""

from __future__ import annotations

from PySide6.QtCore import QPoint
from PySide6.QtWidgets import QScrollArea, QWidget


def into_sight(widget: QWidget) -> None:
    """Scroll whatever a widget lies in; of what is taller than its room the top is seen."""
    above = widget.parentWidget()
    while above is not None:
        inside = above.widget() if isinstance(above, QScrollArea) else None
        if isinstance(above, QScrollArea) and inside is not None:
            above.ensureWidgetVisible(widget)
            top = widget.mapTo(inside, QPoint(0, 0))
            above.ensureVisible(top.x(), top.y(), 0, 0)
        above = above.parentWidget()
