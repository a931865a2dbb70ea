"""Between one noun and the cells of its row."""

from __future__ import annotations

import operator
from datetime import date, datetime, time
from functools import cache
from typing import TYPE_CHECKING, Any

from studio_planner.storage.forms import Choice, Fixed, Form, Lookup, Maybe, Noun, Scalar
from studio_planner.storage.notation import (
    clock_of,
    instant_at,
    microseconds_of,
    time_of,
)
from studio_planner.storage.tables import columns_of, is_branch

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator

Cell = str | int | float | None
"""What SQLite keeps in one cell."""

_TO_CELL: dict[type, Callable[[Any], Cell]] = {
    str: str,
    int: operator.index,
    bool: int,
    float: float,
    datetime: microseconds_of,
    date: date.isoformat,
    time: clock_of,
}
_FROM_CELL: dict[type, Callable[[Any], object]] = {
    bool: bool,
    datetime: instant_at,
    date: date.fromisoformat,
    time: time_of,
}


def cells_of(form: Form, value: object) -> list[Cell]:
    """The cells for a value of that form, without what is kept in tables of its own."""
    if isinstance(form, Maybe):
        return [None] * _width(form) if value is None else cells_of(form.form, value)
    if isinstance(form, Scalar):
        return [_TO_CELL.get(form.kind, str)(value)]
    if isinstance(form, Fixed):
        return [cell for one in _items(value) for cell in cells_of(form.form, one)]
    if isinstance(form, Lookup):
        key, figure = _items(value)
        return cells_of(form.key, key) + cells_of(form.value, figure)
    if isinstance(form, Noun):
        return [
            cell
            for part in form.parts
            if not is_branch(part.form)
            for cell in cells_of(part.form, getattr(value, part.name))
        ]
    return _cells_of_choice(form, value) if isinstance(form, Choice) else []


def _cells_of_choice(form: Choice, value: object) -> list[Cell]:
    chosen = form.holding(value)
    filled = dict(zip(_names(chosen), cells_of(chosen, value), strict=True))
    return [chosen.words, *(filled.get(name) for name in _names(form)[1:])]


def value_from(form: Form, cells: Iterator[Cell], inside: dict[str, object]) -> object:
    """Make a value of that form from its cells and from what its own tables gave (`inside`).

    Raises ValueError, KeyError, TypeError or OverflowError for a cell that makes no sense and
    InvalidEntry where a rule of the craft is broken.
    """
    if isinstance(form, Scalar):
        return _scalar_from(form, next(cells))
    if isinstance(form, Maybe):
        return _maybe_from(form, cells)
    if isinstance(form, Fixed):
        return tuple(_scalar_from(form.form, next(cells)) for _ in range(form.count))
    if isinstance(form, Noun):
        given = {
            part.name: inside[part.name]
            if is_branch(part.form)
            else value_from(part.form, cells, inside)
            for part in form.parts
        }
        return form.noun(**given)
    if isinstance(form, Choice):
        return _choice_from(form, cells)
    if isinstance(form, Lookup):
        return (_scalar_from(form.key, next(cells)), _scalar_from(form.value, next(cells)))
    message = f"{form!r} has no cells"
    raise TypeError(message)


def _maybe_from(form: Maybe, cells: Iterator[Cell]) -> object:
    # The first column of every noun that may be absent is one that the noun cannot be without.
    if isinstance(form.form, Scalar):
        cell = next(cells)
        return None if cell is None else _scalar_from(form.form, cell)
    own = [next(cells) for _ in range(_width(form))]
    return None if own[0] is None else value_from(form.form, iter(own), {})


def _choice_from(form: Choice, cells: Iterator[Cell]) -> object:
    own = dict(zip(_names(form), [next(cells) for _ in range(_width(form))], strict=True))
    words = str(own["kind"])
    chosen = form.named(words)
    if chosen is None:
        raise ValueError(words)
    return value_from(chosen, iter([own[name] for name in _names(chosen)]), {})


def _scalar_from(form: Scalar, cell: Cell) -> object:
    if cell is None:
        message = "a value is missing"
        raise ValueError(message)
    if form.kind in {str, int, float}:
        return cell
    return _FROM_CELL.get(form.kind, form.kind)(cell)


def _items(value: object) -> tuple[object, ...]:
    if not isinstance(value, tuple):
        message = f"{value!r} is not a pair"
        raise TypeError(message)
    return value


@cache
def _names(form: Form) -> tuple[str, ...]:
    return tuple(column.name for column in columns_of(form, ""))


@cache
def _width(form: Form) -> int:
    return len(_names(form))
