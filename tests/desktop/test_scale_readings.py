"""Masses at the scale have the decimals of its step, and the studio's own unit."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest
from PySide6.QtWidgets import QWidget

from studio_planner.craft.settings import MassUnit, Settings, Units
from studio_planner.desktop.weigh.digit_pad import ERASE, DigitPad
from studio_planner.desktop.weigh.weigh_words import reading
from tests.services.mixing.bench_mixes import bench

if TYPE_CHECKING:
    from pytestqt.qtbot import QtBot


@pytest.mark.parametrize(
    ("step", "said"), [(1.0, "104 g"), (0.5, "104.4 g"), (0.1, "104.4 g"), (0.01, "104.37 g")]
)
def test_a_reading_has_the_decimals_of_the_scales_step(step: float, said: str) -> None:
    studio = bench(settings=Settings(scale_step_g=step))
    assert reading(104.37, studio).replace("\N{NO-BREAK SPACE}", " ") == said


def test_a_reading_in_ounces_has_three_decimals() -> None:
    studio = replace(bench(), units=Units(mass=MassUnit.OUNCE))
    assert reading(104.37, studio).replace("\N{NO-BREAK SPACE}", " ") == "3.682 oz"


def test_the_pad_reads_the_studios_unit_with_comma_or_point(qtbot: QtBot) -> None:
    parent = QWidget()
    qtbot.addWidget(parent)
    pad = DigitPad(parent)
    ounces = Units(mass=MassUnit.OUNCE)
    pad.begin(ounces)
    assert pad.grams(ounces) is None
    for key in ("1", ",", ".", "5", "7", ERASE):
        pad.press(key)
    assert pad.readout.text() == "1.5 oz"
    assert pad.grams(ounces) == pytest.approx(42.524, abs=0.001)
    pad.begin(Units())
    pad.press(".")
    assert pad.readout.text() == "0. g"
