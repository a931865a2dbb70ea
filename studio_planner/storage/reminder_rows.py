"""Reminders in the studio file: what has become of each, who was called, who may ring.

They lie beside the studio: no part of it, of its exchange format or of undo, and writing them
does not say that the studio was changed.
"""

from __future__ import annotations

from contextlib import contextmanager
from datetime import datetime
from typing import TYPE_CHECKING

from studio_planner.craft.due_rows import DueRow, Ring, Ringing
from studio_planner.craft.reminders import Reminder, ReminderKind, Urgency
from studio_planner.storage.notation import instant_at, microseconds_of

if TYPE_CHECKING:
    import sqlite3
    from collections.abc import Iterable, Iterator
    from contextlib import AbstractContextManager
    from typing import Protocol

    from studio_planner.storage.cells import Cell

    class Beside(Protocol):
        """A studio file, as far as it is needed here."""

        def beside(self) -> AbstractContextManager[sqlite3.Connection]:
            """One change of what lies beside the studio."""
            ...


_ROW = (
    "uid", "kind", "urgency", "due", "meant", "moment", "saved_until", "together", "piece",
    "coat", "order", "place", "strong", "rings_at", "round", "rung", "rang_for", "came_due",
    "late", "acknowledged", "withdrawn",
)  # fmt: skip
_RING = (
    "uid", "round", "means", "notice", "caller", "calls", "started", "finished", "failure",
)  # fmt: skip
_INSTANTS = frozenset(
    {"due", "meant", "moment", "saved_until", "rings_at", "rang_for", "came_due"}
    | {"acknowledged", "withdrawn", "started", "finished"}
)
_BEGINNING = datetime.fromisoformat("1970-01-01T00:00:00+00:00")


class ReminderRows:
    """The rows, inside one change of the file; everything that is read is as of that change."""

    def __init__(self, connection: sqlite3.Connection) -> None:
        """Read and write through a connection inside the caller's transaction."""
        self._connection = connection

    def rows(self) -> tuple[DueRow, ...]:
        """Every reminder that is kept, in no order."""
        return tuple(_row_of(cells) for cells in self._all("reminders", _ROW))

    def put(self, rows: Iterable[DueRow]) -> None:
        """Keep rows, in place of those of the same names."""
        names = ", ".join(f'"{name}"' for name in _ROW)
        changed = ", ".join(f'"{name}" = excluded."{name}"' for name in _ROW[1:])
        # Replacing a row would take its rings along.
        self._connection.executemany(
            f'INSERT INTO "reminders" ({names}) VALUES ({_marks(_ROW)}) '  # noqa: S608 - our own names
            f'ON CONFLICT ("uid") DO UPDATE SET {changed}',
            [_cells_of(row) for row in rows],
        )

    def forget(self, uids: Iterable[str]) -> None:
        """Let reminders go, with their rings."""
        self._connection.executemany(
            'DELETE FROM "reminders" WHERE "uid" = ?', [(uid,) for uid in uids]
        )

    def rings(self) -> tuple[Ring, ...]:
        """Every call of a means that is kept."""
        found = self._all("rings", _RING)
        return tuple(Ring(**cells) for cells in found)  # type: ignore[arg-type]

    def put_rings(self, rings: Iterable[Ring]) -> None:
        """Keep calls, in place of those of the same reminder, round and means."""
        names = ", ".join(f'"{name}"' for name in _RING)
        self._connection.executemany(
            f'INSERT OR REPLACE INTO "rings" ({names}) VALUES ({_marks(_RING)})',  # noqa: S608 - our own names
            [tuple(_cell(getattr(ring, name)) for name in _RING) for ring in rings],
        )

    def ringing(self) -> Ringing:
        """Who may ring, and what the reminders were made of."""
        row = self._connection.execute(
            'SELECT "holder", "taken", "until", "made_of", "made" FROM "ringing"'
        ).fetchone()
        if row is None:
            return Ringing()
        holder, taken, until, made_of, made = row
        return Ringing(
            holder=holder, taken=taken, until=until, made_of=made_of, made=instant_at(made)
        )

    def put_ringing(self, ringing: Ringing) -> None:
        """Keep who may ring, and what the reminders were made of."""
        self._connection.execute(
            'INSERT OR REPLACE INTO "ringing" ("id", "holder", "taken", "until", "made_of", '
            '"made") VALUES (1, ?, ?, ?, ?, ?)',
            (
                ringing.holder,
                ringing.taken,
                ringing.until,
                ringing.made_of,
                microseconds_of(ringing.made or _BEGINNING),
            ),
        )

    def _all(self, table: str, columns: tuple[str, ...]) -> Iterator[dict[str, object]]:
        names = ", ".join(f'"{name}"' for name in columns)
        query = f'SELECT {names} FROM "{table}"'  # noqa: S608 - our own names
        for row in self._connection.execute(query):
            yield {n: _value(n, cell) for n, cell in zip(columns, row, strict=True)}


@contextmanager
def reminder_rows(file: Beside) -> Iterator[ReminderRows]:
    """One change of the reminders of an open studio file: all of it or none of it."""
    with file.beside() as connection:
        yield ReminderRows(connection)


def _marks(columns: tuple[str, ...]) -> str:
    return ", ".join("?" * len(columns))


def _cell(value: object) -> Cell:
    if isinstance(value, datetime):
        return microseconds_of(value)
    return value if isinstance(value, int | float) or value is None else str(value)


def _value(name: str, cell: Cell) -> object:
    return instant_at(cell) if name in _INSTANTS and isinstance(cell, int) else cell


_OF_REMINDER = _ROW[: _ROW.index("rings_at")]
_OF_ROW = _ROW[_ROW.index("rings_at") :]


def _cells_of(row: DueRow) -> tuple[Cell, ...]:
    own = [getattr(row.reminder, name) for name in _OF_REMINDER]
    return tuple(_cell(value) for value in (*own, *(getattr(row, name) for name in _OF_ROW)))


def _row_of(cells: dict[str, object]) -> DueRow:
    told = {name: cells[name] for name in _OF_REMINDER}
    told["kind"] = ReminderKind(str(told["kind"]))
    told["urgency"] = Urgency(str(told["urgency"]))
    told["strong"] = bool(told["strong"])
    kept = {name: cells[name] for name in _OF_ROW}
    kept["late"] = bool(kept["late"])
    return DueRow(reminder=Reminder(**told), **kept)  # type: ignore[arg-type]
