"""A widget that scrolls in the page where it is larger than its room."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QFrame, QScrollArea

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget


def scrolled(widget: QWidget, parent: QWidget) -> QScrollArea:
    """Put a widget into an area that scrolls it, without a frame."""
    scroll = QScrollArea(parent)
    scroll.setFrameShape(QFrame.Shape.NoFrame)
    scroll.setWidgetResizable(True)
    scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    scroll.setWidget(widget)
    return scroll
