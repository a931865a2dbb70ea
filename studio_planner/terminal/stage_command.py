"""The command stages."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.craft.local_time import zone_named
from studio_planner.services.data_sheets.sources import product_of_sheet, product_of_studio
from studio_planner.services.data_sheets.stage_times import room_times, steady_times
from studio_planner.services.room_records import room_record
from studio_planner.services.studio_files import read_studio
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.reading import celsius_of, grams_of, when_of
from studio_planner.terminal.stage_pages import print_stages, record_notes
from studio_planner.terminal.writing import moment_words, say_json

if TYPE_CHECKING:
    import argparse
    from datetime import datetime
    from zoneinfo import ZoneInfo

    from studio_planner.craft.products import Product
    from studio_planner.services.data_sheets.stage_times import StageTime
    from studio_planner.services.room_records import RoomRecord
    from studio_planner.terminal.surroundings import Surroundings


def stages(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Say when a film reaches each stage of its sheet.

    JSON: stages, each with stage, early_h, likely_h, late_h (hours from the pour; null when
    never reached), basis (published, taught, between, assumed, outside) and, where there is
    one, reason (for null) or note (what else the hours rest on, touch tests among it); and,
    where a room's file did not serve as it stands, notes, sentences.
    """
    del around
    _require_sense(arguments)
    grams = None if arguments.mass is None else grams_of(arguments.mass, "--mass")
    product, zone = _product(arguments, _celsius(arguments.minimum, "--minimum"))
    if arguments.room is None:
        _steadily(arguments, product, celsius_of(arguments.at, "--at"), grams)
    else:
        _in_room(arguments, product, zone, grams)
    return 0


def _steadily(
    arguments: argparse.Namespace, product: Product, celsius: float, grams: float | None
) -> None:
    rows = steady_times(product, celsius, grams)
    if arguments.json:
        _say_rows(rows)
    else:
        print_stages(f"{product.name}, at a steady {celsius:.1f} °C:", rows)


def _in_room(
    arguments: argparse.Namespace, product: Product, zone: ZoneInfo | None, grams: float | None
) -> None:
    clock = zone or zone_named("UTC")
    record = room_record(Path(arguments.room), zone, clock)
    poured = when_of(arguments.poured, zone, "--poured")
    _require_inside(arguments, record, poured, clock)
    rows = room_times(product, record.history, poured, grams)
    notes = record_notes(record, clock)
    if arguments.json:
        _say_rows(rows, notes)
        return
    title = f"{product.name}, poured {arguments.poured} in the room of {arguments.room}:"
    print_stages(title, rows, poured, clock, notes)


def _require_inside(
    arguments: argparse.Namespace, record: RoomRecord, poured: datetime, clock: ZoneInfo
) -> None:
    if record.history.celsius_at(poured.timestamp()) is not None:
        return
    first, last = (moment_words(clock, moment) for moment in record.extent)
    raise BadInput(
        f"--poured {arguments.poured} is outside the record of {arguments.room}, which runs "
        f"from {first} to {last} ({clock.key}); choose a time inside it."
    )


def _require_sense(arguments: argparse.Namespace) -> None:
    if arguments.sheet is not None and arguments.file is not None:
        raise BadInput("stages: give either --sheet SHEET.csv or FILE PRODUCT, not both.")
    if arguments.sheet is None and arguments.product is None:
        raise BadInput("stages: give --sheet SHEET.csv, or FILE and PRODUCT.")
    if (arguments.at is None) == (arguments.room is None):
        raise BadInput("stages: give either --at TEMP or --room ROOM.csv with --poured WHEN.")
    if (arguments.room is None) != (arguments.poured is None):
        raise BadInput("stages: --room ROOM.csv and --poured WHEN go together.")


def _celsius(text: str | None, what: str) -> float | None:
    return None if text is None else celsius_of(text, what)


def _product(
    arguments: argparse.Namespace, minimum: float | None
) -> tuple[Product, ZoneInfo | None]:
    if arguments.sheet is not None:
        return product_of_sheet(Path(arguments.sheet), minimum), None
    studio = read_studio(Path(arguments.file))
    return product_of_studio(studio, arguments.product, minimum), studio.time_zone


def _say_rows(rows: tuple[StageTime, ...], notes: tuple[str, ...] = ()) -> None:
    answer: dict[str, Any] = {"stages": [_row_json(row) for row in rows]}
    say_json(answer | ({"notes": list(notes)} if notes else {}))


def _row_json(row: StageTime) -> dict[str, Any]:
    known = {
        "stage": row.stage,
        "early_h": _rounded(row.early_hours),
        "likely_h": _rounded(row.likely_hours),
        "late_h": _rounded(row.late_hours),
        "basis": row.basis,
    }
    said = {"reason": row.reason, "note": row.note}
    return known | {name: words for name, words in said.items() if words}


def _rounded(hours: float | None) -> float | None:
    # A hundredth of a second: below it there is only the arithmetic's own noise.
    return None if hours is None else round(hours, 6)
