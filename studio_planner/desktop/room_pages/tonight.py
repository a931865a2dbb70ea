"""Over the room's air on the plan: another temperature for some hours, tonight or later."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop.forms.fields import ChoiceField
from studio_planner.desktop.room_pages.spell_list import SpellList
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.places import Place
    from studio_planner.desktop.timeline_work.work_desk import WorkDesk
    from studio_planner.services.desk import DeskView


class Tonight(QWidget):
    """The form, and the list of what is to come besides the week, while they are asked for."""

    def __init__(self, desk: WorkDesk, parent: QWidget | None = None) -> None:
        """Lie over the air, asking for nothing."""
        super().__init__(parent)
        self._desk = desk
        self._view: DeskView | None = None
        self.place = ChoiceField(desk.canvas, translate("room", "Where"), parent=self)
        self.spells = SpellList(desk, self)
        self.spells.form.lead_with(self.place)
        self.setAutoFillBackground(True)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(14, 8, 14, 8)
        layout.addWidget(self.spells)
        self.place.edited.connect(self._show_place)
        self.spells.made.connect(lambda said: desk.work_line.say(f"{said}."))
        self.spells.left.connect(self.hide)
        desk.canvas.recoloured.connect(self._recolour)
        self._recolour()
        self.hide()

    @property
    def _place(self) -> Place | None:
        places = () if self._view is None else self._view.studio.places
        return next((one for one in places if one.key == self.place.value()), None)

    def ask(self, view: DeskView | None, start: datetime | None = None) -> None:
        """Ask for the coming night, or for the hours from `start` on, in the first room."""
        if view is None or view.backdrop.room is None:
            said = translate("room", "There is no room yet: add one on the page Studio.")
            self._desk.work_line.say(said)
            return
        self.show()
        self.show_view(view)
        self.place.show_value(view.backdrop.room.key)
        self._show_place()
        self.spells.open(start)

    def show_view(self, view: DeskView | None) -> None:
        """Show the studio as it is now; what is being typed stays."""
        self._view = view
        if self.isHidden() or view is None:
            return
        places = view.studio.places
        self.place.offer([(one.key, one.name) for one in places])
        self.place.setVisible(len(places) > 1)
        if self._place is None:
            self.hide()
        else:
            self._show_place()

    def _show_place(self) -> None:
        if self._view is not None and self._place is not None:
            self.spells.show_place(self._view, self._place)

    def _recolour(self) -> None:
        theme = self._desk.canvas.theme
        palette = theme.palette
        palette.setColor(palette.ColorRole.Window, theme.colour("panel"))
        self.setPalette(palette)
