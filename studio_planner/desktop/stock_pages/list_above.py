"""A list above what is chosen of it where the window is too narrow for both beside."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QHBoxLayout, QWidget

if TYPE_CHECKING:
    from studio_planner.desktop.forms.noun_list import NounList

_LIST_WIDTH, _LOW = 250, 150
_ROOM_FOR_BOTH = 640
_NO_LIMIT = 16_777_215
"""Qt's own largest size."""


class ListAbove(QHBoxLayout):
    """Lays a list and the rest of a section out in it, and again whenever it is resized."""

    def __init__(self, section: QWidget, things: NounList, rest: QWidget) -> None:
        """Lie in the section as its layout."""
        super().__init__(section)
        self._things = things
        self.setContentsMargins(14, 8, 0, 12)
        self.addWidget(things)
        self.addWidget(rest, 1)

    def fit(self, width: int) -> None:
        """Lay out for a section so many pixels wide."""
        things, beside = self._things, width >= _ROOM_FOR_BOTH
        self.setDirection(self.Direction.LeftToRight if beside else self.Direction.TopToBottom)
        own = max(_LIST_WIDTH, things.minimumSizeHint().width())
        things.setMinimumWidth(own)
        things.setMaximumWidth(own if beside else _NO_LIMIT)
        things.setMaximumHeight(_NO_LIMIT if beside else _LOW)
