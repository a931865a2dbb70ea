"""A widget that is as high as its words need, whose lines wrap at the width that there is."""

from __future__ import annotations

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QWidget
from typing_extensions import override

_LAID_OUT = frozenset({QEvent.Type.LayoutRequest, QEvent.Type.Resize})


class AsHighAsNeeded(QWidget):
    """Never lower than its layout needs at its width.

    A scroll area asks for that once, before all that is new in it knows how high it is, and
    squeezes it meanwhile.
    """

    @override
    def event(self, event: QEvent) -> bool:
        laid_out = event.type() in _LAID_OUT  # asked before an event that ends the widget
        taken = super().event(event)
        layout = self.layout() if laid_out else None
        if layout is not None:
            self.setMinimumHeight(layout.totalHeightForWidth(self.width()))
        return taken
