"""A disk that takes no more loses no reminder, no answer, and rings nothing on the quiet."""

from __future__ import annotations

from contextlib import ExitStack
from typing import TYPE_CHECKING

import pytest
from typing_extensions import override

from studio_planner.craft.errors import StudioFileError
from studio_planner.services.ports import Notice, Pressed
from studio_planner.services.reminding.notices import DONE
from studio_planner.services.reminding.studio_reminders import StudioReminders, reminders_at
from tests.desktop.scenes import StillClock, at
from tests.failing_disk import NEEDS_LIMITS, no_room
from tests.services.questions.steady import PlainVoice
from tests.services.reminding.kept import Bell

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

pytestmark = NEEDS_LIMITS

UID = "weigh-now/c/seal"


class FatalBell(Bell):
    """A means after whose first call nothing can be written any more."""

    def __init__(self, disk: ExitStack) -> None:
        super().__init__()
        self._disk = disk

    @override
    def ring(self, notice: Notice) -> None:
        super().ring(notice)
        if len(self.shown) == 1:
            self._disk.enter_context(no_room())


@pytest.fixture
def disk() -> Iterator[ExitStack]:
    with ExitStack() as stack:
        yield stack


def listed(reminders: StudioReminders) -> list[str]:
    return [row.uid for row in reminders.due()]


def test_what_cannot_be_written_down_does_not_ring_until_it_can(
    reminders: StudioReminders, bell: Bell
) -> None:
    with no_room(), pytest.raises(StudioFileError, match="disk"):
        reminders.tick()
    assert bell.shown == []
    reminders.tick()
    reminders.tick()
    assert bell.shown[-1].title == "Weigh now: Slate coasters, seal"
    keys = [notice.key for notice in bell.shown]
    assert len(keys) == len(set(keys)) == 2  # the other one tells what was missed


def test_an_answer_that_cannot_be_written_down_is_refused_and_the_list_stays(
    reminders: StudioReminders,
) -> None:
    reminders.tick()
    before = listed(reminders)
    with no_room():
        with pytest.raises(StudioFileError, match="disk"):
            reminders.acknowledge([UID])
        with pytest.raises(StudioFileError, match="disk"):
            reminders.snooze([UID])
        assert listed(reminders) == before
    reminders.acknowledge([UID])
    assert UID not in listed(reminders)


def test_a_button_that_was_pressed_meanwhile_is_answered_once_there_is_room(
    reminders: StudioReminders, bell: Bell
) -> None:
    reminders.tick()
    bell.answers.append(Pressed(bell.shown[-1].key, DONE))
    with no_room(), pytest.raises(StudioFileError, match="disk"):
        reminders.answered(0.0)
    assert UID in listed(reminders)
    ((pressed, _),) = reminders.answered(0.0)
    assert pressed.button == DONE
    assert UID not in listed(reminders)
    assert reminders.answered(0.0) == ()


def test_what_rang_but_could_not_be_noted_rings_once_more_and_says_so(
    path: Path, disk: ExitStack
) -> None:
    bell = FatalBell(disk)
    clock = StillClock(at(0, "20:00"))
    with reminders_at(path, clock, (bell,), lambda _: PlainVoice()) as reminders:
        with pytest.raises(StudioFileError, match="disk"):
            reminders.tick()
        with pytest.raises(StudioFileError, match="disk"):
            reminders.tick()
        assert len(bell.shown) == 1
        disk.close()
        reminders.tick()
        reminders.tick()
    first, again, other = bell.shown
    assert first.key == again.key != other.key
    assert "Perhaps shown" in again.body
    assert "Perhaps shown" not in other.body
