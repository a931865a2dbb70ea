"""A studio file whose reminders ring by means that note what they show."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.services.reminding.studio_reminders import StudioReminders, reminders_at
from studio_planner.storage.studio_file import create_studio
from tests.desktop.scenes import StillClock, at
from tests.services.questions.steady import PlainVoice, steady_studio
from tests.services.reminding.kept import Bell

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from studio_planner.services.ports import Notifier


@pytest.fixture
def path(tmp_path: Path) -> Path:
    path = tmp_path / "steady.studio"
    create_studio(path, steady_studio()).close()
    return path


@pytest.fixture
def clock() -> StillClock:
    return StillClock(at(0, "20:00"))


@pytest.fixture
def bell() -> Bell:
    return Bell()


@pytest.fixture
def reminders(path: Path, clock: StillClock, bell: Bell) -> Iterator[StudioReminders]:
    bells: tuple[Notifier, ...] = (bell, Bell("sound"))
    with reminders_at(path, clock, bells, lambda _: PlainVoice()) as found:
        yield found
