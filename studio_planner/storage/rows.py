"""Between a whole studio and the rows of its file, table by table."""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import chain, repeat
from typing import TYPE_CHECKING, cast

from studio_planner.craft.errors import BrokenRule, InvalidEntry, StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.storage.cells import (
    Cell,
    ColumnsWriter,
    Writer,
    columns_writer_of,
    reader_of,
    writer_of,
)
from studio_planner.storage.forms import Form, Lookup, Many, Maybe, Noun
from studio_planner.storage.tables import Branch, Table, studio_table

if TYPE_CHECKING:
    import sqlite3
    from collections.abc import Iterable, Mapping, Sequence

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

_STUDIO = 1
"""The number of the studio's only row."""

_AT_ONCE = 50
"""So many rows are put in by one statement: SQLite takes half as long for them."""

_UNWRITABLE = (ValueError, TypeError, OverflowError)


@dataclass(slots=True)
class _Waiting:
    """The rows of one table that are yet to be written; their number is their place in it."""

    write: ColumnsWriter
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
    waiting = {t.name: _Waiting(columns_writer_of(t.row)) for t in branch.table.all}
    _collect(branch, _STUDIO, value, waiting)
    for table in branch.table.all:
        _insert(connection, table, waiting[table.name].rows)


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
    """Write what hangs on changed rows, from the first one on that is another than before.

    So a reading more is one row more, however many there are.
    """
    table, form, name = branch.table, branch.part.form, branch.part.name
    waiting = {table.name: _Waiting(columns_writer_of(table.row))}
    for number, *pair in changed:
        old, new = (tuple(_spread(form, getattr(one, name))) for one in pair)
        if old == new:
            continue
        last = connection.execute(
            f'SELECT max(position) FROM "{table.name}" WHERE owner = ?',  # noqa: S608 - likewise
            (number,),
        ).fetchone()
        # Where another program has taken rows out, places are not those that were counted.
        kept = _alike(old, new) if last == (len(old) - 1,) else 0
        connection.execute(
            f'DELETE FROM "{table.name}" WHERE owner = ? AND position >= ?',  # noqa: S608 - likewise
            (number, kept),
        )
        _collect(branch, number, getattr(pair[1], name), waiting, kept)
    _insert(connection, table, waiting[table.name].rows)


def _alike(old: Sequence[object], new: Sequence[object]) -> int:
    """How many there are before the first one that is another than before."""
    pairs = enumerate(zip(old, new, strict=False))
    shorter = min(len(old), len(new))
    return next((at for at, (a, b) in pairs if a is not b and a != b), shorter)


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


def _insert(
    connection: sqlite3.Connection, table: Table, rows: Sequence[tuple[Cell, ...]]
) -> None:
    many = len(rows) - len(rows) % _AT_ONCE
    if many:
        at_once = (rows[at : at + _AT_ONCE] for at in range(0, many, _AT_ONCE))
        connection.executemany(
            _insertion(table, _AT_ONCE), (tuple(chain.from_iterable(some)) for some in at_once)
        )
    connection.executemany(_insertion(table), rows[many:])


def _insertion(table: Table, rows: int = 1) -> str:
    names = ", ".join(f'"{name}"' for name in table.column_names)
    marks = f"({', '.join('?' * len(table.column_names))})"
    return f'INSERT INTO "{table.name}" ({names}) VALUES {", ".join([marks] * rows)}'  # noqa: S608 - likewise


def _collect(
    branch: Branch,
    owner: int,
    value: object,
    waiting: Mapping[str, _Waiting],
    kept: int = 0,
) -> None:
    """Add the rows of a field of `owner`; the first `kept` of them stay as they are."""
    table, mine = branch.table, waiting[branch.table.name]
    values = tuple(_spread(branch.part.form, value))[kept:]
    first, count = len(mine.rows) + 1, len(values)
    numbers = [range(first, first + count)] if table.branches else []
    leading = (*numbers, repeat(owner, count), range(kept, kept + count))
    mine.rows += zip(*leading, *_columns(mine.write, table, kept, values), strict=True)
    for below in table.branches:
        for number, one in enumerate(values, first):
            _collect(below, number, getattr(one, below.part.name), waiting)


def _columns(
    write: ColumnsWriter, table: Table, first: int, values: Sequence[object]
) -> list[list[Cell]]:
    try:
        columns = [list(column) for column in write(values)]
        for cells in columns:
            _require_whole(cells)
    except _UNWRITABLE:
        own = writer_of(table.row)
        for position, one in enumerate(values, first):
            _cells(own, table, position, one)  # says which one it is
        raise
    return columns


def _cells(write: Writer, table: Table, position: int, value: object) -> list[Cell]:
    try:
        cells = write(value)
        _require_whole(cells)
    except _UNWRITABLE as error:
        broken = BrokenRule(f"{table.name}[{position}]", f"it cannot be written: {error}.")
        raise InvalidEntry("studio", [broken]) from error
    return cells


def _require_whole(cells: Iterable[Cell]) -> None:
    """UnicodeError for a text with half a character pair, which cannot be written."""
    "".join(cell for cell in cells if isinstance(cell, str)).encode()


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
