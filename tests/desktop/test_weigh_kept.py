"""A mix at the scale is kept: after a kill, in another studio, thrown away, or gone."""

from __future__ import annotations

import errno
import os
from dataclasses import replace
from datetime import timedelta
from pathlib import Path
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from studio_planner.craft.errors import StudioFileError
from studio_planner.craft.log import EntryKind
from studio_planner.desktop.theme import Look
from studio_planner.desktop.window import DeskWindow
from studio_planner.services.editing.changes import Change
from studio_planner.services.mix_run.kept_file import FOLDER, KeptMix
from studio_planner.services.mix_run.stand import Do
from studio_planner.storage.alone import alone_at
from studio_planner.storage.studio_file import create_studio
from tests.desktop.scale_hands import (
    at_the_scale,
    do_of,
    met_with,
    scene,
    studio_of,
    tap,
    tap_until,
)
from tests.desktop.scenes import StillClock
from tests.services.mixing.bench_mixes import START

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.weigh.weigh_window import WeighWindow
    from studio_planner.services.mix_run.taps import RunningMix


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


def another_desk(qtbot: QtBot, clock: StillClock, path: Path) -> tuple[DeskWindow, WeighWindow]:
    """What the maker sees who starts the desk again; the same folder keeps the taps."""
    desk = DeskWindow(clock, look=Look.LIGHT, data_folder=lambda: path.parent / "data")
    qtbot.addWidget(desk)
    desk.show()
    assert desk.open_path(path)
    desk.changes.plans_by_itself = False
    notice = desk.notice.words
    desk.verbs["weigh"].trigger()
    scale = desk.others.scale
    scale.showNormal()
    scale.sounds.ring = lambda: None
    assert "still at the scale" in notice
    return desk, scale


@pytest.mark.parametrize("count", [1, 2, 3, 4, 5, 8, 11, 13, 14])
def test_nothing_is_lost_when_the_desk_is_killed_after_any_tap(
    qtbot: QtBot, weigh: WeighWindow, clock: StillClock, studio_path: Path, count: int
) -> None:
    """A kill writes nothing more: what another desk reads from disk is all there is."""
    for _ in range(count):
        clock.when += timedelta(seconds=20)
        tap(weigh.target)
    stand, clock_then = weigh.work.stand, weigh.times
    assert stand is not None
    _, scale = another_desk(qtbot, clock, studio_path)
    assert scale.work.running == weigh.work.running
    assert (scale.verb.text(), scale.number.text()) == (
        weigh.verb.text(),
        weigh.number.text(),
    )
    assert scale.times == clock_then
    if do_of(scale) is not Do.WRITTEN:
        tap_until(scale, clock, Do.WRITTEN)
    studio = studio_of(scale)
    assert [mix.batch for mix in studio.standing_mixes] == [1]
    assert [pour.batch for pour in studio.poured] == [1]


@pytest.mark.parametrize("do", [Do.WEIGH, Do.STIR, Do.POUR, Do.WRITE])
def test_a_kill_between_the_tap_and_the_log_loses_nothing(
    qtbot: QtBot, window: DeskWindow, clock: StillClock, studio_path: Path, do: Do
) -> None:
    """The tap is on disk and the studio file still as it was before it."""
    weigh = at_the_scale(window, studio_path)
    tap(weigh.target)
    tap(weigh.target)
    tap(weigh.target)
    tap_until(weigh, clock, do)
    before = studio_path.read_bytes()
    clock.when += timedelta(seconds=20)
    tap(weigh.target)
    running = weigh.work.running
    window.close()
    studio_path.write_bytes(before)
    assert running is not None
    KeptMix(studio_path.parent / "data" / FOLDER, studio_path).keep(running)
    _, scale = another_desk(qtbot, clock, studio_path)
    tap_until(scale, clock, Do.WRITTEN)
    studio = studio_of(scale)
    assert [mix.batch for mix in studio.standing_mixes] == [1]
    assert [pour.batch for pour in studio.poured] == [1]


def test_a_kill_between_the_log_and_its_number_writes_no_mix_twice(
    qtbot: QtBot, weigh: WeighWindow, clock: StillClock, studio_path: Path
) -> None:
    tap_until(weigh, clock, Do.STIR)
    running = weigh.work.running
    assert running is not None
    kept = KeptMix(studio_path.parent / "data" / FOLDER, studio_path)
    kept.keep(replace(running, batches=()))
    _, scale = another_desk(qtbot, clock, studio_path)
    assert scale.work.batches == (1,)
    assert len(studio_of(scale).mixes) == 1


def test_after_a_kill_a_tap_is_taken_back_by_a_withdrawal(
    qtbot: QtBot, weigh: WeighWindow, clock: StillClock, studio_path: Path
) -> None:
    tap_until(weigh, clock, Do.STIR)
    _, scale = another_desk(qtbot, clock, studio_path)
    tap(scale.back)
    studio = studio_of(scale)
    assert not studio.standing_mixes
    assert studio.log[-1].kind is EntryKind.WITHDRAWN
    assert do_of(scale) is Do.WEIGH


def test_leaving_the_view_loses_nothing(weigh: WeighWindow, clock: StillClock) -> None:
    tap_until(weigh, clock, Do.STIR)
    QTest.keyClick(weigh, Qt.Key.Key_Escape)
    assert not weigh.isVisible()
    weigh.begin(("small", "flood"))
    assert do_of(weigh) is Do.STIR


def test_a_mix_that_is_written_down_is_done_with_when_the_view_is_left(
    window: DeskWindow, weigh: WeighWindow, clock: StillClock
) -> None:
    tap_until(weigh, clock, Do.WRITTEN)
    kept = [window.others.mix_runs]
    QTest.keyClick(weigh, Qt.Key.Key_Escape)
    kept.append(window.others.mix_runs)
    assert kept == [True, False]
    window.verbs["undo"].trigger()
    assert not studio_of(weigh).poured


def test_each_studio_has_its_own_running_mix(
    window: DeskWindow, weigh: WeighWindow, clock: StillClock, tmp_path: Path
) -> None:
    tap_until(weigh, clock, Do.STIR)
    other = tmp_path / "other.studio"
    create_studio(other, scene()).close()
    assert window.open_path(other)
    weigh.show_now()
    assert weigh.work.running is None
    assert window.open_path(tmp_path / "bench.studio")
    weigh.show_now()
    assert do_of(weigh) is Do.STIR


def test_a_mix_that_is_thrown_away_stays_weighed_and_pours_nothing(
    weigh: WeighWindow, clock: StillClock
) -> None:
    tap_until(weigh, clock, Do.STIR)
    tap(weigh.give_up)
    assert weigh.said.stops
    tap(weigh.other)
    assert do_of(weigh) is Do.STIR
    tap(weigh.give_up)
    tap(weigh.target)
    studio = studio_of(weigh)
    assert weigh.work.running is None
    assert (len(studio.standing_mixes), studio.poured) == (1, ())


def test_a_ratio_that_is_thrown_away_before_it_was_right_is_written_down_too(
    weigh: WeighWindow,
) -> None:
    met_with(weigh, "100", "148.4")
    tap(weigh.give_up)
    tap(weigh.target)
    (mix,) = studio_of(weigh).standing_mixes
    assert (mix.a_grams, mix.b_grams) == (100.0, 48.4)


def test_a_mix_of_a_piece_that_is_gone_is_forgotten_in_a_sentence(
    window: DeskWindow, weigh: WeighWindow
) -> None:
    tap(weigh.target)
    window.changes.attempt(
        Change(
            "Remove Set",
            lambda s: replace(
                s, plan=None, pieces=tuple(p for p in s.pieces if p.key != "set")
            ),
        )
    )
    weigh.show_now()
    assert "forgotten" in weigh.said.text()
    assert weigh.work.running is None


@pytest.mark.parametrize("content", [b'{"form": 99}', b"\xff\xfe", b"", b"[]", b'{"form": 1}'])
def test_what_is_no_running_mix_is_put_aside_in_a_sentence(
    tmp_path: Path, content: bytes
) -> None:
    kept = KeptMix(tmp_path, tmp_path / "a.studio")
    assert kept.read() is None
    kept.path.write_bytes(content)
    with pytest.raises(StudioFileError, match="put aside as"):
        kept.read()
    assert kept.read() is None
    assert kept.path.with_suffix(".unread").read_bytes() == content
    kept.forget()


def test_a_mix_whose_file_cannot_be_read_just_now_stays_at_the_scale(
    weigh: WeighWindow, clock: StillClock, monkeypatch: pytest.MonkeyPatch
) -> None:
    tap_until(weigh, clock, Do.STIR)
    before = weigh.work.running

    def fails(_self: Path) -> bytes:
        raise OSError(errno.EIO, "Input/output error")

    with monkeypatch.context() as patch:
        patch.setattr(Path, "read_bytes", fails)
        weigh.begin()
    assert weigh.work.running == before
    assert "the disk reported an error" in weigh.said.text()
    weigh.begin()
    assert not weigh.said.text()


def test_a_tap_that_no_longer_fits_on_the_disk_is_not_taken(
    weigh: WeighWindow, clock: StillClock, monkeypatch: pytest.MonkeyPatch
) -> None:
    """What stands on the disk and on the screen is the same: the mix before the tap."""
    tap_until(weigh, clock, Do.STIR)
    before, studio = weigh.work.running, studio_of(weigh)

    def fails(_descriptor: int) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    with monkeypatch.context() as patch:
        patch.setattr(os, "fsync", fails)
        clock.when += timedelta(seconds=20)
        tap(weigh.target)
    assert "the disk is full" in weigh.said.text()
    assert weigh.work.running == before
    assert studio_of(weigh) == studio
    weigh.begin()
    assert weigh.work.running == before


@pytest.mark.parametrize("do", [Do.MEET, Do.STIR, Do.POUR])
def test_a_tap_on_what_another_window_went_on_with_shows_that_and_overwrites_nothing(
    qtbot: QtBot, weigh: WeighWindow, clock: StillClock, studio_path: Path, do: Do
) -> None:
    tap_until(weigh, clock, do)
    _, scale = another_desk(qtbot, clock, studio_path)
    clock.when += timedelta(seconds=20)
    tap(weigh.target)
    ahead = weigh.work.running
    clock.when += timedelta(seconds=5)
    tap(scale.target)
    assert scale.work.running == weigh.work.running == ahead
    assert "went on in another window" in scale.said.text()
    assert scale.verb.text() == weigh.verb.text()
    tap_until(scale, clock, Do.WRITTEN)
    assert "another window" not in scale.said.text()
    studio = studio_of(scale)
    assert [mix.batch for mix in studio.standing_mixes] == [1]
    assert [pour.batch for pour in studio.poured] == [1]
    QTest.keyClick(weigh, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert weigh.work.running == scale.work.running
    assert "went on in another window" in weigh.said.text()
    assert studio_of(weigh) == studio


def test_a_mix_that_was_ended_in_another_window_is_not_begun_again(
    qtbot: QtBot, weigh: WeighWindow, clock: StillClock, studio_path: Path
) -> None:
    tap_until(weigh, clock, Do.STIR)
    _, scale = another_desk(qtbot, clock, studio_path)
    scale.work.throw_away()
    clock.when += timedelta(seconds=20)
    tap(weigh.target)
    assert weigh.work.running is None
    assert "was ended in another window" in weigh.said.text()


def test_a_mix_is_begun_in_one_window_only(
    qtbot: QtBot, weigh: WeighWindow, clock: StillClock, studio_path: Path
) -> None:
    desk = DeskWindow(clock, look=Look.LIGHT, data_folder=lambda: studio_path.parent / "data")
    qtbot.addWidget(desk)
    assert desk.open_path(studio_path)
    desk.verbs["weigh"].trigger()
    tap(weigh.target)
    clock.when += timedelta(seconds=20)
    scale = desk.others.scale
    tap(scale.target)
    assert scale.work.running == weigh.work.running
    assert "went on in another window" in scale.said.text()


def test_while_a_tap_is_kept_and_the_log_told_no_other_window_gets_in(
    weigh: WeighWindow, clock: StillClock, studio_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    tap_until(weigh, clock, Do.STIR)
    lock = KeptMix(studio_path.parent / "data" / FOLDER, studio_path).path.with_suffix(".lock")
    keep, free = KeptMix.keep, []

    def watched(kept: KeptMix, running: RunningMix) -> None:
        with alone_at(lock, patience=0.0) as ours:
            free.append(ours)
        keep(kept, running)

    monkeypatch.setattr(KeptMix, "keep", watched)
    tap_until(weigh, clock, Do.WRITTEN)
    assert free
    assert not any(free)
    with alone_at(lock, patience=0.0) as ours:
        assert ours
