"""A list and what is chosen in it: side by side, or below each other where that is narrow."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QBoxLayout, QFrame, QScrollArea, QWidget
from typing_extensions import override

if TYPE_CHECKING:
    from PySide6.QtGui import QResizeEvent

_LIST_WIDTH, _WIDEST = 250, 900


class ListBeside(QWidget):
    """Side by side the list stays where it is; below each other both scroll together."""

    def __init__(self, side: QWidget, column: QWidget, wide: int, parent: QWidget) -> None:
        """Lay `column` beside the list `side` from the width `wide` on, else below it.

        Beside it the column is never wider than it may be, below it as wide as the page.
        """
        super().__init__(parent)
        self._side, self._column, self._wide = side, column, wide
        self._beside, self._shown = False, True
        self._widest = min(column.maximumWidth(), _WIDEST)
        self.area = QScrollArea(self)
        self.area.setFrameShape(QFrame.Shape.NoFrame)
        self.area.setWidgetResizable(True)
        self.area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._whole = QBoxLayout(QBoxLayout.Direction.LeftToRight, self)
        self._whole.setContentsMargins(14, 12, 0, 12)
        self._whole.setSpacing(24)
        self._whole.addWidget(side)
        self._whole.addWidget(self.area, 1)
        self._whole.addWidget(column)
        self._arrange(beside=False)

    def show_column(self, *, shown: bool) -> None:
        """Show what is chosen, or nothing beside the list."""
        self._shown = shown
        self._column.setVisible(shown)

    @override
    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        beside = self.width() >= self._wide
        if beside is not self._beside:
            self._arrange(beside=beside)

    def _arrange(self, *, beside: bool) -> None:
        self._beside = beside
        # Above the other the list may be as wide as the page.
        own = max(_LIST_WIDTH, self._side.minimumSizeHint().width())
        self._side.setMinimumWidth(own)
        self._side.setMaximumWidth(own if beside else _WIDEST)
        self._column.setMaximumWidth(self._widest if beside else _WIDEST)
        if beside:
            self._whole.removeWidget(self._column)
            self.area.setWidget(self._column)
        elif self.area.widget() is self._column:
            self.area.takeWidget()
            self._whole.addWidget(self._column)
        self._column.setVisible(self._shown)
        self.area.setVisible(beside)
        self._whole.setDirection(
            QBoxLayout.Direction.LeftToRight if beside else QBoxLayout.Direction.TopToBottom
        )
