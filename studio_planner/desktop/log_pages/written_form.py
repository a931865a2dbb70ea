"""A form that is entered by a verb: until then fields are only filled in."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from typing_extensions import override

from studio_planner.desktop.forms.form import Form

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from PySide6.QtWidgets import QWidget

    from studio_planner.desktop.page import PageDesk

WRITE = "write"
"""Under this name everything that the fields say is entered."""


class WrittenForm(Form):
    """Tells `edited` of each field that was filled in, and enters all of them with WRITE."""

    def __init__(
        self,
        desk: PageDesk,
        enter: Callable[[Mapping[str, Any]], object],
        edited: Callable[[str], object],
        parent: QWidget | None = None,
    ) -> None:
        """Start without fields."""
        super().__init__(desk.canvas, lambda _name, values: enter(values), parent)
        self._desk = desk
        self._edited = edited

    @override
    def enter(self, name: str) -> bool:
        if name == WRITE:
            taken = super().enter(name)
            if not taken:
                # The news of the entry before would read as if this one were in the log.
                self._desk.notice.pass_by()
            return taken
        self.fields[name].say_right()
        self._edited(name)
        return True
