"""What each noun of the craft consists of, read off its dataclass.

The studio file and the exchange format both follow these forms, so neither can forget a field.
"""

from __future__ import annotations

import re
from dataclasses import MISSING, dataclass, fields, is_dataclass
from datetime import date, datetime, time
from enum import StrEnum
from functools import cache
from types import NoneType, UnionType
from typing import Any, Union, get_args, get_origin, get_type_hints

from studio_planner.craft.saying import Saying
from studio_planner.craft.shapes import Shape

_SCALARS = (str, int, float, bool, datetime, date, time, Saying)
# Names that craft imports for type checkers only.
_KNOWN_NAMES = {"Shape": Shape, "date": date, "datetime": datetime, "time": time}


@dataclass(frozen=True, slots=True)
class Scalar:
    """A single value: text, number, flag, instant, date, time, saying, or one of some words."""

    kind: type


@dataclass(frozen=True, slots=True)
class Maybe:
    """Something that may be absent."""

    form: Form


@dataclass(frozen=True, slots=True)
class Many:
    """Any number of the same; `kind` is tuple (in order) or frozenset (in no order)."""

    form: Form
    kind: type


@dataclass(frozen=True, slots=True)
class Fixed:
    """A fixed number of scalars, such as length and width."""

    form: Scalar
    count: int


@dataclass(frozen=True, slots=True)
class Lookup:
    """A figure for each of some words."""

    key: Scalar
    value: Scalar


@dataclass(frozen=True, slots=True)
class Part:
    """One field of a noun; `required` when the noun has no default for it."""

    name: str
    form: Form
    required: bool


@dataclass(frozen=True, slots=True)
class Noun:
    """A dataclass of the craft and its fields in order."""

    noun: type
    parts: tuple[Part, ...]

    @property
    def words(self) -> str:
        """Its name in lower-case words, such as "free area"."""
        return re.sub(r"(?<!^)(?=[A-Z])", " ", self.noun.__name__).lower()


@dataclass(frozen=True, slots=True)
class Choice:
    """One of several nouns, told apart by their words."""

    options: tuple[Noun, ...]

    def named(self, words: str) -> Noun | None:
        """The option of that name, or None."""
        return next((option for option in self.options if option.words == words), None)

    def holding(self, value: object) -> Noun:
        """The option that `value` is one of."""
        return next(option for option in self.options if type(value) is option.noun)


Form = Scalar | Maybe | Many | Fixed | Lookup | Noun | Choice


@cache
def noun_of(cls: type) -> Noun:
    """Read the form of a dataclass off its type hints."""
    hints = get_type_hints(cls, localns=dict(_KNOWN_NAMES))
    return Noun(
        cls,
        tuple(
            Part(
                field.name,
                form_of(hints[field.name]),
                field.default is MISSING and field.default_factory is MISSING,
            )
            for field in fields(cls)
        ),
    )


def form_of(hint: Any) -> Form:  # noqa: ANN401 - a type hint can be anything
    """Give the form of a type hint; TypeError for one that no noun should use."""
    if hint in _SCALARS or (isinstance(hint, type) and issubclass(hint, StrEnum)):
        return Scalar(hint)
    if isinstance(hint, type) and is_dataclass(hint):
        return noun_of(hint)
    arguments = get_args(hint)
    if get_origin(hint) in {Union, UnionType}:
        return _form_of_union(
            [a for a in arguments if a is not NoneType], NoneType in arguments
        )
    return _form_of_collection(get_origin(hint), arguments)


def _form_of_union(options: list[Any], absent: bool) -> Form:  # noqa: FBT001 - a fact
    inner = form_of(options[0]) if len(options) == 1 else Choice(tuple(map(noun_of, options)))
    return Maybe(inner) if absent else inner


def _form_of_collection(origin: object, arguments: tuple[Any, ...]) -> Form:
    if origin is dict:
        return Lookup(_scalar(arguments[0]), _scalar(arguments[1]))
    if origin is tuple and arguments[-1] is not Ellipsis:
        return Fixed(_scalar(arguments[0]), len(arguments))
    if origin in {tuple, frozenset}:
        return Many(form_of(arguments[0]), tuple if origin is tuple else frozenset)
    message = f"no form for {origin!r} of {arguments!r}"
    raise TypeError(message)


def words_of(kind: type) -> tuple[str, ...]:
    """The words of a kind that is one of some words; none for any other kind."""
    return tuple(str(word) for word in kind) if issubclass(kind, StrEnum) else ()


def _scalar(hint: Any) -> Scalar:  # noqa: ANN401 - likewise
    form = form_of(hint)
    if not isinstance(form, Scalar):
        message = f"{hint!r} is not a single value"
        raise TypeError(message)
    return form
