"""The spots of one place: the shelf from above, and the chosen spot as a form."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QSignalBlocker, Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import NumberField, TextField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.forms.same_names import same_name_words
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.room_pages.shelf_picture import ShelfPicture
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.places import (
    added_spot,
    changed_spot,
    copied_spot,
    moved_spot,
    removed_spot,
    values_of,
    why_kept,
)
from studio_planner.services.shelf_plans import spots_today, too_large

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.places import Place, Spot
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_MOST_ROWS = 6


class ShelfPanel(QWidget):
    """Spots are added, copied, removed and moved in the list, or chosen in the picture."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no place yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._view: DeskView | None = None
        self._place: Place | None = None
        self._shown = ""
        self.large = Line(canvas, "", self, colour="now")
        self.picture = ShelfPicture(canvas, self)
        self.free = Line(canvas, "", self)
        self.spots = NounList(
            canvas,
            translate("room", "Spots on the shelf"),
            translate("room", "No spot here yet. Add a level place that holds one piece."),
            self,
        )
        self.form = Form(canvas, self._enter, self)
        self.form.add("name", TextField(canvas, translate("room", "Name")))
        for name, label in (
            ("length_mm", translate("room", "Length")),
            ("width_mm", translate("room", "Width")),
            ("height_mm", translate("room", "Clear height, to the shelf above")),
        ):
            self.form.add(name, NumberField(canvas, label, Quantity.LENGTH))
        self.kept = Line(canvas, "", self, font="small", colour="quiet")
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        right = QVBoxLayout()
        right.addWidget(self.form)
        right.addWidget(self.kept)
        right.addStretch(1)
        below = QHBoxLayout()
        below.setSpacing(12)
        below.addWidget(self.spots, 1, Qt.AlignmentFlag.AlignTop)
        below.addLayout(right, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(8)
        layout.addLayout(below)
        for widget in (self.large, self.picture, self.free):
            layout.addWidget(widget)

    def _connect(self) -> None:
        self.picture.chosen.connect(self.spots.choose)
        self.spots.chosen.connect(lambda _key: self._show_spot())
        self.spots.add_asked.connect(self._add)
        self.spots.copy_asked.connect(self._copy)
        self.spots.remove_asked.connect(self._remove)
        self.spots.move_asked.connect(self._move)

    def show_place(self, view: DeskView, place: Place) -> None:
        """Show the spots of a place of a studio."""
        self._view, self._place = view, place
        units = view.studio.units
        with QSignalBlocker(self.spots):  # the chosen spot is shown once, below
            self.spots.show_things(
                [(spot.key, spot.name, _size(spot, view.studio)) for spot in place.spots]
            )
        self.spots.keep_low(_MOST_ROWS)
        rows = [
            translate(
                "room",
                "{piece} fits on no spot: it needs {length} by {width}, "
                "{height} high with its cover.",
            ).format(
                piece=row.piece.name,
                length=words.length(row.length_mm, units),
                width=words.length(row.width_mm, units),
                height=words.length(row.height_mm, units),
            )
            for row in too_large(view.studio)
        ]
        mark = "\N{BLACK RIGHT-POINTING TRIANGLE} "
        self.large.say("\n".join(mark + row for row in rows))
        self._show_spot()

    def choose(self, key: str) -> None:
        """Choose a spot."""
        self.spots.choose(key)

    def _show_spot(self) -> None:
        view, place = self._view, self._place
        if view is None or place is None:
            return
        spot = self._spot
        rows = spots_today(view, place, view.now)
        self.picture.setVisible(bool(rows))
        current = spot.key if spot else ""
        self.picture.show_spots(rows, view.studio.units, current)
        said = [self.picture.spot_words(row) for row in rows if row.spot.key == current]
        self.free.say("".join(said))
        self.form.setVisible(spot is not None)
        self.kept.say("")
        if spot is not None:
            fresh = current != self._shown
            self._shown = current
            self.form.show_values(values_of(spot), view.studio.units, fresh=fresh)
            self.form.fields["name"].advise(same_name_words(spot, view.studio.spots))
            why = why_kept(view.studio, (spot,))
            stays = translate("room", "It cannot be removed: {why}").format(why=why)
            self.kept.say(stays if why else "")
        self.spots.remove_button.setEnabled(spot is not None and not self.kept.text())

    @property
    def _spot(self) -> Spot | None:
        spots = self._place.spots if self._place else ()
        return next((spot for spot in spots if spot.key == self.spots.current_key), None)

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        spot, place = self._spot, self._place
        if spot is not None and place is not None:
            label = self.form.fields[name].words
            self._desk.changes.make(changed_spot(place, spot, label, values))

    def _add(self) -> None:
        if self._view is None or self._place is None:
            return
        change, key = added_spot(self._view.studio, self._place)
        if self._desk.changes.attempt(change):
            self.spots.choose(key)
            self.form.fields["name"].take_up()

    def _copy(self) -> None:
        spot = self._spot
        if self._view is None or self._place is None or spot is None:
            return
        change, key = copied_spot(self._view.studio, self._place, spot)
        if self._desk.changes.attempt(change):
            self.spots.choose(key)

    def _remove(self) -> None:
        spot = self._spot
        if self._place is not None and spot is not None:
            self._desk.changes.attempt(removed_spot(self._place, spot))

    def _move(self, key: str, to: int) -> None:
        spot = self._spot
        if self._place is not None and spot is not None and spot.key == key:
            self._desk.changes.attempt(moved_spot(self._place, spot, to))


def _size(spot: Spot, studio: Studio) -> str:
    units = studio.units
    sides = (words.length(side, units) for side in (spot.length_mm, spot.width_mm))
    return " \N{MULTIPLICATION SIGN} ".join(sides)
