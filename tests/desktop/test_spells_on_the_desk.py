"""Hours of a date besides the week are seen on the room's page, and taken out there."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from PySide6.QtTest import QTest

from studio_planner.craft.spells import Spell
from studio_planner.services.editing.spells import with_spells
from tests.desktop import scenes
from tests.desktop.room_hands import LEFT, change, section_of, studio_of

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.window import DeskWindow

pytestmark = pytest.mark.gui
TONIGHT = Spell(start=scenes.at(0, "21:00"), end=scenes.at(1, "07:00"), celsius=22.0)
LAST_NIGHT = Spell(start=scenes.at(-1, "21:00"), end=scenes.at(0, "07:00"), celsius=22.0)


def heated(now: Studio) -> Studio:
    room = with_spells(now.places[0], (LAST_NIGHT, TONIGHT))
    return replace(now, places=(room, *now.places[1:]))


def test_a_warm_night_is_listed_until_it_is_over_and_taken_out_by_its_verb(
    desk: DeskWindow,
) -> None:
    section = section_of(desk)
    spells = section.air.spells
    assert not spells.isVisibleTo(section)
    change(desk, heated)
    assert spells.isVisibleTo(section)
    (verb,) = spells.verbs
    assert "22 °C" in verb.accessibleName()
    before = studio_of(desk)
    QTest.mouseClick(verb, LEFT)
    assert studio_of(desk).places[0].spells == (LAST_NIGHT,)
    assert not spells.isVisibleTo(section)
    assert "as the week says" in desk.verbs["undo"].text()
    desk.verbs["undo"].trigger()
    assert studio_of(desk) == before


def test_older_spells_give_way_where_newer_ones_lie() -> None:
    room = with_spells(scenes.night_room(), (TONIGHT,))
    hour = timedelta(hours=1)
    colder = Spell(start=TONIGHT.start - hour, end=TONIGHT.start + hour, celsius=12.0)
    inside = Spell(start=TONIGHT.end - 3 * hour, end=TONIGHT.end - 2 * hour, celsius=25.0)
    spans = [
        ((s.start - TONIGHT.start) / hour, (s.end - TONIGHT.start) / hour, s.celsius)
        for s in with_spells(room, (inside, colder)).spells
    ]
    assert spans == [(-1, 1, 12.0), (1, 7, 22.0), (7, 8, 25.0), (8, 10, 22.0)]
