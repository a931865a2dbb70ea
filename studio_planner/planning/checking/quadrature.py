"""Adaptive Simpson quadrature, and where a running integral reaches an amount.

Both are for rates in a room that warms or cools evenly: smooth inside the limits, rising or
falling throughout, about as an exponential does. Whoever calls breaks the stretch at every kink
first.

References
----------
G. F. Kuncir, Algorithm 103: Simpson's rule integrator, Communications of the ACM 5 (1962) 347;
J. N. Lyness, Journal of the ACM 16 (1969) 483-495 for the correction by a fifteenth.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable

_RELATIVE_ERROR = 1e-7
_DEEPEST = 30
_NEARLY_STEADY = 0.05
"""An exponential that changes by a share x is integrated by Simpson's rule to x^4 / 2880."""
_NEARLY_STRAIGHT = 1e-3
_CLOSE_SECONDS = 1e-3


def integral(f: Callable[[float], float], start: float, end: float) -> float:
    """Integrate a positive rate `f` from `start` to `end`, to a millionth of the result.

    Examples
    --------
    >>> import math
    >>> round(integral(math.exp, 0.0, 1.0), 8) == round(math.e - 1.0, 8)
    True
    """
    middle = (start + end) / 2
    values = f(start), f(middle), f(end)
    whole = _simpson(end - start, *values)
    if _nearly_steady(*values):
        return whole
    return _halved(f, (start, end), values, whole, _DEEPEST)


def _nearly_steady(first: float, middle: float, last: float) -> bool:
    bends = abs(first - 2 * middle + last)
    return abs(last - first) <= _NEARLY_STEADY * middle and bends <= _NEARLY_STRAIGHT * middle


def _simpson(width: float, first: float, middle: float, last: float) -> float:
    return width * (first + 4 * middle + last) / 6


def _halved(
    f: Callable[[float], float],
    limits: tuple[float, float],
    values: tuple[float, float, float],
    whole: float,
    depth: int,
) -> float:
    start, end = limits
    first, centre, last = values
    middle = (start + end) / 2
    left, right = f((start + middle) / 2), f((middle + end) / 2)
    one = _simpson(middle - start, first, left, centre)
    two = _simpson(end - middle, centre, right, last)
    error = (one + two - whole) / 15
    # Five looks may agree by chance, where the fourth slope turns; one more halving tells.
    looked = depth < _DEEPEST
    if (looked and abs(error) <= _RELATIVE_ERROR * abs(whole)) or not depth:
        return one + two + error
    return _halved(f, (start, middle), (first, left, centre), one, depth - 1) + _halved(
        f, (middle, end), (centre, right, last), two, depth - 1
    )


def reached_at(f: Callable[[float], float], start: float, end: float, amount: float) -> float:
    """Return where the integral of a positive `f` from `start` reaches `amount`.

    The amount must be reached between `start` and `end`. Newton's steps on the integral, kept
    between the ends found so far; within a thousandth of a second.

    Examples
    --------
    >>> round(reached_at(lambda x: 2.0 * x, 1.0, 9.0, 8.0), 3)
    3.0
    """
    low, high = start, end
    guess = min(end, start + amount / f(start))
    step = high - low
    while min(abs(step), high - low) > _CLOSE_SECONDS:
        missing = amount - integral(f, start, guess)
        low, high = (guess, high) if missing > 0 else (low, guess)
        step = missing / f(guess)
        leaps = abs(step) > _CLOSE_SECONDS and not low < guess + step < high
        guess = (low + high) / 2 if leaps else guess + step
    return guess
