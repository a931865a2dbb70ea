"""What calendars were told, in the studio file: each event's number of changes, and its words.

The rows lie beside the studio, as reminders do: they are no part of it.
"""

from __future__ import annotations

import json
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any

from studio_planner.craft.told_events import ToldEvent
from studio_planner.storage.notation import instant_at, microseconds_of

if TYPE_CHECKING:
    import sqlite3
    from collections.abc import Iterable, Iterator

    from studio_planner.storage.cells import Cell
    from studio_planner.storage.reminder_rows import Beside

_COLUMNS = (
    "uid", "sequence", "fingerprint", "cancelled", "changed", "starts", "ends", "words",
)  # fmt: skip


class CalendarRows:
    """The rows, inside one change of the file."""

    def __init__(self, connection: sqlite3.Connection) -> None:
        """Read and write through a connection inside the caller's transaction."""
        self._connection = connection

    def rows(self) -> tuple[ToldEvent, ...]:
        """Every event that a calendar was told of, in no order."""
        names = ", ".join(f'"{name}"' for name in _COLUMNS)
        query = f'SELECT {names} FROM "calendar_events"'  # noqa: S608 - our own names
        return tuple(_event_of(cells) for cells in self._connection.execute(query))

    def put(self, rows: Iterable[ToldEvent]) -> None:
        """Keep events, in place of those of the same names."""
        names = ", ".join(f'"{name}"' for name in _COLUMNS)
        marks = ", ".join("?" * len(_COLUMNS))
        self._connection.executemany(
            f'INSERT OR REPLACE INTO "calendar_events" ({names}) VALUES ({marks})',  # noqa: S608 - our own names
            [_cells_of(row) for row in rows],
        )


@contextmanager
def calendar_rows(file: Beside) -> Iterator[CalendarRows]:
    """One change of what calendars were told by an open studio file."""
    with file.beside() as connection:
        yield CalendarRows(connection)


def _cells_of(event: ToldEvent) -> tuple[Cell, ...]:
    return (
        event.uid,
        event.sequence,
        event.fingerprint,
        int(event.cancelled),
        microseconds_of(event.changed),
        microseconds_of(event.starts),
        microseconds_of(event.ends),
        json.dumps([event.words, *event.orders]),
    )


def _event_of(cells: tuple[Any, ...]) -> ToldEvent:
    uid, sequence, fingerprint, cancelled, changed, starts, ends, told = cells
    words, *orders = json.loads(told)
    return ToldEvent(
        uid=uid,
        sequence=sequence,
        fingerprint=fingerprint,
        cancelled=bool(cancelled),
        changed=instant_at(changed),
        starts=instant_at(starts),
        ends=instant_at(ends),
        words=words,
        orders=tuple(orders),
    )
