"""Quantiles of weighed values, against the ones that can be worked out by hand."""

from __future__ import annotations

from statistics import NormalDist

import pytest

from studio_planner.science.quantiles import quantile


def test_the_median_of_even_weights_is_the_middle_value() -> None:
    assert quantile([1.0, 2.0, 10.0], [0.2, 0.2, 0.2], 0.5) == pytest.approx(2.0)
    assert quantile([1.0, 3.0], [5.0, 5.0], 0.5) == pytest.approx(2.0)


def test_only_shares_of_all_the_weight_count() -> None:
    values, weights = [0.0, 1.0, 2.0], [1.0, 3.0, 2.0]
    other = [30.0 * weight for weight in weights]
    for share in (0.1, 0.5, 0.9):
        assert quantile(values, weights, share) == pytest.approx(quantile(values, other, share))


@pytest.mark.parametrize("share", [0.05, 0.5, 0.9])
def test_a_finely_weighed_bell_has_the_quantiles_of_its_curve(share: float) -> None:
    bell = NormalDist(3.0, 0.5)
    values = [3.0 + n / 200 for n in range(-600, 601)]
    found = quantile(values, [bell.pdf(value) for value in values], share)
    assert found == pytest.approx(bell.inv_cdf(share), abs=1e-4)
