"""A missed window on the desk: said over the timeline, its ways out planned, one done."""

from __future__ import annotations

import sys
from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.craft.pieces import Joint
from studio_planner.desktop.pages.pieces_page import PiecesPage
from studio_planner.desktop.question_pages.trial_run import TrialRun
from studio_planner.desktop.timeline_work.news_line import window_news
from studio_planner.services.desk import DeskView
from studio_planner.services.log_book.after_missing import Way
from studio_planner.storage.studio_file import create_studio
from tests.desktop import logged_scene, scenes
from tests.desktop.scenes import at

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.piece_pages.missed_panel import MissedPanel
    from studio_planner.desktop.piece_pages.way_row import WayRow
    from studio_planner.desktop.window import DeskWindow
    from tests.desktop.scenes import StillClock

# Plans as the real command does: the plan stays as it is, but for what is poured.
PLANNER = """
import json, sys
from dataclasses import replace
from pathlib import Path
from studio_planner.storage.studio_file import open_studio
with open_studio(Path(sys.argv[1])) as file:
    studio = file.read()
    done = {(p.piece, p.coat) for p in studio.poured}
    plan = studio.plan
    coats = tuple(replace(c, poured=(c.piece, c.coat) in done) for c in plan.coats)
    file.keep_plan(replace(plan, coats=coats, solved_seconds=4.0))
print(json.dumps({"kept": True, "reasons": []}))
"""
FAIL = 'import json, sys; print(json.dumps({"reasons": ["No hands are left."]})); sys.exit(1)'


@pytest.fixture
def studio_path(tmp_path: Path) -> Path:
    path = tmp_path / "lantern.studio"
    create_studio(path, logged_scene.logged()).close()
    return path


@pytest.fixture
def clock() -> scenes.StillClock:
    """So late that the seals of Tuesday evening can no longer be poured over in time."""
    return scenes.StillClock(at(1, "20:00"))


@pytest.fixture
def trials(tmp_path: Path) -> Path:
    folder = tmp_path / "trials"
    folder.mkdir()
    return folder


def fake(script: str) -> Callable[[Path, datetime], list[str]]:
    return lambda path, _now: [sys.executable, "-c", script, str(path)]


def missed(desk: DeskWindow) -> MissedPanel:
    desk.changes.plans_by_itself = False
    desk.go_to("pieces", "h1/missed")
    page = desk.pages.page("pieces")
    assert isinstance(page, PiecesPage)
    return page.missed


def studio_of(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def row(panel: MissedPanel, way: Way) -> WayRow:
    return next(one for one in panel.rows if one.choice.way is way)


def planned(qtbot: QtBot, panel: MissedPanel, script: str, trials: Path) -> None:
    panel.plan_with(TrialRun(panel, fake(script), trials))
    QTest.mouseClick(panel.plan, Qt.MouseButton.LeftButton)
    qtbot.waitUntil(panel.plan.isEnabled, timeout=60_000)


def test_every_way_out_says_what_it_means_and_what_it_costs(desk: DeskWindow) -> None:
    panel = missed(desk)
    assert panel.isVisible()
    assert "Harbour board 1, flood" in panel.title.text()
    assert {one.choice.way for one in panel.rows} >= {Way.SCUFF, Way.STRIP}
    assert "of hands" in row(panel, Way.SCUFF).cost.text()
    assert "of mix" in row(panel, Way.STRIP).cost.text()
    assert all(one.do.isHidden() for one in panel.rows)


def test_a_way_is_planned_on_a_copy_and_done_as_one_change(
    qtbot: QtBot, desk: DeskWindow, trials: Path
) -> None:
    panel, before = missed(desk), studio_of(desk)
    planned(qtbot, panel, PLANNER, trials)
    assert studio_of(desk) == before
    way = row(panel, Way.STRIP)
    assert "Next pour" in way.dates.text()
    assert "The order leaves" in way.dates.text()
    QTest.mouseClick(way.do, Qt.MouseButton.LeftButton)
    assert studio_of(desk).pours_of("h1") == ()
    assert not panel.needed
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before
    assert list(trials.iterdir()) == []


def test_a_way_that_can_not_be_planned_says_why(
    qtbot: QtBot, desk: DeskWindow, trials: Path
) -> None:
    panel = missed(desk)
    planned(qtbot, panel, FAIL, trials)
    way = row(panel, Way.SCUFF)
    assert "No hands are left." in way.dates.text()
    assert way.do.isHidden()


def test_a_piece_without_a_missed_window_has_no_such_part(desk: DeskWindow) -> None:
    panel = missed(desk)
    desk.go_to("pieces", "m/missed")
    page = desk.pages.page("pieces")
    assert isinstance(page, PiecesPage)
    assert not panel.needed
    assert page.parts.names["missed"].isHidden()
    assert page.key == "stack"


def test_the_page_of_a_piece_tells_what_happened(desk: DeskWindow, clock: StillClock) -> None:
    missed(desk)
    page = desk.pages.page("pieces")
    assert isinstance(page, PiecesPage)
    menu = page.happened.inside
    menu.aboutToShow.emit()
    next(one for one in menu.actions() if one.text() == "Washed and sanded").trigger()
    assert studio_of(desk).log[-1].at == clock.when


# Over the timeline


def settled(qtbot: QtBot, desk: DeskWindow) -> None:
    qtbot.waitUntil(lambda: "news" in desk.parts.__dict__ and bool(desk.parts.news.news))


def test_a_missed_window_is_said_over_the_timeline_and_leads_to_its_ways_out(
    qtbot: QtBot, desk: DeskWindow
) -> None:
    settled(qtbot, desk)
    news = desk.parts.news
    assert news.isVisible()
    assert "Harbour board 1, flood: its window closed" in news.words.words
    assert news.plan.isHidden()
    QTest.mouseClick(news.ways, Qt.MouseButton.LeftButton)
    page = desk.pages.page("pieces")
    assert isinstance(page, PiecesPage)
    assert page.key == "missed"


def test_what_the_plan_pours_scuffed_later_on_is_no_news(desk: DeskWindow) -> None:
    assert desk.session is not None
    studio = studio_of(desk)
    assert studio.plan is not None
    scuffed = tuple(
        replace(one, joint=Joint.SCUFFED, start=at(2, "18:00"), end=at(2, "19:10"), window=None)
        if (one.piece, one.coat) == ("h1", "flood")
        else one
        for one in studio.plan.coats
    )
    planned = replace(studio, plan=replace(studio.plan, coats=scuffed))
    pieces = [one.piece for one in window_news(DeskView(planned, at(1, "20:00")))]
    assert "h1" not in pieces
    assert "h2" in pieces


def test_one_after_the_other_is_said_and_shown(qtbot: QtBot, desk: DeskWindow) -> None:
    settled(qtbot, desk)
    news = desk.parts.news
    first = news.words.words
    assert "more" in news.more.text()
    QTest.mouseClick(news.more, Qt.MouseButton.LeftButton)
    assert news.words.words != first
    QTest.mouseClick(news.show_it, Qt.MouseButton.LeftButton)
    bar = desk.timeline.chosen_bar()
    assert bar is not None
    assert bar.lane.piece.key == news.news[1].piece
