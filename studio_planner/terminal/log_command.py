"""The command log: what happened, and writing down what happens."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.craft.degree_words import degrees_said
from studio_planner.craft.errors import InvalidEntry
from studio_planner.services.desk import DeskSession
from studio_planner.services.log_book.doubts import doubts
from studio_planner.services.log_book.entry_words import about, what_happened
from studio_planner.services.log_book.moved_windows import moved_windows
from studio_planner.services.still_to_do import nothing_left
from studio_planner.services.studio_files import read_studio
from studio_planner.terminal.ask_command import TerminalVoice
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.log_told import change_told
from studio_planner.terminal.reading import whole_number
from studio_planner.terminal.writing import (
    iso,
    moment_words,
    say,
    say_json,
    say_table,
    say_wrapped,
)

if TYPE_CHECKING:
    import argparse
    from collections.abc import Iterable

    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.places import Place, Reading
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.terminal.surroundings import Surroundings

_LAST = 30
_OPTIONS = {"at": "--at", "start": "--at", "end": "--end", "spot": "--spot", "batch": "--batch"}
_MOST = 1_000_000


def log(arguments: argparse.Namespace, around: Surroundings) -> int:
    """List the log, or write something down in it.

    JSON: entries, each with number, kind, at, end, written, piece, coat, order, spot, joint,
    batch, touch, verdict, words, corrects, about and says (in words), and stands (false where
    another entry corrects it); what was just written alone, where something was, and doubts:
    sentences about what can hardly be right.
    """
    path = Path(arguments.file)
    if arguments.what is None:
        return _list(read_studio(path), arguments)
    session = DeskSession(path, around.clock)
    try:
        before = session.studio
        change = change_told(before, arguments, session.now())
        try:
            session.apply(change)
        except InvalidEntry as error:
            raise BadInput(_refused(error, arguments)) from None
        view = session.view
    finally:
        session.close()
    known = {entry.number for entry in before.log}
    written = [entry for entry in view.studio.log if entry.number not in known]
    doubtful = [one.words(TerminalVoice(before)) for one in doubts(before, view.studio)]
    if arguments.json:
        entries = [entry_json(view.studio, entry) for entry in written]
        say_json({"entries": entries, "doubts": doubtful})
        return 0
    for line in (*_kept(before, view.studio, written), *doubtful, *_moved(view, written)):
        say_wrapped(line)
    outdated = view.plan is not None and view.studio.plan_outdated
    if outdated and not nothing_left(view.studio):
        say_wrapped("The plan does not follow it yet: plan FILE --keep plans again.")
    return 0


def _kept(before: Studio, after: Studio, written: Iterable[LogEntry]) -> Iterable[str]:
    for entry in written:
        yield f"Written down as entry {entry.number}: {_line(after, entry)}."
    for place, reading in _new_readings(before, after):
        yield f"Kept: {place.name}, {_reading_words(after, reading)}."


def _moved(view: DeskView, written: Iterable[LogEntry]) -> Iterable[str]:
    pieces = {entry.piece for entry in written}
    voice = TerminalVoice(view.studio)
    for one in moved_windows(view):
        if one.piece in pieces:
            found = " ".join(said.words(voice) for said in one.sentences)
            yield f"The window of {one.name} moved. {found}"


def _new_readings(before: Studio, after: Studio) -> Iterable[tuple[Place, Reading]]:
    known = {place.key: set(place.readings) for place in before.places}
    for place in after.places:
        for reading in place.readings:
            if reading not in known[place.key]:
                yield place, reading


def _reading_words(studio: Studio, reading: Reading) -> str:
    damp = "" if reading.humidity_pct is None else f", {reading.humidity_pct:g} % humid"
    when = moment_words(studio.time_zone, reading.when)
    return f"{degrees_said(reading.celsius, studio.units)}{damp}, {when}"


def _refused(error: InvalidEntry, arguments: argparse.Namespace) -> str:
    """What is wrong, in the words of the command: its options instead of fields."""
    broken = error.broken
    if arguments.end is None and any(rule.field == "start" for rule in broken):
        # The end follows from the start then: there is one thing to put right.
        broken = tuple(rule for rule in broken if rule.field != "end")
    told = [
        f"{_OPTIONS[rule.field]}: {rule.sentence}" if rule.field in _OPTIONS else rule.sentence
        for rule in broken
    ]
    return f"{error.noun}: {' '.join(told)}"


def _list(studio: Studio, arguments: argparse.Namespace) -> int:
    most = _LAST if arguments.last is None else whole_number(arguments.last, "--last", _MOST)
    shown = studio.log[-most:]
    if arguments.json:
        say_json({"entries": [entry_json(studio, entry) for entry in shown]})
    elif not studio.log:
        say_wrapped(
            "Nothing is written down yet. log FILE poured PIECE writes down that its next coat "
            "was poured, log FILE --help says what else can be."
        )
    else:
        print_entries(studio, shown)
        left = len(studio.log) - len(shown)
        if left:
            say()
            say(f"{left} earlier entries are not shown; --last {len(studio.log)} shows all.")
    return 0


def print_entries(studio: Studio, entries: Iterable[LogEntry]) -> None:
    """Write entries as a table; those that another one corrects are marked."""
    zone, voice = studio.time_zone, TerminalVoice(studio)
    standing = {entry.number for entry in studio.standing}
    rows = [
        (
            str(entry.number),
            moment_words(zone, entry.at),
            about(studio, entry),
            what_happened(studio, entry).words(voice),
            "; ".join(_remarks(studio, entry, standing)),
        )
        for entry in entries
    ]
    say_table(("No", "When", "What", "Happened", "Remarks"), rows, whole=True)


def _remarks(studio: Studio, entry: LogEntry, standing: set[int]) -> Iterable[str]:
    if entry.corrects is not None and entry.number in standing:
        yield f"corrects {entry.corrects}"
    later = next((one for one in studio.log if one.corrects == entry.number), None)
    if later is not None:
        yield f"see {later.number}"
    if entry.words:
        yield entry.words


def _line(studio: Studio, entry: LogEntry) -> str:
    says = what_happened(studio, entry).words(TerminalVoice(studio))
    whom = about(studio, entry)
    return f"{whom}: {says}" if whom else says


def entry_json(studio: Studio, entry: LogEntry) -> dict[str, Any]:
    """An entry with everything that it says."""
    zone = studio.time_zone
    plain = ("piece", "coat", "order", "spot", "joint", "batch", "touch", "verdict", "words")
    return {
        "number": entry.number,
        "kind": entry.kind,
        "at": iso(zone, entry.at),
        "end": iso(zone, entry.end),
        "written": iso(zone, entry.written),
        **{name: getattr(entry, name) for name in plain},
        "corrects": entry.corrects,
        "about": about(studio, entry),
        "says": what_happened(studio, entry).words(TerminalVoice(studio)),
        "stands": entry in studio.standing,
    }
