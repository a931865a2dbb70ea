"""Bench and scale on small screens: the number and every word of a target are whole."""

from __future__ import annotations

from itertools import combinations
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFontMetrics, QFontMetricsF
from PySide6.QtWidgets import QLabel, QWidget

from studio_planner.desktop.big_button import BigButton
from studio_planner.desktop.tongue import Language, speak

if TYPE_CHECKING:
    from collections.abc import Iterator

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.bench.bench_window import BenchWindow
    from studio_planner.desktop.window import DeskWindow

SIZES = [(640, 400), (853, 533), (1280, 480)]


@pytest.fixture(params=[Language.ENGLISH, Language.GERMAN], autouse=True)
def _tongue(request: pytest.FixtureRequest) -> Iterator[None]:
    speak(request.param)
    yield
    speak(Language.ENGLISH)


def place(part: QWidget) -> QRect:
    return QRect(part.mapTo(part.window(), part.rect().topLeft()), part.size())


def targets_of(screen: QWidget) -> list[BigButton]:
    return [one for one in screen.findChildren(BigButton) if one.isVisible()]


def sized(qtbot: QtBot, screen: QWidget, size: tuple[int, int]) -> None:
    screen.showNormal()
    screen.resize(*size)
    qtbot.waitUntil(lambda: (screen.width(), screen.height()) == size)
    qtbot.waitUntil(lambda: all(one.height() >= 96 for one in targets_of(screen)))


def expect_whole_targets(screen: QWidget) -> None:
    targets = targets_of(screen)
    assert targets
    for target in targets:
        assert target.width() >= 96
        assert screen.rect().contains(place(target)), target.text()
        metrics = QFontMetricsF(target.letters)
        across = max(metrics.horizontalAdvance(word) for word in target.words.split())
        assert across <= target.width() - 8, target.text()
        lines = metrics.boundingRect(
            target.room, int(Qt.TextFlag.TextWordWrap), target.words
        ).height()
        assert lines <= target.height() - 8, target.text()
        assert target.letters.pixelSize() >= 11, target.text()
    for one, other in combinations(targets, 2):
        assert not place(one).intersects(place(other)), (one.text(), other.text())


def is_whole(number: QLabel) -> bool:
    written = QFontMetrics(number.font()).tightBoundingRect(number.text())
    return written.width() <= number.width() and written.height() <= number.height()


def expect_whole_lines(screen: QWidget) -> None:
    for label in screen.findChildren(QLabel):
        if label.isVisible() and label.text() and label.wordWrap():
            assert label.heightForWidth(label.width()) <= label.height(), label.text()


@pytest.fixture
def bench(desk: DeskWindow) -> BenchWindow:
    desk.verbs["bench"].trigger()
    return desk.others.bench


@pytest.mark.parametrize("size", SIZES)
def test_on_the_bench_number_and_targets_are_whole_for_every_task(
    qtbot: QtBot, bench: BenchWindow, size: tuple[int, int]
) -> None:
    sized(qtbot, bench, size)
    for _ in range(8):
        qtbot.waitUntil(lambda: expect_whole_targets(bench))
        qtbot.waitUntil(lambda: is_whole(bench.number))
        qtbot.waitUntil(lambda: expect_whole_lines(bench))
        bench.go_on()


def test_what_comes_then_gives_way_on_a_small_screen_and_comes_back(
    qtbot: QtBot, bench: BenchWindow
) -> None:
    sized(qtbot, bench, (640, 400))
    qtbot.waitUntil(lambda: not any(label.isVisible() for label in bench.lists.labels))
    sized(qtbot, bench, (1280, 800))
    qtbot.waitUntil(lambda: all(label.isVisible() for label in bench.lists.labels))


def test_the_number_is_the_largest_on_a_small_screen_too(
    qtbot: QtBot, bench: BenchWindow
) -> None:
    sized(qtbot, bench, (640, 400))
    qtbot.waitUntil(lambda: is_whole(bench.number))
    assert bench.number.font().pixelSize() > 2 * bench.verb.font().pixelSize()
    assert bench.number.font().pixelSize() >= 48


@pytest.mark.parametrize("size", SIZES)
def test_at_the_scale_every_word_of_a_target_is_whole(
    qtbot: QtBot, desk: DeskWindow, size: tuple[int, int]
) -> None:
    desk.verbs["weigh"].trigger()
    scale = desk.others.scale
    sized(qtbot, scale, size)
    for _ in range(3):
        qtbot.waitUntil(lambda: expect_whole_targets(scale))
        qtbot.waitUntil(lambda: is_whole(scale.number))
        scale.target.click()
