"""Version 2: what a kept plan is worth, and how sure it is."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import sqlite3

_PLAN = """
CREATE TABLE "plan" (
  "id" INTEGER PRIMARY KEY,
  "owner" INTEGER NOT NULL REFERENCES "studio" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "made" INTEGER NOT NULL,
  "start" INTEGER NOT NULL,
  "grid_minutes" INTEGER NOT NULL,
  "solved_seconds" REAL NOT NULL,
  "rehearsals" INTEGER NOT NULL,
  UNIQUE ("owner", "position")
) STRICT
"""

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
  UNIQUE ("owner", "position")
) STRICT
"""

_GOALS = """
CREATE TABLE "plan_goals" (
  "owner" INTEGER NOT NULL REFERENCES "plan" ("id") ON DELETE CASCADE,
  "position" INTEGER NOT NULL,
  "goal" TEXT NOT NULL,
  "value" REAL NOT NULL,
  "bound" REAL,
  PRIMARY KEY ("owner", "position")
) STRICT, WITHOUT ROWID
"""

# As the plans of version 1 were made: on five minutes, without a search, not rehearsed.
_AS_MADE = {"plan": (5, 0.0, 0), "plan_coats": (None,), "plan_outcomes": (None,)}
_TABLES = {"plan": _PLAN, "plan_coats": _COATS, "plan_outcomes": _OUTCOMES}


def worth_of_a_plan(connection: sqlite3.Connection) -> None:
    """Give plans their goals, the time spent on them and what rehearsals say of them."""
    for name, table in _TABLES.items():
        rows = connection.execute(f'SELECT * FROM "{name}"').fetchall()  # noqa: S608 - our own
        connection.execute(f'DROP TABLE "{name}"')
        connection.execute(table.strip())
        for row in rows:
            cells = (*row, *_AS_MADE[name])
            marks = ", ".join("?" * len(cells))
            connection.execute(f'INSERT INTO "{name}" VALUES ({marks})', cells)  # noqa: S608 - likewise
    connection.execute(_GOALS.strip())
