"""In the smallest window every page fits across: what is read scrolls up and down only."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

import pytest
from PySide6.QtWidgets import QScrollArea, QWidget

from studio_planner.desktop.page_keys import (
    LOG,
    ORDERS,
    PIECES,
    PRODUCTS,
    QUESTIONS,
    REMINDERS,
    STOCK,
    STUDIO,
)
from studio_planner.desktop.pages.stock_page import BOTTLES, ENOUGH, PIGMENTS, PRICES
from studio_planner.desktop.tongue import Language, speak
from tests.desktop.hands_on import open_sample

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from pytestqt.qtbot import QtBot

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop import scenes

SECTIONS = (
    (STUDIO, REMINDERS),
    (STUDIO, "hands"),
    (STUDIO, "room"),
    (STUDIO, "units"),
    (STUDIO, "rules"),
    (STUDIO, "backups"),
    (ORDERS, ""),
    (QUESTIONS, ""),
    (LOG, ""),
    (PIECES, ""),
    (PRODUCTS, ""),
    (STOCK, ENOUGH),
    (STOCK, BOTTLES),
    (STOCK, PIGMENTS),
    (STOCK, PRICES),
)


@pytest.fixture(autouse=True, params=[Language.ENGLISH, Language.GERMAN])
def _language(request: pytest.FixtureRequest) -> Iterator[None]:
    speak(request.param)
    yield
    speak(Language.ENGLISH)


@pytest.mark.parametrize("size", [(640, 400), (900, 500), (1060, 700)])
def test_no_window_is_so_small_that_a_page_scrolls_sideways(
    size: tuple[int, int],
    qtbot: QtBot,
    window: DeskWindow,
    tmp_path: Path,
    clock: scenes.StillClock,
) -> None:
    open_sample(window, tmp_path, clock)
    assert window.backups.make_now()
    window.backups.work.finish()
    window.resize(*size)
    for page, key in SECTIONS:
        window.go_to(page, key)
        qtbot.waitUntil(partial(fits_across, window.pages.page(page)))


def fits_across(page: QWidget) -> None:
    """Fail while an area of a page has more across than it shows."""
    wide = [
        area.horizontalScrollBar().maximum()
        for area in page.findChildren(QScrollArea)
        if area.isVisibleTo(page) and area.horizontalScrollBar().maximum()
    ]
    assert not wide
