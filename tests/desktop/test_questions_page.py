"""What if, on the desk: tried beside the plan without it, done and undone."""

from __future__ import annotations

import sys
from dataclasses import replace
from datetime import time
from threading import Event
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QSysInfo, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget

from studio_planner.desktop.forms.fields import ChoiceField, NumberField
from studio_planner.desktop.forms.time_fields import TimeField
from studio_planner.desktop.planning_process import trial_command
from studio_planner.desktop.question_pages import trial_panel
from studio_planner.desktop.question_pages.trial_folder import TrialFolder, sweep
from studio_planner.desktop.question_pages.trial_run import TrialRun
from studio_planner.services.editing.changes import Change
from studio_planner.services.questions.asking import Sign
from studio_planner.services.trying.every import WHAT_IFS
from tests.desktop.question_scene import questions_on

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.pages.questions_page import QuestionsPage
    from studio_planner.desktop.window import DeskWindow

# Plans as the real command does: promises are kept so many days sooner than they were.
PLANNER = """
import json, sys
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from studio_planner.storage.studio_file import open_studio
with open_studio(Path(sys.argv[1])) as file:
    studio = file.read()
    plan = studio.plan
    done = {(p.piece, p.coat) for p in studio.poured}
    coats = tuple(replace(c, poured=(c.piece, c.coat) in done) for c in plan.coats)
    sooner = tuple(replace(o, leaves=o.leaves - timedelta(days=DAYS)) for o in plan.outcomes)
    file.keep_plan(replace(plan, coats=coats, outcomes=sooner, solved_seconds=4.0))
print(json.dumps({"progress": {"words": "all in time", "kept": True}}), flush=True)
END
"""
DONE = 'print(json.dumps({"kept": True, "reasons": []}))'
WAIT = "sys.stdin.read()"
ENOUGH = f'assert sys.stdin.readline() == "enough\\n"\n{DONE}'
FAIL = 'print(json.dumps({"reasons": ["No spot is large enough."]})); sys.exit(1)'


def _fake(end: str, days: int = 1) -> Callable[[Path, datetime], list[str]]:
    script = PLANNER.replace("END", end).replace("DAYS", str(days))
    return lambda path, _now: [sys.executable, "-c", script, str(path)]


def _failing(path: Path, _now: datetime) -> list[str]:
    return [sys.executable, "-c", f"import json, sys\n{FAIL}", str(path)]


@pytest.fixture
def page(desk: DeskWindow) -> QuestionsPage:
    return questions_on(desk)


@pytest.fixture
def trials(tmp_path: Path) -> Path:
    """Where the files of trials go."""
    folder = tmp_path / "trials"
    folder.mkdir()
    return folder


def _with(page: QuestionsPage, end: str, trials: Path, without: str | None = None) -> TrialRun:
    """A change that brings everything a day sooner; without it all stays as it was."""
    plain = TrialRun(page.trial, _fake(without or end, days=0), trials)
    return page.trial.try_with(TrialRun(page.trial, _fake(end), trials), plain)


def _studio(desk: DeskWindow) -> Studio:
    assert desk.session is not None
    return desk.session.studio


def _plan(studio: Studio) -> Plan:
    assert studio.plan is not None
    return studio.plan


def _click(button: QWidget) -> None:
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def _try(qtbot: QtBot, page: QuestionsPage, key: str) -> None:
    page.choose(key)
    with qtbot.waitSignal(page.trial.answered, timeout=20_000):
        _click(page.trial.try_button)


def test_a_trial_is_planned_compared_and_changes_nothing(
    qtbot: QtBot, page: QuestionsPage, desk: DeskWindow, trials: Path
) -> None:
    before = _studio(desk)
    _with(page, DONE, trials)
    _try(qtbot, page, "more-spots")
    assert page.trial.answer.sign is Sign.YES
    assert page.trial.answer.verdict.endswith("would leave sooner.")
    assert "Slate coasters" in page.trial.beside.spoken
    assert "Without it" in page.trial.beside.spoken
    assert _studio(desk) == before
    assert page.trial.do_button.isVisible()
    assert list(trials.iterdir()) == []


def test_what_planning_again_gains_by_itself_is_said_and_not_the_merit_of_a_change(
    qtbot: QtBot, page: QuestionsPage, trials: Path
) -> None:
    runs = [TrialRun(page.trial, _fake(DONE), trials) for _ in range(2)]
    page.trial.try_with(*runs)
    _try(qtbot, page, "more-spots")
    assert page.trial.answer.verdict == "It changes nothing in the plan."
    already = "Planning again without any change already brings "
    assert any(line.startswith(already) for line in page.trial.answer.lines)


def test_where_nothing_can_be_planned_again_a_change_stands_beside_the_plan_of_today(
    qtbot: QtBot, page: QuestionsPage, trials: Path
) -> None:
    plain = TrialRun(page.trial, _failing, trials)
    page.trial.try_with(TrialRun(page.trial, _fake(DONE), trials), plain)
    _try(qtbot, page, "more-spots")
    assert page.trial.answer.verdict.endswith("would leave sooner.")


def test_what_is_still_weighed_is_dropped_with_its_question(
    qtbot: QtBot, page: QuestionsPage, trials: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    begun, may_end = Event(), Event()

    def slow(*both: Studio) -> tuple[Studio, ...]:
        begun.set()
        may_end.wait()
        return both

    monkeypatch.setattr(trial_panel, "deserved", slow)
    _with(page, DONE, trials)
    page.choose("more-spots")
    _click(page.trial.try_button)
    qtbot.waitUntil(begun.is_set, timeout=20_000)
    page.choose("warm-box")
    may_end.set()
    page.trial.weighing.finish()
    assert page.trial.answer.verdict == ""
    assert not page.trial.do_button.isVisible()


def test_do_it_takes_studio_and_plan_as_one_change_and_undo_brings_all_back(
    qtbot: QtBot, page: QuestionsPage, desk: DeskWindow, trials: Path
) -> None:
    before = _studio(desk)
    _with(page, DONE, trials)
    _try(qtbot, page, "more-spots")
    _click(page.trial.do_button)
    after = _studio(desk)
    assert len(after.spots) == len(before.spots) + 1
    assert _plan(after).outcomes != _plan(before).outcomes
    assert not after.plan_outdated
    assert page.trial.how.startswith("Done: Add spot")
    assert "Add spot" in desk.verbs["undo"].text()
    desk.verbs["undo"].trigger()
    assert _studio(desk) == before
    desk.verbs["redo"].trigger()
    assert _studio(desk) == after


def test_a_heated_night_is_expected_of_the_room_once_it_is_done(
    qtbot: QtBot, page: QuestionsPage, desk: DeskWindow, trials: Path
) -> None:
    before = _studio(desk)
    _with(page, DONE, trials)
    _try(qtbot, page, "heating")
    _click(page.trial.do_button)
    (spell,) = _studio(desk).places[0].spells
    assert spell.celsius == 22.0
    assert _studio(desk).places[0].pattern == before.places[0].pattern
    desk.verbs["undo"].trigger()
    assert _studio(desk) == before


def test_heat_says_what_to_do_besides_and_its_energy_is_asked_for_where_it_is_not_known(
    qtbot: QtBot, page: QuestionsPage, desk: DeskWindow, trials: Path
) -> None:
    _with(page, DONE, trials)
    _try(qtbot, page, "heating")
    assert page.trial.do_button.isVisible()
    assert "Set the heater of Workshop to 22 °C" in page.trial.to_do
    assert "data sheet" in "".join(_texts(page.trial.answer))
    assert page.trial.heat.words.startswith("Energy: not known.")
    loss = page.trial.heat.form.fields["heat_loss_w_per_k"]
    price = page.trial.heat.form.fields["tariff_per_kwh"]
    assert isinstance(loss, NumberField)
    assert isinstance(price, NumberField)
    QTest.keyClicks(loss.editor, "60")
    QTest.keyClick(loss.editor, Qt.Key.Key_Return)
    assert _studio(desk).places[0].heat_loss_w_per_k == 60.0
    assert " kWh, from " in page.trial.heat.words
    assert "EUR" not in page.trial.heat.words
    price.editor.selectAll()
    QTest.keyClicks(price.editor, "0,30")
    QTest.keyClick(price.editor, Qt.Key.Key_Return)
    assert "EUR" in page.trial.heat.words
    # The answer stands: neither figure bears on a plan.
    assert page.trial.answer.verdict
    assert "Workshop, heat loss" not in desk.notice.words


def test_the_heat_loss_of_a_tried_box_is_entered_with_the_box(
    qtbot: QtBot, page: QuestionsPage, desk: DeskWindow, trials: Path
) -> None:
    before = _studio(desk)
    _with(page, DONE, trials)
    _try(qtbot, page, "warm-box")
    loss = page.trial.heat.form.fields["heat_loss_w_per_k"]
    assert isinstance(loss, NumberField)
    QTest.keyClicks(loss.editor, "3")
    QTest.keyClick(loss.editor, Qt.Key.Key_Return)
    assert "kWh a day" in page.trial.heat.words
    assert _studio(desk) == before
    _click(page.trial.do_button)
    box = _studio(desk).places[-1]
    assert (box.name, box.heat_loss_w_per_k) == ("Warm box 2", 3.0)
    desk.verbs["undo"].trigger()
    assert _studio(desk) == before


def _texts(widget: QWidget) -> list[str]:
    from PySide6.QtWidgets import QLabel  # noqa: PLC0415

    return [label.text() for label in widget.findChildren(QLabel)]


def test_a_newer_question_drops_the_one_that_is_still_tried(
    qtbot: QtBot, page: QuestionsPage, trials: Path
) -> None:
    run = _with(page, WAIT, trials)
    page.choose("more-spots")
    _click(page.trial.try_button)
    qtbot.waitUntil(lambda: page.trial.how.startswith("So far"), timeout=20_000)
    assert page.trial.stop_button.isVisible()
    assert page.trial.answer.verdict
    page.choose("warm-box")
    assert not run.running
    assert page.trial.answer.verdict == ""
    assert list(trials.iterdir()) == []


def test_trying_again_tells_only_of_the_newer_trial(
    qtbot: QtBot, page: QuestionsPage, trials: Path
) -> None:
    run = _with(page, DONE, trials)
    page.choose("more-spots")
    found: list[Studio] = []
    run.found.connect(found.append)
    _click(page.trial.try_button)
    like = page.form.fields["like"]
    assert isinstance(like, ChoiceField)
    with qtbot.waitSignal(page.trial.answered, timeout=20_000):
        page.try_it()
    assert len(found) == 1
    assert list(trials.iterdir()) == []


def test_an_answer_about_another_studio_is_dropped(
    qtbot: QtBot, page: QuestionsPage, desk: DeskWindow, trials: Path
) -> None:
    _with(page, DONE, trials)
    _try(qtbot, page, "more-spots")

    def less(studio: Studio) -> Studio:
        return replace(studio, orders=studio.orders[1:])

    assert desk.changes.attempt(Change("Remove an order", less))
    assert page.trial.answer.verdict == ""
    assert not page.trial.do_button.isVisible()
    assert page.trial.how == "The studio is another one now; try it again."


def test_stopping_keeps_what_was_found_so_far(
    qtbot: QtBot, page: QuestionsPage, trials: Path
) -> None:
    _with(page, ENOUGH, trials)
    page.choose("more-spots")
    _click(page.trial.try_button)
    qtbot.waitUntil(lambda: page.trial.how.startswith("So far"), timeout=20_000)
    with qtbot.waitSignal(page.trial.answered, timeout=60_000):
        _click(page.trial.stop_button)
    assert page.trial.answer.verdict
    assert page.trial.do_button.isVisible()
    assert list(trials.iterdir()) == []


def test_a_trial_that_cannot_be_planned_says_why(
    qtbot: QtBot, page: QuestionsPage, trials: Path
) -> None:
    plain = TrialRun(page.trial, _fake(DONE, days=0), trials)
    run = page.trial.try_with(TrialRun(page.trial, _failing, trials), plain)
    page.choose("more-spots")
    with qtbot.waitSignal(run.failed, timeout=20_000):
        _click(page.trial.try_button)
    assert page.trial.answer.verdict == "No spot is large enough."
    assert not page.trial.do_button.isVisible()
    assert list(trials.iterdir()) == []


def test_what_makes_no_sense_is_said_and_not_planned(page: QuestionsPage, trials: Path) -> None:
    run = _with(page, DONE, trials)
    page.choose("heating")
    warm = page.form.fields["celsius"]
    assert isinstance(warm, NumberField)
    warm.editor.selectAll()
    QTest.keyClicks(warm.editor, "12")
    QTest.keyClick(warm.editor, Qt.Key.Key_Return)
    _click(page.trial.try_button)
    assert not run.running
    assert "as warm as that anyway" in page.trial.answer.verdict
    page.choose("warm-box")
    height = page.form.fields["height_mm"]
    assert isinstance(height, NumberField)
    height.editor.selectAll()
    QTest.keyClicks(height.editor, "2")
    QTest.keyClick(height.editor, Qt.Key.Key_Return)
    _click(page.trial.try_button)
    assert not run.running
    assert "outside 10 to 10000" in height.wrong


def test_what_was_given_is_still_there_when_the_question_is_chosen_again(
    page: QuestionsPage,
) -> None:
    page.choose("heating")
    until = page.form.fields["end"]
    assert isinstance(until, TimeField)
    until.editor.setTime(until.editor.time().addSecs(3600))
    until.editor.editingFinished.emit()
    page.choose("more-spots")
    page.choose("heating")
    again = page.form.fields["end"]
    assert isinstance(again, TimeField)
    assert again.value() == time(8)


def test_closing_the_window_ends_the_trial_and_removes_its_file(
    qtbot: QtBot, page: QuestionsPage, desk: DeskWindow, trials: Path
) -> None:
    run = _with(page, WAIT, trials)
    page.choose("more-spots")
    with qtbot.waitSignal(run.better, timeout=20_000):
        _click(page.trial.try_button)
    desk.close()
    assert not run.running
    assert list(trials.iterdir()) == []


def test_what_a_killed_program_left_goes_the_next_time_and_what_is_in_use_stays(
    trials: Path,
) -> None:
    left = trials / "studio-planner-trial-killed"
    left.mkdir()
    (left / "trial.studio").write_bytes(b"left")
    # What Qt writes into a lock: the process that holds it, its name, the machine's name.
    machine = QSysInfo.machineHostName()
    (left / "in-use").write_text(f"999999999\nstudio-planner\n{machine}\n")
    used = TrialFolder(trials)
    sweep(trials)
    assert list(trials.iterdir()) == [used.path]
    used.remove()
    assert list(trials.iterdir()) == []


def test_the_real_planning_process_answers_a_trial(
    qtbot: QtBot, page: QuestionsPage, desk: DeskWindow, trials: Path
) -> None:
    def quick(path: Path, now: datetime) -> list[str]:
        return trial_command(path, now, 1)

    before = _studio(desk)
    runs = [TrialRun(page.trial, quick, trials) for _ in range(2)]
    page.trial.try_with(*runs)
    page.choose("evening-more")
    with qtbot.waitSignal(page.trial.answered, timeout=60_000):
        _click(page.trial.try_button)
    assert page.trial.answer.verdict
    assert _studio(desk) == before
    _click(page.trial.do_button)
    after = _studio(desk)
    assert len(after.people[0].work) == len(before.people[0].work) + 1
    assert _plan(after) != _plan(before)
    assert _plan(after).start == _plan(before).start
    desk.verbs["undo"].trigger()
    assert _studio(desk) == before
    assert list(trials.iterdir()) == []


@pytest.mark.parametrize("size", [(1280, 800), (640, 400)])
def test_nothing_on_the_page_is_wider_than_its_room(
    qtbot: QtBot, page: QuestionsPage, desk: DeskWindow, trials: Path, size: tuple[int, int]
) -> None:
    desk.resize(*size)
    _with(page, DONE, trials)
    right = page.trial.parentWidget()
    assert right is not None
    for what_if in WHAT_IFS:
        page.choose(what_if.key)
        assert right.minimumSizeHint().width() <= page.width() - page.list.width() - 14
    _try(qtbot, page, "heating")
    page.grab()  # lays everything out
    assert right.minimumSizeHint().width() <= page.width() - page.list.width() - 14
    named = [
        widget
        for widget in page.findChildren(QWidget)
        if widget.focusPolicy() is not Qt.FocusPolicy.NoFocus and widget.isVisibleTo(page)
    ]
    assert not [
        widget
        for widget in named
        if not (widget.accessibleName() or getattr(widget, "text", str)())
        and widget.parent() is not None
        and "qt_" not in widget.objectName()
    ]
