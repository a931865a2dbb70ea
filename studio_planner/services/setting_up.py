"""What a studio still lacks before it can be planned, and what a plan will have to do without.

Sentences name things and never sizes or temperatures, which a maker may read in other units.
"""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.places import PlaceKind
from studio_planner.craft.tongue import counted, listed, translate
from studio_planner.planning.cannot_meet import cannot_meet
from studio_planner.services.data_sheets.lacking import product_step
from studio_planner.services.hands_on import block_of
from studio_planner.services.needs import Need, SetUpStep

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.studio import Studio

_AHEAD = timedelta(days=28)
_WEEK = timedelta(days=7)


def plan_possible(studio: Studio) -> bool:
    """Tell whether there is anything to plan, and anything to plan it with."""
    return bool(studio.pieces and studio.people and studio.spots and studio.resting_place)


def set_up_steps(studio: Studio, now: datetime) -> tuple[SetUpStep, ...]:
    """Every need in order, for the weeks from `now` (aware) on."""
    return (
        _hands(studio, now),
        _room(studio),
        _spot(studio),
        product_step(studio),
        _piece(studio),
        _order(studio),
    )


def ready(steps: Iterable[SetUpStep]) -> bool:
    """Tell whether everything that a plan needs is there."""
    return all(step.done or step.need.optional for step in steps)


def _hands(studio: Studio, now: datetime) -> SetUpStep:
    zone, until = studio.time_zone, now + _AHEAD
    working = {p.key: p.working(zone, now, until) for p in studio.people}
    lacking: list[str] = []
    knowing: list[str] = []
    if not studio.people:
        lacking.append(translate("set up", "Nobody is named yet: add yourself."))
    elif not any(working.values()):
        lacking.append(
            translate(
                "set up", "Nobody has working hours in the coming four weeks: paint some."
            )
        )
    else:
        idle = [p.name for p in studio.people if not working[p.key]]
        if idle:
            knowing.append(
                translate(
                    "set up", "No working hours in the coming four weeks: {names}."
                ).format(names=listed(idle))
            )
        longest = max(end - start for spans in working.values() for start, end in spans)
        knowing += _too_long(studio, longest)
    if studio.people and not any(p.awake(zone, now, now + _WEEK) for p in studio.people):
        knowing.append(
            translate(
                "set up",
                "Everybody is away for the whole of the coming week: nobody is awake to "
                "pour, to pull tape or to pack.",
            )
        )
    return SetUpStep(
        need=Need.HANDS,
        there=listed(p.name for p in studio.people),
        lacking=tuple(lacking),
        knowing=tuple(knowing),
    )


def _too_long(studio: Studio, longest: timedelta) -> list[str]:
    found = [
        f"{piece.name}, {piece.coat_name(coat.key)}"
        for piece in studio.pieces
        for coat in piece.stack
        if block_of(studio, piece, coat) > longest
    ]
    if not found:
        return []
    return [
        translate(
            "set up", "Nobody works long enough on end for: {names}. Paint a longer stretch."
        ).format(names=listed(found))
    ]


def _room(studio: Studio) -> SetUpStep:
    rooms = [place for place in studio.places if place.kind is PlaceKind.ROOM]
    if not rooms:
        lacking = translate(
            "set up", "There is no room yet: add one with the temperatures you expect in it."
        )
        return SetUpStep(need=Need.ROOM, there="", lacking=(lacking,))
    dry = [
        place.name
        for place in studio.places
        if not any(point.humidity_pct is not None for point in place.pattern)
        and not any(reading.humidity_pct is not None for reading in place.readings)
    ]
    knowing = []
    if dry:
        knowing.append(
            translate(
                "set up",
                "No humidity is known of: {names}. The margin to the dew point stays unknown "
                "there, and every pour is marked so.",
            ).format(names=listed(dry))
        )
    knowing += _too_cold(studio)
    return SetUpStep(
        need=Need.ROOM, there=listed(p.name for p in rooms), knowing=tuple(knowing)
    )


def _too_cold(studio: Studio) -> list[str]:
    if any(place.readings for place in studio.places):
        return []  # what was read may be warmer than the pattern, and counts
    warmest = max(point.celsius for place in studio.places for point in place.pattern)
    used = {coat.product for piece in studio.pieces for coat in piece.stack}
    cold = [
        product.name
        for product in studio.products
        if product.key in used
        and product.minimum_celsius is not None
        and product.minimum_celsius > warmest
    ]
    return (
        [
            translate(
                "set up", "No place ever gets as warm as the sheet asks for: {names}."
            ).format(names=listed(cold))
        ]
        if cold
        else []
    )


def _spot(studio: Studio) -> SetUpStep:
    there = counted(
        len(studio.spots),
        translate("set up", "{count} spot"),
        translate("set up", "{count} spots"),
    )
    if not studio.spots:
        lacking = translate(
            "set up", "There is no level spot yet: measure a place on the shelf and add it."
        )
        return SetUpStep(need=Need.SPOT, there="", lacking=(lacking,))
    large = [piece.name for piece in studio.pieces if not any(map(piece.fits, studio.spots))]
    if not large:
        return SetUpStep(need=Need.SPOT, there=there)
    sentence = translate(
        "set up",
        "Larger than every spot: {names}. Add a spot that is large enough, with the height "
        "of the cover.",
    ).format(names=listed(large))
    if len(large) == len(studio.pieces):
        return SetUpStep(need=Need.SPOT, there=there, lacking=(sentence,))
    return SetUpStep(need=Need.SPOT, there=there, knowing=(sentence,))


def _piece(studio: Studio) -> SetUpStep:
    if not studio.pieces:
        lacking = translate("set up", "There is no piece yet: add one with its stack of coats.")
        return SetUpStep(need=Need.PIECE, there="", lacking=(lacking,))
    there = counted(
        len(studio.pieces),
        translate("set up", "{count} piece"),
        translate("set up", "{count} pieces"),
    )
    left_out = [rows for piece in studio.pieces if (rows := cannot_meet(studio, piece))]
    words = tuple(str(row.reason) for rows in left_out for row in rows)
    if len(left_out) == len(studio.pieces):
        return SetUpStep(need=Need.PIECE, there=there, lacking=words)
    return SetUpStep(need=Need.PIECE, there=there, knowing=words)


def _order(studio: Studio) -> SetUpStep:
    if not studio.orders:
        lacking = translate("set up", "Nothing is promised yet: a plan then only ends early.")
        return SetUpStep(need=Need.ORDER, there="", lacking=(lacking,))
    return SetUpStep(
        need=Need.ORDER,
        there=counted(
            len(studio.orders),
            translate("set up", "{count} order"),
            translate("set up", "{count} orders"),
        ),
    )
