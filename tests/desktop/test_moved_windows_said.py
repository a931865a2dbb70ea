"""A window that moved is said over the timeline: which, from when to when, what that means."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.craft.log import EntryKind
from studio_planner.science.stages import Stage
from studio_planner.services.log_book.pours import PourTold, poured
from studio_planner.services.log_book.steps import StepTold, told
from studio_planner.services.ribbons import Ribbon
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


def test_a_move_into_the_warm_box_moves_the_ribbon_and_is_said(
    qtbot: QtBot, window: DeskWindow, clock: StillClock, tmp_path: Path
) -> None:
    clock.when = at(0, "20:10")
    pour = PourTold(piece="h1", coat="seal", start=at(0, "18:20"), end=at(0, "19:05"))
    studio = scenes.planned()
    path = tmp_path / "in time.studio"
    create_studio(path, poured(studio, [pour], at(0, "19:10")).make(studio)).close()
    assert window.open_path(path)
    qtbot.waitUntil(lambda: "news" in window.parts.__dict__)
    assert window.parts.news.isHidden()
    opens = _opens(window)
    window.changes.plans_by_itself = False
    step = StepTold(kind=EntryKind.MOVED, pieces=("h1",), at=at(0, "19:10"), spot="W1")
    assert window.changes.attempt(told(studio, step, clock.when))
    assert _opens(window) < opens - timedelta(minutes=20)
    qtbot.waitUntil(lambda: bool(window.parts.news.news))
    assert [one.piece for one in window.parts.news.news] == ["h1"]


def _opens(window: DeskWindow) -> datetime:
    """When the film of Harbour board 1's seal opens on the timeline."""
    assert window.session is not None
    lane = next(lane for lane in window.session.view.lanes if lane.piece.key == "h1")
    seal = next(bar for bar in lane.bars if isinstance(bar, Ribbon) and bar.coat.key == "seal")
    found = seal.film.safe(Stage.RECOAT_OPENS)
    assert found is not None
    return found


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
