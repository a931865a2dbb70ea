"""The command remind."""

from __future__ import annotations

import sys
from pathlib import Path
from time import monotonic
from typing import TYPE_CHECKING, Any

from studio_planner.craft.reminders import reminder_word, sign_of
from studio_planner.craft.tongue import capital
from studio_planner.services.naming import UnknownName
from studio_planner.services.reminding.notices import OPEN
from studio_planner.services.reminding.studio_reminders import reminders_at, ring_now
from studio_planner.services.reminding.words import about
from studio_planner.services.studio_files import read_studio
from studio_planner.terminal.ask_command import TerminalVoice
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.reading import whole_number
from studio_planner.terminal.writing import (
    iso,
    moment_words,
    say,
    say_json,
    say_table,
    say_wrapped,
    short_moment,
)

if TYPE_CHECKING:
    import argparse
    from collections.abc import Iterable

    from studio_planner.craft.due_rows import DueRow
    from studio_planner.craft.studio import Studio
    from studio_planner.services.reminding.studio_reminders import StudioReminders
    from studio_planner.services.reminding.ticking import Tick, Told
    from studio_planner.terminal.surroundings import Surroundings

_LONGEST_LISTENING = 600


def remind(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Look once what is due, tell it and list it; or answer, test, install or remove.

    JSON: at; due: each with uid, sign, kind, what, about, urgency, due, meant, moment,
    saved_until, can_be_saved, state, came_due, late, rings_at; told: each with means, notice,
    failure; and next, such a reminder or null. Exit code 1 when something was to be told and
    reached nobody.
    """
    path = Path(arguments.file)
    if arguments.test:
        return _test(path, around, as_json=arguments.json)
    if arguments.install or arguments.remove:
        return _schedule(path, arguments, around)
    with reminders_at(path, around.clock, around.notifiers(), TerminalVoice) as reminders:
        answers = (
            (arguments.done, _done),
            (arguments.undone, _undone),
            (arguments.snooze, _snoozed),
        )
        for uids, answer in answers:
            if uids:
                return answer(reminders, uids)
        if arguments.clear:
            return _cleared(reminders)
        return _looked(reminders, path, arguments, around)


def _looked(
    reminders: StudioReminders,
    path: Path,
    arguments: argparse.Namespace,
    around: Surroundings,
) -> int:
    seconds = 0
    if arguments.listen is not None:
        seconds = whole_number(arguments.listen, "--listen", _LONGEST_LISTENING)
    tick = reminders.tick()
    if arguments.json:
        say_json(_json(reminders, tick))
    else:
        _print(reminders, tick)
    if seconds and any(one.failure is None for one in tick.told):
        return _listened(reminders, path, around, seconds)
    return 1 if tick.nobody_reached else 0


def _listened(
    reminders: StudioReminders, path: Path, around: Surroundings, seconds: int
) -> int:
    """Wait for buttons; to open means the desk, which then reminds by itself."""
    ends = monotonic() + seconds
    while (left := ends - monotonic()) > 0:
        answers = reminders.answered(left)
        for pressed, rows in answers:
            if pressed.button == OPEN:
                from studio_planner.terminal.desk_command import desk  # noqa: PLC0415 - rarely

                return desk(str(path), around)
            _print_answer(reminders.studio, rows)
        if not answers:
            break
    return 0


def _done(reminders: StudioReminders, uids: Iterable[str]) -> int:
    found = [_known(reminders, uid).uid for uid in uids]
    _print_answer(reminders.studio, reminders.acknowledge(found))
    return 0


def _undone(reminders: StudioReminders, uids: Iterable[str]) -> int:
    found = [_known(reminders, uid).uid for uid in uids]
    for row in reminders.put_back(found):
        stands = "On the list" if row.listed else "Not on the list"
        say_wrapped(f"{stands}: {_what(reminders.studio, row)}.")
    return 0


def _cleared(reminders: StudioReminders) -> int:
    gone = reminders.clear()
    _print_answer(reminders.studio, gone)
    if not gone:
        say("Nothing on the list is too late; it stays as it is.")
    return 0


def _snoozed(reminders: StudioReminders, uids: Iterable[str]) -> int:
    rows = [_known(reminders, uid) for uid in uids]
    for row in rows:
        if not row.listed:
            raise BadInput(f"{row.uid} is not due, so it cannot be put off.")
    _print_answer(reminders.studio, reminders.snooze([row.uid for row in rows]))
    return 0


def _known(reminders: StudioReminders, uid: str) -> DueRow:
    try:
        return reminders.row(uid)
    except UnknownName as error:
        raise BadInput(str(error)) from None


def _print_answer(studio: Studio, rows: Iterable[DueRow]) -> None:
    for row in rows:
        what = _what(studio, row)
        if row.acknowledged is not None:
            say_wrapped(f"Off the list: {what}.")
        elif row.rings_at is not None:
            when = moment_words(studio.time_zone, row.rings_at)
            say_wrapped(f"Told again {when}: {what}.")
        else:
            say_wrapped(f"{what}: no later moment would help; it stays on the list.")


def _print(reminders: StudioReminders, tick: Tick) -> None:
    studio = reminders.studio
    zone = studio.time_zone
    _print_told(tick.told)
    if not tick.due:
        say(f"Nothing is due at {moment_words(zone, tick.now)}.")
        following = next(iter(reminders.coming()), None)
        if following is not None:
            what = _what(studio, following)
            say_wrapped(f"Next: {what}, {moment_words(zone, following.rings_at)}.")
        return
    say(f"Due at {moment_words(zone, tick.now)}:")
    say()
    rows = [_cells(studio, row, tick) for row in tick.due]
    say_table(("Since", "What", "For", "By", "UID"), rows, whole=True)


def _cells(studio: Studio, row: DueRow, tick: Tick) -> tuple[str, ...]:
    zone, reminder = studio.time_zone, row.reminder
    until = "-" if reminder.saved_until is None else short_moment(zone, reminder.saved_until)
    what = reminder_word(reminder.kind)
    if row.rings_at is not None:
        what = f"{what}, again {short_moment(zone, row.rings_at)}"
    return (
        short_moment(zone, reminder.due),
        what,
        about(studio, [reminder]),
        until if reminder.can_be_saved(tick.now) else "too late",
        sign_of(reminder.uid),
    )


def _print_told(told: Iterable[Told]) -> None:
    for one in told:
        if one.failure is None:
            say_wrapped(f"Told by {one.means}: {one.notice.title}")
        else:
            say_wrapped(one.failure)


def _what(studio: Studio, row: DueRow) -> str:
    kind = capital(reminder_word(row.reminder.kind))
    return f"{kind}, {about(studio, [row.reminder])}"


def _json(reminders: StudioReminders, tick: Tick) -> dict[str, Any]:
    studio = reminders.studio
    following = next(iter(reminders.coming()), None)
    return {
        "at": iso(studio.time_zone, tick.now),
        "due": [_row_json(studio, row, tick) for row in tick.due],
        "told": [
            {"means": one.means, "notice": one.notice.title, "failure": one.failure}
            for one in tick.told
        ],
        "next": None if following is None else _row_json(studio, following, tick),
    }


def _row_json(studio: Studio, row: DueRow, tick: Tick) -> dict[str, Any]:
    zone, reminder = studio.time_zone, row.reminder
    return {
        "uid": row.uid,
        "sign": sign_of(row.uid),
        "kind": reminder.kind,
        "what": capital(reminder_word(reminder.kind)),
        "about": about(studio, [reminder]),
        "urgency": reminder.urgency,
        "due": iso(zone, reminder.due),
        "meant": iso(zone, reminder.meant),
        "moment": iso(zone, reminder.moment),
        "saved_until": iso(zone, reminder.saved_until),
        "can_be_saved": reminder.can_be_saved(tick.now),
        "state": row.state,
        "came_due": iso(zone, row.came_due),
        "late": row.late,
        "rings_at": iso(zone, row.rings_at),
    }


def _test(path: Path, around: Surroundings, *, as_json: bool) -> int:
    off = read_studio(path).reminding.means_off
    told = ring_now(around.notifiers(), around.clock)
    if as_json:
        say_json({"told": [{"means": one.means, "failure": one.failure} for one in told]})
    else:
        for one in told:
            said = "rang just now." if one.failure is None else one.failure
            says_off = " It is switched off in this studio." if one.means in off else ""
            say_wrapped(f"{one.means}: {said}{says_off}")
        if not told:
            say("There is no means here that could ring.")
    return 0 if any(one.failure is None for one in told) else 1


def _schedule(path: Path, arguments: argparse.Namespace, around: Surroundings) -> int:
    scheduler = around.scheduler()
    if arguments.install:
        read_studio(path)  # nothing is installed for a file that cannot be read
        errand = scheduler.install(path)
    else:
        errand = scheduler.remove(path)
    say_wrapped(errand.says)
    for command in (*errand.clears, *errand.runs):
        say_wrapped(f"It runs: {' '.join(command)}", indent="  ")
    if not arguments.yes and not _agreed():
        say("Nothing was done.")
        return 0
    scheduler.carry_out(errand)
    say("Done.")
    return 0


def _agreed() -> bool:
    if not sys.stdin.isatty():
        raise BadInput("Nobody can be asked here; say --yes to have it done.")
    return input("Do it? [y/N] ").strip().casefold() in {"y", "yes"}
