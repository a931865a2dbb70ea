"""Sentences with facts in them as the desk writes them: the studio's clock and its units."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.degree_words import degree_step_said
from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date, datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.sentences import Sentence


class DeskVoice:
    """Writes facts in the words of a studio's desk."""

    def __init__(self, studio: Studio) -> None:
        """Write for a studio."""
        self._wall = words.wall_of(studio)
        self._units = studio.units

    def translated(self, text: str) -> str:
        """The text of a sentence in the maker's language."""
        return translate("said", text)

    def moment(self, when: datetime) -> str:
        """Day and time."""
        return words.moment(when, self._wall)

    def clock(self, when: datetime) -> str:
        """The time of day alone."""
        return words.clock_time(when, self._wall)

    def day(self, day: date) -> str:
        """A day of the calendar."""
        return f"{day.day}.{day.month}."

    def degrees(self, celsius: float) -> str:
        """A temperature."""
        return words.degrees(celsius, self._units)

    def step(self, celsius: float) -> str:
        """A difference of temperatures."""
        return str(degree_step_said(celsius, self._units))

    def lasting(self, hours: float) -> str:
        """A length of time."""
        return words.length_of_time(hours)

    def all_of(self, sentences: Iterable[Sentence]) -> list[str]:
        """Sentences, written."""
        return [sentence.words(self) for sentence in sentences]
