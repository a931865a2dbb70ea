"""In the smallest window every page fits across: what is read scrolls up and down only."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest
from PySide6.QtWidgets import QApplication, QScrollArea

from studio_planner.desktop.page_keys import PIECES, PRODUCTS, REMINDERS, STUDIO
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
)


@pytest.fixture(autouse=True, params=[Language.ENGLISH, Language.GERMAN])
def _language(request: pytest.FixtureRequest) -> Iterator[None]:
    QApplication.instance()
    speak(request.param)
    yield
    speak(Language.ENGLISH)


def test_the_smallest_window_scrolls_no_page_sideways(
    window: DeskWindow, tmp_path: Path, clock: scenes.StillClock
) -> None:
    open_sample(window, tmp_path, clock)
    window.resize(640, 400)
    wide = {}
    for page, key in SECTIONS:
        window.go_to(page, key)
        QApplication.processEvents()
        shown = window.pages.page(page)
        for area in shown.findChildren(QScrollArea):
            if area.isVisibleTo(shown) and area.horizontalScrollBar().maximum():
                wide[page, key] = area.horizontalScrollBar().maximum()
    assert not wide
