"""Times that stand at now until the maker sets them back."""

from __future__ import annotations

from typing import TYPE_CHECKING

from typing_extensions import override

from studio_planner.desktop.forms.moment_field import MomentField

if TYPE_CHECKING:
    from datetime import datetime

    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.canvas import Canvas


class NowField(MomentField):
    """An instant that goes along with the clock until it is set by hand."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Go along with the clock."""
        super().__init__(canvas, label, parent)
        self.follows = True

    def follow(self, now: datetime) -> None:
        """Stand at `now` (aware), unless it was set by hand, or is being typed into."""
        if self.follows and not self.in_hand:
            wrong = self.wrong
            self.show_value(now.replace(microsecond=0))
            if wrong:
                self.say_wrong(wrong)

    def set_back(self, value: datetime) -> None:
        """Stand at another instant."""
        self.follows = False
        self.show_value(value)

    @override
    def _finished(self) -> None:
        if self.value() != self._shown:
            self.follows = False
        super()._finished()
