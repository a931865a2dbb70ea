"""What warmth takes, and the figures it is worked out from, to be entered where they lack."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from studio_planner.craft.tongue import figure
from studio_planner.desktop.forms.fields import NumberField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.words import degree_step
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.trying.energy import energy_of, heat_loss_of

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.desktop.desk_changes import DeskChanges
    from studio_planner.services.trying.trial import Warmth

_LOSS, _TARIFF = "heat_loss_w_per_k", "tariff_per_kwh"


class HeatFigures(QWidget):
    """Energy and cost of a trial, over two fields: heat loss and price.

    For a place of the studio the heat loss is entered into it, for one that is only tried it
    is kept here.
    """

    def __init__(
        self, canvas: Canvas, changes: DeskChanges, parent: QWidget | None = None
    ) -> None:
        """Show nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._changes = changes
        self._studio: Studio | None = None
        self._warmth: Warmth | None = None
        self._own_loss: float | None = None
        self._words = QLabel(self)
        self._words.setWordWrap(True)
        self._words.setTextFormat(Qt.TextFormat.PlainText)
        self.form = Form(canvas, self._enter, self)
        loss = translate("questions", "Heat loss")
        price = translate("questions", "Price of a kWh")
        fields = QHBoxLayout()
        fields.setSpacing(18)
        for name, words, quantity in (
            (_LOSS, loss, Quantity.HEAT_LOSS),
            (_TARIFF, price, Quantity.PLAIN),
        ):
            optional = name == _LOSS
            field = NumberField(canvas, words, quantity, self.form, optional=optional)
            self.form.add(name, field, into=fields)
        fields.addStretch(1)
        inside = self.form.layout()
        if isinstance(inside, QVBoxLayout):
            inside.insertLayout(0, fields)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._words)
        layout.addWidget(self.form)
        self.hide()

    def entered(self, studio: Studio) -> Studio:
        """Give a studio in which what was entered for a place that is tried belongs to it."""
        warmth, loss = self._warmth, self._own_loss
        if warmth is None or loss is None:
            return studio
        return _with_loss(studio, warmth.place, loss)

    @property
    def words(self) -> str:
        """What is said about energy and cost; empty when nothing is."""
        return "" if self.isHidden() else self._words.text()

    def show_warmth(self, studio: Studio, warmth: Warmth | None) -> None:
        """Show what some warmth takes in a studio; None: the trial warms nothing."""
        fresh = warmth != self._warmth
        if fresh:
            self._own_loss = None
        self._studio, self._warmth = studio, warmth
        self.setVisible(warmth is not None)
        if warmth is None:
            return
        values = {_LOSS: self._loss(), _TARIFF: studio.settings.tariff_per_kwh}
        self.form.show_values(values, studio.units, fresh=fresh)
        self._say()

    def _loss(self) -> float | None:
        if self._studio is None or self._warmth is None:
            return None
        return (
            self._own_loss
            if self._place() is None
            else heat_loss_of(self._studio, self._warmth)
        )

    def _place(self) -> Place | None:
        if self._studio is None or self._warmth is None:
            return None
        key = self._warmth.place
        return next((one for one in self._studio.places if one.key == key), None)

    def _say(self) -> None:
        studio, warmth = self._studio, self._warmth
        if studio is None or warmth is None:
            return
        energy = energy_of(studio, warmth, self._loss())
        if energy.kilowatt_hours is None:
            text = translate(
                "questions",
                "Energy: not known. Enter its heat loss: the watts that keep it one degree "
                "warmer.",
            )
            self._words.setText(text)
            return
        text = (
            translate(
                "questions", "Energy: {kwh} kWh a day, from {warmth} hours above the room"
            )
            if self._place() is None
            else translate(
                "questions", "Energy: {kwh} kWh, from {warmth} hours above the usual"
            )
        )
        said = text.format(
            kwh=figure(f"{energy.kilowatt_hours:.1f}"),
            warmth=degree_step(warmth.degree_hours, studio.units),
        )
        if energy.cost is not None:
            cost = translate("questions", "about {cost} {currency}")
            said += ", " + cost.format(
                cost=figure(f"{energy.cost:.2f}"), currency=energy.currency
            )
        self._words.setText(f"{said}.")

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        value, place = values[name], self._place()
        if name == _TARIFF:
            words = translate("questions", "Price of a kWh")
            self._changes.make(Change(words, lambda studio: _with_tariff(studio, value)))
        elif place is not None:
            words = translate("questions", "{place}, heat loss").format(place=place.name)
            self._changes.make(
                Change(words, lambda studio: _with_loss(studio, place.key, value))
            )
        else:
            self._own_loss = value
        self._say()


def _with_tariff(studio: Studio, tariff: float) -> Studio:
    return replace(studio, settings=replace(studio.settings, tariff_per_kwh=tariff))


def _with_loss(studio: Studio, key: str, watts: float | None) -> Studio:
    place = next(one for one in studio.places if one.key == key)
    return with_thing(studio, replace(place, heat_loss_w_per_k=watts))
