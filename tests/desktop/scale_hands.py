"""Hands at the scale: a scene of two mixes, and taps on what the weigh view shows."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QPushButton, QWidget

from studio_planner.craft.pieces import Colour
from tests.services.mixing.bench_mixes import (
    START,
    THREE,
    bench,
    coasters,
    flood_coat,
    plan_of,
    poured,
)

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.weigh.weigh_window import WeighWindow
    from studio_planner.desktop.window import DeskWindow
    from studio_planner.services.mix_run.stand import Do
    from tests.desktop.scenes import StillClock

SMALL = coasters(
    "small", 1, flood_coat((Colour(name="gold", colourant="paste", colourant_pct=2),))
)


def scene() -> Studio:
    """Three colours for six coasters, and one small coaster in gold for the next day."""
    later = START + timedelta(hours=20)
    small = poured(2, "small", 2, start=later, end=later + timedelta(minutes=60))
    studio = bench(coasters("set", 6, flood_coat(THREE)), SMALL)
    return replace(studio, plan=plan_of(poured(1), small))


def at_the_scale(window: DeskWindow, path: Path) -> WeighWindow:
    """The weigh view on the scene, as F12 opens it."""
    assert window.open_path(path)
    window.changes.plans_by_itself = False
    window.verbs["weigh"].trigger()
    scale = window.others.scale
    scale.showNormal()
    scale.resize(1280, 800)
    scale.sounds.ring = lambda: None
    return scale


def tap(button: QPushButton) -> None:
    assert button.isVisibleTo(button.window())
    assert button.isEnabled()
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def type_with_taps(weigh: WeighWindow, text: str) -> None:
    tap(weigh.other)
    for sign in text:
        tap(weigh.pad.keys[sign])
    tap(weigh.target)


def do_of(weigh: WeighWindow) -> Do | None:
    stand = weigh.work.stand
    return None if stand is None else stand.step.do


def tap_until(weigh: WeighWindow, clock: StillClock, do: Do) -> None:
    for _ in range(60):
        if do_of(weigh) is do:
            return
        clock.when += timedelta(seconds=20)
        tap(weigh.target)
    pytest.fail(f"no step asks to {do}")


def studio_of(weigh: WeighWindow) -> Studio:
    studio = weigh.work.studio
    assert studio is not None
    return studio


def met_with(weigh: WeighWindow, a_grams: str, reads: str) -> None:
    tap(weigh.target)
    type_with_taps(weigh, a_grams)
    tap(weigh.target)
    type_with_taps(weigh, reads)


def require_nothing_clipped(scale: QWidget) -> None:
    for label in scale.findChildren(QLabel):
        if label.isVisibleTo(scale) and label.text():
            wrap = int(Qt.TextFlag.TextWordWrap) if label.wordWrap() else 0
            room = QRect(0, 0, label.contentsRect().width(), 10_000)
            need = label.fontMetrics().boundingRect(room, wrap, label.text())
            assert need.width() <= label.contentsRect().width() + 1, label.text()
            assert need.height() <= label.contentsRect().height() + 1, label.text()
    for button in scale.findChildren(QPushButton):
        if button.isVisibleTo(scale) and button.text():
            wide = button.fontMetrics().horizontalAdvance(button.text())
            assert wide < button.width(), button.text()
