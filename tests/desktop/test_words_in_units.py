"""What is read on the desk is the same size, mass and time, whatever units a maker reads."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.settings import (
    ClockForm,
    FilmUnit,
    LengthUnit,
    MassUnit,
    TemperatureUnit,
    Units,
    VolumeUnit,
)
from studio_planner.desktop import words
from studio_planner.desktop.product_pages.law_words import law_sentence
from studio_planner.desktop.quantities import Quantity, scale_of, shown_number
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.science.stages import Stage
from studio_planner.services.questions.sentences import Degrees
from tests.desktop import scenes

REGISTRY: pint.UnitRegistry[float] = pint.UnitRegistry()
REFERENCE = [
    (Quantity.LENGTH, "mm", Units(length=LengthUnit.CENTIMETRE), "cm"),
    (Quantity.LENGTH, "mm", Units(length=LengthUnit.INCH), "inch"),
    (Quantity.FILM, "mm", Units(film=FilmUnit.MIL), "thou"),
    (Quantity.FILM, "mm", Units(film=FilmUnit.INCH), "inch"),
    (Quantity.MASS, "gram", Units(mass=MassUnit.OUNCE), "ounce"),
    (Quantity.VOLUME, "ml", Units(volume=VolumeUnit.FLUID_OUNCE_US), "fluid_ounce"),
    (
        Quantity.VOLUME,
        "ml",
        Units(volume=VolumeUnit.FLUID_OUNCE_IMPERIAL),
        "imperial_fluid_ounce",
    ),
    (Quantity.AREA, "cm**2", Units(length=LengthUnit.INCH), "inch**2"),
]
FAHRENHEIT = Units(temperature=TemperatureUnit.FAHRENHEIT)
TWELVE = Units(clock=ClockForm.HOURS_12)


@pytest.mark.parametrize(("quantity", "inside", "units", "named"), REFERENCE)
@given(value=st.floats(0.01, 10_000))
def test_every_unit_is_the_one_that_a_reference_knows_by_that_name(
    quantity: Quantity, inside: str, units: Units, named: str, value: float
) -> None:
    scale = scale_of(quantity, units)
    reference = REGISTRY.Quantity(value, inside).to(named).magnitude
    assert scale.shown(value) == pytest.approx(reference, rel=1e-12)
    assert scale.inside(scale.shown(value)) == pytest.approx(value, rel=1e-12)


@given(value=st.floats(-40, 150))
def test_degrees_and_steps_of_degrees_are_those_of_a_reference(value: float) -> None:
    scale = scale_of(Quantity.TEMPERATURE, FAHRENHEIT)
    reference = REGISTRY.Quantity(value, "degC").to("degF").magnitude
    assert scale.shown(value) == pytest.approx(reference, abs=1e-9)
    step = REGISTRY.Quantity(value, "delta_degC").to("delta_degF").magnitude
    assert scale_of(Quantity.DEGREES, FAHRENHEIT).shown(value) == pytest.approx(step, abs=1e-9)


@given(tenths=st.integers(-400, 1500), fahrenheit=st.booleans())
def test_a_temperature_is_said_as_it_was_typed(tenths: int, *, fahrenheit: bool) -> None:
    units, unit = (FAHRENHEIT, "°F") if fahrenheit else (Units(), "°C")
    kept = scale_of(Quantity.TEMPERATURE, units).inside(tenths / 10)
    typed = str(tenths // 10) if tenths % 10 == 0 else f"{tenths / 10:.1f}"
    assert words.degrees(kept, units) == f"{typed} {unit}"


def test_so_it_is_in_an_answer_that_tells_what_to_do() -> None:
    assert Degrees(21.5).words(DeskVoice(scenes.planned())) == "21.5 °C"


def test_sizes_films_masses_and_volumes_are_written_in_the_studios_units() -> None:
    metric, centimetres = Units(), Units(length=LengthUnit.CENTIMETRE)
    american = Units(
        mass=MassUnit.OUNCE,
        length=LengthUnit.INCH,
        film=FilmUnit.MIL,
        volume=VolumeUnit.FLUID_OUNCE_US,
    )
    assert words.length(400, metric) == "400 mm"
    assert words.length(400, centimetres) == "40 cm"
    assert words.length(400, american) == "15.75 in"
    assert words.length(200, american) == "7.87 in"
    assert words.film(1.6, metric) == "1.6 mm"
    assert words.film(1.6, american) == "63 mil"
    assert words.film(1.6, Units(film=FilmUnit.INCH)) == "0.063 in"
    assert words.mass(283.5, metric) == "283.5 g"
    assert words.mass(283.495, american) == "10.000 oz"
    assert words.volume(100, metric) == "100 ml"
    assert words.volume(100, american) == "3.38 fl oz US"
    assert words.volume(100, Units(volume=VolumeUnit.FLUID_OUNCE_IMPERIAL)).endswith(
        "3.52 fl oz imperial"
    )
    assert words.area(800, american) == "124 in²"
    assert words.degrees(25, FAHRENHEIT) == "77 °F"
    assert words.degrees(25.4, FAHRENHEIT, decimals=0) == "78 °F"
    assert words.degree_step(3, FAHRENHEIT, decimals=1) == "5.4 °F"


@pytest.mark.parametrize(
    ("at", "written"),
    [
        (time(0, 0), "12:00 am"),
        (time(7, 5), "7:05 am"),
        (time(12, 0), "12:00 pm"),
        (time(23, 59), "11:59 pm"),
    ],
)
def test_a_clock_of_twelve_hours_says_which_half_of_the_day(at: time, written: str) -> None:
    assert words.time_of_day(at, ClockForm.HOURS_12) == written


@given(at=st.times())
def test_both_clocks_tell_the_same_time(at: time) -> None:
    clock, half = words.time_of_day(at, ClockForm.HOURS_12).split(" ")
    hour, minute = (int(part) for part in clock.split(":"))
    again = f"{hour % 12 + (12 if half == 'pm' else 0):02}:{minute:02}"
    assert again == words.time_of_day(at, ClockForm.HOURS_24)


def test_marks_of_the_axis_are_written_by_the_same_clock() -> None:
    assert [words.hour_mark(h, ClockForm.HOURS_24) for h in (0, 6, 12, 24)] == [
        "00",
        "06",
        "12",
        "24",
    ]
    assert [words.hour_mark(h, ClockForm.HOURS_12) for h in (0, 6, 12, 18, 24)] == [
        "12 am",
        "6 am",
        "noon",
        "6 pm",
        "12 am",
    ]


def test_a_span_names_its_day_once_unless_it_ends_on_another() -> None:
    wall = words.Wall(ZoneInfo(scenes.ZONE), ClockForm.HOURS_12)
    start = datetime(2026, 12, 8, 18, 0, tzinfo=UTC)
    assert words.span(start, start + timedelta(hours=2), wall) == (
        "Tue 8 Dec 7:00 pm to 9:00 pm"
    )
    assert words.span(start, start + timedelta(hours=6), wall) == (
        "Tue 8 Dec 7:00 pm to Wed 9 Dec 1:00 am"
    )
    assert words.wall_of(scenes.studio(units=TWELVE)) == wall


OTHERS = Units(
    temperature=TemperatureUnit.FAHRENHEIT,
    mass=MassUnit.OUNCE,
    length=LengthUnit.INCH,
    film=FilmUnit.INCH,
    volume=VolumeUnit.FLUID_OUNCE_US,
)
SAID = {
    Quantity.FILM: words.film,
    Quantity.LENGTH: words.length,
    Quantity.AREA: words.area,
    Quantity.VOLUME: words.volume,
}


@pytest.mark.parametrize("quantity", SAID)
@given(inside=st.floats(0.05, 2000))
def test_a_figure_is_rounded_the_same_in_a_field_and_in_a_sentence(
    quantity: Quantity, inside: float
) -> None:
    number = shown_number(inside, quantity, OTHERS)
    assert SAID[quantity](inside, OTHERS).split(" ")[0] == number


def test_two_millimetres_of_film_are_787_tenths_of_a_mil() -> None:
    assert words.film(2.0, OTHERS) == "0.0787 in"
    assert words.film(2.0, Units(film=FilmUnit.MIL)) == "78.7 mil"
    assert shown_number(600.0, Quantity.MASS, OTHERS) == "21.164"


def test_heat_loss_is_read_in_watts_per_degree_of_the_studio() -> None:
    assert scale_of(Quantity.HEAT_LOSS, Units()).unit == "W/°C"
    reference = REGISTRY.Quantity(90.0, "watt/delta_degC").to("watt/delta_degF").magnitude
    scale = scale_of(Quantity.HEAT_LOSS, FAHRENHEIT)
    assert scale.unit == "W/°F"
    assert scale.shown(90.0) == pytest.approx(reference)
    assert shown_number(90.0, Quantity.HEAT_LOSS, FAHRENHEIT) == "50"


def test_a_law_that_is_too_cold_says_so_in_the_studios_degrees() -> None:
    fast = replace(scenes.FAST, minimum_celsius=15.0)
    said = law_sentence(fast, Stage.RECOAT_OPENS, 10.0, FAHRENHEIT)
    assert "does not come, since below 59 °F its hours do not count" in said
