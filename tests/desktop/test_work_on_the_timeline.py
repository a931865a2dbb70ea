"""Journeys with mouse and keys: a pour is taken, held, dropped, pinned, and taken back."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QPoint, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QContextMenuEvent, QFontMetricsF
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu

from studio_planner.craft.pieces import Joint
from studio_planner.desktop.timeline_work.drag import Drag
from studio_planner.desktop.timeline_work.slip import Slip, SlipLine, beside, laid_out
from studio_planner.desktop.words import piece_name
from studio_planner.services.desk import DeskView
from studio_planner.services.moving.difference_words import NOTHING, in_short
from studio_planner.services.ribbons import Ribbon, StepMark
from tests.desktop.hands_on import (
    LEFT,
    bar_again,
    choose,
    drag_by,
    drag_of,
    free_pour,
    grip,
    move,
    open_sample,
    pours,
    studio_of,
)
from tests.services.moving.test_scuffed_instead import sanded_first
from tests.services.small_studios import kept

if TYPE_CHECKING:
    from pathlib import Path

    from PySide6.QtGui import QAction
    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop import scenes

pytestmark = [pytest.mark.gui, pytest.mark.journey]
_ALT = Qt.KeyboardModifier.AltModifier
_SHIFT = Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def desk(
    qtbot: QtBot, window: DeskWindow, tmp_path: Path, clock: scenes.StillClock
) -> DeskWindow:
    """The window with the planned sample, which breaks no rule, at the start of its plan."""
    open_sample(window, tmp_path, clock)
    qtbot.waitUntil(lambda: window.parts.side.hands.rows.rowCount() > 0)
    window.timeline.setFocus()
    return window


def test_a_dragged_pour_snaps_to_five_minutes_and_its_windows_move_live(
    desk: DeskWindow, qtbot: QtBot
) -> None:
    bar = next(b for b in pours(desk) if b.covered_by is not None and b.doorway is not None)
    before = bar.doorway
    assert before is not None
    drag_by(desk, bar, 92)
    drag = drag_of(desk)
    assert drag.wanted - bar.start == timedelta(minutes=90)
    lane = next(lane for lane in drag.lanes if lane.piece.key == bar.lane.piece.key)
    moved = next(b for b in lane.bars if isinstance(b, Ribbon) and b.coat.key == bar.coat.key)
    assert moved.doorway is not None
    assert moved.doorway.opens > before.opens
    assert desk.canvas.scale.origin == bar.begins - 6 * 3600.0
    qtbot.waitUntil(lambda: desk.work_line.said.startswith(bar.lane.piece.name))
    desk.timeline.viewport().repaint()
    QTest.keyClick(desk.timeline, Qt.Key.Key_Escape)
    assert not desk.timeline.held
    assert not studio_of(desk).pins


def test_a_drop_pins_the_pour_where_it_was_dropped_and_is_undone_as_one(
    desk: DeskWindow,
) -> None:
    before = studio_of(desk)
    bar, minutes = free_pour(desk)
    end = drag_by(desk, bar, minutes)
    assert drag_of(desk).wanted == bar.start + minutes * timedelta(minutes=1)
    QTest.mouseRelease(desk.timeline.viewport(), LEFT, pos=end)
    after = studio_of(desk)
    (pin,) = after.pins
    assert (pin.piece, pin.coat) == (bar.lane.piece.key, bar.coat.key)
    now = bar_again(desk, bar)
    assert now.start == pin.start == bar.start + minutes * timedelta(minutes=1)
    assert after.plan_outdated
    assert "is pinned to" in desk.work_line.said
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before
    desk.verbs["redo"].trigger()
    assert studio_of(desk) == after


def test_a_drop_on_a_forbidden_time_springs_back_and_says_why(desk: DeskWindow) -> None:
    before = studio_of(desk)
    bar = pours(desk)[2]
    choose(desk, bar)
    for _ in range(7):
        QTest.keyClick(desk.timeline, Qt.Key.Key_Right, _ALT | _SHIFT)
    assert not drag_of(desk).verdict.allowed
    QTest.keyClick(desk.timeline, Qt.Key.Key_Return)
    assert studio_of(desk) == before
    assert "stays where it was" in desk.work_line.said
    assert not desk.timeline.held


def test_every_broken_rule_is_on_the_slip_beside_the_bar_and_none_is_cut_short(
    desk: DeskWindow,
) -> None:
    for bar in pours(desk):
        choose(desk, bar)
        for _ in range(9):
            QTest.keyClick(desk.timeline, Qt.Key.Key_Right, _ALT | _SHIFT)
        if len(drag_of(desk).verdict.hard) > 1:
            break
        QTest.keyClick(desk.timeline, Qt.Key.Key_Escape)
    slip, verdict = drag_of(desk).slip, drag_of(desk).verdict
    assert len(slip.lines) >= len(verdict.breaks) > 1
    assert [line.forbids for line in slip.lines][-len(verdict.breaks) :] == [
        one.hard for one in verdict.breaks
    ]
    for width in (900.0, 320.0):
        laid = laid_out(slip, desk.canvas.fonts, width)
        assert laid.size.width() <= width
        metrics = QFontMetricsF(desk.canvas.fonts.small)
        for line, place in zip(slip.lines, laid.lines, strict=True):
            wrapped = metrics.boundingRect(
                QRectF(0.0, 0.0, place.width(), 1e4), Qt.TextFlag.TextWordWrap, line.words
            )
            assert wrapped.height() <= place.height() + 1.0
            assert laid.size.contains(place)
    desk.timeline.viewport().repaint()


def test_a_slip_lies_inside_the_view_wherever_its_lane_is(desk: DeskWindow) -> None:
    slip = Slip("Thu 5 Feb", tuple(SlipLine("It is night. " * 4) for _ in range(3)))
    view = QSizeF(500.0, 300.0)
    laid = laid_out(slip, desk.canvas.fonts, view.width())
    for top in (0.0, 120.0, 290.0):
        for x in (-50.0, 200.0, 900.0):
            at = beside(laid, QRectF(0.0, top, 1.0, 60.0), x, view)
            assert QRectF(QPointF(), view).contains(laid.size.translated(at))


def test_a_refused_drop_leaves_its_reasons_beside_the_bar_until_the_maker_goes_on(
    desk: DeskWindow,
) -> None:
    bar = pours(desk)[2]
    choose(desk, bar)
    for _ in range(7):
        QTest.keyClick(desk.timeline, Qt.Key.Key_Right, _ALT | _SHIFT)
    hard = drag_of(desk).verdict.hard
    QTest.keyClick(desk.timeline, Qt.Key.Key_Return)
    refusal = desk.timeline.work.refusal
    assert refusal is not None
    assert len(refusal.slip.lines) == len(hard)
    desk.timeline.viewport().repaint()
    QTest.keyClick(desk.timeline, Qt.Key.Key_Escape)
    desk.work_line.clear()
    assert desk.timeline.work.refusal is None


def test_the_other_pieces_of_a_mix_are_named(desk: DeskWindow) -> None:
    session = desk.session
    assert session is not None
    plan = kept(session.studio)
    bar = pours(desk)[2]
    other = next(one for one in pours(desk) if one.lane.piece is not bar.lane.piece).planned
    mixed = replace(other, mix=bar.planned.mix, start=bar.start, end=bar.planned.end)
    coats = tuple(mixed if coat is other else coat for coat in plan.coats)
    view = DeskView(replace(session.studio, plan=replace(plan, coats=coats)), session.now())
    drag = Drag(view, bar, by_keys=True)
    name = session.studio.piece(other.piece).name
    assert drag.companions == (piece_name(session.studio.piece(other.piece)),)
    assert f"moves with {name}" in drag.said
    assert any(name in line.words and not line.forbids for line in drag.slip.lines)


def test_past_its_window_a_drop_is_offered_washed_and_sanded_first(desk: DeskWindow) -> None:
    before = studio_of(desk)
    coat, verdict = sanded_first(before)
    bar = next(
        one
        for one in pours(desk)
        if (one.lane.piece.key, one.coat.key) == (coat.piece, coat.coat)
    )
    choose(desk, bar)
    QTest.keyClick(desk.timeline, Qt.Key.Key_Right, _ALT)
    drag = drag_of(desk)
    drag.want(verdict.start)
    desk.timeline.viewport().repaint()
    assert "washed and sanded first" in drag.said
    QTest.keyClick(desk.timeline, Qt.Key.Key_Return)
    moved = bar_again(desk, bar)
    assert moved.planned.joint is Joint.SCUFFED
    assert any(isinstance(one, StepMark) for one in moved.lane.bars)
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_the_nearest_allowed_time_is_a_verb(desk: DeskWindow) -> None:
    bar, minutes = free_pour(desk)
    session = desk.session
    assert session is not None
    choose(desk, bar)
    step = Qt.Key.Key_Right if minutes > 0 else Qt.Key.Key_Left
    QTest.keyClick(desk.timeline, step, _ALT | _SHIFT)
    nearest = None
    for _ in range(30):
        verdict = drag_of(desk).verdict
        nearest = drag_of(desk).judge.nearest(verdict.start)
        if not verdict.allowed and nearest is not None and nearest.start != bar.start:
            break
        QTest.keyClick(desk.timeline, step, _ALT)
    QTest.keyClick(desk.timeline, Qt.Key.Key_Return)
    (verb,) = desk.work_line.verbs
    assert verb.text().startswith("Pour ")
    QTest.mouseClick(verb, LEFT)
    assert nearest is not None
    assert bar_again(desk, bar).start == nearest.start


def test_keys_move_a_pour_by_five_minutes_and_by_an_hour(desk: DeskWindow) -> None:
    bar = pours(desk)[4]
    choose(desk, bar)
    QTest.keyClick(desk.timeline, Qt.Key.Key_Right, _ALT)
    assert drag_of(desk).wanted - bar.start == timedelta(minutes=5)
    QTest.keyClick(desk.timeline, Qt.Key.Key_Left, _ALT | _SHIFT)
    assert drag_of(desk).wanted - bar.start == timedelta(minutes=-55)
    QTest.keyClick(desk.timeline, Qt.Key.Key_Escape)
    assert "stays where it was" in desk.work_line.said


def test_what_is_poured_and_what_is_a_step_cannot_be_taken(desk: DeskWindow) -> None:
    bars = [bar for lane in desk.timeline.lanes.lanes for bar in lane.bars]
    poured = next(b for b in bars if isinstance(b, Ribbon) and b.planned.poured)
    choose(desk, poured)
    QTest.keyClick(desk.timeline, Qt.Key.Key_Right, _ALT)
    assert "stays where it is" in desk.work_line.said
    choose(desk, next(bar for bar in bars if isinstance(bar, StepMark)))
    QTest.keyClick(desk.timeline, Qt.Key.Key_Right, _ALT)
    assert "move that" in desk.work_line.said
    assert not desk.timeline.held


def test_the_middle_button_and_the_space_bar_pan_over_a_bar(desk: DeskWindow) -> None:
    bar = pours(desk)[4]
    choose(desk, bar)
    scale, timeline = desk.canvas.scale, desk.timeline
    start = grip(desk, bar)
    origin = scale.origin
    QTest.mousePress(timeline.viewport(), Qt.MouseButton.MiddleButton, pos=start)
    move(desk, start + QPoint(-60, 0), Qt.MouseButton.MiddleButton)
    QTest.mouseRelease(timeline.viewport(), Qt.MouseButton.MiddleButton, pos=start)
    assert scale.origin > origin
    origin = scale.origin
    QTest.keyPress(timeline, Qt.Key.Key_Space)
    QTest.mousePress(timeline.viewport(), LEFT, pos=start)
    move(desk, start + QPoint(-60, 0))
    QTest.mouseRelease(timeline.viewport(), LEFT, pos=start)
    QTest.keyRelease(timeline, Qt.Key.Key_Space)
    assert scale.origin > origin
    assert not timeline.held


def action(menu: QMenu, words: str) -> QAction:
    return next(a for a in menu.actions() if a.text().replace("&", "").startswith(words))


def menu_of(desk: DeskWindow, bar: Ribbon | StepMark) -> QMenu:
    choose(desk, bar)
    return desk.timeline.work.verbs.menu(bar)


def test_a_pour_is_pinned_named_as_pinned_and_let_go(desk: DeskWindow) -> None:
    before = studio_of(desk)
    bar = pours(desk)[3]
    action(menu_of(desk, bar), "Pin here").trigger()
    now = bar_again(desk, bar)
    assert now.pinned
    choose(desk, now)
    lanes, index = desk.timeline.lanes, desk.timeline.currentIndex()
    assert lanes.data(index, Qt.ItemDataRole.AccessibleTextRole).endswith(", pinned")
    assert "until you let it go" in lanes.data(index, Qt.ItemDataRole.ToolTipRole)
    action(menu_of(desk, now), "Let go").trigger()
    assert not studio_of(desk).pins
    action(menu_of(desk, bar_again(desk, bar)), "Pin here").trigger()
    action(menu_of(desk, bar_again(desk, bar)), "Let all go").trigger()
    assert not studio_of(desk).pins
    for _ in range(4):
        desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_keys_and_the_right_button_show_the_verbs_of_a_bar(
    desk: DeskWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    shown: list[str] = []
    monkeypatch.setattr(QMenu, "popup", lambda menu, _: shown.append(menu.accessibleName()))
    bar, other = pours(desk)[3], pours(desk)[5]
    choose(desk, bar)
    QTest.keyClick(desk.timeline, Qt.Key.Key_F10, _SHIFT)
    viewport, timeline = desk.timeline.viewport(), desk.timeline
    keys = QContextMenuEvent(QContextMenuEvent.Reason.Keyboard, QPoint(), QPoint())
    QApplication.sendEvent(viewport, keys)
    choose(desk, other)
    at = grip(desk, other)
    choose(desk, bar)
    mouse = QContextMenuEvent(QContextMenuEvent.Reason.Mouse, at, viewport.mapToGlobal(at))
    QApplication.sendEvent(viewport, mouse)
    chosen = timeline.lanes.lanes[timeline.currentIndex().row()].piece.name
    assert len(shown) == 3
    assert shown[0] == shown[1]
    assert shown[0].startswith(bar.lane.piece.name)
    assert shown[2].startswith(chosen)


def test_a_time_that_is_typed_is_judged_as_a_drop_is(desk: DeskWindow) -> None:
    bar, minutes = free_pour(desk)
    action(menu_of(desk, bar), "Pour at").trigger()
    line = desk.work_line
    assert line.when.hasFocus() or line.when.isVisible()
    line.when.setDateTime(line.when.dateTime().addSecs(minutes * 60))
    QTest.keyClick(line.when, Qt.Key.Key_Return)
    assert bar_again(desk, bar).start == bar.start + minutes * timedelta(minutes=1)


def test_nobody_works_on_an_evening_that_is_forbidden(desk: DeskWindow) -> None:
    before = studio_of(desk)
    action(menu_of(desk, pours(desk)[3]), "Nobody works in the evening").trigger()
    after = studio_of(desk)
    assert all(person.absences for person in after.people)
    assert after.plan_outdated
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_an_evening_that_is_over_cannot_be_forbidden(
    desk: DeskWindow, clock: scenes.StillClock
) -> None:
    bar = pours(desk)[0]
    clock.when = bar.start + timedelta(days=1)
    forbid = action(menu_of(desk, bar), "Nobody works in the evening")
    assert not forbid.isEnabled()


def test_verbs_lead_to_the_piece_and_the_product(desk: DeskWindow) -> None:
    bar = pours(desk)[3]
    action(menu_of(desk, bar), "Show the piece").trigger()
    assert desk.pages.current_key == "pieces"
    desk.go_to("plan", bar.lane.piece.key)
    chosen = desk.timeline.lanes.bar(desk.timeline.currentIndex())
    assert chosen is not None
    assert chosen.lane.piece.key == bar.lane.piece.key


def move_by_planning(desk: DeskWindow, bar: Ribbon) -> None:
    """Let a plan come in after the last change that has a pour an hour later."""
    session = desk.session
    assert session is not None
    plan, key = kept(session.studio), (bar.planned.piece, bar.planned.coat)
    later = (
        replace(c, start=c.start + timedelta(hours=1)) if (c.piece, c.coat) == key else c
        for c in plan.coats
    )
    kept_again = replace(plan, coats=tuple(later))
    again = replace(session.studio, plan=kept_again, plan_outdated=False)
    session._write(again)
    session.history.amend(again)
    desk.show_session_view()


def test_what_a_new_plan_moves_is_outlined_until_it_is_kept(desk: DeskWindow) -> None:
    bar, other = pours(desk)[3], pours(desk)[9]
    action(menu_of(desk, bar), "Pin here").trigger()
    move_by_planning(desk, other)
    work = desk.timeline.work.aftermath
    assert [(m.piece, m.coat) for m in work.difference.moved] == [
        (other.planned.piece, other.planned.coat)
    ]
    assert desk.work_line.said == "1 pour moved."
    assert [verb.text() for verb in desk.work_line.verbs] == ["Show", "Keep", "Take back"]
    desk.timeline.viewport().repaint()
    QTest.mouseClick(desk.work_line.verbs[0], LEFT)
    assert desk.timeline.chosen_bar() == bar_again(desk, other)
    QTest.mouseClick(desk.work_line.verbs[1], LEFT)
    assert work.difference.nothing
    assert desk.work_line.said == ""


def test_take_back_undoes_the_change_with_its_plan(desk: DeskWindow) -> None:
    before = studio_of(desk)
    action(menu_of(desk, pours(desk)[3]), "Pin here").trigger()
    move_by_planning(desk, pours(desk)[9])
    QTest.mouseClick(desk.work_line.verbs[-1], LEFT)
    assert studio_of(desk) == before
    assert desk.timeline.work.aftermath.difference.nothing


def test_what_somebody_else_has_changed_since_is_not_compared(desk: DeskWindow) -> None:
    action(menu_of(desk, pours(desk)[3]), "Pin here").trigger()
    move_by_planning(desk, pours(desk)[9])
    assert in_short(desk.timeline.work.aftermath.difference) == "1 pour moved"
    assert desk.session is not None
    desk.session.history.forget()
    desk.show_session_view()
    assert in_short(desk.timeline.work.aftermath.difference) == NOTHING
    assert desk.work_line.said == ""


def test_a_plan_that_comes_while_a_pour_is_held_takes_it_out_of_the_hand(
    desk: DeskWindow,
) -> None:
    choose(desk, pours(desk)[4])
    QTest.keyClick(desk.timeline, Qt.Key.Key_Right, _ALT)
    assert desk.timeline.work.drag is not None
    desk.show_session_view()
    assert "take the pour again" in desk.work_line.said
    QTest.keyClick(desk.timeline, Qt.Key.Key_Escape)
    assert desk.work_line.said == ""
