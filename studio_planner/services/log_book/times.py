"""When something can have happened: not ahead, not before what it follows."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from studio_planner.craft.errors import Rulebook

AHEAD = timedelta(minutes=5)
"""How far a clock may be ahead of ours; what is later has not happened yet."""

LONGEST_POUR = timedelta(hours=12)
"""A pour that still goes on is given an end at most so far ahead."""

_EARLIEST = datetime(2000, 1, 1, tzinfo=UTC)


def require_past(rules: Rulebook, at: datetime, now: datetime, field: str = "at") -> None:
    """Require an instant with a zone that has come, and that a clock was right at."""
    if at.utcoffset() is None:
        rules.require(False, field, translate("rules", "give the time with a zone."))  # noqa: FBT003
        return
    rules.require(
        at <= now + AHEAD,
        field,
        translate("rules", "it lies ahead; write it down once it has happened."),
    )
    rules.require(
        at >= _EARLIEST,
        field,
        translate("rules", "it lies before the year 2000; is that clock right?"),
    )


def require_end(rules: Rulebook, start: datetime, end: datetime, now: datetime) -> None:
    """Require a pour's end after its start, and not far ahead where it still goes on."""
    rules.forward(start, end)
    if end.utcoffset() is None:
        return
    rules.require(
        end <= now + LONGEST_POUR,
        "end",
        translate("rules", "it lies too far ahead; a pour ends within {hours} hours.").format(
            hours=round(LONGEST_POUR / timedelta(hours=1))
        ),
    )


def require_after(
    rules: Rulebook, at: datetime, earlier: datetime, what: str, field: str = "at"
) -> None:
    """Require that it was not before something else, which `what` names."""
    rules.require(
        at.utcoffset() is None or at >= earlier,
        field,
        translate("rules", "it lies before {what}.").format(what=what),
    )
