"""A logger's file that is watched while it grows: only what was appended is read.

What is known of the file is a plain value that whoever watches keeps; nothing is taken over
until the maker's studio has it. A line that is not written to its end waits for the next look.
"""

from __future__ import annotations

from codecs import BOM_UTF16_BE, BOM_UTF16_LE
from dataclasses import dataclass, field, replace
from hashlib import sha256
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.places import changed_place
from studio_planner.services.log_signs import not_a_log
from studio_planner.services.room_logs import DateOrder, LogAsked, LogFile, SkippedRow, look_at
from studio_planner.storage.log_merging import merged_log
from studio_planner.storage.room_log import LARGEST_BYTES

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime
    from pathlib import Path
    from zoneinfo import ZoneInfo

    from studio_planner.craft.places import Place, Reading
    from studio_planner.services.editing.changes import Change
    from studio_planner.services.room_logs import LogLook

_MARK_BYTES = 1024
_CONTEXT_BYTES = 32 * 1024
"""What is read again before the new lines, so that they are understood as those were."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WatchedFile:
    """What is known of a watched file, and what was said of it when it was first looked at.

    The first `offset` bytes and `lines` lines are read; the hash `mark` of the first
    `marked_bytes` tells it from another file, and `heading` is how many bytes there are up to
    the first row. `passing` is the last reading where that was kept only because it was the
    last: a thinned log lets it go later.
    """

    path: Path
    asked: LogAsked = field(default_factory=LogAsked)
    offset: int = 0
    lines: int = 0
    mark: str = ""
    marked_bytes: int = 0
    heading: int = 0
    passing: datetime | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Growth:
    """What a watched file holds by now that was not read before.

    `look` is None where no reading came; `watched` is what to know from now on, once it is
    taken. `anew` says that it was read from its beginning, since it is new or another one.
    `skipped` are the new rows that give no reading, with their lines in the file.
    """

    watched: WatchedFile
    look: LogLook | None
    anew: bool
    skipped: tuple[SkippedRow, ...] = ()


@dataclass(frozen=True, slots=True)
class _Appended:
    """Bytes to look at: heading, `known_lines` lines that were read before, and new ones."""

    anew: bool
    data: bytes
    end: int
    known_lines: int


def grown(
    watched: WatchedFile,
    zone: ZoneInfo,
    existing: Sequence[Reading],
    now: datetime | None = None,
) -> Growth:
    """Look, at `now` (aware), at what was appended for a place whose record is `existing`.

    StudioFileError in one sentence when it can't be read or is no log any more; whoever watches
    keeps what was known then, and nothing is lost. While the look has questions it is not to be
    taken; watch it with the answers in `asked`.
    """
    came = _appended(watched)
    if not came.data:
        return Growth(watched=watched, look=None, anew=False)
    look = _look(watched, came.data, zone, existing, now)
    if look.questions:
        return Growth(watched=watched, look=look, anew=came.anew)
    return Growth(
        watched=_known(watched, look, came),
        look=look if look.added or came.anew else None,
        anew=came.anew,
        skipped=tuple(
            replace(row, line=row.line - came.known_lines + (0 if came.anew else watched.lines))
            for row in look.found.skipped
            if row.line > came.known_lines
        ),
    )


def taken_growth(place: Place, watched: WatchedFile, growth: Growth) -> Change:
    """Take what came as one change; `watched` is what was known before it."""
    words = translate("changes", "{place}, readings of {look}")
    said = words.format(place=place.name, look=watched.path.name)
    new = () if growth.look is None else growth.look.new
    overlap = watched.asked.answers.overlap

    def make(now: Place) -> Place:
        kept = tuple(one for one in now.readings if one.when != watched.passing)
        return replace(now, readings=merged_log(kept if new else now.readings, new, overlap))

    return changed_place(place.key, said, make)


def _look(
    watched: WatchedFile,
    data: bytes,
    zone: ZoneInfo,
    existing: Sequence[Reading],
    now: datetime | None,
) -> LogLook:
    wrong = not_a_log(data)
    if wrong:
        raise StudioFileError(
            translate("logs", "{path} {wrong}").format(path=watched.path.name, wrong=wrong)
        )
    # What is let go when something comes does not stand in the way of it.
    kept = [one for one in existing if one.when != watched.passing]
    return look_at(LogFile(watched.path.name, data), zone, kept, watched.asked, now)


def _known(watched: WatchedFile, look: LogLook, came: _Appended) -> WatchedFile:
    """What is known after a look; what the first one found out holds for all later ones."""
    thin = look.thinned if watched.asked.thin is None else watched.asked.thin
    now = replace(
        watched,
        offset=came.end,
        passing=look.new[-1].when if thin and look.new else watched.passing,
        lines=watched.lines + came.data.count(b"\n") - came.known_lines,
    )
    if not came.anew:
        return now
    found = look.found
    answers = replace(
        watched.asked.answers,
        date_order=_order(found.date_order) or watched.asked.answers.date_order,
        unit=found.unit,
        temperature_column=_said(found.temperature_column),
        humidity_column=None if found.humidity_column is None else _said(found.humidity_column),
    )
    return replace(
        now,
        asked=replace(watched.asked, answers=answers, thin=thin),
        lines=came.data.count(b"\n"),
        mark=_mark(came.data),
        marked_bytes=min(len(came.data), _MARK_BYTES),
        heading=_length_of_heading(came.data, found.heading_line),
    )


def _order(words: str) -> DateOrder | None:
    return next((one for one in DateOrder if translate("log", str(one)) == words), None)


def _said(column: str) -> str:
    """A column as it is named in an answer: one without a heading by its number."""
    number = column.removeprefix("column ")
    return number if number.isdecimal() else column


def _mark(data: bytes) -> str:
    return sha256(data[:_MARK_BYTES]).hexdigest()


def _appended(watched: WatchedFile) -> _Appended:
    try:
        with watched.path.open("rb") as source:
            beginning = source.read(_MARK_BYTES)
            source.seek(0)
            if not _is_same(beginning, watched, source.seek(0, 2)):
                source.seek(0)
                data = _whole_lines(source.read(LARGEST_BYTES), beginning)
                return _Appended(True, data, len(data), 0)  # noqa: FBT003 - named there
            source.seek(0)
            heading = source.read(watched.heading)
            start = max(watched.heading, watched.offset - _CONTEXT_BYTES)
            source.seek(start)
            rest = _whole_lines(source.read(LARGEST_BYTES), beginning)
    except OSError as error:
        raise StudioFileError(
            translate("files", "{path} cannot be read: {error}.").format(
                path=watched.path, error=(error.strerror or "?").lower()
            )
        ) from error
    end = start + len(rest)
    if end <= watched.offset:
        return _Appended(False, b"", watched.offset, 0)  # noqa: FBT003 - likewise
    known = rest[: watched.offset - start]
    if start > watched.heading:
        known = _after_a_line(known, beginning)
    data = heading + known + rest[watched.offset - start :]
    return _Appended(False, data, end, (heading + known).count(b"\n"))  # noqa: FBT003 - likewise


def _is_same(beginning: bytes, watched: WatchedFile, size: int) -> bool:
    if not watched.offset or size < watched.offset:
        return False
    return sha256(beginning[: watched.marked_bytes]).hexdigest() == watched.mark


def _line_end(beginning: bytes) -> bytes:
    """How a line ends in a file that begins like that."""
    if beginning.startswith(BOM_UTF16_LE):
        return "\n".encode("utf-16-le")
    return "\n".encode("utf-16-be") if beginning.startswith(BOM_UTF16_BE) else b"\n"


def _whole_lines(data: bytes, beginning: bytes) -> bytes:
    """The bytes up to the end of the last line that has one."""
    mark = _line_end(beginning)
    end = data.rfind(mark)
    return b"" if end < 0 else data[: end + len(mark)]


def _after_a_line(data: bytes, beginning: bytes) -> bytes:
    """The bytes from the first line on that is whole."""
    mark = _line_end(beginning)
    return data[data.find(mark) + len(mark) :]


def _length_of_heading(data: bytes, heading_line: int | None) -> int:
    """How many bytes there are up to the end of the heading's line."""
    mark = _line_end(data)
    end = len(mark) if len(mark) > 1 else 0  # what tells UTF-16 stays with the heading
    for _ in range(heading_line or 0):
        end = data.index(mark, end) + len(mark)
    return end
