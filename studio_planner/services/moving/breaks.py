"""What is wrong with a pour at a time: the rule that it breaks there, said to the maker."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.services.questions.sentences import Sentence


class Rule(StrEnum):
    """The rules that a moved pour may break."""

    PAST = "past"
    HANDS = "hands"
    ORDER = "order"
    WINDOW = "window"
    FACES = "faces"
    SPOT = "spot"
    AIR = "air"
    WARMING = "warming"
    DUST = "dust"
    AWAKE = "awake"
    TEST_FIRST = "test first"
    SCUFF = "scuff"
    OTHER_SPOT = "other spot"
    LATER = "later coats"
    PROMISE = "promise"


@dataclass(frozen=True, slots=True, kw_only=True)
class Break:
    """A rule that is broken, or what follows from a move; only `hard` ones forbid it.

    What is not hard is put right by planning again, or by the maker's touch test.
    """

    rule: Rule
    words: Sentence
    hard: bool = True
