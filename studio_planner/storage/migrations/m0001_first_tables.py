"""Version 1: the first tables."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.storage.migrations.m0001_plan_tables import PLAN_TABLES
from studio_planner.storage.migrations.m0001_studio_tables import STUDIO_TABLES
from studio_planner.storage.migrations.m0001_work_tables import WORK_TABLES

if TYPE_CHECKING:
    import sqlite3

_REVISION_TABLE = """
CREATE TABLE "change_count" (
  "id" INTEGER PRIMARY KEY CHECK ("id" = 1),
  "revision" INTEGER NOT NULL
) STRICT;
"""


def first_tables(connection: sqlite3.Connection) -> None:
    """Make the first tables."""
    for script in (_REVISION_TABLE, STUDIO_TABLES, WORK_TABLES, PLAN_TABLES):
        for statement in script.split(";"):
            if statement.strip():
                connection.execute(statement.strip())
    connection.execute("INSERT INTO change_count (id, revision) VALUES (1, 0)")
