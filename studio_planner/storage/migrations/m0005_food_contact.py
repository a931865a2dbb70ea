"""Version 5: what may be said of an order and food."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import sqlite3

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
  "contact" TEXT NOT NULL,
  UNIQUE ("owner", "position")
) STRICT
"""


def food_contact(connection: sqlite3.Connection) -> None:
    """Say of every order that it is decorative, until somebody says more."""
    found = connection.execute('SELECT * FROM "orders"')
    columns = (*(column[0] for column in found.description), "contact")
    rows = [(*row, "decorative, not for food") for row in found]
    connection.execute('DROP TABLE "orders"')
    connection.execute(_ORDERS.strip())
    names = ", ".join(f'"{column}"' for column in columns)
    marks = ", ".join("?" * len(columns))
    connection.executemany(f'INSERT INTO "orders" ({names}) VALUES ({marks})', rows)  # noqa: S608 - our own
