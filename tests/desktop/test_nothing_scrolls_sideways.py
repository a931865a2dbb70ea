"""In the smallest window every page fits across: what is read scrolls up and down only."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtWidgets import QApplication, QScrollArea

from studio_planner.desktop.page_keys import PIECES, PRODUCTS, REMINDERS, STOCK, STUDIO
from studio_planner.desktop.pages.stock_page import BOTTLES, ENOUGH, PIGMENTS, PRICES
from studio_planner.desktop.tongue import Language, speak
from tests.desktop.hands_on import open_sample

if TYPE_CHECKING:
    from collections.abc import Iterator
    from pathlib import Path

    from studio_planner.desktop.window import DeskWindow
    from tests.desktop import scenes

SECTIONS = (
    (STUDIO, REMINDERS),
    (STUDIO, "hands"),
    (STUDIO, "room"),
    (PIECES, ""),
    (PRODUCTS, ""),
    (STOCK, ENOUGH),
    (STOCK, BOTTLES),
    (STOCK, PIGMENTS),
    (STOCK, PRICES),
)


@pytest.fixture(autouse=True, params=[Language.ENGLISH, Language.GERMAN])
def _language(request: pytest.FixtureRequest) -> Iterator[None]:
    QApplication.instance()
    speak(request.param)
    yield
    speak(Language.ENGLISH)


@pytest.mark.parametrize("size", [(640, 400), (900, 500), (1060, 700)])
def test_no_window_is_so_small_that_a_page_scrolls_sideways(
    size: tuple[int, int], window: DeskWindow, tmp_path: Path, clock: scenes.StillClock
) -> None:
    open_sample(window, tmp_path, clock)
    window.resize(*size)
    wide = {}
    for page, key in SECTIONS:
        window.go_to(page, key)
        QApplication.processEvents()
        shown = window.pages.page(page)
        for area in shown.findChildren(QScrollArea):
            if area.isVisibleTo(shown) and area.horizontalScrollBar().maximum():
                wide[page, key] = area.horizontalScrollBar().maximum()
    assert not wide
