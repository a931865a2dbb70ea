"""The tables that reminders are kept in, in memory."""

from __future__ import annotations

import sqlite3
from contextlib import contextmanager
from typing import TYPE_CHECKING

from studio_planner.storage.transaction import changing

if TYPE_CHECKING:
    from collections.abc import Iterator

TABLES = """
CREATE TABLE "reminders" (
  "uid" TEXT PRIMARY KEY,
  "kind" TEXT NOT NULL,
  "urgency" TEXT NOT NULL,
  "due" INTEGER NOT NULL,
  "meant" INTEGER NOT NULL,
  "moment" INTEGER NOT NULL,
  "saved_until" INTEGER,
  "together" TEXT NOT NULL,
  "piece" TEXT NOT NULL,
  "coat" TEXT NOT NULL,
  "order" TEXT NOT NULL,
  "place" TEXT NOT NULL,
  "strong" INTEGER NOT NULL CHECK ("strong" IN (0, 1)),
  "rings_at" INTEGER,
  "round" INTEGER NOT NULL,
  "rung" INTEGER NOT NULL,
  "rang_for" INTEGER,
  "came_due" INTEGER,
  "late" INTEGER NOT NULL CHECK ("late" IN (0, 1)),
  "acknowledged" INTEGER,
  "withdrawn" INTEGER
) STRICT, WITHOUT ROWID;
CREATE TABLE "rings" (
  "uid" TEXT NOT NULL REFERENCES "reminders" ("uid") ON DELETE CASCADE,
  "round" INTEGER NOT NULL,
  "means" TEXT NOT NULL,
  "notice" TEXT NOT NULL,
  "caller" TEXT NOT NULL,
  "calls" INTEGER NOT NULL,
  "started" INTEGER NOT NULL,
  "finished" INTEGER,
  "failure" TEXT,
  PRIMARY KEY ("uid", "round", "means")
) STRICT, WITHOUT ROWID;
CREATE TABLE "ringing" (
  "id" INTEGER PRIMARY KEY CHECK ("id" = 1),
  "holder" TEXT NOT NULL,
  "taken" REAL NOT NULL,
  "until" REAL NOT NULL,
  "made_of" INTEGER NOT NULL,
  "made" INTEGER NOT NULL
) STRICT
"""


class FileInMemory:
    """A studio file's tables for reminders, in memory."""

    def __init__(self) -> None:
        self.connection = sqlite3.connect(":memory:", isolation_level=None)
        self.connection.execute("PRAGMA foreign_keys = ON")
        for table in TABLES.split(";"):
            self.connection.execute(table)

    @contextmanager
    def beside(self) -> Iterator[sqlite3.Connection]:
        with changing(self.connection):
            yield self.connection
