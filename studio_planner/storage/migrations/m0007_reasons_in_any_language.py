"""Version 7: why an order is late is kept as a saying, for readers of any language."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    import sqlite3

_SAID = (
    ("plan_outcomes", "reason"),
    ("plan_outcomes_changes", "words"),
    ("plan_unplanned", "reason"),
)


def reasons_in_any_language(connection: sqlite3.Connection) -> None:
    """Write the reasons and tried changes of a plan as JSON; those there are stay words."""
    for table, column in _SAID:
        found = connection.execute(f'SELECT owner, position, "{column}" FROM "{table}"')  # noqa: S608 - our own
        rows = [(json.dumps(words, ensure_ascii=False), *where) for *where, words in found]
        connection.executemany(
            f'UPDATE "{table}" SET "{column}" = ? WHERE owner = ? AND position = ?',  # noqa: S608 - likewise
            rows,
        )
