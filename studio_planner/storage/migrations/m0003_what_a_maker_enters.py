"""Version 3: units of film, volume and clock, heat loss, notes, photos, patterns and pins.

Changes that do more than keep another plan are counted apart.
"""

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
  "plan_outdated" INTEGER NOT NULL CHECK ("plan_outdated" IN (0, 1))
) STRICT
"""

_SETTINGS = """
CREATE TABLE "settings" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "settle_minutes" INTEGER NOT NULL,
  "dew_margin_celsius" REAL NOT NULL,
  "dew_hours" REAL NOT NULL,
  "steady_celsius" REAL NOT NULL,
  "spare_hours" REAL NOT NULL,
  "turn_minutes" INTEGER NOT NULL,
  "sand_minutes" INTEGER NOT NULL,
  "tape_minutes" INTEGER NOT NULL,
  "scale_step_g" REAL NOT NULL,
  "ratio_tolerance_pct" REAL NOT NULL,
  "film_warn_mm" REAL NOT NULL,
  "film_refuse_mm" REAL NOT NULL,
  "edge_film_mm" REAL NOT NULL,
  "wall_film_mm" REAL NOT NULL,
  "drip_loss_pct" REAL NOT NULL,
  "rim_drip_loss_pct" REAL NOT NULL,
  "cup_loss_g" REAL NOT NULL,
  "absorption_face_pct" REAL NOT NULL,
  "reserve_pct" REAL NOT NULL,
  "tariff_per_kwh" REAL NOT NULL,
  UNIQUE ("owner", "position")
) STRICT
"""

_PLACES = """
CREATE TABLE "places" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  "kind" TEXT NOT NULL,
  "band_celsius" REAL NOT NULL,
  "read_band_celsius" REAL NOT NULL,
  "heat_loss_w_per_k" REAL,
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
  UNIQUE ("owner", "position")
) STRICT
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
  UNIQUE ("owner", "position")
) STRICT
"""

_NEW = """
CREATE TABLE "pieces_photos" (
  "owner" INTEGER NOT NULL REFERENCES "pieces" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL,
  "taken" INTEGER NOT NULL,
  "words" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "patterns" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "patterns_stack" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "patterns" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL,
  "kind" TEXT NOT NULL,
  "product" TEXT NOT NULL
    REFERENCES "products" ("key") DEFERRABLE INITIALLY DEFERRED,
  "film_mm" REAL NOT NULL,
  "joint" TEXT NOT NULL,
  "sandable" INTEGER NOT NULL CHECK ("sandable" IN (0, 1)),
  "test_first" INTEGER NOT NULL CHECK ("test_first" IN (0, 1)),
  "taped" INTEGER NOT NULL CHECK ("taped" IN (0, 1)),
  "trimmed" INTEGER NOT NULL CHECK ("trimmed" IN (0, 1)),
  "area_cm2" REAL,
  "setup_minutes" INTEGER NOT NULL,
  "piece_minutes" INTEGER NOT NULL,
  UNIQUE ("owner", "key"),
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "patterns_stack_faces" (
  "owner" INTEGER NOT NULL REFERENCES "patterns_stack" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "value" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "patterns_stack_colours" (
  "owner" INTEGER NOT NULL REFERENCES "patterns_stack" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "share_pct" REAL NOT NULL,
  "colourant" TEXT NOT NULL,
  "colourant_pct" REAL NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "pins" (
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "piece" TEXT NOT NULL
    REFERENCES "pieces" ("key") DEFERRABLE INITIALLY DEFERRED,
  "coat" TEXT NOT NULL,
  "start" INTEGER NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "photo_files" (
  "key" TEXT PRIMARY KEY,
  "picture" BLOB NOT NULL
) STRICT, WITHOUT ROWID
"""

_CHANGES = """
CREATE TABLE "change_count" (
  "id" INTEGER PRIMARY KEY CHECK ("id" = 1),
  "revision" INTEGER NOT NULL,
  "beside_plans" INTEGER NOT NULL
) STRICT
"""

_TABLES = {
    "change_count": (_CHANGES, (0,)),
    "studio": (_STUDIO, ("mm", "ml", "24 h", 0, 0)),
    "settings": (_SETTINGS, (0.0,)),
    "places": (_PLACES, (None,)),
    "pieces": (_PIECES, ("",)),
    "orders": (_ORDERS, ("",)),
}
"""The tables that gain columns at their end, and what older rows hold there."""


def what_a_maker_enters(connection: sqlite3.Connection) -> None:
    """Make room for units, heat loss, notes, photos, stack patterns and pinned pours."""
    for name, (table, gained) in _TABLES.items():
        rows = connection.execute(f'SELECT * FROM "{name}"').fetchall()  # noqa: S608 - our own
        connection.execute(f'DROP TABLE "{name}"')
        connection.execute(table.strip())
        for row in rows:
            cells = (*row, *gained)
            marks = ", ".join("?" * len(cells))
            connection.execute(f'INSERT INTO "{name}" VALUES ({marks})', cells)  # noqa: S608 - likewise
    for table in _NEW.split(";"):
        connection.execute(table.strip())
