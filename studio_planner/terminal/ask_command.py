"""The command ask."""

from __future__ import annotations

from dataclasses import fields, is_dataclass
from datetime import date, datetime, time
from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.craft.degree_words import degree_step_said, degrees_said
from studio_planner.craft.tongue import quoted
from studio_planner.services.caution import DEFERRAL
from studio_planner.services.desk import DeskView
from studio_planner.services.questions.asking import Kind
from studio_planner.services.questions.every import QUESTIONS, question_called
from studio_planner.services.studio_files import read_studio
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.reading import celsius_of, day_of, when_of, whole_number
from studio_planner.terminal.writing import (
    clock_words,
    date_words,
    hours_words,
    iso,
    moment_words,
    say,
    say_json,
    say_table,
    say_wrapped,
)

if TYPE_CHECKING:
    import argparse
    from zoneinfo import ZoneInfo

    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.asking import Answer, Parameter, Question
    from studio_planner.services.questions.sentences import Sentence
    from studio_planner.terminal.surroundings import Surroundings

_LONGEST_MINUTES = 24 * 60


def ask(arguments: argparse.Namespace, around: Surroundings) -> int:
    """List the questions that are answered at once, or print the answer to one.

    JSON of the list: questions, each with key, words and what it wants to know: key, words,
    kind, value (what it takes unless told), options. JSON of an answer: question, words, at,
    asked (what it was answered for), answer (yes, with care, no, not known), verdict and lines,
    each with words and facts, and caution: who decides, or null.
    """
    studio = read_studio(Path(arguments.file))
    now = around.clock.now()
    if arguments.at is not None:
        now = when_of(arguments.at, studio.time_zone, "--at")
    view = DeskView(studio, now)
    if arguments.question is None:
        _list(view, as_json=arguments.json)
        return 0
    question = question_called(arguments.question)
    given = _given(view, question, arguments.given or ())
    answer = question.asked(view, given)
    if arguments.json:
        say_json(_answer_json(view, question, given, answer))
    else:
        _print(studio, answer)
    return 0


def _list(view: DeskView, *, as_json: bool) -> None:
    if as_json:
        say_json({"questions": [_question_json(view, one) for one in QUESTIONS]})
        return
    rows = [
        (one.key, one.in_words, ", ".join(p.key for p in one.parameters(view)))
        for one in QUESTIONS
    ]
    say_table(("Question", "In words", "Wants to know"), rows)


def _given(view: DeskView, question: Question, pairs: tuple[str, ...]) -> dict[str, Any]:
    known = {one.key: one for one in question.parameters(view)}
    given = {key: one.value for key, one in known.items()}
    for pair in pairs:
        name, equals, text = pair.partition("=")
        parameter = known.get(name.strip())
        if not equals or parameter is None:
            wanted = ", ".join(known) or "nothing"
            raise BadInput(
                f"--with {quoted(pair)} is nothing that this question wants to know; "
                f"it asks for: {wanted}; write it as --with NAME=VALUE."
            )
        given[parameter.key] = _value(parameter, text.strip())
    return given


def _value(parameter: Parameter, text: str) -> object:
    what = f"--with {parameter.key}"
    if parameter.kind is Kind.CHOICE:
        return _choice(parameter, text, what)
    if parameter.kind is Kind.FLAG:
        return _flag(text, what)
    if parameter.kind is Kind.TIME:
        return _time(text, what)
    if parameter.kind is Kind.DATE:
        return day_of(text, what)
    if parameter.kind is Kind.TEMPERATURE:
        return celsius_of(text, what)
    return whole_number(text, what, _LONGEST_MINUTES)


def _choice(parameter: Parameter, text: str, what: str) -> str:
    asked = text.casefold()
    for key, words in parameter.options:
        if asked in {key.casefold(), words.casefold()}:
            return key
    offered = ", ".join(key for key, _ in parameter.options) or "nothing yet"
    raise BadInput(f"{what} {quoted(text)} is not to choose from; there is: {offered}.")


def _flag(text: str, what: str) -> bool:
    if text.casefold() not in {"yes", "no"}:
        raise BadInput(f"{what} {quoted(text)} is neither yes nor no.")
    return text.casefold() == "yes"


def _time(text: str, what: str) -> time:
    try:
        found = time.fromisoformat(text)
    except ValueError:
        raise BadInput(
            f"{what} {quoted(text)} is not a time of day; write it as 18:00."
        ) from None
    return found.replace(tzinfo=None, second=0, microsecond=0)


def _print(studio: Studio, answer: Answer) -> None:
    voice = TerminalVoice(studio)
    say_wrapped(answer.verdict.words(voice))
    for line in answer.lines:
        say_wrapped(line.words(voice), indent="  ")
    if answer.caution:
        say()
        say_wrapped(DEFERRAL)


class TerminalVoice:
    """Facts as the terminal writes them, on the studio's clock and in its degrees."""

    def __init__(self, studio: Studio) -> None:
        """Write for a studio."""
        self._zone: ZoneInfo = studio.time_zone
        self._units = studio.units

    def translated(self, text: str) -> str:
        """The terminal speaks English."""
        return text

    def moment(self, when: datetime) -> str:
        """Day and time."""
        return moment_words(self._zone, when)

    def clock(self, when: datetime) -> str:
        """The time of day alone."""
        return clock_words(self._zone, when)

    def day(self, day: date) -> str:
        """A day of the calendar."""
        return date_words(day)

    def degrees(self, celsius: float) -> str:
        """A temperature."""
        return str(degrees_said(celsius, self._units))

    def step(self, celsius: float) -> str:
        """A difference of temperatures."""
        return str(degree_step_said(celsius, self._units))

    def lasting(self, hours: float) -> str:
        """A length of time."""
        return hours_words(hours)


def _question_json(view: DeskView, question: Question) -> dict[str, Any]:
    wants = [
        {
            "key": one.key,
            "words": one.words,
            "kind": one.kind,
            "value": _plain(view, one.value),
            "options": [{"key": key, "words": words} for key, words in one.options],
        }
        for one in question.parameters(view)
    ]
    return {"key": question.key, "words": question.in_words, "wants": wants}


def _answer_json(
    view: DeskView, question: Question, given: dict[str, Any], answer: Answer
) -> dict[str, Any]:
    return {
        "question": question.key,
        "words": question.in_words,
        "at": iso(view.studio.time_zone, view.now),
        "asked": {key: _plain(view, value) for key, value in given.items()},
        "answer": answer.sign,
        "verdict": _sentence_json(view, answer.verdict),
        "lines": [_sentence_json(view, line) for line in answer.lines],
        "caution": DEFERRAL if answer.caution else None,
    }


def _sentence_json(view: DeskView, sentence: Sentence) -> dict[str, Any]:
    facts = {name: _plain(view, fact) for name, fact in sentence.facts.items()}
    return {"words": sentence.words(TerminalVoice(view.studio)), "facts": facts}


def _plain(view: DeskView, value: object) -> object:
    """A fact for JSON: times as ISO 8601, everything else as the number or text it is."""
    if is_dataclass(value):
        # Every fact holds one value, under a name that says what it is.
        return _plain(view, getattr(value, fields(value)[0].name))
    if isinstance(value, datetime):
        return iso(view.studio.time_zone, value)
    if isinstance(value, date | time):
        return value.isoformat()
    return value
