"""What packing means for a promise: the same in a model as the order itself says."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from studio_planner.craft.orders import Courier, Order, Promise
from studio_planner.craft.settings import Settings
from studio_planner.craft.studio import Studio
from studio_planner.planning.exact.grid import Grid
from studio_planner.planning.exact.promised import Promised
from studio_planner.planning.solver import Model, Search
from tests.planning.exact.frames import examples

_STEP = 300
_START = datetime(2026, 3, 26, 7, tzinfo=UTC)
"""Three days before the clocks change in Europe."""

_ORDERS = st.builds(
    Order,
    key=st.just("o"),
    name=st.just("Order"),
    pieces=st.just(("p",)),
    promised=st.integers(0, 9).map(lambda days: date(2026, 3, 26) + timedelta(days=days)),
    promise=st.sampled_from(Promise),
    courier=st.builds(
        Courier,
        days=st.sampled_from([frozenset({0, 1, 2, 3, 4}), frozenset({2}), frozenset(range(7))]),
        cut_off=st.sampled_from([time(16), time(9, 7), time(2, 30)]),
        transit_days=st.integers(0, 3),
    ),
    packing_minutes=st.sampled_from([15, 17, 1, 60]),
    opens=st.sampled_from([time(9), time(8, 3)]),
    weight=st.sampled_from([1.0, 2.5, 0.37]),
)
_SLOTS = st.integers(0, 12 * 24 * 12)
_SPARES = st.sampled_from([48.0, 0.0, 7.25])


def _promised(order: Order, spare: float) -> Promised:
    studio = Studio(name="Any", zone="Europe/Berlin", settings=Settings(spare_hours=spare))
    return Promised(studio, order, Grid(int(_START.timestamp()), _STEP))


def _truly(order: Order, begins: int, spare: float) -> tuple[float, float]:
    """Weighted seconds late, and seconds of spare that lack, when packing begins so."""
    zone = Studio(name="Any", zone="Europe/Berlin").time_zone
    packed = _START + timedelta(seconds=begins * _STEP, minutes=order.packing_minutes)
    ahead = (order.due(zone) - order.leaves(zone, packed)).total_seconds()
    return order.weight * max(0.0, -ahead), max(0.0, spare * 3600 - max(0.0, ahead))


@given(_ORDERS, _SLOTS, _SPARES)
def test_an_order_leaves_when_it_says_for_every_slot(
    order: Order, begins: int, spare: float
) -> None:
    found = _promised(order, spare).leaving(begins)
    late, lacking = _truly(order, begins, spare)
    assert abs(found.late - late) <= 0.5
    assert abs(found.lacking - lacking) <= 0.5


@settings(max_examples=examples(40))
@given(_ORDERS, _SLOTS, _SLOTS, _SLOTS, _SPARES)
def test_a_model_counts_what_packing_in_a_slot_really_costs(
    order: Order, one: int, other: int, begins: int, spare: float
) -> None:
    first, begins, last = sorted((one, other, begins))
    model = Model()
    late, lacking = _promised(order, spare).bind(model, begins, first, last)
    model.aim(3 * late + lacking)
    answer = model.solve(Search(5.0))
    truly = _truly(order, begins, spare)
    assert answer.found
    assert abs(answer.of(late) - truly[0]) <= 1.0
    assert abs(answer.of(lacking) - truly[1]) <= 1.0


@given(_ORDERS, st.integers(0, 9 * 86_400))
def test_the_last_slot_for_so_much_lateness_is_the_last(order: Order, most: int) -> None:
    promised = _promised(order, 0.0)
    last = promised.begins_by(most)
    assert promised.leaving(last).late <= most
    assert promised.leaving(last + 1).late > most


def test_a_market_order_that_is_late_lacks_all_of_its_spare_and_no_more() -> None:
    order = Order(
        key="o",
        name="Order",
        pieces=("p",),
        promised=date(2026, 3, 27),
        promise=Promise.MARKET,
    )
    model = Model()
    begins = model.between(0, 3000)
    _, lacking = _promised(order, 48.0).bind(model, begins, 0, 3000)
    model.equal(begins, 2000)
    model.aim(lacking)
    answer = model.solve(Search(5.0))
    assert answer.found
    assert answer.of(lacking) == 48 * 3600
