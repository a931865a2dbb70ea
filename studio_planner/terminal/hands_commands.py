"""The command next."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.services.hands_items import HandsKind
from studio_planner.services.next_hands import HOURS_AHEAD, first_after, next_hands
from studio_planner.services.step_words import packing_words
from studio_planner.services.studio_files import read_planned
from studio_planner.terminal.reading import when_of
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
    from studio_planner.terminal.surroundings import Surroundings


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
