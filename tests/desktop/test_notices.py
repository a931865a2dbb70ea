"""What is said in the notice line, and how long it stands."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.desktop.notice_line import PASSING
from studio_planner.desktop.page_keys import ORDERS, PLAN
from studio_planner.services.editing.changes import Change

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.scenes import StillClock


def copied(desk: DeskWindow, answers: dict[str, Path | None], path: Path) -> None:
    answers["copy"] = path
    desk.verbs["copy"].trigger()


def test_news_goes_by_itself_once_the_clock_has_moved_on(
    desk: DeskWindow, clock: StillClock, answers: dict[str, Path | None], tmp_path: Path
) -> None:
    copied(desk, answers, tmp_path / "copy.studio")
    clock.when += PASSING - timedelta(seconds=1)
    desk.tick()
    assert desk.notice.words == "A copy is saved as copy.studio."
    clock.when += timedelta(seconds=1)
    desk.tick()
    assert desk.notice.words == ""


def test_it_goes_when_another_page_is_looked_at(
    desk: DeskWindow, answers: dict[str, Path | None], tmp_path: Path
) -> None:
    copied(desk, answers, tmp_path / "copy.studio")
    desk.go_to(PLAN)
    assert desk.notice.words
    desk.go_to(ORDERS)
    assert desk.notice.words == ""


def test_it_goes_with_the_next_change(
    desk: DeskWindow, answers: dict[str, Path | None], tmp_path: Path
) -> None:
    desk.changes.plans_by_itself = False
    copied(desk, answers, tmp_path / "copy.studio")
    assert desk.changes.attempt(Change("Name", lambda studio: replace(studio, name="Loft")))
    assert desk.notice.words == ""


def test_what_went_wrong_stands_until_it_is_read(
    desk: DeskWindow, clock: StillClock, tmp_path: Path
) -> None:
    assert not desk.open_path(tmp_path / "gone.studio")
    clock.when += 10 * PASSING
    desk.tick()
    desk.go_to(ORDERS)
    assert "gone.studio" in desk.notice.words


def test_what_went_wrong_with_one_file_goes_when_another_is_opened(
    desk: DeskWindow, studio_path: Path, tmp_path: Path
) -> None:
    assert not desk.open_path(tmp_path / "gone.studio")
    assert desk.notice.words
    assert desk.open_path(studio_path)
    assert desk.notice.words == ""
