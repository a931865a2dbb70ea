"""The sample studio: an invented two-person workshop, dated from any day the maker likes.

It is stored in the exchange format and dated from a Monday. All its local dates are moved by
whole days; the wall clock shows the same times as in the stored one.
"""

from __future__ import annotations

from contextlib import suppress
from dataclasses import replace
from datetime import date, datetime, time, timedelta
from functools import lru_cache
from os.path import lexists
from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioError
from studio_planner.craft.local_time import instant
from studio_planner.craft.resources import resource_path
from studio_planner.services.studio_files import create
from studio_planner.storage.exchange import studio_from_json
from studio_planner.storage.file_errors import told_about
from studio_planner.storage.placing import refuse_existing
from studio_planner.storage.studio_file import open_studio

if TYPE_CHECKING:
    from pathlib import Path
    from zoneinfo import ZoneInfo

    from studio_planner.craft.hands import Person, WorkHours
    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.places import Place, Reading
    from studio_planner.craft.stock import Lot
    from studio_planner.craft.studio import Studio

FILE_NAME = "sample.studio"
"""What the sample's file is called in the maker's own folder."""

REFERENCE_DAY = date(2026, 2, 2)
"""The Monday that the stored sample is dated from."""

PLANNED_AT = time(7, 0)
"""When on its first day the sample's plan is made, on the wall clock."""

_SHORTER_THAN_ITS_PLAN = timedelta(days=7)

EARLIEST, LATEST = date(1980, 1, 1), date(2150, 12, 31)
"""Days that the sample can be dated from: beyond them time zones are guesswork."""


def sample_studio(day: date) -> Studio:
    """Give the sample studio as it is on the morning of `day`, without a plan.

    ValueError when the day is before `EARLIEST` or after `LATEST`.
    """
    if not EARLIEST <= day <= LATEST:
        message = f"{day} is outside {EARLIEST} to {LATEST}"
        raise ValueError(message)
    return _moved(_stored(), (day - REFERENCE_DAY).days)


def sample_day(now: datetime) -> date:
    """Give the day it is in the sample's own time zone."""
    return now.astimezone(_stored().time_zone).date()


def planned_sample(day: date) -> Studio:
    """Give the sample studio with the plan that was made on the morning of `day`."""
    # A desk that opens a sample which is there already has no use for a planner.
    from studio_planner.services.plan_again import plan_again  # noqa: PLC0415

    studio = sample_studio(day)
    made = plan_again(studio, instant(studio.time_zone, day, PLANNED_AT))
    return replace(studio, plan=made.plan)


def create_sample(path: Path, day: date) -> Studio:
    """Make a studio file that holds the planned sample; StudioFileError when it is taken."""
    with told_about(path):
        refuse_existing(path, overwrite=False)  # before the planning, which takes its time
    studio = planned_sample(day)
    create(path, studio)
    return studio


def sample_file(folder: Path, now: datetime) -> Path:
    """Give the sample's file in a folder; both are made when they are not there.

    A sample whose whole plan has gone by is made anew for today, if nobody has changed it.
    """
    path = folder / FILE_NAME
    if not lexists(path):
        with told_about(folder):
            folder.mkdir(parents=True, exist_ok=True)
        create_sample(path, sample_day(now))
    elif _written_long_before(path, now):
        # A sample that cannot be read or written now says so itself when it is opened.
        with suppress(StudioError):
            _renew(path, now)
    return path


def _written_long_before(path: Path, now: datetime) -> bool:
    # Tells without opening the file, which would hold up the desk every time.
    with suppress(OSError):
        return now.timestamp() - path.stat().st_mtime > _SHORTER_THAN_ITS_PLAN.total_seconds()
    return False


def _renew(path: Path, now: datetime) -> None:
    with open_studio(path) as file:
        revision, studio = file.revision(), file.read()
        if _gone_by(studio, now) and _as_made(studio):
            # Whoever changes it in the meantime wins: this write is refused then.
            file.write(planned_sample(sample_day(now)), expected_revision=revision)


def _gone_by(studio: Studio, now: datetime) -> bool:
    plan = studio.plan
    if plan is None or not plan.coats:
        return False
    ends = [coat.end for coat in plan.coats] + [step.end for step in plan.steps]
    return max(ends) < now


def _as_made(studio: Studio) -> bool:
    """Tell whether a studio is the sample of some day, with the plan of that morning."""
    plan, zone = studio.plan, studio.time_zone
    if plan is None:
        return False
    day = plan.start.astimezone(zone).date()
    morning = instant(zone, day, PLANNED_AT)
    if not EARLIEST <= day <= LATEST or (plan.start, plan.made) != (morning, morning):
        return False
    return replace(studio, plan=None) == sample_studio(day)


@lru_cache(maxsize=1)
def _stored() -> Studio:
    text = resource_path("sample/studio.json").read_text(encoding="utf-8")
    return studio_from_json(text)


def _moved(studio: Studio, days: int) -> Studio:
    zone = studio.time_zone

    def later(moment: datetime) -> datetime:
        return _later(zone, moment, days)

    return replace(
        studio,
        places=tuple(_moved_place(zone, place, days) for place in studio.places),
        people=tuple(_moved_person(zone, person, days) for person in studio.people),
        orders=tuple(
            replace(order, promised=order.promised + timedelta(days=days))
            for order in studio.orders
        ),
        poured=tuple(
            replace(pour, start=later(pour.start), end=later(pour.end))
            for pour in studio.poured
        ),
        log=tuple(_moved_entry(zone, entry, days) for entry in studio.log),
        mixes=tuple(replace(mix, at=later(mix.at)) for mix in studio.mixes),
        lots=tuple(_moved_lot(zone, lot, days) for lot in studio.lots),
    )


def _moved_entry(zone: ZoneInfo, entry: LogEntry, days: int) -> LogEntry:
    return replace(
        entry,
        at=_later(zone, entry.at, days),
        written=_later(zone, entry.written, days),
        end=None if entry.end is None else _later(zone, entry.end, days),
    )


def _moved_lot(zone: ZoneInfo, lot: Lot, days: int) -> Lot:
    ahead = timedelta(days=days)
    return replace(
        lot,
        received=lot.received + ahead,
        opened=None if lot.opened is None else lot.opened + ahead,
        best_before=None if lot.best_before is None else lot.best_before + ahead,
        counts=tuple(replace(count, at=_later(zone, count.at, days)) for count in lot.counts),
    )


def _moved_place(zone: ZoneInfo, place: Place, days: int) -> Place:
    moved: dict[datetime, Reading] = {}
    for reading in place.readings:
        when = _later(zone, reading.when, days)
        # An hour that the spring change leaves out falls on the next one, which wins.
        moved[when] = replace(reading, when=when)
    return replace(place, readings=tuple(moved[when] for when in sorted(moved)))


def _moved_person(zone: ZoneInfo, person: Person, days: int) -> Person:
    absences = tuple(
        replace(
            absence,
            start=_later(zone, absence.start, days),
            end=_later(zone, absence.end, days),
        )
        for absence in person.absences
    )
    work = tuple(_moved_hours(hours, days) for hours in person.work)
    return replace(person, absences=absences, work=work)


def _moved_hours(hours: WorkHours, days: int) -> WorkHours:
    return hours if hours.first is None else replace(hours, first=hours.first + timedelta(days))


def _later(zone: ZoneInfo, moment: datetime, days: int) -> datetime:
    local = moment.astimezone(zone)
    return instant(zone, local.date() + timedelta(days=days), local.time())
