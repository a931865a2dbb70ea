"""Amounts in words, and the worked examples of the modules that have them."""

from __future__ import annotations

import doctest

import pytest

from studio_planner.craft.settings import FilmUnit, MassUnit, Units
from studio_planner.services import amount_words
from studio_planner.services.amount_words import film_said, grams_said
from studio_planner.services.costs import order_cost


@pytest.mark.parametrize("module", [amount_words, order_cost])
def test_the_worked_examples_hold(module: object) -> None:
    assert doctest.testmod(module).failed == 0  # type: ignore[arg-type]


def test_amounts_are_said_in_the_units_that_the_studio_reads() -> None:
    metric, other = Units(), Units(mass=MassUnit.OUNCE, film=FilmUnit.INCH)
    assert [f(v, metric) for f, v in _ALL] == ["28.3 g", "2.5 mm"]
    assert [f(v, other) for f, v in _ALL] == ["0.998 oz", "0.100 in"]


_ALL = ((grams_said, 28.3), (film_said, 2.54))
