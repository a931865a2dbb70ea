from __future__ import annotations

import sys
from dataclasses import dataclass, field, replace
from datetime import timedelta
from functools import cache
from threading import Event
from types import ModuleType
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.hands import Absence
from studio_planner.craft.log import EntryKind
from studio_planner.craft.places import Reading
from studio_planner.craft.plans import Goal
from studio_planner.planning import carrying
from studio_planner.services.checking import CheckReport, checked
from studio_planner.services.editing.changes import Change, made
from studio_planner.services.keeping import ChangedMeanwhile, FileToPlan, Paced
from studio_planner.services.log_book.pours import PourTold, poured
from studio_planner.services.log_book.steps import StepTold
from studio_planner.services.log_book.steps import told as steps_told
from studio_planner.services.plan_again import CheckedPlan, carried, plan_again
from studio_planner.services.studio_files import create, read_studio
from studio_planner.storage.studio_file import open_studio
from tests.services.small_studios import kept, morning, planned_once, two_trays

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime
    from pathlib import Path

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio


@dataclass
class Waits:
    """A pause that ends when the test says so."""

    seconds: float
    over: Callable[[], None]
    begun: bool = False
    called_off: bool = False

    def start(self) -> None:
        self.begun = True

    def cancel(self) -> None:
        self.called_off = True


@dataclass
class Hand:
    """The time, and all pauses that were begun, in the test's hand."""

    now: float = 100.0
    waits: list[Waits] = field(default_factory=list)

    def later(self, seconds: float, over: Callable[[], None]) -> Waits:
        self.waits.append(Waits(seconds, over))
        return self.waits[-1]

    def paced(self, pass_on: Callable[[CheckedPlan], None]) -> Paced:
        return Paced(pass_on, pause=2.0, seconds=lambda: self.now, later=self.later)


def better(rehearsals: int) -> CheckedPlan:
    plan = replace(kept(planned_once()), rehearsals=rehearsals)
    return CheckedPlan(plan=plan, report=CheckReport(broken=(), warnings=()))


def test_the_first_plan_is_passed_on_at_once_and_others_after_a_pause() -> None:
    hand, passed = Hand(), []
    paced = hand.paced(lambda made: passed.append(made.plan.rehearsals))
    paced.take(better(1))
    assert passed == [1]
    hand.now += 0.5
    paced.take(better(2))
    paced.take(better(3))
    assert passed == [1]
    (wait,) = hand.waits
    assert (wait.begun, wait.seconds) == (True, 1.5)
    hand.now += 1.5
    wait.over()
    assert passed == [1, 3]
    hand.now += 2.5
    paced.take(better(4))
    assert passed == [1, 3, 4]
    paced.end()
    assert len(hand.waits) == 1


def test_what_still_waits_at_the_end_is_forgotten() -> None:
    hand, passed = Hand(), []
    paced = hand.paced(lambda made: passed.append(made.plan.rehearsals))
    paced.take(better(1))
    paced.take(better(2))
    paced.end()
    assert hand.waits[0].called_off
    hand.waits[0].over()
    assert passed == [1]


@pytest.mark.parametrize("asked", ["take", "end"])
def test_what_fails_during_a_pause_is_raised_where_plans_come_from(asked: str) -> None:
    hand = Hand()

    def full(made: CheckedPlan) -> None:
        if made.plan.rehearsals == 2:
            raise OSError(28, "No space left on device")

    paced = hand.paced(full)
    paced.take(better(1))
    paced.take(better(2))
    hand.waits[0].over()
    with pytest.raises(OSError, match="No space left"):
        paced.take(better(3)) if asked == "take" else paced.end()


def test_a_pause_ends_by_itself() -> None:
    passed, done = [], Event()

    def pass_on(made: CheckedPlan) -> None:
        passed.append(made.plan.rehearsals)
        if made.plan.rehearsals == 2:
            done.set()

    paced = Paced(pass_on, pause=0.01)
    paced.take(better(1))
    paced.take(better(2))
    assert done.wait(20)
    paced.end()
    assert passed == [1, 2]


# Keeping what holds, whatever was changed meanwhile


@cache
def planned_trays() -> CheckedPlan:
    studio = two_trays()
    return plan_again(studio, morning(studio))


@pytest.fixture
def path(tmp_path: Path) -> Path:
    made = tmp_path / "two.studio"
    create(made, two_trays())
    return made


def changed(path: Path, change: Callable[[Studio], Studio]) -> None:
    """Somebody else changes the file."""
    with open_studio(path) as other:
        before = other.read()
        other.write(made(Change("something", change), before))


def weeks(count: int) -> CheckedPlan:
    one = planned_trays()
    return replace(one, plan=replace(one.plan, rehearsals=count))


def starts(plan: Plan) -> dict[tuple[str, str], datetime]:
    return {(coat.piece, coat.coat): coat.start for coat in plan.coats}


def first_to_pour() -> PlannedCoat:
    coats = (coat for coat in planned_trays().plan.coats if not coat.poured)
    return min(coats, key=lambda coat: coat.start)


def as_poured(coat: PlannedCoat, later: timedelta = timedelta()) -> Callable[[Studio], Studio]:
    """Write a coat down as poured, on its spot, somewhat later than planned."""

    def pour(studio: Studio) -> Studio:
        told = PourTold(
            piece=coat.piece,
            coat=coat.coat,
            start=coat.start + later,
            end=coat.end + later,
            spot=coat.spot,
            joint=coat.joint,
        )
        return poured(studio, (told,), coat.end + later).make(studio)

    return pour


def colder(studio: Studio) -> Studio:
    """A thermometer is read once more, a little below what was expected."""
    place = next(one for one in studio.places if one.readings)
    at = max(morning(studio), place.readings[-1].when + timedelta(minutes=1))
    reading = Reading(when=at, celsius=place.readings[-1].celsius - 0.2, humidity_pct=45.0)
    return replace(
        studio,
        places=tuple(
            replace(one, readings=(*one.readings, reading)) if one is place else one
            for one in studio.places
        ),
    )


def test_each_better_plan_replaces_the_one_before(path: Path) -> None:
    file = FileToPlan(path)
    for count in (1, 2):
        assert file.keep(weeks(count)) == weeks(count)
        assert read_studio(path) == replace(file.studio, plan=weeks(count).plan)


def test_what_bears_on_no_plan_does_not_stand_in_its_way(path: Path) -> None:
    file = FileToPlan(path)
    changed(path, lambda studio: replace(studio, name="Changed"))
    assert file.keep(weeks(3)) == weeks(3)
    found = read_studio(path)
    assert (found.name, kept(found).rehearsals, found.plan_outdated) == ("Changed", 3, False)


def test_of_two_searches_neither_loses_its_plan_to_the_other(path: Path) -> None:
    one, other = FileToPlan(path), FileToPlan(path)
    one.keep(weeks(1))
    other.keep(weeks(2))
    one.keep(weeks(3))
    assert kept(read_studio(path)).rehearsals == 3


def test_a_reading_of_the_room_leaves_a_plan_that_still_holds_as_it_is_then(path: Path) -> None:
    file = FileToPlan(path)
    changed(path, colder)
    found = file.keep(planned_trays())
    now = read_studio(path)
    assert kept(now) == found.plan
    assert not now.plan_outdated
    assert starts(found.plan) == starts(planned_trays().plan)
    assert found.plan.ready != planned_trays().plan.ready, "it is colder: all cures later"
    assert checked(now, found.plan).clean
    assert not checked(now, planned_trays().plan).clean


@pytest.mark.parametrize("minutes", [0, 5])
def test_what_is_poured_while_it_is_planned_is_in_the_plan_that_is_kept(
    path: Path, minutes: int
) -> None:
    file, coat = FileToPlan(path), first_to_pour()
    later = timedelta(minutes=minutes)
    changed(path, as_poured(coat, later))
    found = file.keep(planned_trays())
    now = read_studio(path)
    assert checked(now, kept(now)).clean
    wanted = starts(planned_trays().plan)
    wanted[coat.piece, coat.coat] += later
    assert starts(found.plan) == wanted
    assert {(c.piece, c.coat) for c in found.plan.coats if c.poured} == now.poured_keys


def test_a_plan_of_which_everything_is_poured_by_then_is_what_was_poured(path: Path) -> None:
    file = FileToPlan(path)
    for coat in sorted(planned_trays().plan.coats, key=lambda coat: coat.start):
        if not coat.poured:
            changed(path, as_poured(coat))
    found = file.keep(planned_trays())
    assert all(coat.poured for coat in found.plan.coats)
    assert checked(read_studio(path), found.plan).clean


def test_a_plan_of_which_everything_has_left_by_then_is_what_was_poured(path: Path) -> None:
    file = FileToPlan(path)
    for coat in sorted(planned_trays().plan.coats, key=lambda coat: coat.start):
        if not coat.poured:
            changed(path, as_poured(coat))
    pieces = tuple(piece.key for piece in two_trays().pieces)
    at = morning(two_trays()) + timedelta(days=30)
    told = StepTold(kind=EntryKind.PACKED, pieces=pieces, at=at)
    changed(path, lambda studio: steps_told(studio, told, at).make(studio))
    assert all(coat.poured for coat in file.keep(planned_trays()).plan.coats)


def test_the_last_plan_of_a_search_is_rehearsed_and_explained_anew_for_what_has_changed(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    asked = []

    def rehearsed(studio: Studio, plan: Plan) -> Plan:
        asked.append(studio.places)
        return replace(plan, rehearsals=7)

    module = ModuleType("studio_planner.planning.best")
    module.rehearsed = rehearsed  # type: ignore[attr-defined]
    monkeypatch.setitem(sys.modules, module.__name__, module)
    file = FileToPlan(path)
    changed(path, colder)
    assert file.keep(weeks(1000)).plan.rehearsals == 0
    assert file.keep(weeks(1000), last=True).plan.rehearsals == 7
    assert file.keep(weeks(0), last=True).plan.rehearsals == 0, "nobody has looked for better"
    assert asked == [read_studio(path).places]


def test_what_is_proved_of_a_studio_that_has_changed_since_is_proved_no_more(
    path: Path,
) -> None:
    one = planned_trays()
    goals = tuple(
        replace(goal, bound=goal.value, value=2.0 if goal.goal is Goal.MOVED else goal.value)
        for goal in one.plan.goals
    )
    plan = replace(one.plan, goals=goals, solved_seconds=12.0, grid_minutes=10)
    file = FileToPlan(path)
    changed(path, colder)
    found = file.keep(replace(one, plan=plan)).plan
    assert (found.solved_seconds, found.grid_minutes) == (12.0, 10)
    by_goal = {goal.goal: goal for goal in found.goals}
    assert by_goal[Goal.MOVED].value == 2.0
    assert not by_goal[Goal.ENDS].proved


def away(days: float) -> Callable[[Studio], Studio]:
    """All hands are away when the first coat was to be poured, and for so many days then."""
    start = first_to_pour().start - timedelta(hours=1)
    absence = Absence(start=start, end=start + timedelta(days=days))

    def leave(studio: Studio) -> Studio:
        people = tuple(replace(one, absences=(*one.absences, absence)) for one in studio.people)
        return replace(studio, people=people)

    return leave


def test_of_a_plan_that_no_longer_holds_only_what_must_is_moved_if_it_is_no_worse_then(
    path: Path,
) -> None:
    file = FileToPlan(path)
    changed(path, away(days=0.1))
    found = file.keep(planned_trays())
    assert checked(read_studio(path), found.plan).clean
    was, now = starts(planned_trays().plan), starts(found.plan)
    assert found.moved == sum(now[key] != start for key, start in was.items()) > 0
    moved = {goal.goal: goal for goal in found.plan.goals}[Goal.MOVED]
    assert 0 < moved.value <= found.moved
    assert not moved.proved


def test_what_has_become_harder_for_every_plan_is_no_reason_to_lose_one(path: Path) -> None:
    file = FileToPlan(path)
    changed(path, away(days=60.0))
    found = file.keep(planned_trays())
    now = read_studio(path)
    assert checked(now, found.plan).clean
    assert kept(now) == found.plan
    (market,) = found.plan.outcomes
    assert market.late_hours != 0.0


def test_a_plan_than_which_a_new_one_is_better_by_then_is_not_kept_and_the_sentence_says_why(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(carrying, "quick_plan", lambda *_: planned_trays().plan)
    file = FileToPlan(path)
    file.keep(weeks(1))
    changed(path, away(days=60.0))
    with pytest.raises(ChangedMeanwhile) as told:
        file.keep(weeks(2))
    words = str(told.value)
    assert words.startswith("two.studio was changed while it was planned (hands), and the plan")
    assert " tray, colour pour would have to move; a new plan is better than that." in words
    now = read_studio(path)
    assert (kept(now).rehearsals, now.plan_outdated) == (1, True)


def test_a_plan_of_a_studio_in_which_nobody_works_by_then_is_not_kept(path: Path) -> None:
    file = FileToPlan(path)
    changed(path, lambda studio: replace(studio, people=()))
    with pytest.raises(ChangedMeanwhile, match=r"There are no hands yet"):
        file.keep(planned_trays())
    assert read_studio(path).plan is None


def test_a_file_that_is_changed_all_the_time_is_not_waited_for(
    path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    real = carried

    def busy(studio: Studio, plan: Plan, until: datetime | None, *, last: bool) -> CheckedPlan:
        changed(path, colder)
        return real(studio, plan, until, last=last)

    monkeypatch.setattr("studio_planner.services.keeping.carried", busy)
    file = FileToPlan(path)
    changed(path, colder)
    with pytest.raises(ChangedMeanwhile, match=r"changed faster than it can be planned"):
        file.keep(planned_trays())
    assert read_studio(path).plan is None
