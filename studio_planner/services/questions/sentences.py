"""Sentences with facts in them; whoever shows them writes times and degrees in its own way.

The desk writes a time as the maker's clock does and degrees in the studio's unit, the terminal
writes ISO 8601 where JSON is asked for; the sentence is the same.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Protocol

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import date, datetime


class Voice(Protocol):
    """How facts are written."""

    def translated(self, text: str) -> str:
        """The text of a sentence in the maker's language."""
        ...

    def moment(self, when: datetime) -> str:
        """Day and time."""
        ...

    def clock(self, when: datetime) -> str:
        """The time of day alone."""
        ...

    def day(self, day: date) -> str:
        """A day of the calendar."""
        ...

    def degrees(self, celsius: float) -> str:
        """A temperature."""
        ...

    def step(self, celsius: float) -> str:
        """A difference of temperatures."""
        ...

    def lasting(self, hours: float) -> str:
        """A length of time."""
        ...


class Fact(Protocol):
    """Something in a sentence that is written differently in different places."""

    def words(self, voice: Voice) -> str:
        """Write it."""
        ...


@dataclass(frozen=True, slots=True)
class Moment:
    """An instant (aware), written with its day."""

    when: datetime

    def words(self, voice: Voice) -> str:
        """Write it."""
        return voice.moment(self.when)


@dataclass(frozen=True, slots=True)
class Clock:
    """An instant (aware), written as the time of day alone."""

    when: datetime

    def words(self, voice: Voice) -> str:
        """Write it."""
        return voice.clock(self.when)


@dataclass(frozen=True, slots=True)
class Day:
    """A day of the calendar."""

    day: date

    def words(self, voice: Voice) -> str:
        """Write it."""
        return voice.day(self.day)


@dataclass(frozen=True, slots=True)
class Degrees:
    """A temperature in °C."""

    celsius: float

    def words(self, voice: Voice) -> str:
        """Write it."""
        return voice.degrees(self.celsius)


@dataclass(frozen=True, slots=True)
class Step:
    """A difference of temperatures in °C."""

    celsius: float

    def words(self, voice: Voice) -> str:
        """Write it."""
        return voice.step(self.celsius)


@dataclass(frozen=True, slots=True)
class Lasting:
    """A length of time in hours."""

    hours: float

    def words(self, voice: Voice) -> str:
        """Write it."""
        return voice.lasting(self.hours)


@dataclass(frozen=True, slots=True)
class Share:
    """A share of a whole, 0 to 1 and beyond."""

    share: float

    def words(self, voice: Voice) -> str:  # noqa: ARG002 - the same in every voice
        """Write it as whole per cent."""
        return f"{round(100.0 * self.share)} %"


@dataclass(frozen=True, slots=True)
class Sentence:
    """A text with places {by name} for its facts; plain texts and numbers stand as they are."""

    text: str
    facts: Mapping[str, Fact | str | int] = field(default_factory=dict)

    def words(self, voice: Voice) -> str:
        """Write the sentence."""
        written = {
            name: str(fact) if isinstance(fact, str | int) else fact.words(voice)
            for name, fact in self.facts.items()
        }
        return voice.translated(self.text).format(**written)


@dataclass(frozen=True, slots=True)
class Inner:
    """A sentence within another one."""

    sentence: Sentence

    def words(self, voice: Voice) -> str:
        """Write it."""
        return self.sentence.words(voice)


def said(text: str, **facts: Fact | str | int) -> Sentence:
    """Make a sentence of a text and its facts."""
    return Sentence(text, facts)
