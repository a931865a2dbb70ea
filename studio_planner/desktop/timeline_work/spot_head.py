"""The head of the lanes by spot: the name of each spot, its place and its size."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QFontMetrics, QPainter, QPen
from PySide6.QtWidgets import QHeaderView
from typing_extensions import override

from studio_planner.desktop import words
from studio_planner.desktop.measures import LANE_HEAD_WIDTH
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtGui import QPaintEvent
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.timeline_work.spot_model import SpotModel
    from studio_planner.services.moving.spot_lanes import SpotLane


class SpotHead(QHeaderView):
    """The spots by name, each with its place and its size."""

    def __init__(self, canvas: Canvas, model: SpotModel, parent: QWidget) -> None:
        """Draw from `canvas` and `model`."""
        super().__init__(Qt.Orientation.Vertical, parent)
        self._canvas = canvas
        self._spots = model
        self.setAccessibleName(translate("spots", "Spots"))
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setSectionResizeMode(QHeaderView.ResizeMode.Fixed)

    @override
    def sizeHint(self) -> QSize:
        size = super().sizeHint()
        size.setWidth(LANE_HEAD_WIDTH)
        return size

    @override
    def paintEvent(self, event: QPaintEvent) -> None:
        with QPainter(self.viewport()) as painter:
            painter.fillRect(self.viewport().rect(), self._canvas.theme.colour("paper"))
        super().paintEvent(event)

    @override
    def paintSection(self, painter: QPainter, rect: QRect, logicalIndex: int) -> None:
        theme, fonts = self._canvas.theme, self._canvas.fonts
        painter.save()
        painter.fillRect(rect, theme.colour("paper"))
        painter.setPen(QPen(theme.colour("faint_rule"), 1.0))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        name, below = self._lines(self._spots.spots[logicalIndex])
        bold, small = QFontMetrics(fonts.bold), QFontMetrics(fonts.small)
        room = QRect(rect.left() + 14, rect.top() + 12, rect.width() - 20, rect.height())
        painter.setPen(theme.colour("ink"))
        painter.setFont(fonts.bold)
        cut = Qt.TextElideMode.ElideRight
        painter.drawText(room, 0, bold.elidedText(name, cut, room.width()))
        painter.setPen(theme.colour("quiet"))
        painter.setFont(fonts.small)
        room.translate(0, bold.height())
        painter.drawText(room, 0, small.elidedText(below, cut, room.width()))
        painter.restore()

    def _lines(self, lane: SpotLane) -> tuple[str, str]:
        view = self._canvas.view
        if view is None:
            return lane.spot.name, lane.place.name
        units = view.studio.units
        long, wide = lane.spot.length_mm, lane.spot.width_mm
        size = f"{words.length(long, units)} × {words.length(wide, units)}"  # noqa: RUF001
        return lane.spot.name, f"{lane.place.name}, {size}"
