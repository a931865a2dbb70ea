"""The commands next and weigh."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.services.caution import DEFERRAL
from studio_planner.services.hands_items import HandsKind
from studio_planner.services.next_hands import HOURS_AHEAD, first_after, next_hands
from studio_planner.services.step_words import packing_words
from studio_planner.services.studio_files import read_planned
from studio_planner.services.weighing import weigh as weighed
from studio_planner.terminal.reading import when_of, whole_number
from studio_planner.terminal.writing import (
    iso,
    moment_words,
    say,
    say_json,
    say_table,
    say_wrapped,
    short_moment,
)

if TYPE_CHECKING:
    import argparse
    from collections.abc import Sequence
    from datetime import datetime

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.services.hands_items import HandsItem
    from studio_planner.services.weighing import Cup, WeighedMix
    from studio_planner.terminal.surroundings import Surroundings

_LARGEST_NUMBER = 999_999


def next_(arguments: argparse.Namespace, around: Surroundings) -> int:
    """List what needs hands in the next hours.

    JSON: at, hours, and items: each with what, number, piece, piece_name, coat, start, end,
    opens, deadline, person, spot, if_left, missed (its block is over and it is not written
    down as poured; it can still be begun until the deadline).
    """
    studio, plan = read_planned(Path(arguments.file))
    zone = studio.time_zone
    now = around.clock.now()
    if arguments.at is not None:
        now = when_of(arguments.at, zone, "--at")
    items = next_hands(studio, plan, now)
    if arguments.json:
        rows = [_item_json(studio, item) for item in items]
        say_json({"at": iso(zone, now), "hours": HOURS_AHEAD, "items": rows})
    elif items:
        _print_items(studio, now, items)
    else:
        _print_nothing(studio, plan, now)
    return 0


def _item_json(studio: Studio, item: HandsItem) -> dict[str, Any]:
    zone = studio.time_zone
    return {
        "what": item.kind,
        "number": item.number,
        "piece": item.piece,
        "piece_name": studio.piece(item.piece).name,
        "coat": item.coat,
        "start": iso(zone, item.start),
        "end": iso(zone, item.end),
        "opens": iso(zone, item.opens),
        "deadline": iso(zone, item.deadline),
        "person": item.person,
        "spot": item.spot,
        "if_left": item.if_left,
        "missed": item.missed,
    }


def _print_items(studio: Studio, now: datetime, items: Sequence[HandsItem]) -> None:
    zone = studio.time_zone
    people = {person.key: person.name for person in studio.people}
    say(f"What needs hands within {HOURS_AHEAD:g} h of {moment_words(zone, now)}:")
    say()
    rows = [
        (
            "" if item.number is None else str(item.number),
            _what(studio, item),
            studio.piece(item.piece).name,
            short_moment(zone, item.start),
            short_moment(zone, item.deadline),
            people.get(item.person, item.person),
            item.if_left,
        )
        for item in items
    ]
    say_table(("No", "What", "Piece", "Planned", "Latest", "Who", "If left"), rows)


def _print_nothing(studio: Studio, plan: Plan, now: datetime) -> None:
    zone = studio.time_zone
    say(f"Nothing needs hands within {HOURS_AHEAD:g} h of {moment_words(zone, now)}.")
    item = first_after(studio, plan, now)
    if item is not None:
        piece = studio.piece(item.piece).name
        what = _what(studio, item)
        say_wrapped(f"The next thing is: {what}, {piece}, {moment_words(zone, item.start)}.")


def _what(studio: Studio, item: HandsItem) -> str:
    if item.kind is HandsKind.PACK:
        return packing_words(studio, item.piece)
    return f"{item.kind}, not recorded as poured" if item.missed else item.kind.value


def weigh(arguments: argparse.Namespace, around: Surroundings) -> int:
    """List what to weigh for the whole mixes that coats of the kept plan are poured from.

    JSON: mixes, each with mix, part, parts, product, coats (numbers), spread_grams,
    total_grams, a_grams and b_grams (null for a product that is not mixed), scale (readings
    after A and after B), cups (colour, mix_grams, colourant, colourant_grams, reads_grams),
    out_of_cup_minutes (null when the sheet has no cup life), notes; and caution, a sentence.
    """
    del around
    numbers = [whole_number(text, "COAT", _LARGEST_NUMBER) for text in arguments.coats]
    studio, plan = read_planned(Path(arguments.file))
    mixes = weighed(studio, plan, numbers)
    if arguments.json:
        say_json({"mixes": [_mix_json(mix) for mix in mixes], "caution": DEFERRAL})
        return 0
    for mix in mixes:
        _print_mix(studio, mix)
        say()
    say_wrapped(DEFERRAL)
    return 0


def _mix_json(mix: WeighedMix) -> dict[str, Any]:
    readings = [] if mix.a_grams is None else [mix.a_grams, mix.total_grams]
    return {
        "mix": mix.mix,
        "part": mix.part,
        "parts": mix.parts,
        "product": mix.product.key,
        "coats": [coat.number for coat in mix.coats],
        "spread_grams": mix.spread_grams,
        "total_grams": mix.total_grams,
        "a_grams": mix.a_grams,
        "b_grams": mix.b_grams,
        "scale": readings,
        "cups": [_cup_json(cup) for cup in mix.cups],
        "out_of_cup_minutes": mix.out_of_cup_minutes,
        "notes": list(mix.notes),
    }


def _cup_json(cup: Cup) -> dict[str, Any]:
    return {
        "colour": cup.colour,
        "mix_grams": cup.mix_grams,
        "colourant": cup.colourant,
        "colourant_grams": cup.colourant_grams,
        "reads_grams": cup.reads_grams,
    }


def _print_mix(studio: Studio, mix: WeighedMix) -> None:
    pieces = ", ".join(
        f"{coat.number} {studio.piece(coat.piece).name} ({coat.coat})" for coat in mix.coats
    )
    part = f", {mix.part} of {mix.parts}" if mix.parts > 1 else ""
    say_wrapped(f"Mix {mix.mix}{part}: {mix.product.name}, for {pieces}")
    if mix.total_grams > 0.0:
        say_table(("", "Add", "Scale shows"), _scale_rows(mix), "  ")
    if mix.out_of_cup_minutes is not None:
        minutes = f"{mix.out_of_cup_minutes:.0f} min"
        say_wrapped(f"Be out of the cup {minutes} after A meets B.", "  ")
    for note in mix.notes:
        say_wrapped(note, "  ")


def _scale_rows(mix: WeighedMix) -> list[tuple[str, str, str]]:
    rows = []
    if mix.a_grams is not None and mix.b_grams is not None:
        rows.append(("A", _grams(mix.a_grams), _grams(mix.a_grams)))
        rows.append(("B", _grams(mix.b_grams), _grams(mix.total_grams)))
    if mix.a_grams is None or len(mix.cups) > 1 or mix.cups[0].colourant_grams > 0.0:
        for cup in mix.cups:
            rows += _cup_rows(cup, mixed=mix.a_grams is not None)
    return rows


def _cup_rows(cup: Cup, *, mixed: bool) -> list[tuple[str, str, str]]:
    label = f"Cup {cup.colour}" if mixed else "Weigh out"
    rows = [(label, _grams(cup.mix_grams), _grams(cup.mix_grams))]
    if cup.colourant_grams > 0.0:
        what = f"  {cup.colourant or 'colourant'}"
        rows.append((what, _grams(cup.colourant_grams), _grams(cup.reads_grams)))
    return rows


def _grams(grams: float) -> str:
    return f"{grams:.10g} g"
