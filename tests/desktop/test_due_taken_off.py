"""What was taken off the list of what is due is put back."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from tests.desktop import scenes
from tests.desktop.due_scene import items, kept, look

if TYPE_CHECKING:
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from tests.desktop.due_scene import OpenDesk

EVENING = scenes.at(1, "18:45")
"""A minute at which the second evening's pours are near and the first one's are not done."""


def test_what_was_taken_off_can_be_put_back_step_by_step(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    clock.when = EVENING
    window = reminding_desk(reminded)
    before = {item.uid for item in items(window)}
    window.due.open()
    panel = window.due.panel
    assert panel.back_verb.isHidden()
    panel.clear_verb.click()
    qtbot.waitUntil(lambda: not window.reminding.busy)
    clock.when += timedelta(seconds=1)
    first = items(window)[0]
    panel.rows[first.uid].done_verb.click()
    qtbot.waitUntil(lambda: not window.reminding.busy)
    assert first.title in panel.taken_off.text()
    panel.back_verb.click()
    qtbot.waitUntil(lambda: not window.reminding.busy)
    assert first.uid in {item.uid for item in items(window)}
    assert "reminders" in panel.taken_off.text()
    panel.back_verb.click()
    qtbot.waitUntil(lambda: not window.reminding.busy)
    assert {item.uid for item in items(window)} == before
    assert panel.back_verb.isHidden()
    rows = kept(reminded, clock)
    assert not any(rows[uid].acknowledged for uid in before)


def test_what_was_taken_off_can_be_put_back_after_a_restart_for_a_day(
    qtbot: QtBot, reminding_desk: OpenDesk, reminded: Path, clock: scenes.StillClock
) -> None:
    clock.when = EVENING
    window = reminding_desk(reminded)
    first = items(window)[0]
    window.due.open()
    window.due.panel.rows[first.uid].done_verb.click()
    qtbot.waitUntil(lambda: not window.reminding.busy)
    window.leave()
    clock.when += timedelta(hours=23)
    window = reminding_desk(reminded)
    window.due.open()
    panel = window.due.panel
    assert first.title in panel.taken_off.text()
    clock.when += timedelta(hours=2)
    look(qtbot, window)
    assert panel.back_verb.isHidden()
    clock.when -= timedelta(hours=2)
    look(qtbot, window)
    panel.back_verb.click()
    qtbot.waitUntil(lambda: not window.reminding.busy)
    assert not kept(reminded, clock)[first.uid].acknowledged
