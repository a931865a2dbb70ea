"""What if there is a warm box: one spot of a size, held at a temperature."""

from __future__ import annotations

from dataclasses import replace
from datetime import time, timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.degree_words import degrees_said
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Spot
from studio_planner.craft.tongue import translate
from studio_planner.science.air import AirError, dew_point, relative_humidity
from studio_planner.services.editing.nouns import free_key, free_name
from studio_planner.services.questions.asking import Kind, Parameter
from studio_planner.services.trying.trial import CannotTry, Trial, Warmth, WhatIf

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView

_CELSIUS, _LEAST_CELSIUS, _MOST_CELSIUS = 28.0, 15.0, 50.0
_LENGTH_MM, _WIDTH_MM, _HEIGHT_MM = 500.0, 400.0, 150.0
_DAY = timedelta(days=1)
_QUARTERS = 96


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    largest = max(view.studio.spots, key=lambda one: one.length_mm * one.width_mm, default=None)
    length, width = (
        (_LENGTH_MM, _WIDTH_MM) if largest is None else (largest.length_mm, largest.width_mm)
    )
    return (
        Parameter("length_mm", "Inside length", Kind.LENGTH, length),
        Parameter("width_mm", "Inside width", Kind.LENGTH, width),
        Parameter("height_mm", "Inside height", Kind.LENGTH, _HEIGHT_MM),
        Parameter("celsius", "Kept at", Kind.TEMPERATURE, _CELSIUS),
    )


def _tried(view: DeskView, given: Mapping[str, Any]) -> Trial:
    studio, celsius = view.studio, float(given["celsius"])
    if not _LEAST_CELSIUS <= celsius <= _MOST_CELSIUS:
        text = translate(
            "trying",
            "A warm box for curing is kept at {least} to {most}; the data sheet may allow "
            "less.",
        )
        least, most = (degrees_said(c, studio.units) for c in (_LEAST_CELSIUS, _MOST_CELSIUS))
        raise CannotTry(text.format(least=least, most=most))
    name = free_name((one.name for one in studio.places), "Warm box")
    spot = free_name((one.name for one in studio.spots), "Box")
    box = Place(
        key=free_key((one.key for one in studio.places), name),
        name=name,
        kind=PlaceKind.WARM_BOX,
        pattern=(
            PatternPoint(at=time(0), celsius=celsius, humidity_pct=_humidity(view, celsius)),
        ),
        spots=(
            Spot(
                key=free_key((one.key for one in studio.spots), spot),
                name=spot,
                length_mm=given["length_mm"],
                width_mm=given["width_mm"],
                height_mm=given["height_mm"],
            ),
        ),
    )
    return Trial(
        words=translate("changes", "Add {name}").format(name=name),
        studio=replace(studio, places=(*studio.places, box)),
        warmth=Warmth(box.key, view.now, view.now + _DAY, _degree_hours(view, celsius)),
    )


def _humidity(view: DeskView, celsius: float) -> float | None:
    """The humidity in a box that is filled with the room's air of now; None: not known."""
    found = _room_at(view, 0.0)
    if found is None:
        return None
    air, humidity = found
    if humidity is None:
        return None
    try:
        return max(1.0, relative_humidity(celsius, dew_point(air, humidity)))
    except AirError:
        return None


def _degree_hours(view: DeskView, celsius: float) -> float:
    """The °C above the room that the box is in a day, summed over its hours."""
    rooms = [_room_at(view, quarter / _QUARTERS) for quarter in range(_QUARTERS)]
    above = [max(0.0, celsius - room[0]) for room in rooms if room is not None]
    return 24.0 * sum(above) / len(above) if above else 0.0


def _room_at(view: DeskView, days: float) -> tuple[float, float | None] | None:
    studio: Studio = view.studio
    if studio.resting_place is None:
        return None
    history = view.timing.history(studio.resting_place.key)
    second = (view.now + days * _DAY).timestamp()
    celsius = history.celsius_at(second)
    return None if celsius is None else (celsius, history.humidity_at(second))


WHAT_IF = WhatIf("warm-box", "What if I have a warm box?", _parameters, _tried)
