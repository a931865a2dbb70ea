"""Version 4: the log, what was weighed, what tests taught, spells of weather, reminders."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.storage.migrations.m0004_reminder_tables import REMINDER_TABLES

if TYPE_CHECKING:
    import sqlite3

_POURED = """
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
  "batch" INTEGER,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID
"""

_NEW = """
CREATE TABLE "log" (
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "number" INTEGER NOT NULL,
  "kind" TEXT NOT NULL,
  "at" INTEGER NOT NULL,
  "written" INTEGER NOT NULL,
  "piece" TEXT NOT NULL,
  "coat" TEXT NOT NULL,
  "order" TEXT NOT NULL,
  "end" INTEGER,
  "spot" TEXT NOT NULL,
  "joint" TEXT,
  "batch" INTEGER,
  "touch" TEXT,
  "verdict" TEXT,
  "words" TEXT NOT NULL,
  "corrects" INTEGER,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "mixes" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "entry" INTEGER NOT NULL,
  "batch" INTEGER NOT NULL,
  "product" TEXT NOT NULL,
  "at" INTEGER NOT NULL,
  "a_grams" REAL NOT NULL,
  "b_grams" REAL NOT NULL,
  "lot_a" TEXT NOT NULL,
  "lot_b" TEXT NOT NULL,
  UNIQUE ("owner", "position")
) STRICT;

CREATE TABLE "mixes_colourants" (
  "owner" INTEGER NOT NULL REFERENCES "mixes" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "grams" REAL NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "mixes_coats" (
  "owner" INTEGER NOT NULL REFERENCES "mixes" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "piece" TEXT NOT NULL,
  "coat" TEXT NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "gone" (
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "kind" TEXT NOT NULL,
  "key" TEXT NOT NULL,
  "name" TEXT NOT NULL,
  "order" TEXT NOT NULL,
  UNIQUE ("kind", "key"),
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "products_taught" (
  "owner" INTEGER NOT NULL REFERENCES "products" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "stage" TEXT NOT NULL,
  "celsius" REAL NOT NULL,
  "sheet_hours" REAL NOT NULL,
  "early_hours" REAL NOT NULL,
  "likely_hours" REAL NOT NULL,
  "late_hours" REAL NOT NULL,
  "sheet_factor" REAL NOT NULL,
  "band_left" REAL NOT NULL,
  "tests" INTEGER NOT NULL,
  "pours" INTEGER NOT NULL,
  "at" INTEGER NOT NULL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID;

CREATE TABLE "places_spells" (
  "owner" INTEGER NOT NULL REFERENCES "places" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "start" INTEGER NOT NULL,
  "end" INTEGER NOT NULL,
  "celsius" REAL NOT NULL,
  "humidity_pct" REAL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID
"""


def what_happens(connection: sqlite3.Connection) -> None:
    """Make room for the log, weighed mixes, taught stages, spells of weather and reminders."""
    rows = connection.execute('SELECT * FROM "poured"').fetchall()
    connection.execute('DROP TABLE "poured"')
    connection.execute(_POURED.strip())
    for row in rows:
        marks = ", ".join("?" * (len(row) + 1))
        connection.execute(f'INSERT INTO "poured" VALUES ({marks})', (*row, None))  # noqa: S608 - our own
    for table in (*_NEW.split(";"), *REMINDER_TABLES.split(";")):
        connection.execute(table.strip())
    for (studio,) in connection.execute('SELECT "id" FROM "studio"').fetchall():
        connection.execute(
            'INSERT INTO "reminding" VALUES (1, ?, 0, ?, ?, ?, 12.0, 30, 0)',
            (studio, "22:00", "07:00", "18:00"),
        )
