"""Texts that are kept as facts, and put into words only where they are shown.

Why an order is late is worked out once and read for weeks, by a desk in one language and a
terminal in another. So a saying holds the English text, as the list of translations has it,
and beside it what fills its places.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from string import Formatter
from typing import Final, TypeAlias

from typing_extensions import override

from studio_planner.craft.tongue import figure, translate

Fact: TypeAlias = "Saying | str | float"
"""What fills a place: a name or a figure, or something that has to be translated itself."""

_SPEC: Final = re.compile(r"(\.\d)?[fg]?")
"""How a figure may be written in a place, such as {warmest:.1f}."""


@dataclass(frozen=True, slots=True)
class Saying:
    """A text and what fills its places {by name}; `str` says it in the language spoken now.

    A text without a context is said as it is in every language: a name, or the whole reason of
    a plan that an older version kept in words. An empty one is false. ValueError where places
    and facts do not fit.
    """

    text: str = ""
    context: str = ""
    facts: tuple[tuple[str, Fact], ...] = ()

    def __post_init__(self) -> None:
        """See that it can be said, whoever wrote it."""
        if self.facts:
            _require_places(self.text, dict(self.facts))

    @override
    def __str__(self) -> str:
        text = translate(self.context, self.text) if self.context else self.text
        if not self.facts:
            return text
        return text.format(**{name: _shown(fact) for name, fact in self.facts})

    def __bool__(self) -> bool:
        """Whether there is anything to say."""
        return bool(self.text)

    def ends_with(self, text: str) -> bool:
        """Whether it, or a saying in it, ends with an English text."""
        inner = (fact for _, fact in self.facts if isinstance(fact, Saying))
        return self.text.endswith(text) or any(one.ends_with(text) for one in inner)


SILENT: Final = Saying()
"""Nothing to say."""


def saying(context: str, text: str, **facts: Fact) -> Saying:
    """Make a saying of a text of the list of translations; both are literals or `marked`."""
    return Saying(text, context, tuple((name, _bare(fact)) for name, fact in facts.items()))


def joined(*parts: Saying | str, between: str = " ") -> Saying:
    """Say one part after the other, without those that are empty."""
    there = [_bare(part) for part in parts if part]
    if len(there) == 1:
        return there[0] if isinstance(there[0], Saying) else Saying(str(there[0]))
    said = [(f"part_{number}", part) for number, part in enumerate(there, 1)]
    return Saying(between.join(f"{{{name}}}" for name, _ in said), facts=tuple(said))


@dataclass(frozen=True, slots=True)
class _Figure:
    """A number that is written with the signs of the language that is spoken."""

    number: float

    @override
    def __format__(self, spec: str, /) -> str:
        return figure(format(self.number, spec))


def _bare(fact: Fact) -> Fact:
    """Words that are the same in every language are a plain text among facts."""
    plain = isinstance(fact, Saying) and not (fact.context or fact.facts)
    return str(fact) if plain else fact


def _shown(fact: Fact) -> str | _Figure:
    return _Figure(fact) if isinstance(fact, int | float) else str(fact)


def _require_places(text: str, facts: dict[str, Fact]) -> None:
    for _, name, spec, conversion in Formatter().parse(text):
        if name is None:
            continue
        figures = isinstance(facts.get(name), int | float)
        fits = _SPEC.fullmatch(spec or "") if figures else not spec
        if name not in facts or not fits or conversion:
            message = f"{text!r} has a place {name!r} that nothing fits"
            raise ValueError(message)
