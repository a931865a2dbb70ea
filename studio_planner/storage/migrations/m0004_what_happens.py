"""Version 4: the log, mixes, what tests taught, spells, bottles, prices and reminders."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.storage.migrations.m0004_gained_columns import GAINED, STOCK_TABLES
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

_OLDER_POURED: dict[str, str | float | None] = {"batch": None}

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
    """Make room for the log, mixes, taught stages, spells, bottles, prices and reminders."""
    for name, (table, gained) in {**GAINED, "poured": (_POURED, _OLDER_POURED)}.items():
        _make_anew(connection, name, table, gained)
    for tables in (_NEW, STOCK_TABLES, REMINDER_TABLES):
        for table in tables.split(";"):
            connection.execute(table.strip())
    for (studio,) in connection.execute('SELECT "id" FROM "studio"').fetchall():
        connection.execute(
            'INSERT INTO "reminding" VALUES (1, ?, 0, ?, ?, ?, 12.0, 30, 0)',
            (studio, "22:00", "07:00", "18:00"),
        )


def _make_anew(
    connection: sqlite3.Connection,
    name: str,
    table: str,
    gained: dict[str, str | float | None],
) -> None:
    found = connection.execute(f'SELECT * FROM "{name}"')  # noqa: S608 - our own
    columns = (*(column[0] for column in found.description), *gained)
    rows = [(*row, *gained.values()) for row in found]
    connection.execute(f'DROP TABLE "{name}"')
    connection.execute(table.strip())
    names = ", ".join(f'"{column}"' for column in columns)
    marks = ", ".join("?" * len(columns))
    connection.executemany(f'INSERT INTO "{name}" ({names}) VALUES ({marks})', rows)  # noqa: S608 - likewise
