"""Clocks of a studio against the science's own clocks, and itineraries by hand."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import time, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.pieces import Material
from studio_planner.craft.places import PatternPoint, PlaceKind
from studio_planner.craft.products import SheetPoint
from studio_planner.craft.settings import Settings
from studio_planner.craft.studio import Studio
from studio_planner.craft.timing import Timing
from studio_planner.science.clocks import StageClock, degree_over
from studio_planner.science.stages import Edge, Stage
from tests.craft.nouns import place, resin, spot, utc

START = utc(2026, 3, 20)
END = utc(2026, 4, 10)
HOUR = timedelta(hours=1)
RESIN = resin(
    sheet=(
        SheetPoint(stage=Stage.HANDLE, celsius=20, from_hours=24),
        SheetPoint(stage=Stage.HANDLE, celsius=30, from_hours=12),
        SheetPoint(stage=Stage.RECOAT_CLOSES, celsius=20, from_hours=20),
        SheetPoint(stage=Stage.CUP_LIFE, celsius=20, from_hours=1, mass_g=50),
        SheetPoint(stage=Stage.CUP_LIFE, celsius=20, from_hours=0.8, mass_g=100),
    ),
    minimum_celsius=10,
)


def steady(celsius: float) -> PatternPoint:
    return PatternPoint(at=time(9), celsius=celsius)


NIGHTS = (
    PatternPoint(at=time(6), celsius=15),
    PatternPoint(at=time(14), celsius=22),
    PatternPoint(at=time(22), celsius=22),
    PatternPoint(at=time(22), celsius=19),
)
STUDIO = Studio(
    name="Invented",
    zone="Europe/Berlin",
    products=(RESIN,),
    places=(
        place(steady(20)),
        place(steady(30), key="box", kind=PlaceKind.WARM_BOX, spots=(spot("b"),)),
        place(steady(8), key="cellar", spots=(spot("c"),)),
        place(*NIGHTS, key="loft", spots=(spot("d"),)),
    ),
)


@pytest.fixture(name="timing")
def _timing() -> Timing:
    return Timing(STUDIO, START, END)


@pytest.mark.parametrize(("room", "hours"), [("room", 24), ("box", 12)])
def test_a_published_figure_is_the_hours_at_its_temperature(
    timing: Timing, room: str, hours: int
) -> None:
    legs = [(room, START + HOUR)]
    found = timing.reached(RESIN, Stage.HANDLE, Edge.LIKELY, legs)
    assert found is not None
    assert abs(found - START - (hours + 1) * HOUR) < timedelta(seconds=1)


def test_half_of_the_cure_on_the_shelf_and_half_in_the_box(timing: Timing) -> None:
    # 12 of 24 hours at 20 °C, then the other half at 30 °C: 6 of 12 hours.
    legs = [("room", START), ("box", START + 12 * HOUR)]
    found = timing.reached(RESIN, Stage.HANDLE, Edge.LIKELY, legs)
    assert found is not None
    assert abs(found - START - 18 * HOUR) < timedelta(seconds=1)


@given(
    st.lists(
        st.tuples(st.sampled_from(["room", "box", "loft"]), st.integers(0, 16 * 24 * 60)),
        min_size=1,
        max_size=4,
    ),
    st.sampled_from(Edge),
)
def test_the_shares_of_all_stays_make_one_when_the_stage_is_reached(
    stays: list[tuple[str, int]], edge: Edge
) -> None:
    timing = Timing(STUDIO, START, END)
    minutes = sorted(minute for _, minute in stays)
    places = [key for key, _ in stays]
    whens = [START + timedelta(minutes=minute) for minute in minutes]
    legs = list(zip(places, whens, strict=True))
    found = timing.reached(RESIN, Stage.HANDLE, edge, legs)
    ends = [*(when.timestamp() for when in whens[1:]), END.timestamp()]
    stop = END.timestamp() if found is None else found.timestamp()
    clocks = [timing.clock(RESIN, key, Stage.HANDLE, edge) for key in places]
    share = degree_over(
        (clock, when.timestamp(), min(end, stop))
        for clock, when, end in zip(clocks, whens, ends, strict=True)
        if clock is not None and when.timestamp() < stop
    )
    if found is None:
        assert share < 1.0
    else:
        assert share == pytest.approx(1.0, abs=1e-6)


@pytest.mark.parametrize("edge", list(Edge))
@pytest.mark.parametrize("hours", [0, 7, 14, 100, 200])
def test_a_clock_is_the_sciences_own_across_the_spring_change(
    timing: Timing, edge: Edge, hours: int
) -> None:
    law = RESIN.law(Stage.HANDLE)
    assert law is not None
    history = STUDIO.places[3].history(STUDIO.time_zone, START, END)
    begun = START + hours * HOUR
    expected = StageClock(law, history, edge, 10).reached(begun.timestamp())
    found = timing.reached(RESIN, Stage.HANDLE, edge, [("loft", begun)])
    assert expected is not None
    assert found is not None
    assert found.timestamp() == pytest.approx(expected, abs=1e-3)


def test_the_safe_edge_is_late_for_handle_and_early_for_closes(timing: Timing) -> None:
    legs = [("loft", START)]
    for stage, edge in ((Stage.HANDLE, Edge.LATE), (Stage.RECOAT_CLOSES, Edge.EARLY)):
        safe = timing.safe(RESIN, stage, legs)
        assert safe is not None
        assert safe == timing.reached(RESIN, stage, edge, legs)
    handle = [timing.reached(RESIN, Stage.HANDLE, edge, legs) for edge in Edge]
    assert handle == sorted(when for when in handle if when is not None)


def test_under_the_products_minimum_nothing_hardens(timing: Timing) -> None:
    assert timing.safe(RESIN, Stage.HANDLE, [("cellar", START)]) is None
    # Six hours in the cellar only shift the day on the shelf.
    legs = [("cellar", START), ("room", START + 6 * HOUR)]
    found = timing.reached(RESIN, Stage.HANDLE, Edge.LIKELY, legs)
    assert found is not None
    assert abs(found - START - 30 * HOUR) < timedelta(seconds=1)


def test_a_stage_is_not_reached_after_the_record_or_without_a_figure(timing: Timing) -> None:
    assert timing.safe(RESIN, Stage.HANDLE, [("room", END - HOUR)]) is None
    assert timing.safe(RESIN, Stage.FULL_CURE, [("room", START)]) is None
    assert timing.clock(RESIN, "room", Stage.FULL_CURE, Edge.LATE) is None


def test_a_sheet_with_cup_lives_of_two_masses_has_a_clock_of_the_larger(timing: Timing) -> None:
    found = timing.reached(RESIN, Stage.CUP_LIFE, Edge.LIKELY, [("room", START)])
    assert found is not None
    assert abs(found - START - 0.8 * HOUR) < timedelta(seconds=1)


def test_each_clock_and_record_is_made_once(timing: Timing) -> None:
    assert timing.history("loft") is timing.history("loft")
    one, other = (timing.clock(RESIN, "loft", Stage.HANDLE, Edge.LATE) for _ in range(2))
    assert one is other
    assert one is not timing.clock(RESIN, "loft", Stage.HANDLE, Edge.EARLY)
    assert one is not timing.clock(RESIN, "room", Stage.HANDLE, Edge.LATE)
    slate = timing.surface("loft", Material.SLATE)
    assert slate is timing.surface("loft", Material.SLATE)
    assert slate is not timing.surface("loft", Material.METAL)


def test_a_blank_follows_a_cold_start_by_63_per_cent_in_one_lag() -> None:
    # First-order lag: what is left of a step after one lag is 1/e of it.
    step = (
        PatternPoint(at=time(12), celsius=20),
        PatternPoint(at=time(12), celsius=10),
        PatternPoint(at=time(23), celsius=10),
        PatternPoint(at=time(23), celsius=20),
    )
    whole = Studio(name="Invented", places=(place(*step),))
    noon = utc(2026, 3, 20, 12)
    timing = Timing(whole, START, END)
    lag = whole.settings.surface_lag_hours[Material.SLATE]
    found = timing.surface("room", Material.SLATE).celsius_at((noon + lag * HOUR).timestamp())
    assert found == pytest.approx(10 + 10 / math.e, abs=0.02)


def test_without_a_lag_the_surface_is_the_air() -> None:
    whole = Studio(
        name="Invented", places=STUDIO.places, settings=Settings(surface_lag_hours={})
    )
    timing = Timing(whole, START, END)
    assert timing.surface("loft", Material.GLASS) == timing.history("loft")


def test_clocks_of_what_did_not_change_are_taken_over_and_others_are_not(
    timing: Timing,
) -> None:
    timing.clock(RESIN, "room", Stage.HANDLE, Edge.LIKELY)
    timing.clock(RESIN, "cellar", Stage.HANDLE, Edge.LIKELY)
    colder = replace(STUDIO.places[0], pattern=(steady(15),))
    changed = Timing(replace(STUDIO, places=(colder, *STUDIO.places[1:])), START, END)
    changed.take_over(timing)
    cellar = changed.clock(RESIN, "cellar", Stage.HANDLE, Edge.LIKELY)
    room = changed.clock(RESIN, "room", Stage.HANDLE, Edge.LIKELY)
    assert cellar is timing.clock(RESIN, "cellar", Stage.HANDLE, Edge.LIKELY)
    assert room is not timing.clock(RESIN, "room", Stage.HANDLE, Edge.LIKELY)


@pytest.mark.parametrize(
    "other",
    [
        Timing(STUDIO, START, END + HOUR),
        Timing(STUDIO, START - HOUR, END),
        Timing(replace(STUDIO, zone="Asia/Tokyo"), START, END),
    ],
)
def test_no_clock_is_taken_over_from_another_record_or_zone(
    timing: Timing, other: Timing
) -> None:
    known = other.clock(RESIN, "room", Stage.HANDLE, Edge.LIKELY)
    timing.take_over(other)
    assert timing.clock(RESIN, "room", Stage.HANDLE, Edge.LIKELY) is not known
