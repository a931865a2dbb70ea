"""Between a noun and plain values (dicts, lists, text, numbers), as JSON carries them."""

from __future__ import annotations

import json
import math
from dataclasses import dataclass, field
from datetime import date, datetime, time
from typing import TYPE_CHECKING, Any, cast

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.saying import Saying
from studio_planner.storage.forms import (
    Choice,
    Fixed,
    Form,
    Lookup,
    Many,
    Maybe,
    Noun,
    Scalar,
    words_of,
)
from studio_planner.storage.notation import clock_of, instant_of, iso_of, time_of
from studio_planner.storage.said import plain_of_saying, saying_of

if TYPE_CHECKING:
    from collections.abc import Callable

Plain = str | int | float | bool | None | list[Any] | dict[str, Any]
"""What JSON can carry."""

KIND = "kind"
"""The field that tells the options of a choice apart."""

_MOST_PROBLEMS = 200

_TO_PLAIN: dict[type, Callable[[Any], Plain]] = {
    bool: bool,
    int: int,
    float: float,
    datetime: iso_of,
    date: date.isoformat,
    time: clock_of,
    Saying: plain_of_saying,
}


def plain_of(form: Form, value: Any) -> Plain:  # noqa: ANN401 - the form says what it is
    """Turn a value of that form into plain values; every field is written, in order."""
    match form:
        case Maybe(form=inner):
            return None if value is None else plain_of(inner, value)
        case Scalar(kind=kind):
            return _TO_PLAIN.get(kind, str)(value)
        case Many(form=inner) | Fixed(form=inner):
            ordered = sorted(value) if isinstance(value, frozenset) else value
            return [plain_of(inner, one) for one in ordered]
        case Lookup(key=key, value=figure):
            return {str(plain_of(key, k)): plain_of(figure, v) for k, v in value.items()}
        case Noun(parts=parts):
            return {part.name: plain_of(part.form, getattr(value, part.name)) for part in parts}
        case Choice():
            chosen = form.holding(value)
            fields = cast("dict[str, Any]", plain_of(chosen, value))
            return {KIND: chosen.words, **fields}


class _Unusable:
    """Stands where a value could not be made; its problem has been noted."""


_UNUSABLE = _Unusable()


@dataclass
class Problems:
    """Everything that was wrong on the way, each with its place."""

    found: list[BrokenRule] = field(default_factory=list)
    more: int = 0

    def note(self, where: str, sentence: str) -> _Unusable:
        """Note a problem; give what stands in for the value."""
        if len(self.found) < _MOST_PROBLEMS:
            self.found.append(BrokenRule(where or "studio", sentence))
        else:
            self.more += 1
        return _UNUSABLE

    def note_all(self, where: str, error: InvalidEntry) -> _Unusable:
        """Note every rule of the craft that an entry breaks."""
        for rule in error.broken:
            self.note(f"{where}.{rule.field}" if where else rule.field, rule.sentence)
        return _UNUSABLE


def value_of(form: Form, plain: Plain) -> object:
    """Make a value from plain values; InvalidEntry carries every problem with its place."""
    problems = Problems()
    made = _Maker(problems).make(form, plain, "")
    if problems.more:
        problems.found.append(BrokenRule("studio", f"and {problems.more} problems more."))
    if problems.found:
        raise InvalidEntry("what was given", problems.found)
    return made


class _Maker:
    def __init__(self, problems: Problems) -> None:
        self._problems = problems

    def make(self, form: Form, plain: Plain, where: str) -> object:
        match form:
            case Maybe(form=inner):
                return None if plain is None else self.make(inner, plain, where)
            case Scalar():
                return self._scalar(form, plain, where)
            case Noun():
                return self._noun(form, plain, where)
            case Choice():
                return self._choice(form, plain, where)
            case Lookup():
                return self._lookup(form, plain, where)
            case Many() | Fixed():
                return self._list(form, plain, where)

    def _scalar(self, form: Scalar, plain: Plain, where: str) -> object:
        reader, wanted = _READERS.get(form.kind, (None, ""))
        try:
            if reader is not None:
                return reader(plain)
            wanted = f"one of {', '.join(map(repr, words_of(form.kind)))}"
            return form.kind(plain)
        except (ValueError, TypeError, OverflowError):
            return self._problems.note(where, f"{_shown(plain)} is not {wanted}.")

    def _noun(self, form: Noun, plain: Plain, where: str) -> object:
        if not isinstance(plain, dict):
            return self._problems.note(
                where, f"it has to be a group of fields, not {_shown(plain)}."
            )
        usable = self._check_names(form, plain, where)
        given = {
            part.name: self.make(part.form, plain[part.name], _under(where, part.name))
            for part in form.parts
            if part.name in plain
        }
        if not usable or _UNUSABLE in given.values():
            return _UNUSABLE
        try:
            return form.noun(**given)
        except InvalidEntry as error:
            return self._problems.note_all(where, error)

    def _check_names(self, form: Noun, plain: dict[str, Any], where: str) -> bool:
        known = [part.name for part in form.parts]
        for name in plain:
            if name not in known:
                place = _under(where, name)
                article = "an" if form.words[0] in "aeiou" else "a"
                self._problems.note(place, f"there is no such field in {article} {form.words}.")
        missing = [p.name for p in form.parts if p.required and p.name not in plain]
        for name in missing:
            self._problems.note(_under(where, name), "it is missing.")
        return not missing

    def _choice(self, form: Choice, plain: Plain, where: str) -> object:
        words = [option.words for option in form.options]
        kind = plain.get(KIND) if isinstance(plain, dict) else None
        chosen = form.named(kind) if isinstance(kind, str) else None
        if chosen is None or not isinstance(plain, dict):
            wanted = ", ".join(map(repr, words))
            return self._problems.note(_under(where, KIND), f"use one of {wanted}.")
        fields = {name: value for name, value in plain.items() if name != KIND}
        return self._noun(chosen, fields, where)

    def _lookup(self, form: Lookup, plain: Plain, where: str) -> object:
        if not isinstance(plain, dict):
            return self._problems.note(
                where, f"it has to be a group of fields, not {_shown(plain)}."
            )
        made = {
            self._scalar(form.key, key, _under(where, key)): self._scalar(
                form.value, value, _under(where, key)
            )
            for key, value in plain.items()
        }
        broken = _UNUSABLE in made or _UNUSABLE in made.values()
        return _UNUSABLE if broken else made

    def _list(self, form: Many | Fixed, plain: Plain, where: str) -> object:
        if not isinstance(plain, list):
            return self._problems.note(where, f"it has to be a list, not {_shown(plain)}.")
        if isinstance(form, Fixed) and len(plain) != form.count:
            return self._problems.note(where, f"it needs exactly {form.count} values.")
        made = [self.make(form.form, one, f"{where}[{i}]") for i, one in enumerate(plain)]
        if _UNUSABLE in made:
            return _UNUSABLE
        kind = form.kind if isinstance(form, Many) else tuple
        if kind is frozenset and len(set(made)) != len(made):
            return self._problems.note(where, "something is in it twice.")
        return kind(made)


def _under(where: str, name: str) -> str:
    return f"{where}.{name}" if where else name


def _shown(plain: Plain) -> str:
    if isinstance(plain, dict | list):
        return "a list" if isinstance(plain, list) else "a group of fields"
    return json.dumps(plain)[:60]


def _is_number(plain: Plain) -> bool:
    return isinstance(plain, int | float) and not isinstance(plain, bool)


def _text(plain: Plain) -> str:
    if not isinstance(plain, str):
        raise TypeError
    plain.encode()  # half a character pair cannot be kept
    return plain


def _flag(plain: Plain) -> bool:
    if not isinstance(plain, bool):
        raise TypeError
    return plain


def _figure(plain: Plain) -> float:
    if not _is_number(plain) or not math.isfinite(number := float(cast("float", plain))):
        raise TypeError
    return number


def _whole(plain: Plain) -> int:
    number = _figure(plain)
    if number != int(number) or abs(number) >= 2**53:
        raise ValueError
    return int(number)


_READERS: dict[type, tuple[Callable[[Any], object], str]] = {
    str: (_text, "text"),
    bool: (_flag, "true or false"),
    int: (_whole, "a whole number"),
    float: (_figure, "a number"),
    datetime: (
        lambda plain: instant_of(_text(plain)),
        "a time with a zone, such as 2030-05-01T18:00:00Z",
    ),
    date: (lambda plain: date.fromisoformat(_text(plain)), "a date, such as 2030-05-01"),
    time: (lambda plain: time_of(_text(plain)), "a time of day, such as 18:30"),
    Saying: (saying_of, "text, or a text with its context and facts"),
}
