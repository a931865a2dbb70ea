"""Between one noun and the cells of its row.

The form of a table's rows is walked once, into a function that is then called for each row, or
for all of them where they are plain cells: a room's log has tens of thousands of them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from datetime import date, datetime, time
from operator import attrgetter, index
from typing import Any

from studio_planner.craft.saying import Saying
from studio_planner.storage.forms import Choice, Fixed, Form, Lookup, Maybe, Noun, Scalar
from studio_planner.storage.notation import (
    clock_of,
    instant_at,
    microseconds_of,
    time_of,
)
from studio_planner.storage.said import json_of, saying_in
from studio_planner.storage.tables import columns_of, is_branch

Cell = str | int | float | None
"""What SQLite keeps in one cell."""

Writer = Callable[[Any], list[Cell]]
"""Gives the cells for a value, without what is kept in tables of its own."""

ColumnsWriter = Callable[[Sequence[Any]], Iterable[Iterable[Cell]]]
"""Gives for many values one column after the other; errors as a Writer's, at any value."""

Reader = Callable[[Iterator[Cell], Mapping[str, object]], object]
"""Makes a value from its cells and from what its own tables gave, by field.

Raises ValueError, KeyError, TypeError or OverflowError for a cell that makes no sense and
InvalidEntry where a rule of the craft is broken.
"""

_TO_CELL: dict[type, Callable[[Any], Cell]] = {
    int: index,
    bool: int,
    float: float,
    datetime: microseconds_of,
    date: date.isoformat,
    time: clock_of,
    Saying: json_of,
}
_FROM_CELL: dict[type, Callable[[Any], object]] = {
    bool: bool,
    datetime: instant_at,
    date: date.fromisoformat,
    time: time_of,
    Saying: saying_in,
}


def writer_of(form: Form) -> Writer:
    """Make the writer for values of that form."""
    match form:
        case Scalar(kind=kind):
            to_cell = _TO_CELL.get(kind, str)
            return lambda value: [to_cell(value)]
        case Maybe(form=inner):
            nothing: list[Cell] = [None] * len(columns_of(form, ""))
            write = writer_of(inner)
            return lambda value: nothing if value is None else write(value)
        case Fixed(form=inner):
            write = writer_of(inner)
            return lambda values: [cell for value in values for cell in write(value)]
        case Lookup(key=key, value=figure):
            write, write_figure = writer_of(key), writer_of(figure)
            return lambda pair: write(pair[0]) + write_figure(pair[1])
        case Noun():
            return _noun_writer(form)
        case _:
            return _choice_writer(form) if isinstance(form, Choice) else lambda _: []


def columns_writer_of(form: Form) -> ColumnsWriter:
    """Make the writer for many values of that form at once."""
    parts = form.parts if isinstance(form, Noun) else ()
    plain = [(part.name, to) for part in parts if (to := _one_cell(part.form)) is not None]
    if not parts or len(plain) < len(parts):
        write = writer_of(form)
        return lambda values: zip(*map(write, values), strict=True)
    # As a reading is: nothing but cells of its own.
    return lambda values: [map(to, map(attrgetter(name), values)) for name, to in plain]


def _noun_writer(form: Noun) -> Writer:
    own = [(p.name, writer_of(p.form)) for p in form.parts if not is_branch(p.form)]
    return lambda value: [cell for name, write in own for cell in write(getattr(value, name))]


def _one_cell(form: Form) -> Callable[[Any], Cell] | None:
    """What makes the one cell of a scalar that may be absent or not; None for other forms."""
    if isinstance(form, Scalar):
        return _TO_CELL.get(form.kind, str)
    if isinstance(form, Maybe) and isinstance(form.form, Scalar):
        to_cell = _TO_CELL.get(form.form.kind, str)
        return lambda value: None if value is None else to_cell(value)
    return None


def _choice_writer(form: Choice) -> Writer:
    names = _names(form)[1:]
    writers = {option.noun: (_names(option), writer_of(option)) for option in form.options}

    def write(value: object) -> list[Cell]:
        own, write_option = writers[type(value)]
        filled = dict(zip(own, write_option(value), strict=True))
        return [form.holding(value).words, *(filled.get(name) for name in names)]

    return write


def reader_of(form: Form) -> Reader:
    """Make the reader for values of that form."""
    match form:
        case Scalar(kind=kind):
            from_cell = _from_cell(kind)
            return lambda cells, _: from_cell(next(cells))
        case Maybe(form=inner):
            return _maybe_reader(inner)
        case Fixed(form=Scalar(kind=kind), count=count):
            from_cell = _from_cell(kind)
            return lambda cells, _: tuple(from_cell(next(cells)) for _ in range(count))
        case Lookup(key=key, value=figure):
            read, read_figure = reader_of(key), reader_of(figure)
            return lambda cells, inside: (read(cells, inside), read_figure(cells, inside))
        case Noun():
            return _noun_reader(form)
        case Choice():
            return _choice_reader(form)
        case _:
            message = f"{form!r} has no cells"
            raise TypeError(message)


def _noun_reader(form: Noun) -> Reader:
    own = [(p.name, reader_of(p.form)) for p in form.parts if not is_branch(p.form)]
    make = form.noun

    def read(cells: Iterator[Cell], inside: Mapping[str, object]) -> object:
        return make(**{name: part(cells, {}) for name, part in own}, **inside)

    return read


def _maybe_reader(inner: Form) -> Reader:
    if isinstance(inner, Scalar):
        from_cell = _from_cell(inner.kind)
        return lambda cells, _: None if (cell := next(cells)) is None else from_cell(cell)
    # The first column of every noun that may be absent is one that the noun cannot be without.
    width = len(columns_of(inner, ""))
    read_inner = reader_of(inner)

    def read(cells: Iterator[Cell], _: Mapping[str, object]) -> object:
        own = [next(cells) for _ in range(width)]
        return None if own[0] is None else read_inner(iter(own), {})

    return read


def _choice_reader(form: Choice) -> Reader:
    names = _names(form)
    readers = {option.words: (_names(option), reader_of(option)) for option in form.options}

    def read(cells: Iterator[Cell], _: Mapping[str, object]) -> object:
        found = dict(zip(names, [next(cells) for _ in names], strict=True))
        own, read_option = readers[str(found["kind"])]
        return read_option(iter([found[name] for name in own]), {})

    return read


def _from_cell(kind: type) -> Callable[[Cell], object]:
    make = None if kind in {str, int, float} else _FROM_CELL.get(kind, kind)

    def from_cell(cell: Cell) -> object:
        if cell is None:
            message = "a value is missing"
            raise ValueError(message)
        return cell if make is None else make(cell)

    return from_cell


def _names(form: Form) -> tuple[str, ...]:
    return tuple(column.name for column in columns_of(form, ""))
