"""Curves of ln(hours) against temperature, in pieces that can be added and capped.

Every piece is ``a + b/T + c*T`` with T in kelvin: ``b`` is an activation energy over the gas
constant, ``c`` a fixed factor per degree. Pieces meet at knots, given in °C.
"""

from __future__ import annotations

import math
from bisect import bisect_left
from dataclasses import dataclass
from itertools import pairwise
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

KELVIN_AT_ZERO_CELSIUS = 273.15
COLDEST_CELSIUS = -90.0
WARMEST_CELSIUS = 200.0

_ROUNDING = 1e-12

Piece = tuple[float, float, float]


def kelvin(celsius: float) -> float:
    """Return the absolute temperature in kelvin.

    Examples
    --------
    >>> kelvin(20.0)
    293.15
    """
    return celsius + KELVIN_AT_ZERO_CELSIUS


def piece_at(piece: Piece, celsius: float) -> float:
    """Return the value of one piece at a temperature in °C.

    Examples
    --------
    >>> piece_at((1.0, 0.0, 0.0), 20.0)
    1.0
    """
    absolute = celsius + KELVIN_AT_ZERO_CELSIUS
    a, b, c = piece
    return a + b / absolute + c * absolute


def piece_through(celsius: float, value: float, *, b: float = 0.0, c: float = 0.0) -> Piece:
    """Return the piece of slope ``b`` and ``c`` that has a value at a temperature.

    Examples
    --------
    >>> round(piece_at(piece_through(20.0, 1.5, b=5000.0), 20.0), 9)
    1.5
    """
    absolute = kelvin(celsius)
    return (value - b / absolute - c * absolute, b, c)


@dataclass(frozen=True, slots=True)
class Curve:
    """A continuous curve of ln(hours): one more piece than knots, knots rising in °C."""

    knots: tuple[float, ...]
    pieces: tuple[Piece, ...]

    def at(self, celsius: float) -> float:
        """Return the value at a temperature in °C."""
        a, b, c = self.pieces[bisect_left(self.knots, celsius)]
        absolute = celsius + KELVIN_AT_ZERO_CELSIUS
        return a + b / absolute + c * absolute

    def spans(self) -> Iterator[tuple[float, float, Piece]]:
        """Yield (from °C, to °C, piece) from the coldest to the warmest temperature."""
        ends = (COLDEST_CELSIUS, *self.knots, WARMEST_CELSIUS)
        yield from zip(ends, ends[1:], self.pieces, strict=False)


def sum_of(first: Curve, second: Curve, sign: float = 1.0) -> Curve:
    """Return ``first + sign * second``.

    Examples
    --------
    >>> line = Curve((), ((1.0, 0.0, 0.0),))
    >>> sum_of(line, line, -1.0).at(20.0)
    0.0
    """
    knots = tuple(sorted({*first.knots, *second.knots}))
    ends = (COLDEST_CELSIUS, *knots, WARMEST_CELSIUS)
    pieces = []
    for low, high in pairwise(ends):
        middle = (low + high) / 2
        mine = first.pieces[bisect_left(first.knots, middle)]
        other = second.pieces[bisect_left(second.knots, middle)]
        a, b, c = (m + sign * o for m, o in zip(mine, other, strict=True))
        pieces.append((a, b, c))
    return Curve(knots, tuple(pieces))


def capped_from_cold(curve: Curve) -> Curve:
    """Return the running minimum from the coldest side: warmth never lengthens.

    Whatever is late enough in a colder room is late enough in a warmer one.

    Examples
    --------
    >>> rising = Curve((), ((0.0, -300.0, 0.0),))
    >>> capped_from_cold(rising).at(50.0) == capped_from_cold(rising).at(0.0)
    True
    """
    return _joined(_capped(list(_monotone_spans(curve)), 1.0))


def capped_from_warm(curve: Curve) -> Curve:
    """Return the running maximum from the warmest side: cold never shortens.

    Whatever is early enough in a warmer room is early enough in a colder one.

    Examples
    --------
    >>> rising = Curve((), ((0.0, -300.0, 0.0),))
    >>> capped_from_warm(rising).at(50.0) == capped_from_warm(rising).at(0.0)
    True
    """
    mirrored = [(high, low, piece) for low, high, piece in _monotone_spans(curve)]
    spans = _capped(mirrored[::-1], -1.0)
    return _joined([(high, low, piece) for low, high, piece in spans][::-1])


_Span = tuple[float, float, Piece]


def _monotone_spans(curve: Curve) -> Iterator[_Span]:
    for low, high, piece in curve.spans():
        _, b, c = piece
        turn = math.sqrt(b / c) - KELVIN_AT_ZERO_CELSIUS if b * c > 0 else low
        if low < turn < high:
            yield low, turn, piece
            yield turn, high, piece
        else:
            yield low, high, piece


def _capped(spans: Sequence[_Span], sign: float) -> list[_Span]:
    kept: list[_Span] = []
    level = math.inf
    for start, end, piece in spans:
        first, last = sign * piece_at(piece, start), sign * piece_at(piece, end)
        if first - level <= _ROUNDING:
            level = first
        flat: Piece = (sign * level, 0.0, 0.0)
        if last >= level - _ROUNDING:
            kept.append((start, end, flat))
            continue
        cross = start if first == level else _crossing(piece, sign * level, start, end)
        kept += [(start, cross, flat)] if cross != start else []
        kept.append((cross, end, piece))
        level = last
    return kept


def _crossing(piece: Piece, value: float, start: float, end: float) -> float:
    above = piece_at(piece, start) > value
    for _ in range(60):
        middle = (start + end) / 2
        if (piece_at(piece, middle) > value) == above:
            start = middle
        else:
            end = middle
    return (start + end) / 2


def _joined(spans: Sequence[_Span]) -> Curve:
    knots: list[float] = []
    pieces: list[Piece] = [spans[0][2]]
    for low, _, piece in spans[1:]:
        if piece != pieces[-1]:
            knots.append(low)
            pieces.append(piece)
    return Curve(tuple(knots), tuple(pieces))
