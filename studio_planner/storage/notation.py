"""How instants, dates and times of day are written down, exactly, and read back.

In the file an instant is a whole number of microseconds since 1970-01-01 00:00 UTC, because
text compares badly and a float loses microseconds. In the exchange format it is ISO 8601
in UTC.
"""

from __future__ import annotations

from datetime import UTC, datetime, time, timedelta

_START = datetime(1970, 1, 1, tzinfo=UTC)
_MICROSECOND = timedelta(microseconds=1)


def microseconds_of(moment: datetime) -> int:
    """Whole microseconds from 1970 UTC to an aware instant; ValueError without a zone."""
    return (_aware(moment) - _START) // _MICROSECOND


def instant_at(microseconds: int) -> datetime:
    """The UTC instant so many microseconds after 1970; OverflowError outside years 1-9999."""
    return _START + timedelta(microseconds=microseconds)


def iso_of(moment: datetime) -> str:
    """An aware instant as ISO 8601 in UTC with Z; ValueError without a zone."""
    return _aware(moment).replace(tzinfo=None).isoformat() + "Z"


def instant_of(text: str) -> datetime:
    """Read ISO 8601 with a zone; ValueError when it is not that."""
    try:
        return _aware(datetime.fromisoformat(text))
    except OverflowError as error:
        raise ValueError(text) from error


def clock_of(at: time) -> str:
    """A time of day as 07:30, with seconds only when there are any."""
    plain = at.replace(tzinfo=None)
    return plain.isoformat("minutes" if not (at.second or at.microsecond) else "auto")


def time_of(text: str) -> time:
    """Read a time of day without a zone; ValueError when it is not that."""
    at = time.fromisoformat(text)
    if at.tzinfo is not None:
        raise ValueError(text)
    return at


def _aware(moment: datetime) -> datetime:
    if moment.tzinfo is None:
        message = f"{moment} has no time zone"
        raise ValueError(message)
    return moment.astimezone(UTC)
