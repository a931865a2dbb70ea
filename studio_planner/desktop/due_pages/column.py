"""Widgets one below the other, each as high as its words need at the width that there is."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QWidget
from typing_extensions import override

if TYPE_CHECKING:
    from collections.abc import Iterable

_GAP, _EDGE = 4, 8


class Column(QWidget):
    """What is put into it lies in its place at once.

    A layout within layouts finds its height over several turns of the event loop, and a scroll
    area squeezes it meanwhile: what is painted in between lies over itself.
    """

    def __init__(self, parent: QWidget) -> None:
        """Hold nothing yet."""
        super().__init__(parent)
        self._members: tuple[QWidget, ...] = ()

    def put(self, members: Iterable[QWidget]) -> None:
        """Hold these children in this order; those that are hidden take no room."""
        self._members = tuple(members)
        self._place()

    def _place(self) -> None:
        width, top = max(self.width() - _EDGE, 0), 0
        for member in self._members:
            if member.isHidden():
                continue
            layout = member.layout()
            if layout is not None:
                layout.activate()
            high = member.heightForWidth(width)
            member.setGeometry(0, top, width, high)
            top += high + _GAP
        self.setMinimumHeight(max(top - _GAP, 0))

    @override
    def event(self, event: QEvent) -> bool:
        taken = super().event(event)
        if event.type() in {QEvent.Type.LayoutRequest, QEvent.Type.Resize}:
            self._place()
        return taken
