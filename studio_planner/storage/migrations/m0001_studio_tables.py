"""Tables of version 1: the studio, its settings, places, products and people."""

from __future__ import annotations

STUDIO_TABLES = """
CREATE TABLE "studio" (
  "id" INTEGER PRIMARY KEY CHECK ("id" = 1),
  "name" TEXT NOT NULL,
  "zone" TEXT NOT NULL,
  "currency" TEXT NOT NULL,
  "units_temperature" TEXT NOT NULL,
  "units_mass" TEXT NOT NULL,
  "units_length" TEXT NOT NULL
) STRICT;

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
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "settings_surface_lag_hours" (
  "owner" INTEGER NOT NULL REFERENCES "settings" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL,
  "value" REAL NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "places" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  "kind" TEXT NOT NULL,
  "band_celsius" REAL NOT NULL,
  "read_band_celsius" REAL NOT NULL,
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "places_pattern" (
  "owner" INTEGER NOT NULL REFERENCES "places" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "at" TEXT NOT NULL,
  "celsius" REAL NOT NULL,
  "humidity_pct" REAL,
  "day" INTEGER,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "places_spots" (
  "owner" INTEGER NOT NULL REFERENCES "places" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  "length_mm" REAL NOT NULL,
  "width_mm" REAL NOT NULL,
  "height_mm" REAL NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "places_readings" (
  "owner" INTEGER NOT NULL REFERENCES "places" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "when" INTEGER NOT NULL,
  "celsius" REAL NOT NULL,
  "humidity_pct" REAL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

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
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "products_sheet" (
  "owner" INTEGER NOT NULL REFERENCES "products" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "stage" TEXT NOT NULL,
  "celsius" REAL NOT NULL,
  "from_hours" REAL NOT NULL,
  "to_hours" REAL,
  "mass_g" REAL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "people" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "key" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  "wakes" TEXT NOT NULL,
  "sleeps" TEXT NOT NULL,
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "people_work" (
  "owner" INTEGER NOT NULL REFERENCES "people" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "rule" TEXT NOT NULL,
  "start" TEXT NOT NULL,
  "end" TEXT NOT NULL,
  "first" TEXT,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "people_absences" (
  "owner" INTEGER NOT NULL REFERENCES "people" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "start" INTEGER NOT NULL,
  "end" INTEGER NOT NULL,
  "why" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;
"""
