"""Writing for the terminal: local times, hours, tables of at most 100 columns, JSON."""

from __future__ import annotations

import json
import sys
import textwrap
import unicodedata
from contextlib import contextmanager
from itertools import zip_longest
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import readings_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence
    from datetime import date, datetime
    from zoneinfo import ZoneInfo

COLUMNS = 100
_GAP = 2
_NARROWEST = 8
_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")


class OutputLost(Exception):  # noqa: N818 - reads as a sentence where it is raised
    """The output cannot take what was written, such as a file on a full disk; says why."""


def say(text: str = "") -> None:
    """Write a line to the output; OutputLost when it takes no more."""
    with _told():
        sys.stdout.write(text + "\n")


def end_output() -> None:
    """Write out what is still on its way; OutputLost when the output takes no more."""
    with _told():
        sys.stdout.flush()


@contextmanager
def _told() -> Iterator[None]:
    try:
        yield
    except BrokenPipeError:  # the reader has seen enough: not a loss
        raise
    except OSError as error:
        reason = (error.strerror or "the system refuses it").lower()
        raise OutputLost(
            f"The output cannot be written ({reason}); send it somewhere else and try again."
        ) from error


def say_wrapped(text: str, indent: str = "") -> None:
    """Write a paragraph, wrapped to the width of a table."""
    for line in textwrap.wrap(
        printable(text),
        COLUMNS,
        initial_indent=indent,
        subsequent_indent=indent,
        break_on_hyphens=False,  # a file's name is easier to copy whole
    ):
        say(line)


def complain(sentence: str) -> None:
    """Write a sentence to the error output."""
    sys.stderr.write(f"{printable(sentence)}\n")


def say_json(value: object) -> None:
    """Write a value as JSON, in letters that the output can show."""
    encoding = (sys.stdout.encoding or "").lower().replace("-", "")
    say(json.dumps(value, indent=2, ensure_ascii=encoding != "utf8", allow_nan=False))


def say_json_line(value: object) -> None:
    """Write a value as JSON on one line, and send it on at once."""
    say(json.dumps(value, allow_nan=False))
    end_output()


def printable(text: str) -> str:
    """Give a text without anything that would move the cursor or colour the screen."""
    return "".join(c if c.isprintable() else " " for c in text)


def iso(zone: ZoneInfo, moment: datetime | None) -> str | None:
    """Give an instant as ISO 8601 with the studio's offset at that time."""
    return None if moment is None else moment.astimezone(zone).isoformat()


def day_words(zone: ZoneInfo, moment: datetime) -> str:
    """Give the local day, such as Mon 2 Feb 2026."""
    local = moment.astimezone(zone)
    return f"{date_words(local)} {local.year}"


def date_words(day: date) -> str:
    """Give a day of the calendar, such as Mon 2 Feb."""
    return f"{_DAYS[day.weekday()]} {day.day} {_MONTHS[day.month - 1]}"


def clock_words(zone: ZoneInfo, moment: datetime) -> str:
    """Give the local time of day; in an hour that comes twice with the zone's short name."""
    local = moment.astimezone(zone)
    words = f"{local.hour:02}:{local.minute:02}"
    if len(readings_of(zone, local.replace(tzinfo=None))) == 1:
        return words
    return f"{words} ({local.tzname()})"


def moment_words(zone: ZoneInfo, moment: datetime | None) -> str:
    """Give the local day and time, such as Mon 2 Feb 18:05; a dash for None."""
    if moment is None:
        return "-"
    return f"{day_words(zone, moment)[:-5]} {clock_words(zone, moment)}"


def short_moment(zone: ZoneInfo, moment: datetime) -> str:
    """Give the weekday and the local time, such as Mon 18:05, for times of the same week."""
    return f"{day_words(zone, moment)[:3]} {clock_words(zone, moment)}"


def hours_words(hours: float | None) -> str:
    """Give a length of time, such as 45 min, 8 h 30 min or 3 d 4 h; never for None."""
    if hours is None:
        return "never"
    return _length_words(hours, 48)


def span_words(hours: float) -> str:
    """Give the time between two dates, in days from one day on, such as 1 d 0 h."""
    return _length_words(hours, 24)


def _length_words(hours: float, in_days_from: int) -> str:
    minutes = round(hours * 60.0)
    if minutes < 60:  # noqa: PLR2004 - minutes in an hour
        return f"{minutes} min"
    if minutes < in_days_from * 60:
        return f"{minutes // 60} h {minutes % 60:02} min"
    whole = round(hours)
    return f"{whole // 24} d {whole % 24} h"


def say_table(
    heads: Sequence[str],
    rows: Iterable[Sequence[str]],
    indent: str = "",
    *,
    whole: bool = False,
) -> None:
    """Write a table with a heading; the widest columns are cut where it would not fit.

    A row of one single cell is a heading of its own, across all columns. In a `whole` table
    only words are cut that are wider than their column: what does not fit goes on below.
    """
    cells = [[printable(cell) for cell in row] for row in rows]
    lines = [list(heads), *cells]
    full = [line for line in lines if len(line) > 1]
    widths = [max(_width(line[i]) for line in full) for i in range(len(heads))]
    room = COLUMNS - len(indent) - _GAP * (len(heads) - 1)
    while sum(widths) > room and max(widths) > _NARROWEST:
        widths[widths.index(max(widths))] -= 1
    for line in lines:
        columns = widths if len(line) > 1 else [room]
        for part in _parts(line, columns) if whole else [line]:
            say(indent + _line(part, columns))


def _parts(cells: Sequence[str], widths: Sequence[int]) -> Iterator[Sequence[str]]:
    """A row as the lines that it takes when each cell goes on below."""
    wrapped = [_wrapped(cell, width) for cell, width in zip(cells, widths, strict=True)]
    return zip_longest(*wrapped, fillvalue="")


def _wrapped(cell: str, width: int) -> list[str]:
    lines = [""]
    for word in cell.split(" "):
        longer = f"{lines[-1]} {word}" if lines[-1] else word
        if _width(longer) <= width or not lines[-1]:
            lines[-1] = longer
        else:
            lines.append(word)
    return lines


def _line(cells: Sequence[str], widths: Sequence[int]) -> str:
    padded = [_fitted(cell, width) for cell, width in zip(cells, widths, strict=True)]
    return (" " * _GAP).join(padded).rstrip()


def _fitted(cell: str, width: int) -> str:
    if _width(cell) > width:
        while _width(cell) > width - 1:
            cell = cell[:-1]
        cell += "…"
    return cell + " " * (width - _width(cell))


def _width(text: str) -> int:
    wide = sum(unicodedata.east_asian_width(c) in {"W", "F"} for c in text)
    joined = sum(unicodedata.combining(c) > 0 for c in text)
    return len(text) + wide - joined
