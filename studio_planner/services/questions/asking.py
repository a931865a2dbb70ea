"""What a question is: its words, what it wants to know first, and what an answer says."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import time
from enum import StrEnum
from typing import TYPE_CHECKING, Any

from studio_planner.craft.tongue import marked
from studio_planner.services.questions.sentences import Sentence, said

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping

    from studio_planner.services.desk import DeskView


class Kind(StrEnum):
    """What kind of thing a parameter is; lengths are mm, temperatures °C inside."""

    CHOICE = "choice"
    FLAG = "yes or no"
    TIME = "time of day"
    DATE = "date"
    TEMPERATURE = "temperature"
    MINUTES = "minutes"
    LENGTH = "length"


@dataclass(frozen=True, slots=True)
class Parameter:
    """Something a question wants to know; `value` is what it takes unless told otherwise.

    `options` are the values of a choice, each with its words.
    """

    key: str
    words: str
    kind: Kind
    value: Any
    options: tuple[tuple[str, str], ...] = ()


class Sign(StrEnum):
    """What an answer comes to, in one word."""

    YES = "yes"
    CARE = "with care"
    NO = "no"
    OPEN = "not known"


SIGN_WORDS = (
    marked("questions", "yes"),
    marked("questions", "with care"),
    marked("questions", "no"),
    marked("questions", "not known"),
)


@dataclass(frozen=True, slots=True)
class Answer:
    """A verdict, and lines with its reasons; `caution` where heat or handling is in it."""

    sign: Sign
    verdict: Sentence
    lines: tuple[Sentence, ...] = ()
    caution: bool = False


@dataclass(frozen=True, slots=True)
class Question:
    """A question that is answered at once; nothing is changed and no plan is made.

    `parameters` gives what it wants to know of a studio at its moment, `answer` takes a value
    for each of them. Its words may hold a {time}, that of `example`.
    """

    key: str
    words: str
    parameters: Callable[[DeskView], tuple[Parameter, ...]]
    answer: Callable[[DeskView, Mapping[str, Any]], Answer]
    example: time | None = None

    @property
    def in_words(self) -> str:
        """Its words, its time on a clock of 24 hours."""
        return self.words.format(time=f"{self.example or time():%H:%M}")

    def asked(self, view: DeskView, given: Mapping[str, Any] | None = None) -> Answer:
        """Answer it, with the parameters' own values for all that is not `given`.

        A choice that the studio no longer offers counts as not given.
        """
        values = {one.key: _value(one, given or {}) for one in self.parameters(view)}
        return self.answer(view, values)


def _value(parameter: Parameter, given: Mapping[str, Any]) -> object:
    value = given.get(parameter.key, parameter.value)
    offered = [key for key, _ in parameter.options]
    return parameter.value if parameter.kind is Kind.CHOICE and value not in offered else value


def nothing_asked(view: DeskView) -> tuple[Parameter, ...]:  # noqa: ARG001 - a question's own
    """The parameters of a question that wants to know nothing."""
    return ()


def not_known(text: str) -> Answer:
    """The answer where something is missing; the text says what to do."""
    return Answer(Sign.OPEN, said(text))
