"""The scroll bar of the time axis, under the room and for both the room and the timeline."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QScrollBar

from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.time_scale import TimeScale

_STEP = 40


class TimeScroll(QScrollBar):
    """Follows a time scale, and moves it."""

    def __init__(self, scale: TimeScale, parent: QWidget | None = None) -> None:
        """Follow `scale`."""
        super().__init__(Qt.Orientation.Horizontal, parent)
        self._scale = scale
        self._following = False
        self.setAccessibleName(translate("timeline", "Scroll through time"))
        self.setSingleStep(_STEP)
        scale.changed.connect(self._follow)
        self.valueChanged.connect(self._move)
        self._follow()

    def _follow(self) -> None:
        scale = self._scale
        whole = (scale.last - scale.first) / scale.seconds_per_pixel
        self._following = True
        self.setRange(0, max(0, round(whole - scale.width)))
        self.setPageStep(scale.width)
        self.setValue(round((scale.origin - scale.first) / scale.seconds_per_pixel))
        self._following = False

    def _move(self, value: int) -> None:
        scale = self._scale
        if not self._following:
            scale.show(scale.first + value * scale.seconds_per_pixel, scale.seconds_per_pixel)
