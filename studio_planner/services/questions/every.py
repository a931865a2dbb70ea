"""All questions that are answered at once, in the order they are shown."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.errors import StudioError
from studio_planner.craft.tongue import quoted
from studio_planner.services.questions import (
    before_away,
    bottleneck,
    colour_window,
    damp_tonight,
    if_left,
    latest_start,
    posting,
    sanding_now,
    that_colour,
    to_market,
    warming,
    washing,
)

if TYPE_CHECKING:
    from studio_planner.services.questions.asking import Question

QUESTIONS: tuple[Question, ...] = (
    colour_window.QUESTION,
    latest_start.QUESTION,
    damp_tonight.QUESTION,
    sanding_now.QUESTION,
    if_left.QUESTION,
    washing.QUESTION,
    warming.QUESTION,
    that_colour.QUESTION,
    to_market.QUESTION,
    posting.QUESTION,
    before_away.QUESTION,
    bottleneck.QUESTION,
)


class UnknownQuestion(StudioError):  # noqa: N818 - reads as a sentence where it is raised
    """There is no such question; the text lists those there are."""


def question_called(key: str) -> Question:
    """The question of that key; UnknownQuestion, with the keys there are, where none is."""
    asked = key.strip().casefold()
    found = next((one for one in QUESTIONS if one.key == asked), None)
    if found is None:
        keys = ", ".join(one.key for one in QUESTIONS)
        raise UnknownQuestion(f"There is no question {quoted(key)}; ask one of: {keys}.")
    return found
