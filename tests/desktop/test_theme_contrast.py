"""Contrast of both looks, by the formula of WCAG 2.2 (relative luminance, 1.4.3 and 1.4.11)."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QComboBox,
    QDateTimeEdit,
    QLineEdit,
    QPlainTextEdit,
    QPushButton,
    QRadioButton,
    QSpinBox,
    QWidget,
)

from studio_planner.desktop.application import application
from studio_planner.desktop.theme import DARK, LIGHT, Look, Theme, theme_for, wear

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

    from pytestqt.qtbot import QtBot

THEMES = pytest.mark.parametrize("theme", [LIGHT, DARK], ids=["light", "dark"])
GROUNDS = ("paper", "panel", "night")
TEXTS = ("ink", "quiet", "window", "now", "warmth", "dew")
SIGNS = ("window", "now", "hands", "dew", "warmth", "film_edge", "ink", "outline")
FIELDS: tuple[Callable[[], QWidget], ...] = (
    QLineEdit,
    QSpinBox,
    QDateTimeEdit,
    QComboBox,
    QCheckBox,
    QRadioButton,
    QPlainTextEdit,
    QPushButton,
)


def luminance(colour: QColor) -> float:
    def linear(part: float) -> float:
        return part / 12.92 if part <= 0.04045 else ((part + 0.055) / 1.055) ** 2.4

    red, green, blue = (linear(p) for p in (colour.redF(), colour.greenF(), colour.blueF()))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: QColor, other: QColor) -> float:
    high, low = sorted((luminance(one), luminance(other)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def test_black_on_white_is_twenty_one_to_one() -> None:
    assert contrast(QColor("black"), QColor("white")) == pytest.approx(21.0)


@THEMES
@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("text", TEXTS)
def test_text_stands_out_from_all_it_may_lie_on(theme: Theme, text: str, ground: str) -> None:
    assert contrast(theme.colour(text), theme.colour(ground)) >= 4.5


@THEMES
@pytest.mark.parametrize("ground", GROUNDS)
@pytest.mark.parametrize("sign", SIGNS)
def test_signs_stand_out_from_the_ground(theme: Theme, sign: str, ground: str) -> None:
    assert contrast(theme.colour(sign), theme.colour(ground)) >= 3.0


@THEMES
def test_outlines_stand_out_from_what_is_inside_them_and_from_their_ground(
    theme: Theme,
) -> None:
    for ground in (*GROUNDS, "field"):
        assert contrast(theme.colour("outline"), theme.colour(ground)) >= 3.0
    drawn = theme.outlined.color(QPalette.ColorRole.Window).darker(140)
    assert contrast(drawn, theme.colour("outline")) == pytest.approx(1.0, abs=0.05)


@pytest.fixture
def worn(qapp: QApplication) -> Iterator[Callable[[Theme], None]]:
    """Put a theme on the application, in its own style; the light one comes back after it."""
    application()
    yield lambda theme: wear(qapp, theme)
    wear(qapp, LIGHT)


@THEMES
@pytest.mark.parametrize("make", FIELDS)
@pytest.mark.parametrize("focused", [False, True], ids=["plain", "focused"])
def test_every_kind_of_field_is_drawn_with_an_outline_that_stands_out(
    theme: Theme,
    make: Callable[[], QWidget],
    qtbot: QtBot,
    worn: Callable[[Theme], None],
    *,
    focused: bool,
) -> None:
    worn(theme)
    ground = QWidget()
    ground.resize(240, 120)
    field, other = make(), QLineEdit(ground)
    field.setParent(ground)
    field.setGeometry(20, 20, 160, 28)
    other.setGeometry(20, 70, 160, 28)
    qtbot.addWidget(ground)
    ground.show()
    qtbot.waitExposed(ground)
    (field if focused else other).setFocus()
    image, place = ground.grab().toImage(), field.geometry()
    row = [
        image.pixelColor(x, place.center().y()) for x in range(place.left(), place.left() + 3)
    ]
    assert max(contrast(colour, theme.colour("paper")) for colour in row) >= 3.0


@THEMES
def test_the_ring_of_a_field_that_has_the_keys_and_its_tick_stand_out(theme: Theme) -> None:
    palette = theme.palette
    ring = palette.color(QPalette.ColorRole.Highlight)
    for ground in (*GROUNDS, "field"):
        assert contrast(ring, theme.colour(ground)) >= 3.0
    tick, inside = (
        palette.color(QPalette.ColorRole.Text),
        palette.color(QPalette.ColorRole.Base),
    )
    assert contrast(tick, inside) >= 3.0


@THEMES
@pytest.mark.parametrize("tone", [0.6, 0.7, 0.82, 1.0])
def test_poles_and_scuffs_stand_out_from_the_films_they_stand_on(
    theme: Theme, tone: float
) -> None:
    # They stand on films from sandable on; blocks, posts and now have a rim of paper instead.
    assert contrast(theme.colour("ink"), theme.film_colour(tone)) >= 3.0


@THEMES
def test_wet_and_hard_differ_in_lightness_and_not_only_in_hue(theme: Theme) -> None:
    assert contrast(theme.film_colour(0.0), theme.film_colour(1.0)) >= 3.0


@THEMES
def test_times_stand_out_from_the_hours_they_are_written_on(theme: Theme) -> None:
    assert contrast(theme.colour("paper"), theme.colour("hands")) >= 4.5


@THEMES
def test_hatching_stands_out_from_the_doorway_it_lies_in(theme: Theme) -> None:
    assert contrast(theme.colour("quiet"), theme.colour("window_wash")) >= 3.0
    assert contrast(theme.colour("window"), theme.colour("window_wash")) >= 3.0


@THEMES
def test_the_palette_keeps_text_readable(theme: Theme) -> None:
    palette = theme.palette
    pairs = [
        (QPalette.ColorRole.WindowText, QPalette.ColorRole.Window),
        (QPalette.ColorRole.Text, QPalette.ColorRole.Base),
        (QPalette.ColorRole.ButtonText, QPalette.ColorRole.Button),
        (QPalette.ColorRole.ToolTipText, QPalette.ColorRole.ToolTipBase),
        (QPalette.ColorRole.HighlightedText, QPalette.ColorRole.Highlight),
    ]
    for text, ground in pairs:
        assert contrast(palette.color(text), palette.color(ground)) >= 4.5


def test_every_look_has_its_theme() -> None:
    assert {theme_for(look) for look in Look} == {LIGHT, DARK}
