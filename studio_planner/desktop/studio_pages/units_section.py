"""The studio's name, zone and currency, and the units that everything is shown in."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.craft.settings import (
    ClockForm,
    FilmUnit,
    LengthUnit,
    MassUnit,
    TemperatureUnit,
    VolumeUnit,
)
from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import ChoiceField, TextField
from studio_planner.desktop.forms.form import Form
from studio_planner.desktop.page import Page
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.studio_pages.zone_field import ZoneField
from studio_planner.desktop.tongue import translate, whole_weekday
from studio_planner.services.editing.studio_words import changed_studio

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_WIDEST = 620
_COLUMNS = 2
_MM, _CELSIUS, _GRAMS, _ML = 400.0, 21.0, 250.0, 200.0
_FILM_MM = 1.5
"""What the example under the units shows."""


def unit_options() -> dict[str, tuple[str, list[tuple[object, str]]]]:
    """A title and what may be chosen for each of the studio's units, by the craft's name."""
    return {
        "temperature": (
            translate("units", "Temperatures"),
            [
                (TemperatureUnit.CELSIUS, translate("units", "degrees Celsius")),
                (TemperatureUnit.FAHRENHEIT, translate("units", "degrees Fahrenheit")),
            ],
        ),
        "mass": (
            translate("units", "Masses"),
            [
                (MassUnit.GRAM, translate("units", "grams")),
                (MassUnit.OUNCE, translate("units", "ounces")),
            ],
        ),
        "length": (translate("units", "Sizes of pieces and spots"), _lengths()),
        "film": (translate("units", "Thickness of a film"), _films()),
        "volume": (translate("units", "Volumes"), _volumes()),
        "clock": (
            translate("units", "Times of day"),
            [
                (ClockForm.HOURS_24, translate("units", "24 hours, as 18:30")),
                (ClockForm.HOURS_12, translate("units", "12 hours, as 6:30 pm")),
            ],
        ),
        "week_starts": (
            translate("units", "A week begins on"),
            [(day, whole_weekday(day)) for day in range(7)],
        ),
    }


def _lengths() -> list[tuple[object, str]]:
    return [
        (LengthUnit.MILLIMETRE, translate("units", "millimetres")),
        (LengthUnit.CENTIMETRE, translate("units", "centimetres")),
        (LengthUnit.INCH, translate("units", "inches")),
    ]


def _films() -> list[tuple[object, str]]:
    return [
        (FilmUnit.MILLIMETRE, translate("units", "millimetres")),
        (FilmUnit.MIL, translate("units", "mils, thousandths of an inch")),
        (FilmUnit.INCH, translate("units", "inches")),
    ]


def _volumes() -> list[tuple[object, str]]:
    return [
        (VolumeUnit.MILLILITRE, translate("units", "millilitres")),
        (VolumeUnit.FLUID_OUNCE_US, translate("units", "US fluid ounces")),
        (VolumeUnit.FLUID_OUNCE_IMPERIAL, translate("units", "imperial fluid ounces")),
    ]


class UnitsSection(Page):
    """One form for all of it, and an example of how things read now."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(desk, parent)
        canvas = self.canvas
        self._path: object = None
        self.form = Form(canvas, self._enter, self)
        self.name = TextField(canvas, translate("units", "The studio's name"), self)
        self.zone = ZoneField(canvas, translate("units", "Time zone"), self)
        self.currency = TextField(
            canvas, translate("units", "Currency, in three letters"), self
        )
        self.currency.setMaximumWidth(160)
        self.example = Line(canvas, "", self, colour="quiet")
        self._lay_out()

    def _lay_out(self) -> None:
        canvas = self.canvas
        column = QWidget(self)
        column.setMaximumWidth(_WIDEST)
        layout = QVBoxLayout(column)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(6)
        layout.addWidget(
            Line(canvas, translate("units", "Units and words"), self, font="clock")
        )
        self.form.add("name", self.name, into=layout)
        pair = QHBoxLayout()
        pair.setSpacing(24)
        self.form.add("zone", self.zone, into=pair)
        self.form.add("currency", self.currency, into=pair)
        pair.addStretch(1)
        layout.addLayout(pair)
        said = translate(
            "units",
            "Everything on the desk is shown and typed in these units. What is kept stays "
            "exact: nothing is rounded by changing them.",
        )
        layout.addWidget(Line(canvas, said, self, font="small", colour="quiet"))
        grid = QGridLayout()
        grid.setHorizontalSpacing(24)
        for index, (name, (title, options)) in enumerate(unit_options().items()):
            place = QVBoxLayout()
            self.form.add(name, ChoiceField(canvas, title, options, self), into=place)
            grid.addLayout(place, index // _COLUMNS, index % _COLUMNS)
        layout.addLayout(grid)
        layout.addWidget(self.example)
        layout.addWidget(self.form)
        layout.addStretch(1)
        whole = QHBoxLayout(self)
        whole.setContentsMargins(20, 12, 16, 12)
        whole.addWidget(column, 10)
        whole.addStretch(1)

    @override
    def show_view(self, view: DeskView | None) -> None:
        self.setEnabled(view is not None)
        if view is None:
            return
        studio, units = view.studio, view.studio.units
        session = self.desk.session
        path = None if session is None else session.path
        fresh, self._path = path != self._path, path
        values: dict[str, Any] = {
            "name": studio.name,
            "zone": studio.zone,
            "currency": studio.currency,
            **{name: getattr(units, name) for name in self.form.fields if hasattr(units, name)},
        }
        self.form.show_values(values, units, fresh=fresh)
        self.example.say(_example(units, words.moment(view.now, words.wall_of(studio))))

    def _enter(self, name: str, values: Mapping[str, Any]) -> None:
        wanted = dict(values)
        wanted["currency"] = str(wanted["currency"]).upper()
        self.desk.changes.make(changed_studio(_what(name), {name: wanted[name]}))


def _what(name: str) -> str:
    return {
        "name": translate("units", "name"),
        "zone": translate("units", "time zone"),
        "currency": translate("units", "currency"),
        "week_starts": translate("units", "first day of the week"),
    }.get(name, translate("units", "units"))


def _example(units: Units, now: str) -> str:
    return translate(
        "units",
        "So it reads: {now}, {warm}, {mass} in {volume}, a board of {length}, {film} of film.",
    ).format(
        now=now,
        warm=words.degrees(_CELSIUS, units),
        mass=words.mass(_GRAMS, units),
        volume=words.volume(_ML, units),
        length=words.length(_MM, units),
        film=words.film(_FILM_MM, units),
    )
