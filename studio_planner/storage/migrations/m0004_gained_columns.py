"""Tables of version 4 that gain columns, and the tables of bottles and pigments."""

from __future__ import annotations

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
  UNIQUE ("owner", "position")
) STRICT
"""

_PIECES = """
CREATE TABLE "pieces" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  "shape_kind" TEXT NOT NULL,
  "shape_length_mm" REAL,
  "shape_width_mm" REAL,
  "shape_diameter_mm" REAL,
  "shape_area_cm2" REAL,
  "shape_perimeter_mm" REAL,
  "material" TEXT NOT NULL,
  "body_mm" REAL NOT NULL,
  "count" INTEGER NOT NULL,
  "rim_mm" REAL NOT NULL,
  "clearance_mm" REAL NOT NULL,
  "footprint_mm_1" REAL,
  "footprint_mm_2" REAL,
  "cover_mm" REAL NOT NULL,
  "note" TEXT NOT NULL,
  "blank_price" REAL NOT NULL,
  UNIQUE ("owner", "position")
) STRICT
"""

_COLOURS = """
CREATE TABLE "pieces_stack_colours" (
  "owner" INTEGER NOT NULL REFERENCES "pieces_stack" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "share_pct" REAL NOT NULL,
  "colourant" TEXT NOT NULL,
  "colourant_pct" REAL NOT NULL,
  "pour_at_minute" REAL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID
"""

_PATTERN_COLOURS = """
CREATE TABLE "patterns_stack_colours" (
  "owner" INTEGER NOT NULL REFERENCES "patterns_stack" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "share_pct" REAL NOT NULL,
  "colourant" TEXT NOT NULL,
  "colourant_pct" REAL NOT NULL,
  "pour_at_minute" REAL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID
"""

_ORDERS = """
CREATE TABLE "orders" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  "promised" TEXT NOT NULL,
  "promise" TEXT NOT NULL,
  "gate" TEXT NOT NULL,
  "packing_minutes" INTEGER NOT NULL,
  "opens" TEXT NOT NULL,
  "weight" REAL NOT NULL,
  "note" TEXT NOT NULL,
  "price" REAL,
  UNIQUE ("owner", "position")
) STRICT
"""

STOCK_TABLES = """
CREATE TABLE "lots" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "product" TEXT NOT NULL
    REFERENCES "products" ("key") DEFERRABLE INITIALLY DEFERRED,
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
) STRICT;

CREATE TABLE "lots_counts" (
  "owner" INTEGER NOT NULL REFERENCES "lots" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "at" INTEGER NOT NULL,
  "left_g" REAL NOT NULL,
  "words" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "pigments" (
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  "kind" TEXT NOT NULL,
  "density" REAL,
  "diameter_um" REAL,
  "price_per_100g" REAL NOT NULL,
  "note" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID
"""

_OLDER_STUDIO: dict[str, str | float | None] = {
    "stock_lead_days": 7,
    "stock_opened_days": 180,
    "stock_reserve_g": 0.0,
    "prices_hourly_wage": 0.0,
    "prices_consumables_per_mix": 0.0,
    "prices_consumables_per_piece": 0.0,
    "prices_overhead_pct": 0.0,
    "prices_scrap_pct": 5.0,
    "prices_fees_pct": 0.0,
    "prices_rule": "on cost",
    "prices_margin_pct": 50.0,
    "prices_rush_wage_pct": 50.0,
    "prices_rush_freight": 0.0,
    "prices_round_to": 0.5,
}

GAINED: dict[str, tuple[str, dict[str, str | float | None]]] = {
    "studio": (_STUDIO, _OLDER_STUDIO),
    "products": (_PRODUCTS, {"viscosity_mpas": None}),
    "pieces": (_PIECES, {"blank_price": 0.0}),
    "pieces_stack_colours": (_COLOURS, {"pour_at_minute": None}),
    "patterns_stack_colours": (_PATTERN_COLOURS, {"pour_at_minute": None}),
    "orders": (_ORDERS, {"price": None}),
}
"""The tables that gain columns, and what older rows hold there."""
