"""The desk on small screens, the look that is ticked, and lengths of time said honestly."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.desktop.application import fit_to_screen
from studio_planner.desktop.theme import Look
from studio_planner.desktop.words import length_of_time

if TYPE_CHECKING:
    from studio_planner.desktop.window import DeskWindow


def test_the_window_is_never_larger_than_its_screen(desk: DeskWindow) -> None:
    room = desk.screen().availableGeometry()
    desk.resize(room.width() + 400, room.height() + 400)
    fit_to_screen(desk)
    assert desk.width() <= room.width()
    assert desk.height() <= room.height()
    assert desk.minimumWidth() <= room.width()


@pytest.mark.parametrize(("look", "ticked"), [(Look.DARK, "dark"), (Look.LIGHT, "light")])
def test_the_look_that_is_on_is_ticked(desk: DeskWindow, look: Look, ticked: str) -> None:
    desk.set_look(look)
    names = [name for name in ("light", "dark") if desk.verbs[name].isChecked()]
    assert names == [ticked]


@pytest.mark.parametrize(
    ("hours", "words"),
    [(0.5, "30 min"), (5.2, "5 h"), (72.0, "3 days"), (87.9, "3 d 15 h"), (95.99, "3 d 23 h")],
)
def test_a_length_of_time_is_never_rounded_up(hours: float, words: str) -> None:
    assert length_of_time(hours) == words


def test_the_section_gives_way_where_the_window_is_low(desk: DeskWindow) -> None:
    side = desk.parts.side
    side.resize(side.width(), 900)
    assert side.section.isVisibleTo(side)
    side.resize(side.width(), 320)
    assert not side.section.isVisibleTo(side)
