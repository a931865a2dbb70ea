from __future__ import annotations

from dataclasses import dataclass, field, replace
from threading import Event
from typing import TYPE_CHECKING

import pytest

from studio_planner.services.checking import CheckReport
from studio_planner.services.keeping import ChangedMeanwhile, FileToPlan, Paced
from studio_planner.services.plan_again import CheckedPlan
from studio_planner.services.studio_files import create, read_studio
from studio_planner.storage.studio_file import open_studio
from tests.services.small_studios import kept, planned_once, two_trays

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path


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


@pytest.fixture
def path(tmp_path: Path) -> Path:
    made = tmp_path / "two.studio"
    create(made, two_trays())
    return made


def test_each_better_plan_replaces_the_one_before(path: Path) -> None:
    file = FileToPlan(path)
    for count in (1, 2):
        plan = replace(kept(planned_once()), rehearsals=count)
        file.keep(plan)
        assert read_studio(path) == replace(file.studio, plan=plan)


def test_a_plan_of_a_studio_that_has_changed_since_is_not_kept(path: Path) -> None:
    file = FileToPlan(path)
    file.keep(kept(planned_once()))
    with open_studio(path) as other:
        other.write(replace(other.read(), name="Changed"))
    with pytest.raises(ChangedMeanwhile, match=r"two\.studio was changed while it was planned"):
        file.keep(replace(kept(planned_once()), rehearsals=9))
    found = read_studio(path)
    assert (found.name, kept(found).rehearsals) == ("Changed", 0)
