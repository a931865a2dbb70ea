"""Backups on the desk: made, looked at, brought back, and what can go wrong."""

from __future__ import annotations

import shutil
from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget

from studio_planner.desktop.page_keys import SET_UP
from studio_planner.desktop.pages.studio_page import (
    BACKUPS,
    HANDS,
    RULES,
    UNITS,
)
from studio_planner.desktop.studio_pages.backups_section import BackupsSection
from studio_planner.services.editing.changes import Change
from tests.desktop import scenes
from tests.desktop.studio_steps import click, section, studio_of

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.desktop.window import DeskWindow


pytestmark = pytest.mark.journey


def test_a_backup_is_made_by_key_and_brought_back_as_one_change(desk: DeskWindow) -> None:
    before = studio_of(desk)
    section(desk, BACKUPS, BackupsSection)
    QTest.keySequence(desk, QKeySequence("Ctrl+S"))
    desk.backups.work.finish()
    desk.changes.make(
        Change("Emptied", lambda now: replace(now, pieces=(), orders=(), plan=None))
    )
    emptied = studio_of(desk)
    backups = section(desk, BACKUPS, BackupsSection)
    assert backups.list.count() == 1
    assert "6 pieces, 4 orders, planned Tue 8 Dec 07:40" in backups.holds.text()
    click(backups.look)
    assert "Fen clock" in backups.seen.text()
    assert "Pieces would come back: Harbour board 1" in backups.seen.text()
    assert studio_of(desk) == emptied
    click(backups.bring)
    desk.backups.work.finish()
    assert studio_of(desk) == before
    assert backups.list.count() == 2
    assert "as it was on Tue 8 Dec 19:36" in desk.notice.words
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == emptied


def test_the_list_lies_on_the_paper_of_each_look(desk: DeskWindow) -> None:
    backups = section(desk, BACKUPS, BackupsSection)
    for look in ("dark", "light"):
        desk.verbs[look].trigger()
        ground = backups.list.palette().base().color()
        assert ground == desk.canvas.theme.colour("paper")


def test_a_studio_is_backed_up_once_on_the_day_it_is_opened(
    desk: DeskWindow, clock: scenes.StillClock, studio_path: Path
) -> None:
    desk.backups.make_for_today()
    desk.backups.work.finish()
    desk.backups.make_for_today()
    desk.backups.work.finish()
    backups = section(desk, BACKUPS, BackupsSection)
    assert backups.list.count() == 1
    clock.when += timedelta(days=1)
    assert desk.open_path(studio_path)
    desk.backups.make_for_today()
    desk.backups.work.finish()
    assert backups.list.count() == 2
    assert desk.notice.words == ""


def test_a_damaged_backup_is_said_to_be_so_and_cannot_be_brought_back(
    desk: DeskWindow, tmp_path: Path
) -> None:
    backups = section(desk, BACKUPS, BackupsSection)
    click(backups.make)
    desk.backups.work.finish()
    (path,) = (tmp_path / "data" / "backups").iterdir()
    path.write_bytes(b"nothing of ours")
    desk.show_session_view()
    assert "cannot be read" in backups.list.item(0).text()
    assert "is not a studio file" in backups.holds.text()
    assert not backups.bring.isEnabled()


def test_a_backup_that_breaks_after_it_was_listed_is_refused_in_a_sentence(
    desk: DeskWindow, tmp_path: Path
) -> None:
    before = studio_of(desk)
    backups = section(desk, BACKUPS, BackupsSection)
    click(backups.make)
    desk.backups.work.finish()
    (path,) = (tmp_path / "data" / "backups").iterdir()
    path.write_bytes(path.read_bytes()[:5000])
    click(backups.look)
    assert "damaged" in backups.seen.text()
    click(backups.bring)
    desk.backups.work.finish()
    assert desk.notice.words.startswith("Not done: ")
    assert studio_of(desk) == before


def test_a_folder_that_cannot_be_written_is_said_and_nothing_changes(
    desk: DeskWindow, tmp_path: Path
) -> None:
    desk.backups.work.finish()
    shutil.rmtree(tmp_path / "data", ignore_errors=True)
    (tmp_path / "data").write_text("in the way")
    desk.verbs["back up"].trigger()
    desk.backups.work.finish()
    assert desk.notice.words.startswith("Not done: ")
    desk.backups.make_for_today()
    desk.backups.work.finish()
    assert desk.notice.words.startswith("Today's backup was not made. ")


def test_without_a_folder_or_a_studio_nothing_is_offered(window: DeskWindow) -> None:
    assert not window.verbs["back up"].isEnabled()
    assert not window.backups.make_now()
    for key in (SET_UP, HANDS, UNITS, RULES, BACKUPS):
        page = section(window, key, QWidget)
        assert not page.isEnabled()


def test_a_studio_that_no_longer_opens_points_to_its_newest_backup(
    desk: DeskWindow, studio_path: Path, tmp_path: Path
) -> None:
    desk.verbs["back up"].trigger()
    desk.backups.work.finish()
    (path,) = (tmp_path / "data" / "backups").iterdir()
    studio_path.write_bytes(studio_path.read_bytes()[:5000])
    assert not desk.open_path(studio_path)
    assert "damaged" in desk.notice.words
    assert f"Its newest backup is {path}" in desk.notice.words
    assert desk.open_path(path)
    assert len(studio_of(desk).pieces) == len(scenes.PIECES)
