"""Takes widgets out of layouts for good."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtWidgets import QLayout, QWidget


def take_out(layout: QLayout, *widgets: QWidget) -> None:
    """Take widgets out of a layout; till Qt deletes them nobody sees them."""
    for widget in widgets:
        layout.removeWidget(widget)
        widget.hide()
        widget.deleteLater()


def empty(layout: QLayout) -> None:
    """Take everything out of a layout that holds widgets and stretches."""
    while (item := layout.takeAt(0)) is not None:
        widget = item.widget()
        if widget is not None:
            take_out(layout, widget)
