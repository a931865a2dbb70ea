"""Between a whole studio and the rows of its file, table by table."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, cast

from studio_planner.craft.errors import BrokenRule, InvalidEntry, StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.storage.cells import Cell, Writer, reader_of, writer_of
from studio_planner.storage.forms import Form, Lookup, Many, Maybe, Noun
from studio_planner.storage.tables import Branch, Table, studio_table

if TYPE_CHECKING:
    import sqlite3
    from collections.abc import Iterable, Mapping

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

_STUDIO = 1
"""The number of the studio's only row."""


@dataclass(slots=True)
class _Waiting:
    """The rows of one table that are yet to be written; their number is their place in it."""

    write: Writer
    rows: list[tuple[Cell, ...]] = field(default_factory=list)


def read_studio(connection: sqlite3.Connection) -> Studio:
    """Read everything; StudioFileError names the row that makes no sense."""
    found = _read(connection, studio_table())
    if not found:
        raise StudioFileError(
            translate(
                "files", "The file has no studio in it; open a copy of it if you have one."
            )
        )
    return cast("Studio", found[0][0])


def read_plan(connection: sqlite3.Connection) -> tuple[Plan | None, bool]:
    """Read the kept plan alone, and whether it is outdated; errors as `read_studio`."""
    branch = branch_of("plan")
    found = _read(connection, branch.table).get(_STUDIO, [])
    (outdated,) = connection.execute("SELECT plan_outdated FROM studio").fetchone()
    return cast("Plan | None", _gathered(branch.part.form, found)), bool(outdated)


def write_studio(
    connection: sqlite3.Connection, studio: Studio, known: Studio | None = None
) -> None:
    """Write the studio inside the caller's transaction; with `known`, only what differs."""
    _write_own_row(connection, studio)
    for branch in studio_table().branches:
        name = branch.part.name
        new = getattr(studio, name)
        old = None if known is None else getattr(known, name)
        if known is not None and (old == new or _in_place(connection, branch, old, new)):
            continue
        write_branch(connection, branch, new)


def write_branch(connection: sqlite3.Connection, branch: Branch, value: object) -> None:
    """Replace one field of the studio that is kept in tables of its own."""
    connection.execute(f'DELETE FROM "{branch.table.name}"')  # noqa: S608 - our own table names
    waiting = {table.name: _Waiting(writer_of(table.row)) for table in branch.table.all}
    _collect(branch, _STUDIO, value, waiting)
    for table in branch.table.all:
        connection.executemany(_insertion(table), waiting[table.name].rows)


def _in_place(
    connection: sqlite3.Connection, branch: Branch, known: object, value: object
) -> bool:
    """Write only what differs of things that are still the same ones in the same order.

    A place with a year of readings is renamed without writing them again. False where things
    have come, gone or moved, or hold more than plain rows: then nothing was written.
    """
    table = branch.table
    if any(below.table.branches for below in table.branches) or not table.branches:
        return False
    old, new = (list(_spread(branch.part.form, one)) for one in (known, value))
    if [getattr(one, "key", one) for one in old] != [getattr(one, "key", one) for one in new]:
        return False
    changed = [
        (number, *pair)
        for number, pair in enumerate(zip(old, new, strict=True), start=1)
        if pair[0] != pair[1]
    ]
    _write_own_cells(connection, table, changed)
    for below in table.branches:
        _write_below(connection, below, changed)
    return True


def _write_own_cells(
    connection: sqlite3.Connection, table: Table, changed: list[tuple[int, object, object]]
) -> None:
    write = writer_of(table.row)
    names = ", ".join(f'"{column.name}" = ?' for column in table.columns)
    for number, _, value in changed:
        cells = _cells(write, table, number - 1, value)
        connection.execute(f'UPDATE "{table.name}" SET {names} WHERE id = ?', (*cells, number))  # noqa: S608 - our own table names


def _write_below(
    connection: sqlite3.Connection, branch: Branch, changed: list[tuple[int, object, object]]
) -> None:
    name = branch.part.name
    differing = [
        (number, getattr(new, name))
        for number, old, new in changed
        if getattr(old, name) != getattr(new, name)
    ]
    for number, _ in differing:
        connection.execute(f'DELETE FROM "{branch.table.name}" WHERE owner = ?', (number,))  # noqa: S608 - likewise
    waiting = {branch.table.name: _Waiting(writer_of(branch.table.row))}
    for number, value in differing:
        _collect(branch, number, value, waiting)
    connection.executemany(_insertion(branch.table), waiting[branch.table.name].rows)


def branch_of(field: str) -> Branch:
    """The branch for a field of the studio."""
    return next(b for b in studio_table().branches if b.part.name == field)


def _write_own_row(connection: sqlite3.Connection, studio: Studio) -> None:
    table = studio_table()
    changed = ", ".join(f'"{c.name}" = excluded."{c.name}"' for c in table.columns)
    # Replacing the row would take everything that hangs on it along.
    connection.execute(
        f"{_insertion(table)} ON CONFLICT (id) DO UPDATE SET {changed}",
        (_STUDIO, *_cells(writer_of(table.row), table, 0, studio)),
    )


def _insertion(table: Table) -> str:
    names = ", ".join(f'"{name}"' for name in table.column_names)
    marks = ", ".join("?" * len(table.column_names))
    return f'INSERT INTO "{table.name}" ({names}) VALUES ({marks})'  # noqa: S608 - likewise


def _collect(
    branch: Branch,
    owner: int,
    value: object,
    waiting: Mapping[str, _Waiting],
) -> None:
    table, mine = branch.table, waiting[branch.table.name]
    for position, one in enumerate(_spread(branch.part.form, value)):
        number = len(mine.rows) + 1
        own = (number,) if table.branches else ()
        mine.rows.append((*own, owner, position, *_cells(mine.write, table, position, one)))
        for below in table.branches:
            _collect(below, number, getattr(one, below.part.name), waiting)


def _cells(write: Writer, table: Table, position: int, value: object) -> list[Cell]:
    try:
        cells = write(value)
        for cell in cells:
            if isinstance(cell, str):
                cell.encode()  # half a character pair cannot be written
    except (ValueError, TypeError, OverflowError) as error:
        broken = BrokenRule(f"{table.name}[{position}]", f"it cannot be written: {error}.")
        raise InvalidEntry("studio", [broken]) from error
    return cells


def _spread(form: Form, value: object) -> Iterable[object]:
    if isinstance(form, Maybe):
        return () if value is None else _spread(form.form, value)
    if isinstance(form, Lookup):
        return cast("dict[object, object]", value).items()
    if isinstance(form, Many) and form.kind is frozenset:
        return sorted(cast("frozenset[str]", value))
    return cast("tuple[object, ...]", value) if isinstance(form, Many) else (value,)


def _gathered(form: Form, found: list[object]) -> object:
    if isinstance(form, Maybe):
        return _gathered(form.form, found) if found else None
    if isinstance(form, Lookup):
        return dict(cast("list[tuple[object, object]]", found))
    if isinstance(form, Noun):
        if len(found) != 1:
            message = f"there are {len(found)} rows where there must be one"
            raise ValueError(message)
        return found[0]
    return cast("Many", form).kind(found)


def _read(connection: sqlite3.Connection, table: Table) -> dict[int, list[object]]:
    inside = [(branch.part, _read(connection, branch.table)) for branch in table.branches]
    names = ", ".join(f'"{name}"' for name in table.column_names)
    order = "owner, position" if table.parent else "id"
    query = f'SELECT {names} FROM "{table.name}" ORDER BY {order}'  # noqa: S608 - likewise
    found: dict[int, list[object]] = {}
    make = reader_of(table.row)
    lead = len(table.leading)
    for row in connection.execute(query):
        owner = row[lead - 2] if table.parent else 0
        try:
            below = {p.name: _gathered(p.form, rows.get(row[0], [])) for p, rows in inside}
            value = make(iter(row[lead:]), below)
        except InvalidEntry as error:
            raise StudioFileError(
                translate("files", "The file breaks a rule of the craft: {error}").format(
                    error=error
                )
            ) from error
        except (ValueError, KeyError, TypeError, OverflowError) as error:
            where = f"table {table.name}, row {', '.join(map(str, row[:lead]))}"
            raise StudioFileError(
                translate("files", "The file cannot be understood at {where}: {error}.").format(
                    where=where, error=error
                )
            ) from error
        found.setdefault(owner, []).append(value)
    return found
