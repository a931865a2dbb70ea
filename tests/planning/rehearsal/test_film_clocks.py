"""Films in simulated weeks: the same clocks as everywhere, and laws that err as stated."""

from __future__ import annotations

import math
from datetime import timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from scipy.stats import norm

from studio_planner.planning.rehearsal.chances import NOTHING_HAPPENS, Chances
from studio_planner.planning.rehearsal.films import Films, Leg, scattered
from studio_planner.planning.rehearsal.rooms import Grid, forecast, grid_over
from studio_planner.science.clocks import StageClock, reached_through
from studio_planner.science.stages import Edge, Stage
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.checker.hand_made import PRIMER, RESIN

if TYPE_CHECKING:
    from studio_planner.craft.products import Product

ROOM = make_studio(0, 2, 2, 1).places[0]
SLOW = make_studio(0, 2, 2, 1).product("slow")
ZONE = ZoneInfo("Europe/Berlin")
END = START + timedelta(days=28)
GRID = grid_over(START, END)
STARTS = GRID.start + np.array([0.0, 100.0, 3600.0, 50_000.0, 400_000.0])
STAGES = (Stage.WORKING_TIME, Stage.RECOAT_OPENS, Stage.RECOAT_CLOSES, Stage.FULL_CURE)


def films(celsius: np.ndarray, product: Product, off: float = 0.0) -> Films:
    """Films in weeks of air (weeks, cells) in two places: as given, and 3 °C warmer."""
    weeks = len(celsius)
    scatter = {(product.key, stage): np.full(weeks, off) for stage in Stage}
    air = {"room": celsius, "box": celsius + 3.0}
    return Films(GRID, air, scatter, [product])


def expected(weeks: int) -> np.ndarray:
    return np.tile(forecast(ROOM, ZONE, GRID, NOTHING_HAPPENS).celsius, (weeks, 1))


@pytest.mark.parametrize("stage", STAGES)
def test_a_stage_is_reached_when_its_exact_clock_says(stage: Stage) -> None:
    law = SLOW.law(stage)
    assert law is not None
    clock = StageClock(law, ROOM.history(ZONE, START, END), Edge.LIKELY, SLOW.minimum_celsius)
    found = films(expected(5), SLOW).reached(SLOW, stage, [Leg("room", STARTS)])
    exact = [clock.reached(float(start)) for start in STARTS]
    assert found == pytest.approx(np.array(exact), abs=30.0)


def test_a_piece_that_moves_reaches_a_stage_as_its_exact_clocks_say() -> None:
    law = SLOW.law(Stage.HANDLE)
    assert law is not None
    history = ROOM.history(ZONE, START, END)
    warm = type(history)(
        history.seconds, tuple(c + 3.0 for c in history.celsius), history.band, history.humidity
    )
    clocks = [
        StageClock(law, one, Edge.LIKELY, SLOW.minimum_celsius) for one in (warm, history)
    ]
    moves = STARTS + np.array([0.0, 7200.0, 20_000.0, 80_000.0, 300_000.0])
    legs = [Leg("box", STARTS), Leg("room", moves)]
    found = films(expected(5), SLOW).reached(SLOW, Stage.HANDLE, legs)
    exact = [
        reached_through([(clocks[0], float(start)), (clocks[1], float(move))])
        for start, move in zip(STARTS, moves, strict=True)
    ]
    assert found == pytest.approx(np.array(exact), abs=30.0)


def test_hours_below_the_minimum_do_not_count_before_and_count_at_it_after() -> None:
    cold = np.full((1, GRID.cells), 5.0)
    start = [Leg("room", np.array([GRID.start]))]
    opens = films(cold, RESIN).reached(RESIN, Stage.RECOAT_OPENS, start)
    assert opens[0] == math.inf
    closes = films(cold, RESIN).reached(RESIN, Stage.RECOAT_CLOSES, start)
    law = RESIN.law(Stage.RECOAT_CLOSES)
    assert law is not None
    assert closes[0] - GRID.start == pytest.approx(3600.0 * law.hours(12.0), abs=5.0)


def test_a_stage_that_no_sheet_tells_or_no_record_reaches_never_comes() -> None:
    mild = films(np.full((2, GRID.cells), 20.0), PRIMER)
    start = [Leg("room", np.full(2, GRID.start))]
    assert mild.reached(PRIMER, Stage.RECOAT_CLOSES, start).tolist() == [math.inf] * 2
    late = [Leg("room", np.array([GRID.end - 60.0, math.inf]))]
    assert mild.reached(PRIMER, Stage.FULL_CURE, late).tolist() == [math.inf] * 2


@pytest.mark.parametrize("celsius", [14.0, 20.0, 24.0])
def test_laws_err_as_their_bands_say(celsius: float) -> None:
    weeks = 4000
    grid = Grid(GRID.start, 24 * 2 * 7)
    scatter = scattered(np.random.default_rng(5), weeks, [SLOW], Chances())
    drawn = Films(grid, {"room": np.full((weeks, grid.cells), celsius)}, scatter, [SLOW])
    start = [Leg("room", np.full(weeks, grid.start))]
    law = SLOW.law(Stage.RECOAT_OPENS)
    assert law is not None
    hours = (drawn.reached(SLOW, Stage.RECOAT_OPENS, start) - grid.start) / 3600.0
    early, likely, late = (law.hours(celsius, edge) for edge in Edge)
    inside = float(np.mean((hours >= early) & (hours <= late)))
    assert inside == pytest.approx(0.90, abs=0.02)
    assert float(np.mean(hours > likely)) == pytest.approx(0.5, abs=0.03)
    # The whole distribution: normal on ln t, as wide as the band on either side.
    for share in (0.05, 0.25, 0.75, 0.95):
        z = norm.ppf(share) / norm.ppf(0.95)
        width = math.log(likely / early) if z < 0.0 else math.log(late / likely)
        quantile = likely * math.exp(z * width)
        assert float(np.quantile(hours, share)) == pytest.approx(quantile, rel=0.02)


def test_the_stages_of_a_product_err_together_and_other_products_on_their_own() -> None:
    drawn = scattered(np.random.default_rng(6), 20_000, [RESIN, PRIMER], Chances(together=0.7))
    opens, closes = (drawn["resin", s] for s in (Stage.RECOAT_OPENS, Stage.RECOAT_CLOSES))
    other = drawn["primer", Stage.RECOAT_OPENS]
    assert float(opens.std()) == pytest.approx(1.0, abs=0.02)
    assert float(np.corrcoef(opens, closes)[0, 1]) == pytest.approx(0.7, abs=0.02)
    assert float(np.corrcoef(opens, other)[0, 1]) == pytest.approx(0.0, abs=0.03)
