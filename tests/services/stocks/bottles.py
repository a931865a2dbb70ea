"""Bottles for the bench of the mixing tests; every figure is invented."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.mixes import WeighedMix
from studio_planner.craft.orders import Order
from studio_planner.craft.stock import Lot, LotPart
from tests.services.mixing.bench_mixes import (
    START,
    bench,
    coasters,
    flood_coat,
    plan_of,
    poured,
)

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio

TODAY = START.date()
NOW = START - timedelta(hours=2)


def lot(key: str, part: LotPart = LotPart.A, grams: float = 1000.0, **entries: object) -> Lot:
    given: dict[str, Any] = {
        "product": "flood",
        "label": f"L-{key}",
        "received": date(2026, 1, 5),
    }
    return Lot(key=key, part=part, new_g=grams, **(given | entries))


def sets(*names: str, count: int = 6) -> tuple[Piece, ...]:
    return tuple(coasters(name, count, flood_coat()) for name in names)


def nightly(*names: str) -> tuple[PlannedCoat, ...]:
    """One pour a night, each a mix of its own, numbered from 1."""
    return tuple(
        poured(
            number, name, number, spot="s1",
            start=START + timedelta(days=number - 1),
            end=START + timedelta(days=number - 1, hours=1),
        )
        for number, name in enumerate(names, start=1)
    )  # fmt: skip


def stocked(*lots: Lot, names: tuple[str, ...] = ("one", "two"), count: int = 6) -> Studio:
    studio = bench(*sets(*names, count=count))
    orders = tuple(
        Order(key=f"for-{name}", name=f"For {name}", pieces=(name,), promised=date(2026, 3, 1))
        for name in names
    )
    return replace(studio, orders=orders, lots=lots, plan=plan_of(*nightly(*names)))


def weighed(
    studio: Studio, a_grams: float, b_grams: float = 0.0, lot_a: str = "", lot_b: str = ""
) -> Studio:
    """The studio with one more mix weighed yesterday."""
    number = len(studio.log) + 1
    at = START - timedelta(days=1)
    entry = LogEntry(number=number, kind=EntryKind.WEIGHED, at=at, written=at, batch=number)
    mix = WeighedMix(
        entry=number, batch=number, product="flood", at=at,
        a_grams=a_grams, b_grams=b_grams, lot_a=lot_a, lot_b=lot_b,
    )  # fmt: skip
    return replace(studio, log=(*studio.log, entry), mixes=(*studio.mixes, mix))
