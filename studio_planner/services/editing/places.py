"""What a maker can change about places: rooms and warm boxes, and the spots in them."""

from __future__ import annotations

from dataclasses import fields, replace
from datetime import time
from typing import TYPE_CHECKING, Any

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Spot
from studio_planner.craft.tongue import listed, marked, translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import (
    copy_of,
    free_key,
    free_name,
    moved_thing,
    with_thing,
    without_thing,
)

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Mapping

    from studio_planner.craft.studio import Studio

NEW_SPOT_MM = (600.0, 400.0, 300.0)
"""Length, width and clear height of a spot until the maker says otherwise."""

_NAMES = {
    PlaceKind.ROOM: marked("places", "Workshop"),
    PlaceKind.WARM_BOX: marked("places", "Warm box"),
}
_HOURS_IN_DAY = 24.0


def place_of(studio: Studio, key: str) -> Place | None:
    """The place of that key, or None."""
    return next((place for place in studio.places if place.key == key), None)


def values_of(noun: Place | Spot) -> dict[str, Any]:
    """All fields of a place or spot by name, for a form."""
    return {field.name: getattr(noun, field.name) for field in fields(noun)}


def added_place(studio: Studio, kind: PlaceKind, celsius: float) -> tuple[Change, str]:
    """Add a place that is always `celsius` warm; the change, and the key that it gets."""
    name = free_name((place.name for place in studio.places), translate("places", _NAMES[kind]))
    key = free_key((place.key for place in studio.places), name)

    def make(now: Studio) -> Studio:
        pattern = (PatternPoint(at=time(0), celsius=celsius),)
        return with_thing(now, Place(key=key, name=name, kind=kind, pattern=pattern))

    return Change(translate("changes", "Add {name}").format(name=name), make), key


def copied_place(studio: Studio, place: Place) -> tuple[Change, str]:
    """Add a place like another one, with spots of its own; what was read stays where it was."""
    copy = replace(copy_of(studio, place), readings=())
    taken = [spot.key for spot in studio.spots]
    spots = []
    for spot in place.spots:
        key = free_key(taken, f"{copy.name} {spot.name}")
        taken.append(key)
        spots.append(replace(spot, key=key))
    whole = replace(copy, spots=tuple(spots))
    return Change(
        translate("changes", "Add {name}").format(name=copy.name),
        lambda now: with_thing(now, whole),
    ), copy.key


def why_kept(studio: Studio, spots: Iterable[Spot]) -> str:
    """Why these spots cannot go: the pieces whose pours are written down there; else empty."""
    keys = {spot.key: spot.name for spot in spots}
    names: dict[str, str] = {}
    for pour in studio.poured:
        if pour.spot in keys:
            names.setdefault(studio.piece(pour.piece).name, keys[pour.spot])
    if not names:
        return ""
    said = translate(
        "places",
        "pours of {pieces} are written down on {spots}. Take those pieces out first, or let it "
        "stand.",
    )
    return said.format(pieces=listed(names), spots=listed(names.values()))


def removed_place(place: Place) -> Change:
    """Take a place out with its spots; InvalidEntry while pours stand there."""

    def make(now: Studio) -> Studio:
        _refuse(place.name, why_kept(now, place.spots))
        return without_thing(now, Place, place.key)

    return Change(translate("changes", "Remove {place}").format(place=place.name), make)


def moved_place(place: Place, to: int) -> Change:
    """Put a place at another position; the first room is where pieces rest."""
    return Change(
        translate("changes", "{place}, place in the list").format(place=place.name),
        lambda now: moved_thing(now, Place, place.key, to),
    )


def changed_place(key: str, words: str, make: Callable[[Place], Place]) -> Change:
    """Change a place as it is when the change is made; `words` say what is changed."""

    def changed(now: Studio) -> Studio:
        place = place_of(now, key)
        return now if place is None else with_thing(now, make(place))

    return Change(words, changed)


def entered(place: Place, label: str, values: Mapping[str, Any]) -> Change:
    """Give a place the values of a form by field name; `label` is the field that was edited."""
    new = dict(values)
    return changed_place(
        place.key,
        translate("changes", "{place}, {label}").format(place=place.name, label=label),
        lambda now: replace(now, **new),
    )


def steady_celsius(place: Place) -> float | None:
    """How warm a place is expected to be at any hour [°C]; None where the hours differ."""
    expected = {point.celsius for point in place.pattern}
    return expected.pop() if len(expected) == 1 else None


def steadily(place: Place, label: str, celsius: float) -> Change:
    """Expect a place to be as warm [°C] at any hour; `label` is the field that was edited."""
    return changed_place(
        place.key,
        translate("changes", "{place}, {label}").format(place=place.name, label=label),
        lambda now: replace(
            now, pattern=tuple(replace(point, celsius=celsius) for point in now.pattern)
        ),
    )


def heat_loss(kwh: float, degrees: float) -> float:
    """Heat loss [W/K] from a heater's use [kWh] in a day that was `degrees` [K] colder outside.

    In balance the heater replaces what is lost: kWh * 1000 / (24 h * degrees). Sun, people and
    other heaters count as loss that was not paid for, so it is rather too low. InvalidEntry
    when a figure makes no sense.

    Examples
    --------
    >>> heat_loss(12.0, 20.0)
    25.0
    """
    broken = []
    if not 0 < kwh < float("inf"):
        broken.append(
            BrokenRule(
                "kwh", translate("places", "give what the heater used, more than nothing.")
            )
        )
    if not 0 < degrees < float("inf"):
        broken.append(
            BrokenRule(
                "degrees", translate("places", "it has to be colder outside than inside.")
            )
        )
    if broken:
        raise InvalidEntry(translate("nouns", "heat loss"), broken)
    return kwh * 1000.0 / (_HOURS_IN_DAY * degrees)


# Spots


def added_spot(studio: Studio, place: Place) -> tuple[Change, str]:
    """Add a spot as large as the last one there; the change, and the key that it gets."""
    length, width, height = NEW_SPOT_MM
    if place.spots:
        last = place.spots[-1]
        length, width, height = last.length_mm, last.width_mm, last.height_mm
    name = free_name(
        (spot.name for spot in place.spots),
        translate("places", "Box spot") if _boxed(place) else translate("places", "Shelf"),
    )
    key = free_key((spot.key for spot in studio.spots), name)
    spot = Spot(key=key, name=name, length_mm=length, width_mm=width, height_mm=height)
    return _with_spots(
        place,
        translate("changes", "Add {name}").format(name=name),
        lambda spots: (*spots, spot),
    ), key


def copied_spot(studio: Studio, place: Place, spot: Spot) -> tuple[Change, str]:
    """Add a spot like another one; the change, and the key that it gets."""
    name = free_name((one.name for one in place.spots), spot.name)
    key = free_key((one.key for one in studio.spots), name)
    copy = replace(spot, key=key, name=name)
    return _with_spots(
        place,
        translate("changes", "Add {name}").format(name=name),
        lambda spots: (*spots, copy),
    ), key


def removed_spot(place: Place, spot: Spot) -> Change:
    """Take a spot out; InvalidEntry while pours stand there."""
    inner = _with_spots(
        place,
        translate("changes", "Remove {spot}").format(spot=spot.name),
        lambda spots: tuple(one for one in spots if one.key != spot.key),
    )

    def make(now: Studio) -> Studio:
        _refuse(spot.name, why_kept(now, (spot,)))
        return inner.make(now)

    return Change(inner.words, make)


def moved_spot(place: Place, spot: Spot, to: int) -> Change:
    """Put a spot at another position of the shelf, 0 for the first."""

    def make(spots: tuple[Spot, ...]) -> tuple[Spot, ...]:
        rest = [one for one in spots if one.key != spot.key]
        rest.insert(to, next(one for one in spots if one.key == spot.key))
        return tuple(rest)

    return _with_spots(
        place, translate("changes", "{spot}, place on the shelf").format(spot=spot.name), make
    )


def changed_spot(place: Place, spot: Spot, label: str, values: Mapping[str, Any]) -> Change:
    """Give a spot the values of a form by field name."""
    new = dict(values)

    def make(spots: tuple[Spot, ...]) -> tuple[Spot, ...]:
        return tuple(replace(one, **new) if one.key == spot.key else one for one in spots)

    return _with_spots(
        place, translate("changes", "{spot}, {label}").format(spot=spot.name, label=label), make
    )


def _with_spots(
    place: Place, words: str, make: Callable[[tuple[Spot, ...]], tuple[Spot, ...]]
) -> Change:
    return changed_place(place.key, words, lambda now: replace(now, spots=make(now.spots)))


def _boxed(place: Place) -> bool:
    return place.kind is PlaceKind.WARM_BOX


def _refuse(name: str, why: str) -> None:
    if why:
        raise InvalidEntry(name, [BrokenRule("it stays", why)])
