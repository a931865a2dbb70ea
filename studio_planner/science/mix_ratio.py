"""Part A and part B: ratios by weight and by volume, overshoot, the smallest mix."""

from __future__ import annotations

import math
from dataclasses import dataclass

PRACTICAL_FLOOR_GRAMS = 25.0
"""Smallest mix worth mixing [g]: wall loss (common practice, 25 to 30 g)."""

RATIO_TOLERANCE = 0.02
"""Error of the smaller part that is aimed at [-] (common practice)."""


class MassError(ValueError):
    """Amounts that can't be weighed; the text is for the maker."""


@dataclass(frozen=True, slots=True)
class Parts:
    """Grams of part A and part B.

    Examples
    --------
    >>> Parts(90.0, 30.0).total
    120.0
    """

    a_grams: float
    b_grams: float

    @property
    def total(self) -> float:
        """The mixed mass [g]."""
        return self.a_grams + self.b_grams


@dataclass(frozen=True, slots=True)
class MixRatio:
    """Grams of B for one gram of A; made with `by_weight` or `by_volume`."""

    b_per_a: float

    @staticmethod
    def by_weight(a: float, b: float) -> MixRatio:
        """Return the ratio of a sheet that gives parts by weight.

        Examples
        --------
        >>> MixRatio.by_weight(3, 1).parts(120.0)
        Parts(a_grams=90.0, b_grams=30.0)

        Raises
        ------
        MassError
            If a part is not more than zero.
        """
        _positive("A mix ratio", a, b)
        return MixRatio(b / a)

    @staticmethod
    def by_volume(a: float, b: float, *, a_density: float, b_density: float) -> MixRatio:
        """Return the ratio by weight of a sheet that gives parts by volume.

        Parameters
        ----------
        a, b
            Parts by volume.
        a_density, b_density
            Densities of A and B [g/cm³]; without both a volume ratio can't be weighed.

        Raises
        ------
        MassError
            If a part or a density is not more than zero.

        Examples
        --------
        >>> ratio = MixRatio.by_volume(2, 1, a_density=1.15, b_density=1.01)
        >>> round(100 * ratio.b_per_a, 1)
        43.9
        """
        _positive("A mix ratio", a, b)
        _positive("A density", a_density, b_density)
        return MixRatio(b * b_density / (a * a_density))

    def parts(self, total_grams: float) -> Parts:
        """Return the A and B [g] of a mixed mass.

        Examples
        --------
        >>> parts = MixRatio.by_weight(100, 44).parts(150.0)
        >>> round(parts.a_grams, 1), round(parts.b_grams, 1)
        (104.2, 45.8)
        """
        a_grams = total_grams / (1.0 + self.b_per_a)
        return Parts(a_grams, total_grams - a_grams)

    def b_for(self, a_grams: float) -> float:
        """Return the B [g] that belongs to an A really weighed [g]."""
        return a_grams * self.b_per_a

    def a_for(self, b_grams: float) -> float:
        """Return the A [g] that belongs to a B really weighed [g]."""
        return b_grams / self.b_per_a

    def smallest_mix(
        self,
        scale_step_grams: float,
        tolerance: float = RATIO_TOLERANCE,
        floor_grams: float = PRACTICAL_FLOOR_GRAMS,
    ) -> float:
        """Return the smallest mix [g] that a scale can weigh within a tolerance.

        The smaller part has to be at least ``step / tolerance`` (50 steps for 2 %).

        Parameters
        ----------
        scale_step_grams
            What the scale can show [g].
        tolerance
            Error allowed on the smaller part [-].
        floor_grams
            Least mix whatever the scale [g].

        Raises
        ------
        MassError
            If the step or the tolerance is not more than zero.

        Examples
        --------
        >>> ratio = MixRatio.by_weight(100, 44)
        >>> round(ratio.smallest_mix(1.0), 1), ratio.smallest_mix(0.1)
        (163.6, 25.0)
        """
        _positive("A scale's step or tolerance", scale_step_grams, tolerance)
        smaller_share = min(1.0, self.b_per_a) / (1.0 + self.b_per_a)
        return max(scale_step_grams / tolerance / smaller_share, floor_grams)


def a_to_add(ratio: MixRatio, weighed: Parts) -> float:
    """Return the A [g] to add when too much B was poured: nothing is scooped out.

    Examples
    --------
    >>> a_to_add(MixRatio.by_weight(3, 1), Parts(90.0, 33.0))
    9.0
    """
    return max(0.0, ratio.a_for(weighed.b_grams) - weighed.a_grams)


def hardener_error(ratio: MixRatio, weighed: Parts) -> float:
    """Return by what share the B weighed is too much (positive) or too little [-].

    2 % is aimed at, 3 % is worth a note, 5 % is not to be poured (common practice).

    Examples
    --------
    >>> round(hardener_error(MixRatio.by_weight(3, 1), Parts(90.0, 31.5)), 3)
    0.05

    Raises
    ------
    MassError
        If no A was weighed.
    """
    _positive("The part A weighed", weighed.a_grams)
    return weighed.b_grams / ratio.b_for(weighed.a_grams) - 1.0


def _positive(what: str, *values: float) -> None:
    if not all(0.0 < value < math.inf for value in values):
        numbers = " : ".join(f"{value:g}" for value in values)
        msg = f"{what} of {numbers} can't be weighed; every number has to be more than zero."
        raise MassError(msg)
