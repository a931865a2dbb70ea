"""Version 6: pots of colour among the bottles, and what leaf costs."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import sqlite3

_STUDIO = """
CREATE TABLE "studio" (
  "id" INTEGER PRIMARY KEY CHECK ("id" = 1),
  "name" TEXT NOT NULL,
  "zone" TEXT NOT NULL,
  "currency" TEXT NOT NULL,
  "units_temperature" TEXT NOT NULL,
  "units_mass" TEXT NOT NULL,
  "units_length" TEXT NOT NULL,
  "units_film" TEXT NOT NULL,
  "units_volume" TEXT NOT NULL,
  "units_clock" TEXT NOT NULL,
  "units_week_starts" INTEGER NOT NULL,
  "stock_lead_days" INTEGER NOT NULL,
  "stock_opened_days" INTEGER NOT NULL,
  "stock_reserve_g" REAL NOT NULL,
  "prices_hourly_wage" REAL NOT NULL,
  "prices_consumables_per_mix" REAL NOT NULL,
  "prices_consumables_per_piece" REAL NOT NULL,
  "prices_overhead_pct" REAL NOT NULL,
  "prices_scrap_pct" REAL NOT NULL,
  "prices_fees_pct" REAL NOT NULL,
  "prices_rule" TEXT NOT NULL,
  "prices_margin_pct" REAL NOT NULL,
  "prices_rush_wage_pct" REAL NOT NULL,
  "prices_rush_freight" REAL NOT NULL,
  "prices_round_to" REAL NOT NULL,
  "prices_leaf_waste_pct" REAL NOT NULL,
  "plan_outdated" INTEGER NOT NULL CHECK ("plan_outdated" IN (0, 1))
) STRICT
"""

_PRODUCTS = """
CREATE TABLE "products" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  "kind" TEXT NOT NULL,
  "ratio_a" REAL,
  "ratio_b" REAL,
  "ratio_by" TEXT,
  "density_a" REAL,
  "density_b" REAL,
  "density" REAL NOT NULL,
  "minimum_celsius" REAL,
  "maximum_celsius" REAL,
  "humidity_limit_pct" REAL,
  "depth_limit_mm" REAL,
  "cup_limit_g" REAL NOT NULL,
  "mix_limit_g" REAL NOT NULL,
  "invented" INTEGER NOT NULL CHECK ("invented" IN (0, 1)),
  "viscosity_mpas" REAL,
  "leaf_mm" REAL,
  "leaf_price" REAL NOT NULL,
  UNIQUE ("owner", "position")
) STRICT
"""

_LOTS = """
CREATE TABLE "lots" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "product" TEXT NOT NULL,
  "part" TEXT NOT NULL,
  "label" TEXT NOT NULL,
  "received" TEXT NOT NULL,
  "new_g" REAL NOT NULL,
  "price" REAL NOT NULL,
  "opened" TEXT,
  "best_before" TEXT,
  "kept_for" TEXT NOT NULL,
  "note" TEXT NOT NULL,
  UNIQUE ("owner", "position")
) STRICT
"""


def pots_and_leaf(connection: sqlite3.Connection) -> None:
    """Let a bottle hold a pigment, too, and give leaf its size, its price and its waste."""
    _make_anew(connection, "studio", _STUDIO, {"prices_leaf_waste_pct": 20.0})
    _make_anew(connection, "products", _PRODUCTS, {"leaf_mm": None, "leaf_price": 0.0})
    _make_anew(connection, "lots", _LOTS, {})


def _make_anew(
    connection: sqlite3.Connection, name: str, table: str, gained: dict[str, float | None]
) -> None:
    found = connection.execute(f'SELECT * FROM "{name}"')  # noqa: S608 - our own
    columns = (*(column[0] for column in found.description), *gained)
    rows = [(*row, *gained.values()) for row in found]
    connection.execute(f'DROP TABLE "{name}"')
    connection.execute(table.strip())
    names = ", ".join(f'"{column}"' for column in columns)
    marks = ", ".join("?" * len(columns))
    connection.executemany(f'INSERT INTO "{name}" ({names}) VALUES ({marks})', rows)  # noqa: S608 - likewise
