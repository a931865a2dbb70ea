"""Tables of version 1: pieces, orders and what was poured."""

from __future__ import annotations

WORK_TABLES = """
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
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "pieces_stack" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "pieces" ("id") ON DELETE CASCADE,
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

CREATE TABLE "pieces_stack_faces" (
  "owner" INTEGER NOT NULL REFERENCES "pieces_stack" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "value" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "pieces_stack_colours" (
  "owner" INTEGER NOT NULL REFERENCES "pieces_stack" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "share_pct" REAL NOT NULL,
  "colourant" TEXT NOT NULL,
  "colourant_pct" REAL NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

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
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "orders_pieces" (
  "owner" INTEGER NOT NULL REFERENCES "orders" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "value" TEXT NOT NULL UNIQUE
    REFERENCES "pieces" ("key") DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "orders_courier" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "orders" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "cut_off" TEXT NOT NULL,
  "transit_days" INTEGER NOT NULL,
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "orders_courier_days" (
  "owner" INTEGER NOT NULL REFERENCES "orders_courier" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "value" INTEGER NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "poured" (
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "piece" TEXT NOT NULL
    REFERENCES "pieces" ("key") DEFERRABLE INITIALLY DEFERRED,
  "coat" TEXT NOT NULL,
  "start" INTEGER NOT NULL,
  "end" INTEGER NOT NULL,
  "spot" TEXT NOT NULL
    REFERENCES "places_spots" ("key") DEFERRABLE INITIALLY DEFERRED,
  "joint" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;
"""
