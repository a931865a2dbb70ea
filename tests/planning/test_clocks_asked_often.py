"""Answers that are remembered or cut short, against the clocks and the air asked plainly."""

from __future__ import annotations

from datetime import timedelta

import pytest

from studio_planner.craft.pieces import Material
from studio_planner.craft.timing import Timing
from studio_planner.planning.clocks.air_times import AirTimes
from studio_planner.planning.clocks.edges import Edges
from studio_planner.planning.problem import build_chains
from studio_planner.planning.spans import GRID, common, grid_down, grid_up, outside, united
from tests.planning.benchmark_studios import START, benchmark_studio

_STUDIO = benchmark_studio("S", 0)
_TIMING = Timing(_STUDIO, START - timedelta(days=1), START + timedelta(days=21))
_FIRST = grid_up(START.timestamp())
_DAY = 86_400


@pytest.mark.parametrize("hours", [0, 3, 30])
@pytest.mark.parametrize("likely", [False, True])
def test_a_stretch_leaves_what_its_starts_leave_one_by_one(hours: int, likely: bool) -> None:
    chains, _ = build_chains(_STUDIO, twins=True)
    edges = Edges(_TIMING)
    place = edges.rest
    below = (_FIRST, _FIRST + hours * 3600)
    for chain in chains:
        for task in chain.tasks:
            if task.below is None or not task.has_window:
                continue
            lower = chain.tasks[task.below]
            windows = edges.window_times(task, lower, place, likely=likely)
            each = [windows.at(start) for start in range(below[0], below[1] + 1, GRID)]
            assert united(windows.over(below)) == united(each)


def test_good_air_is_what_lies_in_no_hole() -> None:
    air, product = AirTimes(_TIMING), _STUDIO.products[0]
    place = _STUDIO.places[0].key
    block = 2 * 3600
    record = (_FIRST, grid_down(_TIMING.end.timestamp()))
    for material in Material:
        lows, highs = air.holes(place, product, material, block)
        holes = [(int(a), int(b) + 1) for a, b in zip(lows, highs, strict=True)]
        good = air.good(place, product, material, block)
        assert common([record], good) == outside([record], holes)


def test_a_room_steady_for_a_day_is_so_for_each_hour_of_it() -> None:
    air = AirTimes(_TIMING)
    place = _STUDIO.places[0].key
    whole = air.rising(place, 3600, _FIRST, _FIRST + 3 * _DAY)
    by_day = [
        hole
        for day in range(4)
        for hole in air.rising(place, 3600, _FIRST + day * _DAY, _FIRST + day * _DAY)
    ]
    assert whole == by_day


@pytest.mark.parametrize("material", list(Material))
def test_no_surface_is_ever_colder_than_the_air_has_been(material: Material) -> None:
    place = _STUDIO.places[0].key
    surface, air = _TIMING.surface(place, material), _TIMING.history(place)
    assert min(surface.celsius) >= min(air.celsius) - 1e-9
