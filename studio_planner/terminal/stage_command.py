"""The command stages."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.craft.local_time import zone_named
from studio_planner.services.caution import DEFERRAL
from studio_planner.services.room_records import room_record
from studio_planner.services.sheets import product_of_sheet, product_of_studio
from studio_planner.services.stage_tables import room_times, steady_times
from studio_planner.services.studio_files import read_studio
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.reading import celsius_of, grams_of, when_of
from studio_planner.terminal.writing import (
    hours_words,
    moment_words,
    say,
    say_json,
    say_table,
    say_wrapped,
)

if TYPE_CHECKING:
    import argparse
    from zoneinfo import ZoneInfo

    from studio_planner.craft.products import Product
    from studio_planner.services.stage_tables import StageTime
    from studio_planner.terminal.surroundings import Surroundings


def stages(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Say when a film reaches each stage of its sheet.

    JSON: stages, each with stage, early_h, likely_h, late_h (hours from the pour; null when
    never reached), basis (published, between, assumed, outside) and, where one is null, reason.
    """
    del around
    _require_sense(arguments)
    minimum = _celsius(arguments.minimum, "--minimum")
    grams = None if arguments.mass is None else grams_of(arguments.mass, "--mass")
    product, zone = _product(arguments, minimum)
    if arguments.at is not None:
        celsius = celsius_of(arguments.at, "--at")
        rows, poured = steady_times(product, celsius, grams), None
        where = f"at a steady {celsius:.1f} °C"
    else:
        room = room_record(Path(arguments.room), zone, zone_named("UTC"))
        poured = when_of(arguments.poured, zone, "--poured")
        rows = room_times(product, room, poured, grams)
        where = f"poured {arguments.poured} in the room of {arguments.room}"
    if arguments.json:
        say_json({"stages": [_row_json(row) for row in rows]})
    else:
        _print(f"{product.name}, {where}:", rows, poured, zone)
    return 0


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


def _row_json(row: StageTime) -> dict[str, Any]:
    known = {
        "stage": row.stage,
        "early_h": _rounded(row.early_hours),
        "likely_h": _rounded(row.likely_hours),
        "late_h": _rounded(row.late_hours),
        "basis": row.basis,
    }
    return known | ({"reason": row.reason} if row.reason else {})


def _rounded(hours: float | None) -> float | None:
    # A hundredth of a second: below it there is only the arithmetic's own noise.
    return None if hours is None else round(hours, 6)


def _print(
    title: str, rows: tuple[StageTime, ...], poured: datetime | None, zone: ZoneInfo | None
) -> None:
    say_wrapped(title)
    say()
    heads = ["Stage", "Early", "Likely", "Late", "Basis"]
    if poured is not None:
        heads.append("Likely at" if zone else "Likely at, UTC")
    table = [_cells(row, poured, zone) for row in rows]
    say_table(heads, table)
    for row in rows:
        if row.reason:
            say_wrapped(f"{_stage_words(row)}: {row.reason}.")
    say()
    say_wrapped(f"Early to late holds 9 of 10 films. {DEFERRAL}")


def _cells(row: StageTime, poured: datetime | None, zone: ZoneInfo | None) -> list[str]:
    hours = (row.early_hours, row.likely_hours, row.late_hours)
    cells = [_stage_words(row), *(hours_words(h) for h in hours), row.basis]
    if poured is None:
        return cells
    likely = row.likely_hours
    at = None if likely is None else poured.astimezone(UTC) + timedelta(hours=likely)
    return [*cells, moment_words(zone or zone_named("UTC"), at)]


def _stage_words(row: StageTime) -> str:
    words = row.stage.replace("_", " ")
    return words if row.grams is None else f"{words} ({row.grams:g} g)"
