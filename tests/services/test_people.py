"""Changes of hands: each one is a function of the studio, and its words say what it does."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta
from zoneinfo import ZoneInfo

import pytest

from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.craft.studio import Studio
from studio_planner.services.editing.changes import bears_on_plan
from studio_planner.services.editing.people import (
    NEW_HOURS,
    added_person,
    away_this_evening,
    away_today,
    changed_person,
    copied_person,
    moved_person,
    new_absence,
    painted,
    person_of,
    removed_person,
    with_absence,
    with_hours,
)
from studio_planner.services.editing.weeks import Block

BERLIN = ZoneInfo("Europe/Berlin")
SECOND = WorkHours(rule="FREQ=MONTHLY;BYDAY=1SA", start=time(9), end=time(12))
ADA = Person(key="ada", name="Ada", work=(SECOND,))
STUDIO = Studio(name="Tern", zone="Europe/Berlin", people=(ADA,))


def at(hour: int, minute: int = 0) -> datetime:
    return datetime(2026, 12, 8, hour, minute, 30, tzinfo=BERLIN).astimezone(UTC)


def ada(studio: Studio) -> Person:
    found = person_of(studio, "ada")
    assert found is not None
    return found


def test_people_are_added_copied_moved_and_removed() -> None:
    change, key = added_person(STUDIO)
    assert change.words == "Add Somebody"
    two = change.make(STUDIO)
    assert [person.key for person in two.people] == ["ada", key]
    assert [p.key for p in moved_person(ADA, 1).make(two).people] == [key, "ada"]
    change, copy = copied_person(two, ADA)
    three = change.make(two)
    assert person_of(three, copy) == replace(ADA, key=copy, name="Ada 2")
    assert removed_person(ADA).make(STUDIO).people == ()
    assert person_of(STUDIO, "nobody") is None


def test_a_painted_week_leaves_other_rules_and_the_change_names_the_person() -> None:
    change = painted(ADA, [Block(0, 18 * 60, 20 * 60)])
    assert change.words == "Ada, working hours"
    work = ada(change.make(STUDIO)).work
    assert work[0].rule == "FREQ=WEEKLY;BYDAY=MO"
    assert work[1] == SECOND


def test_rows_of_hours_are_added_changed_and_removed_in_their_place() -> None:
    added = with_hours(ADA, None, NEW_HOURS).make(STUDIO)
    assert ada(added).work == (SECOND, NEW_HOURS)
    changed = with_hours(ADA, 0, NEW_HOURS).make(added)
    assert ada(changed).work == (NEW_HOURS, NEW_HOURS)
    assert ada(with_hours(ADA, 0, None).make(added)).work == (NEW_HOURS,)


def test_absences_are_added_changed_and_removed_in_their_place() -> None:
    tomorrow = new_absence(BERLIN, at(10))
    assert tomorrow.start.astimezone(BERLIN) == datetime(2026, 12, 9, tzinfo=BERLIN)
    assert tomorrow.end - tomorrow.start == timedelta(days=1)
    added = with_absence(ADA, None, tomorrow).make(STUDIO)
    why = replace(tomorrow, why="family visit")
    assert ada(with_absence(ADA, 0, why).make(added)).absences == (why,)
    assert ada(with_absence(ADA, 0, None).make(added)).absences == ()


@pytest.mark.parametrize(
    ("sleeps", "now", "start", "hours"),
    [
        (time(23), at(10), at(17), 6.0),
        (time(23), at(19, 36), at(19, 36), 3.4),
        (time(1), at(19), at(19), 6.0),  # they go to bed after midnight
        (time(22), at(23), at(23), 1.0),  # they are up past bedtime
    ],
)
def test_away_this_evening_lasts_until_bedtime(
    sleeps: time, now: datetime, start: datetime, hours: float
) -> None:
    person = replace(ADA, sleeps=sleeps)
    studio = replace(STUDIO, people=(person,))
    (absence,) = ada(away_this_evening(person, BERLIN, now).make(studio)).absences
    assert absence.start == start.replace(second=0)
    assert (absence.end - absence.start) / timedelta(hours=1) == pytest.approx(hours)


def test_away_today_begins_now_and_is_undone_by_its_name() -> None:
    change = away_today(ADA, BERLIN, at(10))
    assert change.words == "Ada, away today"
    (absence,) = ada(change.make(STUDIO)).absences
    assert absence == Absence(start=at(10).replace(second=0), end=at(23).replace(second=0))


def test_a_change_of_somebody_who_is_gone_changes_nothing() -> None:
    empty = replace(STUDIO, people=())
    assert painted(ADA, []).make(empty) is empty


def test_a_name_and_the_reason_for_an_absence_leave_the_plan_as_it_is() -> None:
    tomorrow = new_absence(BERLIN, at(10))
    away = with_absence(ADA, None, tomorrow).make(STUDIO)
    assert bears_on_plan(STUDIO, away)
    renamed = changed_person(ADA, "name", lambda now: replace(now, name="Tove")).make(away)
    why = with_absence(ADA, 0, replace(tomorrow, why="fair")).make(renamed)
    assert not bears_on_plan(away, why)
