"""A window that moved is said over the timeline: which, from when to when, what that means."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.services.log_book.pours import PourTold, poured
from studio_planner.storage.studio_file import create_studio
from tests.desktop import scenes
from tests.desktop.scenes import at

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.scenes import StillClock

LATE = timedelta(hours=4)


@pytest.fixture
def clock() -> scenes.StillClock:
    return scenes.StillClock(at(0, "23:30"))


@pytest.fixture
def studio_path(tmp_path: Path) -> Path:
    """Harbour board 1 got its seal four hours later than planned."""
    pour = PourTold(
        piece="h1", coat="seal", start=at(0, "18:20") + LATE, end=at(0, "19:05") + LATE
    )
    studio = scenes.planned()
    path = tmp_path / "lantern.studio"
    late = poured(studio, [pour], at(0, "23:10")).make(studio)
    create_studio(path, late).close()
    return path


def test_it_says_from_when_to_when_and_offers_to_plan_again(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    desk.changes.plans_by_itself = False
    qtbot.waitUntil(lambda: "news" in desk.parts.__dict__ and bool(desk.parts.news.news))
    news = desk.parts.news
    one = next(one for one in news.news if one.piece == "h1")
    assert "The window of Harbour board 1, flood moved. It opens" in one.words
    assert "instead of" in one.words
    QTest.mouseClick(news.show_it, Qt.MouseButton.LeftButton)
    bar = desk.timeline.chosen_bar()
    assert bar is not None
    assert (bar.lane.piece.key, bar.coat.key) == (news.news[0].piece, news.news[0].coat)
    assert news.plan.isVisible() is not news.news[0].fits


def test_nothing_is_said_while_all_goes_by_the_plan(
    qtbot: QtBot, window: DeskWindow, clock: StillClock, tmp_path: Path
) -> None:
    clock.when = scenes.NOW
    path = tmp_path / "as planned.studio"
    create_studio(path, scenes.planned()).close()
    assert window.open_path(path)
    qtbot.waitUntil(lambda: "news" in window.parts.__dict__)
    assert window.parts.news.news == ()
    assert window.parts.news.isHidden()
