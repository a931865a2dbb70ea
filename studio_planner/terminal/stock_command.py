"""The command stock: what is left, what the plan takes, what runs out, and every bottle."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.craft.stock import LotPart
from studio_planner.services.amount_words import grams_said
from studio_planner.services.caution import DEFERRAL
from studio_planner.services.stocks.stock_view import stock_of
from studio_planner.services.stocks.stock_words import stuff_said
from studio_planner.services.studio_files import read_studio
from studio_planner.terminal.writing import (
    date_words,
    iso,
    moment_words,
    say,
    say_json,
    say_table,
    say_wrapped,
)

if TYPE_CHECKING:
    import argparse
    from datetime import date

    from studio_planner.craft.studio import Studio
    from studio_planner.services.stocks.running_out import StockRow
    from studio_planner.services.stocks.stock_view import LotRow, Stock
    from studio_planner.services.stocks.using import Use
    from studio_planner.terminal.surroundings import Surroundings

_ROWS = ("", "Left", "Coming", "Plan takes", "After", "Runs out", "Order by")
_LOTS = ("Lot", "Of", "Left", "Free", "Good until")


def stock(arguments: argparse.Namespace, around: Surroundings) -> int:
    """List the stock as it is now and what the kept plan makes of it, if there is one.

    JSON: parts, each with product, part, known, left_grams, coming_grams, planned_grams,
    after_grams, short_grams, runs_out and under_reserve (number and start of a pour, or null),
    order_by; bottles, each with lot, label, product, part, left_grams, free_grams, reserved
    (order and grams), good_until; warnings, sentences; and caution.
    """
    studio = read_studio(Path(arguments.file))
    now = around.clock.now()
    found = stock_of(studio, studio.plan, now)
    if arguments.json:
        say_json(_json(studio, found))
        return 0
    if not found.rows:
        say("No bottle is entered and nothing is planned.")
        return 0
    say_table(_ROWS, [_row(studio, row) for row in found.rows])
    if found.lots:
        say()
        say_table(_LOTS, [_lot(studio, row) for row in found.lots])
    _print_warnings(found)
    say()
    say_wrapped(DEFERRAL)
    return 0


def _print_warnings(found: Stock) -> None:
    if found.warnings:
        say()
    for sentence in found.warnings:
        say_wrapped(sentence)


def _row(studio: Studio, row: StockRow) -> tuple[str, ...]:
    units, zone = studio.units, studio.time_zone
    runs_out = None if row.runs_out is None else row.runs_out.at
    return (
        stuff_said(studio, row.product, row.part),
        grams_said(row.left_g, units) if row.known else "not entered",
        grams_said(row.coming_g, units) if row.coming_g > 0.0 else "-",
        grams_said(row.planned_g, units),
        grams_said(max(0.0, row.after_g), units) if row.known else "-",
        moment_words(zone, runs_out),
        "-" if row.order_by is None else date_words(row.order_by),
    )


def _lot(studio: Studio, row: LotRow) -> tuple[str, ...]:
    units = studio.units
    return (
        row.lot.label,
        stuff_said(studio, row.lot.product, row.lot.part),
        grams_said(row.level.left_g, units),
        grams_said(row.free_g, units),
        "-"
        if row.good_until is None
        else f"{date_words(row.good_until)} {row.good_until.year}",
    )


def _json(studio: Studio, found: Stock) -> dict[str, Any]:
    return {
        "parts": [_row_json(studio, row) for row in found.rows],
        "bottles": [_lot_json(row) for row in found.lots],
        "warnings": list(found.warnings),
        "caution": DEFERRAL,
    }


def _row_json(studio: Studio, row: StockRow) -> dict[str, Any]:
    return {
        "product": row.product,
        "part": _part(row.part),
        "known": row.known,
        "left_grams": row.left_g,
        "coming_grams": row.coming_g,
        "planned_grams": row.planned_g,
        "after_grams": max(0.0, row.after_g),
        "short_grams": row.short_g,
        "runs_out": _use_json(studio, row.runs_out),
        "under_reserve": _use_json(studio, row.under_reserve),
        "order_by": _day(row.order_by),
    }


def _use_json(studio: Studio, use: Use | None) -> dict[str, Any] | None:
    return None if use is None else {"number": use.number, "at": iso(studio.time_zone, use.at)}


def _lot_json(row: LotRow) -> dict[str, Any]:
    return {
        "lot": row.lot.key,
        "label": row.lot.label,
        "product": row.lot.product,
        "part": _part(row.lot.part),
        "left_grams": row.level.left_g,
        "free_grams": row.free_g,
        "reserved": [{"order": one.order, "grams": one.grams} for one in row.reserved],
        "good_until": _day(row.good_until),
    }


def _part(part: LotPart) -> str | None:
    return None if part is LotPart.WHOLE else str(part)


def _day(day: date | None) -> str | None:
    return None if day is None else day.isoformat()
