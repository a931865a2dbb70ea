"""Version 8: what rehearsed weeks tell of days, of spare, and of the pour that misses first."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import sqlite3

_COATS = """
CREATE TABLE "plan_coats" (
  "owner" INTEGER NOT NULL REFERENCES "plan" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "number" INTEGER NOT NULL,
  "piece" TEXT NOT NULL,
  "coat" TEXT NOT NULL,
  "start" INTEGER NOT NULL,
  "end" INTEGER NOT NULL,
  "spot" TEXT NOT NULL,
  "joint" TEXT NOT NULL,
  "mix" INTEGER NOT NULL,
  "person" TEXT NOT NULL,
  "window_opens" INTEGER,
  "window_closes" INTEGER,
  "window_trust" TEXT,
  "air" TEXT NOT NULL,
  "poured" INTEGER NOT NULL CHECK ("poured" IN (0, 1)),
  "held" REAL,
  "wrong_first" REAL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID
"""

_OUTCOMES = """
CREATE TABLE "plan_outcomes" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "plan" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "order" TEXT NOT NULL,
  "due" INTEGER NOT NULL,
  "leaves" INTEGER,
  "reason" TEXT NOT NULL,
  "held" REAL,
  "day_held" REAL,
  "rehearsed_spare_hours" REAL,
  UNIQUE ("owner", "position")
) STRICT
"""


def what_weeks_tell(connection: sqlite3.Connection) -> None:
    """Keep how sure a plan's days are, what they spare, and which coat misses first."""
    _make_anew(connection, "plan_coats", _COATS, 1)
    _make_anew(connection, "plan_outcomes", _OUTCOMES, 2)


def _make_anew(connection: sqlite3.Connection, name: str, table: str, gained: int) -> None:
    """Give a table columns at its end, empty: a plan from before was not asked for them."""
    rows = connection.execute(f'SELECT * FROM "{name}"').fetchall()  # noqa: S608 - our own
    connection.execute(f'DROP TABLE "{name}"')
    connection.execute(table.strip())
    for row in rows:
        cells = (*row, *[None] * gained)
        marks = ", ".join("?" * len(cells))
        connection.execute(f'INSERT INTO "{name}" VALUES ({marks})', cells)  # noqa: S608 - likewise
