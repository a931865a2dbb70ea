"""Calls of the means: which of them are still open, and when a round is over.

A call is kept by the reminder, its round and the means. One whose end nobody knows is open: it
is made once more. One that failed is open as long as no other means has told of that round.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.due_rows import Ring
from studio_planner.craft.tongue import translate
from studio_planner.services.ports import CannotRing
from studio_planner.services.reminding.bundles import Bundle, bundles_of, key_of

if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Mapping, Sequence
    from datetime import datetime

    from studio_planner.craft.due_rows import DueRow
    from studio_planner.services.ports import Notice, Notifier

MOST_CALLS = 5
"""How often a round is tried that no means could tell (ours)."""

CallKey = tuple[str, int, str]
"""What a call is kept by: the reminder's name, its round, the means."""


def call_key(ring: Ring) -> CallKey:
    """What a call is kept by."""
    return ring.uid, ring.round, ring.means


def open_calls(
    due: Sequence[DueRow],
    known: Mapping[CallKey, Ring],
    tried: Collection[CallKey],
    notifiers: Sequence[Notifier],
    now: datetime,
) -> Iterable[tuple[Bundle, Notifier]]:
    """Every call that is yet to be made, the most pressing reminders first.

    Parameters
    ----------
    due
        The rows that may ring now.
    known
        All calls that are kept.
    tried
        Calls that this tick has made already: none is made twice in one tick.
    notifiers
        The means, in the order in which they are tried.
    now
        The wall clock (aware).
    """
    told_as = {(uid, round_): ring.notice for (uid, round_, _), ring in known.items()}
    reached = {(r.uid, r.round) for r in known.values() if r.finished and not r.failed}

    def is_open(row: DueRow, means: str) -> bool:
        key = (row.uid, row.round, means)
        ring = known.get(key)
        if key in tried:
            return False
        if ring is None or ring.finished is None:
            return True
        return ring.failed and (row.uid, row.round) not in reached

    for bundle in bundles_of(due, told_as, now):
        for notifier in notifiers:
            rows = tuple(row for row in bundle.rows if is_open(row, notifier.means))
            if rows:
                key = _free_key(bundle.key, rows, notifier.means, known.values())
                yield Bundle(key, rows, bundle.away), notifier


def _free_key(key: str, rows: tuple[DueRow, ...], means: str, rings: Iterable[Ring]) -> str:
    """The key of a bundle, unless others of it were told under that one: they still stand."""
    mine = {row.uid for row in rows}
    same = (ring for ring in rings if (ring.notice, ring.means) == (key, means))
    others_stand = any(ring.finished and ring.uid not in mine for ring in same)
    return key_of(rows) if others_stand else key


def begun(
    bundle: Bundle, means: str, known: Mapping[CallKey, Ring], caller: str, now: datetime
) -> tuple[tuple[Ring, ...], bool]:
    """What is kept of a call before it is made, and whether one was perhaps shown before."""
    before = [known.get((row.uid, row.round, means)) for row in bundle.rows]
    rings = tuple(
        Ring(
            uid=row.uid,
            round=row.round,
            means=means,
            notice=bundle.key,
            caller=caller,
            calls=1 if ring is None else ring.calls + 1,
            started=now,
        )
        for row, ring in zip(bundle.rows, before, strict=True)
    )
    return rings, any(ring is not None and ring.finished is None for ring in before)


def called(notifier: Notifier, notice: Notice) -> str | None:
    """Call a means; give the sentence that says why it failed, or None."""
    try:
        notifier.ring(notice)
    except CannotRing as error:
        return str(error)
    except Exception as error:  # noqa: BLE001 - the other means have to be tried all the same
        return translate("ringing", "{means} failed: {error}").format(
            means=translate("reminders", notifier.means), error=error
        )
    return None


def is_over(row: DueRow, rings: Iterable[Ring]) -> bool:
    """Whether a round was told, or was tried in vain often enough."""
    ours = [ring for ring in rings if (ring.uid, ring.round) == (row.uid, row.round)]
    told = any(ring.finished and not ring.failed for ring in ours)
    return told or (bool(ours) and all(ring.calls >= MOST_CALLS for ring in ours))
