"""Places and spots are added, copied, moved and removed; what is poured there holds them."""

from __future__ import annotations

from dataclasses import replace

import pytest

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.places import PlaceKind
from studio_planner.services.desk import DeskView
from studio_planner.services.editing.changes import made
from studio_planner.services.editing.places import (
    added_place,
    added_spot,
    changed_spot,
    copied_place,
    copied_spot,
    heat_loss,
    moved_place,
    moved_spot,
    place_of,
    removed_place,
    removed_spot,
)
from studio_planner.services.shelf_plans import spots_today, too_large
from tests.desktop import scenes


def test_a_room_starts_with_one_temperature_and_is_valid() -> None:
    change, key = added_place(scenes.studio(), PlaceKind.ROOM, 19.5)
    room = place_of(made(change, scenes.studio()), key)
    assert room is not None
    assert [point.celsius for point in room.pattern] == [19.5]
    assert room.name == "Workshop 2"
    assert change.words == "Add Workshop 2"


def test_a_copied_place_has_spots_of_its_own_and_no_readings() -> None:
    studio = scenes.studio()
    change, key = copied_place(studio, studio.places[0])
    after = made(change, studio)
    copy = place_of(after, key)
    assert copy is not None
    assert len(copy.spots) == len(studio.places[0].spots)
    assert not copy.readings
    assert copy.pattern == studio.places[0].pattern


def test_a_place_with_pours_stays_and_names_their_pieces() -> None:
    studio = scenes.poured_studio()
    with pytest.raises(InvalidEntry, match="Market board 7"):
        made(removed_place(studio.places[0]), studio)
    with pytest.raises(InvalidEntry, match="Market board 7"):
        made(removed_spot(studio.places[0], studio.spot("C2")), studio)
    box = studio.places[1]
    assert box not in made(removed_place(box), studio).places
    kept = made(removed_spot(studio.places[0], studio.spot("A1")), studio)
    assert "A1" not in [spot.key for spot in kept.spots]


def test_the_first_room_is_where_pieces_rest() -> None:
    studio = scenes.studio()
    change, key = added_place(studio, PlaceKind.ROOM, 20.0)
    more = made(change, studio)
    first = made(moved_place(more.places[-1], 0), more)
    assert first.resting_place is not None
    assert first.resting_place.key == key


def test_spots_are_added_alike_changed_copied_and_moved() -> None:
    studio = scenes.studio()
    room = studio.places[0]
    change, key = added_spot(studio, room)
    studio = made(change, studio)
    assert studio.spot(key).length_mm == room.spots[-1].length_mm
    room = studio.places[0]
    studio = made(changed_spot(room, studio.spot(key), "Length", {"length_mm": 300.0}), studio)
    assert studio.spot(key).length_mm == 300.0
    change, copy = copied_spot(studio, studio.places[0], studio.spot(key))
    studio = made(change, studio)
    assert studio.spot(copy).length_mm == 300.0
    studio = made(moved_spot(studio.places[0], studio.spot(copy), 0), studio)
    assert studio.places[0].spots[0].key == copy


def test_heat_loss_follows_from_a_cold_days_heating() -> None:
    assert heat_loss(12.0, 20.0) == pytest.approx(25.0)
    for kwh, degrees, named in ((0.0, 20.0, "kwh"), (12.0, -1.0, "degrees")):
        with pytest.raises(InvalidEntry) as caught:
            heat_loss(kwh, degrees)
        assert [rule.field for rule in caught.value.broken] == [named]


def test_what_fits_nowhere_says_the_size_it_needs() -> None:
    rows = too_large(scenes.crowded())
    assert [row.piece.name for row in rows] == ["Barn door"]
    assert rows[0].length_mm > 2000
    assert not too_large(scenes.studio())


def test_todays_pieces_stand_on_their_spots() -> None:
    view = DeskView(scenes.planned(), scenes.NOW)
    rows = {row.spot.key: row for row in spots_today(view, view.studio.places[0], view.now)}
    standing = {key: [one.piece.key for one in row.standing] for key, row in rows.items()}
    assert standing["B1"] == ["h1"]
    assert standing["A2"] == []
    assert list(rows["A2"].free_mm) == [900, 600]
    length, width = rows["B1"].free_mm
    assert length * width < 900 * 600


def test_a_bare_studio_has_nothing_on_its_shelf() -> None:
    view = DeskView(replace(scenes.studio(), people=()), scenes.NOW)
    places = view.studio.places
    rows = [row for place in places for row in spots_today(view, place, view.now)]
    assert len(rows) == len(view.studio.spots) > 0
    assert not [row for row in rows if row.standing]
