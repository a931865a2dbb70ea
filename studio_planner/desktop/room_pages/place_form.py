"""A place as the maker enters it: name, kind and warmth, and figures that can wait."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.places import PlaceKind
from studio_planner.craft.settings import Units
from studio_planner.desktop.forms.fields import ChoiceField, NumberField, TextField
from studio_planner.desktop.forms.fold import Fold
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.forms.same_names import same_name_words
from studio_planner.desktop.quantities import Quantity, number_words, scale_of, shown_number
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.editing.places import (
    entered,
    heat_loss,
    steadily,
    steady_celsius,
    values_of,
)

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk

_NARROWEST, _NAME_WIDTH = 64, 200
_WARMTH = "celsius"
"""The field of a place that is always as warm; what is drawn has no one temperature."""

_FIGURES = ("band_celsius", "read_band_celsius", "heat_loss_w_per_k")
"""What is folded away: a plan has usual figures for it."""


class PlaceForm(QWidget):
    """One place; each field that is edited becomes one change."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no place yet."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._place: Place | None = None
        self.form = Form(canvas, self._enter, self)
        self.warmth = NumberField(
            canvas,
            translate("room", "About how warm it is"),
            Quantity.TEMPERATURE,
            optional=True,
        )
        self.loss = NumberField(
            canvas,
            translate("room", "Heat loss (may be empty)"),
            Quantity.HEAT_LOSS,
            optional=True,
        )
        self.aid = HeatAid(desk, self._take_loss, self)
        self.figures = Fold(translate("room", "Further figures of this place"), self._figures())
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(self._first())
        layout.addWidget(self.form)

    def _first(self) -> Wrapping:
        """What a maker enters first, in a row."""
        canvas, row = self._desk.canvas, Wrapping(across=24)
        kinds = [(kind, kind_word(kind)) for kind in PlaceKind]
        name = TextField(canvas, translate("room", "Name"))
        name.setMinimumWidth(_NAME_WIDTH)
        self.form.add("name", name, into=row)
        self.form.add("kind", ChoiceField(canvas, translate("room", "Kind"), kinds), into=row)
        self.form.add(_WARMTH, self.warmth, into=row)
        return row

    def _figures(self) -> QVBoxLayout:
        """What can wait until the maker asks for it."""
        canvas, column = self._desk.canvas, QVBoxLayout()
        off = translate("room", "How far the expected temperature may be off, either way")
        read = translate("room", "How far a reading may be off")
        for name, field in zip(
            _FIGURES,
            (
                NumberField(canvas, off, Quantity.DEGREES),
                NumberField(canvas, read, Quantity.DEGREES),
                self.loss,
            ),
            strict=True,
        ):
            self.form.add(name, field, into=column)
        column.addWidget(self.aid)
        return column

    def show_place(self, studio: Studio, place: Place) -> None:
        """Show a place of a studio."""
        fresh = self._place is None or self._place.key != place.key
        self._place = place
        steady = steady_celsius(place)
        self.warmth.setVisible(steady is not None)
        values = values_of(place) | {_WARMTH: steady}
        self.form.show_values(values, studio.units, fresh=fresh)
        self.form.fields["name"].advise(same_name_words(place, studio.places))
        self.aid.degrees.set_units(studio.units)

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        place = self._place
        if place is None:
            return
        label = self.form.fields[name].words
        given = dict(values)
        celsius = given.pop(_WARMTH)
        if name == _WARMTH:
            if celsius is None:
                self.warmth.say_wrong(translate("forms", "Write a number here."))
            else:
                self._desk.changes.make(steadily(place, label, celsius))
            return
        try:
            self._desk.changes.make(entered(place, label, given))
        except InvalidEntry as error:
            if any(rule.field in _FIGURES for rule in error.broken):
                self.figures.unfold()
            raise

    def _take_loss(self, loss: float) -> None:
        self.loss.show_value(round(loss, 1))
        self.form.enter("heat_loss_w_per_k")


class HeatAid(QWidget):
    """Estimates the heat loss from what a heater used on a cold day."""

    def __init__(self, desk: PageDesk, take: Any, parent: QWidget | None = None) -> None:  # noqa: ANN401 - a callable
        """Give the estimate to `take`."""
        super().__init__(parent)
        canvas = desk.canvas
        self._desk = desk
        self._take = take
        self.kwh = NumberField(canvas, translate("room", "Heater on a cold day, kWh"))
        self.degrees = NumberField(
            canvas, translate("room", "Warmer inside than outside by"), Quantity.DEGREES
        )
        self.use = verb(translate("room", "Estimate the heat loss"), self._estimate, self)
        self.said = Line(
            canvas,
            translate(
                "room",
                "Read the heater's meter over 24 hours of steady cold: kWh {times} "
                "1000 / (24 {times} degrees difference). Sun and other heat make it too low.",
            ).format(times="\N{MULTIPLICATION SIGN}"),
            self,
            font="small",
            colour="quiet",
        )
        for field in (self.kwh, self.degrees):
            field.editor.setMinimumWidth(_NARROWEST)
        row = Wrapping()
        row.add(self.kwh, self.degrees, self.use)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addLayout(row)
        layout.addWidget(self.said)

    def _loss_words(self, loss: float) -> str:
        units = self._desk.session.studio.units if self._desk.session else Units()
        unit = scale_of(Quantity.HEAT_LOSS, units).unit
        return f"{shown_number(loss, Quantity.HEAT_LOSS, units)} {unit}"

    def _estimate(self) -> None:
        figures = []
        for field in (self.kwh, self.degrees):
            field.say_right()
            try:
                figures.append(float(field.value() or 0.0))
            except ValueError as error:
                field.say_wrong(str(error))
        if len(figures) < 2:  # noqa: PLR2004 - the two fields
            return
        try:
            loss = heat_loss(*figures)
        except InvalidEntry as error:
            for rule in error.broken:
                {"kwh": self.kwh, "degrees": self.degrees}[rule.field].say_wrong(rule.sentence)
            return
        self._take(loss)
        self.said.say(
            translate("room", "{kwh} kWh over that day make {loss}.").format(
                kwh=number_words(figures[0]), loss=self._loss_words(loss)
            )
        )


def kind_word(kind: PlaceKind) -> str:
    """What a kind of place is called."""
    return {
        PlaceKind.ROOM: translate("room", "room"),
        PlaceKind.WARM_BOX: translate("room", "warm box"),
    }[kind]
