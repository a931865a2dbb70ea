"""How the nouns are laid out in tables: one table for each noun that a studio has many of.

A field with one value is a column. A noun inside a noun is a group of columns with its name in
front, unless it has collections of its own. Every collection is a table named after the way to
it (`pieces_stack_colours`), whose rows know their owner and their position.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time
from functools import cache

from studio_planner.craft.studio import Studio
from studio_planner.storage.forms import (
    Choice,
    Fixed,
    Form,
    Lookup,
    Many,
    Maybe,
    Noun,
    Part,
    Scalar,
    noun_of,
)

ROOT = "studio"
"""The table with the studio's own row."""

_SQL_TYPES: dict[type, str] = {
    int: "INTEGER",
    bool: "INTEGER",
    datetime: "INTEGER",
    float: "REAL",
    date: "TEXT",
    time: "TEXT",
}


@dataclass(frozen=True, slots=True)
class Column:
    """One column: its name, what it holds, and whether it may be empty."""

    name: str
    scalar: Scalar
    optional: bool

    @property
    def sql_type(self) -> str:
        """INTEGER, REAL or TEXT."""
        return _SQL_TYPES.get(self.scalar.kind, "TEXT")


@dataclass(frozen=True, slots=True)
class Branch:
    """A field that is kept in a table of its own."""

    part: Part
    table: Table


@dataclass(frozen=True, slots=True)
class Table:
    """A table: what one row stands for, its columns, and the tables that hang on it."""

    name: str
    parent: str | None
    row: Noun | Scalar | Lookup
    columns: tuple[Column, ...]
    branches: tuple[Branch, ...]

    @property
    def leading(self) -> tuple[str, ...]:
        """The columns before the noun's own: number, owner, position, as far as needed."""
        if self.parent is None:
            return ("id",)
        return (("id",) if self.branches else ()) + ("owner", "position")

    @property
    def column_names(self) -> tuple[str, ...]:
        """All columns in order."""
        return self.leading + tuple(column.name for column in self.columns)

    @property
    def all(self) -> tuple[Table, ...]:
        """The table itself and all that hang on it, owners first."""
        return (self, *(table for branch in self.branches for table in branch.table.all))


@cache
def studio_table() -> Table:
    """The table of the studio itself; everything else hangs on it."""
    return _table(ROOT, None, noun_of(Studio))


def _table(name: str, parent: str | None, row: Noun | Scalar | Lookup) -> Table:
    prefix = "" if parent is None else f"{name}_"
    parts = row.parts if isinstance(row, Noun) else ()
    branches = tuple(
        Branch(part, _table(prefix + part.name, name, row_form(part.form)))
        for part in parts
        if is_branch(part.form)
    )
    return Table(name, parent, row, _own_columns(row), branches)


def _own_columns(row: Noun | Scalar | Lookup) -> tuple[Column, ...]:
    if isinstance(row, Scalar):
        return (Column("value", row, optional=False),)
    if isinstance(row, Lookup):
        return (
            Column("key", row.key, optional=False),
            Column("value", row.value, optional=False),
        )
    return columns_of(row, "")


def is_branch(form: Form) -> bool:
    """Whether a field of that form needs a table of its own."""
    if isinstance(form, Maybe):
        return is_branch(form.form)
    if isinstance(form, Noun):
        return any(is_branch(part.form) for part in form.parts)
    return isinstance(form, Many | Lookup)


def row_form(form: Form) -> Noun | Scalar | Lookup:
    """What one row stands for in the table of a field of that form."""
    if isinstance(form, Maybe | Many):
        return row_form(form.form)
    if isinstance(form, Noun | Scalar | Lookup):
        return form
    message = f"{form!r} cannot be a row"
    raise TypeError(message)


def columns_of(form: Form, name: str, *, optional: bool = False) -> tuple[Column, ...]:
    """The columns for a field called `name`, without those kept in tables of their own."""
    match form:
        case Scalar():
            return (Column(name, form, optional),)
        case Maybe(form=inner):
            return columns_of(inner, name, optional=True)
        case Fixed(form=scalar, count=count):
            return tuple(Column(f"{name}_{i + 1}", scalar, optional) for i in range(count))
        case Noun(parts=parts):
            return tuple(
                column
                for part in parts
                if not is_branch(part.form)
                for column in columns_of(part.form, _joined(name, part.name), optional=optional)
            )
        case Choice():
            return _columns_of_choice(form, name, optional=optional)
        case _:
            return ()


def _columns_of_choice(form: Choice, name: str, *, optional: bool) -> tuple[Column, ...]:
    # Fields of the same name share a column; each option leaves the others' columns empty.
    merged = {
        column.name: column
        for option in form.options
        for column in columns_of(option, name, optional=True)
    }
    return (Column(_joined(name, "kind"), Scalar(str), optional), *merged.values())


def _joined(prefix: str, name: str) -> str:
    return f"{prefix}_{name}" if prefix else name
