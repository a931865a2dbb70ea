"""The weigh view with taps only: weighed, stopped, left, killed, poured, and taken back."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton

from studio_planner.craft.stock import Lot, LotPart
from studio_planner.desktop.tongue import Language, speak
from studio_planner.desktop.weigh.cup_times import CupState, CupTimes
from studio_planner.services.editing.changes import Change
from studio_planner.services.mix_run.stand import Do
from studio_planner.storage.studio_file import create_studio
from tests.desktop.scale_hands import (
    at_the_scale,
    do_of,
    met_with,
    require_nothing_clipped,
    scene,
    studio_of,
    tap,
    tap_until,
    type_with_taps,
)
from tests.desktop.scenes import StillClock
from tests.desktop.test_desk_in_german import english_in, names_of, untranslated, visible_texts
from tests.services.mixing.bench_mixes import START

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.weigh.weigh_window import WeighWindow
    from studio_planner.desktop.window import DeskWindow


@pytest.fixture
def clock() -> StillClock:
    return StillClock(START)


@pytest.fixture
def studio_path(tmp_path: Path) -> Path:
    path = tmp_path / "bench.studio"
    create_studio(path, scene()).close()
    return path


@pytest.fixture
def weigh(window: DeskWindow, studio_path: Path) -> WeighWindow:
    return at_the_scale(window, studio_path)


def test_a_mix_is_weighed_poured_and_written_down_with_taps_on_one_button(
    weigh: WeighWindow, clock: StillClock
) -> None:
    tap_until(weigh, clock, Do.WRITTEN)
    studio = studio_of(weigh)
    (mix,) = studio.standing_mixes
    (pour,) = studio.poured
    assert (pour.piece, pour.coat, pour.batch) == ("set", "flood", 1)
    assert pour.start == mix.at
    assert [one.name for one in mix.colourants] == ["paste", "mica", "metal powder"]
    assert weigh.number.text() == "1"
    assert "number of the mix" in weigh.meaning.text()
    tap(weigh.target)
    assert weigh.work.running is None
    assert weigh.sheet is not None
    assert weigh.sheet.mix == 2


def test_the_real_a_is_typed_and_b_and_the_total_follow(weigh: WeighWindow) -> None:
    tap(weigh.target)
    type_with_taps(weigh, "108")
    assert weigh.verb.text() == "Add part B"
    assert weigh.number.text().replace("\N{NO-BREAK SPACE}", " ") == "47.5 g"
    assert "155.5" in weigh.reads.text()


def test_a_number_is_typed_on_the_keyboard_too(weigh: WeighWindow) -> None:
    tap(weigh.target)
    for key in ("1", "0", "8", ",", "4", "6"):
        QTest.keyClicks(weigh, key)
    QTest.keyClick(weigh, Qt.Key.Key_Backspace)
    assert weigh.pad.readout.text() == "108.4 g"
    QTest.keyClick(weigh, Qt.Key.Key_Return)
    stand = weigh.work.stand
    assert stand is not None
    assert stand.now.a_grams == 108.4


def test_a_number_that_cannot_be_is_not_taken(weigh: WeighWindow) -> None:
    tap(weigh.target)
    tap(weigh.target)
    tap(weigh.target)
    tap(weigh.other)
    tap(weigh.pad.keys["5"])
    assert not weigh.target.isEnabled()
    tap(weigh.other)
    assert do_of(weigh) is Do.WEIGH


def test_a_number_below_what_is_in_the_cup_is_answered_with_the_sum(
    weigh: WeighWindow,
) -> None:
    tap(weigh.target)
    type_with_taps(weigh, "108")
    tap(weigh.target)
    tap(weigh.other)
    for sign in "47.5":
        tap(weigh.pad.keys[sign])
    said = weigh.said.text().replace("\N{NO-BREAK SPACE}", " ")
    assert not weigh.target.isEnabled()
    assert "108.0 g are in the cup already" in said
    assert "type 155.5 g" in said
    assert weigh.target.text().replace("\N{NO-BREAK SPACE}", " ") == "More than 108.0 g"
    tap(weigh.back)
    assert do_of(weigh) is Do.WEIGH
    assert not weigh.said.text()
    assert weigh.verb.text() == "Add part B"


def test_no_more_is_left_than_was_in_the_cup(weigh: WeighWindow, clock: StillClock) -> None:
    tap_until(weigh, clock, Do.POUR)
    tap(weigh.other)
    for sign in "900":
        tap(weigh.pad.keys[sign])
    assert not weigh.target.isEnabled()
    assert "were in this cup" in weigh.said.text()


def test_too_much_b_stops_says_why_and_can_be_put_right(weigh: WeighWindow) -> None:
    met_with(weigh, "100", "148.4")
    assert weigh.said.stops
    assert "Stop" in weigh.said.text()
    assert "too much B" in weigh.said.text()
    assert weigh.other.text() == "Another number…"
    assert not studio_of(weigh).mixes
    tap(weigh.target)
    assert do_of(weigh) is Do.STIR
    (mix,) = studio_of(weigh).standing_mixes
    assert (mix.a_grams, mix.b_grams) == (110.0, 48.4)


def test_too_much_a_for_the_cup_stops_before_b(weigh: WeighWindow) -> None:
    tap(weigh.target)
    type_with_taps(weigh, "500")
    assert weigh.said.stops
    assert "Stop" in weigh.said.text()
    assert "take some A out" in weigh.said.text()
    assert do_of(weigh) is Do.WEIGH
    assert not studio_of(weigh).mixes


def test_too_much_colour_is_said(weigh: WeighWindow, clock: StillClock) -> None:
    tap_until(weigh, clock, Do.STIR)
    tap(weigh.target)
    tap(weigh.target)
    type_with_taps(weigh, "90")
    assert "usually 6 % at most" in weigh.said.text()


def test_another_shade_than_the_recipe_is_said(weigh: WeighWindow, clock: StillClock) -> None:
    tap_until(weigh, clock, Do.DIVIDE if do_of(weigh) is Do.DIVIDE else Do.STIR)
    tap(weigh.target)
    tap(weigh.target)
    stand = weigh.work.stand
    assert stand is not None
    assert stand.step.scale is not None
    twice = stand.step.scale.reads_grams + stand.step.scale.add_grams * 0.4
    type_with_taps(weigh, f"{twice:.1f}")
    assert "instead of" in weigh.said.text()
    assert "another shade" in weigh.said.text()
    assert not weigh.said.stops


def test_mixes_are_leafed_through_both_ways_and_counted(weigh: WeighWindow) -> None:
    assert "1 of 2 mixes to weigh" in weigh.head.text()
    tap(weigh.other)
    assert "2 of 2 mixes to weigh" in weigh.head.text()
    assert weigh.back.text() == "Mix before"
    tap(weigh.back)
    assert "1 of 2 mixes to weigh" in weigh.head.text()


def test_who_leaves_a_running_cup_reads_it_on_the_desk(
    window: DeskWindow, weigh: WeighWindow
) -> None:
    weigh.close()
    assert not window.notice.words
    weigh.begin()
    tap(weigh.target)
    weigh.close()
    assert "still at the scale" in window.notice.words


def test_before_a_studio_is_read_there_are_no_empty_buttons(
    window: DeskWindow, weigh: WeighWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(window, "session", None)
    weigh.show_now()
    shown = [one for one in weigh.findChildren(QPushButton) if one.isVisibleTo(weigh)]
    assert [one.text() for one in shown] == ["Leave the scale"]
    assert "being read" in weigh.verb.text()


def test_a_little_too_much_b_may_be_left(weigh: WeighWindow) -> None:
    met_with(weigh, "100", "145.3")
    assert not weigh.said.stops
    assert weigh.other.text() == "Leave it as it is"
    tap(weigh.other)
    assert do_of(weigh) is Do.STIR


def test_nothing_goes_on_without_a_tap(weigh: WeighWindow, clock: StillClock) -> None:
    tap_until(weigh, clock, Do.POUR)
    before = weigh.work.running
    clock.when += timedelta(hours=3)
    weigh.show_now()
    assert weigh.work.running == before
    assert weigh.times.state is CupState.GONE
    assert "do not pour" in weigh.clock.accessibleDescription()
    assert weigh.number.text() == "gone"


def test_the_cup_clock_counts_up_and_its_shape_and_word_change(
    weigh: WeighWindow, clock: StillClock
) -> None:
    assert weigh.times.state is CupState.RESTS
    tap_until(weigh, clock, Do.STIR)
    by, gone = weigh.times.pour_by, weigh.times.gone
    assert by is not None
    assert gone is not None
    assert gone == pytest.approx(1.5 * by)
    seen, words = [], set()
    stand = weigh.work.stand
    assert stand is not None
    assert stand.now.met is not None
    for minute in (1.0, by + 0.1, gone + 0.1):
        clock.when = stand.now.met + timedelta(minutes=minute)
        weigh.show_now()
        seen.append(weigh.times.state)
        words.add(weigh.times.word)
        assert weigh.times.counted.startswith(f"{int(minute)}:")
    assert seen == [CupState.GOOD, CupState.DUE, CupState.GONE]
    assert len(words) == 3


def test_three_states_are_three_pictures_without_their_colours(weigh: WeighWindow) -> None:
    pictures = []
    for minute in (1.0, 21.0, 31.0):
        weigh.clock.resize(400, 500)
        weigh.clock.show_times(CupTimes(minute=minute, pour_by=20.0, gone=30.0))
        grey = weigh.clock.grab(QRect(0, 0, 130, 150)).toImage()
        pictures.append(grey.convertToFormat(grey.Format.Format_Mono))
    assert pictures[0] != pictures[1] != pictures[2] != pictures[0]


def test_an_end_is_heard_and_can_be_silenced(
    qtbot: QtBot, weigh: WeighWindow, clock: StillClock
) -> None:
    heard: list[int] = []
    weigh.sounds.ring = lambda: heard.append(1)
    tap_until(weigh, clock, Do.STIR)
    clock.when += timedelta(minutes=weigh.times.pour_by or 0.0)
    weigh.show_now()
    qtbot.waitUntil(lambda: len(heard) == 2)
    tap(weigh.sound)
    clock.when += timedelta(hours=1)
    weigh.show_now()
    QApplication.processEvents()
    assert (len(heard), weigh.sound.text()) == (2, "Sound is off")


def test_every_tap_can_be_taken_back_to_the_first(
    weigh: WeighWindow, clock: StillClock
) -> None:
    before = studio_of(weigh)
    tap_until(weigh, clock, Do.WRITTEN)
    taps = len(weigh.work.running.taps) if weigh.work.running else 0
    for _ in range(taps):
        tap(weigh.back)
        assert not weigh.work.trouble
    assert studio_of(weigh) == before
    stand = weigh.work.stand
    assert stand is not None
    assert (stand.step_number, stand.step.do) == (1, Do.WEIGH)
    QTest.keyClick(weigh, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert weigh.work.running is None


def test_a_bottle_is_chosen_with_a_tap(window: DeskWindow, weigh: WeighWindow) -> None:
    window.changes.attempt(Change("Two bottles", _with_bottles))
    weigh.show_now()
    assert weigh.cover.lots == ("old", "")
    tap(weigh.cover.buttons[0])
    assert weigh.cover.lots == ("new", "")
    tap(weigh.cover.buttons[0])
    assert "not noted" in weigh.cover.buttons[0].text()
    tap(weigh.cover.buttons[0])
    met_with(weigh, "100", "144")
    (mix,) = studio_of(weigh).standing_mixes
    assert (mix.lot_a, mix.lot_b) == ("old", "")


def _with_bottles(studio: Studio) -> Studio:
    bought = START.date() - timedelta(days=40)
    bottles = (
        Lot(
            key=key, product="flood", part=LotPart.A, label=f"L {key}", new_g=900,
            received=bought + timedelta(days=days),
        )
        for key, days in (("new", 20), ("old", 0))
    )  # fmt: skip
    return replace(studio, lots=tuple(bottles))


def test_what_is_left_says_where_it_can_go(weigh: WeighWindow, clock: StillClock) -> None:
    tap_until(weigh, clock, Do.POUR)
    tap(weigh.target)
    tap(weigh.target)
    type_with_taps(weigh, "24")
    assert "24.0" in weigh.said.text()
    assert weigh.target.text() == "The rest is poured"
    assert "enough for Small, flood: 22.1" in weigh.said.text()
    assert do_of(weigh) is Do.POUR


def test_targets_are_large_enough_for_a_glove(weigh: WeighWindow) -> None:
    tap(weigh.target)
    tap(weigh.other)
    QApplication.processEvents()
    for button in (weigh.target, weigh.other, *weigh.pad.keys.values()):
        assert min(button.width(), button.height()) >= 94
    for button in (weigh.sound, weigh.give_up, weigh.back, weigh.leave):
        assert min(button.width(), button.height()) >= 48


@pytest.mark.parametrize("language", [Language.ENGLISH, Language.GERMAN])
def test_every_step_can_be_read_and_nothing_is_clipped(
    window: DeskWindow, studio_path: Path, clock: StillClock, language: Language
) -> None:
    speak(language)
    assert window.open_path(studio_path)
    window.changes.plans_by_itself = False
    window.weigh("set", "flood")
    scale = window.others.scale
    scale.showNormal()
    scale.resize(1280, 800)
    scale.sounds.ring = lambda: None
    names = names_of(window) | {"white", "pearl", "gold", "paste", "mica", "metal powder"}
    for _ in range(20):
        QApplication.processEvents()
        require_nothing_clipped(scale)
        if language is Language.GERMAN:
            texts = visible_texts(scale)
            assert not set(untranslated(texts)) - names
            assert not {t: found for t in texts if (found := english_in(t, names))}
        if do_of(scale) is Do.WRITTEN:
            return
        clock.when += timedelta(seconds=20)
        tap(scale.target)
    pytest.fail("it never ended")


def test_everything_on_it_has_a_name(weigh: WeighWindow) -> None:
    for button in weigh.findChildren(QPushButton):
        if button.isVisibleTo(weigh):
            assert button.accessibleName()
    assert weigh.clock.accessibleName()


def test_without_a_plan_it_says_what_to_do(window: DeskWindow, weigh: WeighWindow) -> None:
    window.changes.attempt(Change("Forget the plan", lambda s: replace(s, plan=None)))
    weigh.show_now()
    assert "Nothing is to be weighed" in weigh.verb.text()
    assert "plan again" in weigh.about.text()


@pytest.fixture(autouse=True)
def _in_english_again() -> Iterator[None]:
    yield
    speak(Language.ENGLISH)
