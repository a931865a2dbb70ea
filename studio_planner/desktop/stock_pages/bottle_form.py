"""A bottle as the maker enters it: what is in it, its label, its days and its price."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget

from studio_planner.desktop.forms.fields import ChoiceField, NoteField, NumberField, TextField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.time_fields import DateField
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.stock_pages.day_or_none import DayOrNoneField
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.bottles import (
    bottle_with,
    changed_bottle,
    parts_in_bottles,
    values_of,
)
from studio_planner.services.stocks.stock_words import stuff_said

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date

    from studio_planner.craft.stock import Lot
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.desktop.forms.field import Field

_COLUMNS = 2


class BottleForm(QWidget):
    """One bottle; each field that is edited becomes one change."""

    def __init__(
        self, canvas: Canvas, changes: DeskChanges, parent: QWidget | None = None
    ) -> None:
        """Show no bottle yet."""
        super().__init__(parent)
        self._changes = changes
        self._lot: Lot | None = None
        self.form = Form(canvas, self._enter, self)
        self._stuff = ChoiceField(canvas, translate("stock", "What is in it"))
        self._kept = ChoiceField(canvas, translate("stock", "Kept for"))
        self._price = NumberField(canvas, "")
        self._days = (
            DayOrNoneField(
                canvas, translate("stock", "Opened"), translate("stock", "opened on"), self
            ),
            DayOrNoneField(
                canvas,
                translate("stock", "Best before"),
                translate("stock", "its label says"),
                self,
            ),
        )
        self._lay_out(self._fields(canvas))

    def _fields(self, canvas: Canvas) -> list[tuple[str, Field]]:
        opened, best_before = self._days
        return [
            ("label", TextField(canvas, translate("stock", "Lot number on its label"))),
            ("product", self._stuff),
            ("received", DateField(canvas, translate("stock", "There from"))),
            (
                "new_g",
                NumberField(canvas, translate("stock", "In it when new"), Quantity.MASS),
            ),
            ("opened", opened),
            ("price", self._price),
            ("best_before", best_before),
            ("kept_for", self._kept),
        ]

    def _lay_out(self, fields: list[tuple[str, Field]]) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(24)
        for index, (name, field) in enumerate(fields):
            place = QVBoxLayout()
            self.form.add(name, field, into=place)
            grid.addLayout(place, index // _COLUMNS, index % _COLUMNS)
        for column in range(_COLUMNS):
            grid.setColumnStretch(column, 1)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(grid)
        note = NoteField(self.form.canvas, translate("stock", "Note"))
        self.form.add("note", note, into=layout)
        layout.addWidget(self.form)

    def show_bottle(self, studio: Studio, lot: Lot, today: date) -> None:
        """Show a bottle of a studio."""
        fresh = self._lot is None or self._lot.key != lot.key
        self._lot = lot
        stuffs = [(one, stuff_said(studio, *one)) for one in parts_in_bottles(studio)]
        mine = (lot.product, lot.part)
        if mine not in [one for one, _ in stuffs]:
            stuffs.append((mine, stuff_said(studio, *mine)))
        self._stuff.offer(stuffs)
        self._stuff.show_value(mine)
        any_order = ("", translate("stock", "any order"))
        self._kept.offer([any_order, *((one.key, one.name) for one in studio.orders)])
        self._kept.show_value(lot.kept_for)
        self._price.rename(
            translate("stock", "What all of it cost, {currency}").format(
                currency=studio.currency
            )
        )
        self._price.editor.setAccessibleName(self._price.words)
        for field in self._days:
            field.usual = today
        self.form.show_values(values_of(lot), studio.units, fresh=fresh)

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        lot = self._lot
        if lot is None:
            return
        what = self.form.fields[name].words
        new = bottle_with(lot, values)
        self._changes.make(
            changed_bottle(lot, what, lambda now: bottle_with(now, values_of(new)))
        )
