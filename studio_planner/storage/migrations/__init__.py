"""The steps from an empty database to the newest studio file, one numbered function each.

To change the tables: add `mNNNN_words.py` with one function that takes the connection and
changes tables or rows, put it at the end of RELEASED, and freeze its hash in the test of this
room. A released step is never edited: files out there have been through it as it was.

A step makes a table anew and copies its rows rather than altering it: how ALTER TABLE rewrites
the text of a table differs between releases of SQLite.

A step runs inside a transaction that also sets the version; it must not begin or end one.
Every table's text in a studio file is compared with what these steps make of an empty database.
"""

from __future__ import annotations

from collections.abc import Callable
from sqlite3 import Connection

from studio_planner.storage.migrations.m0001_first_tables import first_tables
from studio_planner.storage.migrations.m0002_worth_of_a_plan import worth_of_a_plan
from studio_planner.storage.migrations.m0003_what_a_maker_enters import what_a_maker_enters
from studio_planner.storage.migrations.m0004_what_happens import what_happens
from studio_planner.storage.migrations.m0005_food_contact import food_contact
from studio_planner.storage.migrations.m0006_pots_and_leaf import pots_and_leaf
from studio_planner.storage.migrations.m0007_reasons_in_any_language import (
    reasons_in_any_language,
)
from studio_planner.storage.migrations.m0008_what_weeks_tell import what_weeks_tell

Migration = Callable[[Connection], None]
"""One step; its docstring's first line says what it does."""

RELEASED: tuple[Migration, ...] = (
    first_tables,
    worth_of_a_plan,
    what_a_maker_enters,
    what_happens,
    food_contact,
    pots_and_leaf,
    reasons_in_any_language,
    what_weeks_tell,
)
"""All steps in order; the version of a file is the number of steps it has been through."""
