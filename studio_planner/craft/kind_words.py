"""What the craft's own kinds are called where they are shown: coats, joints, blanks, steps."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.saying import saying
from studio_planner.craft.tongue import marked, translate

if TYPE_CHECKING:
    from enum import StrEnum

    from studio_planner.craft.saying import Saying
    from studio_planner.science.stages import Stage

WORDS = (
    # coats
    marked("kinds", "prime"),
    marked("kinds", "seal"),
    marked("kinds", "flood"),
    marked("kinds", "colour pour"),
    marked("kinds", "glitter"),
    marked("kinds", "size"),
    marked("kinds", "leaf"),
    marked("kinds", "lock coat"),
    marked("kinds", "top coat"),
    # joints
    marked("kinds", "on bare"),
    marked("kinds", "wet in wet"),
    marked("kinds", "in the window"),
    marked("kinds", "scuffed"),
    marked("kinds", "on dry"),
    # blanks
    marked("kinds", "mdf"),
    marked("kinds", "timber"),
    marked("kinds", "plywood"),
    marked("kinds", "slate"),
    marked("kinds", "stone"),
    marked("kinds", "metal"),
    marked("kinds", "glass"),
    marked("kinds", "plastic"),
    # products and places
    marked("kinds", "two-part mix"),
    marked("kinds", "one-part primer"),
    marked("kinds", "room"),
    marked("kinds", "warm box"),
    # steps, and what else needs hands
    marked("kinds", "wash and sand"),
    marked("kinds", "turn over"),
    marked("kinds", "pull tape"),
    marked("kinds", "trim drips"),
    marked("kinds", "pack"),
    marked("kinds", "weigh and pour"),
    marked("kinds", "last torch"),
    marked("kinds", "cover"),
    marked("kinds", "window closes"),
    # gates and promises
    marked("kinds", "display"),
    marked("kinds", "full cure"),
    marked("kinds", "arrive by"),
    marked("kinds", "ship by"),
    marked("kinds", "market"),
    # what may be said of a piece and food
    marked("kinds", "decorative, not for food"),
    marked("kinds", "declaration on file"),
    marked("kinds", "customer's own use, no claim"),
    # touch tests
    marked("kinds", "string"),
    marked("kinds", "tape-tack"),
    marked("kinds", "no mark"),
    marked("kinds", "thumbnail no mark"),
    marked("kinds", "already"),
    marked("kinds", "not yet"),
    # what the log tells of
    marked("kinds", "poured"),
    marked("kinds", "weighed"),
    marked("kinds", "touched"),
    marked("kinds", "tape pulled"),
    marked("kinds", "drips trimmed"),
    marked("kinds", "turned over"),
    marked("kinds", "moved"),
    marked("kinds", "washed and sanded"),
    marked("kinds", "packed"),
    marked("kinds", "shipped"),
    marked("kinds", "spoiled"),
    marked("kinds", "stripped"),
    marked("kinds", "withdrawn"),
)
"""The values of those kinds; a test says which are missing."""

_STAGES = (
    marked("stages", "cup life"),
    marked("stages", "working time"),
    marked("stages", "last torch"),
    marked("stages", "cover"),
    marked("stages", "tape opens"),
    marked("stages", "tape closes"),
    marked("stages", "trim opens"),
    marked("stages", "trim closes"),
    marked("stages", "recoat opens"),
    marked("stages", "tack free"),
    marked("stages", "recoat closes"),
    marked("stages", "sandable"),
    marked("stages", "handle"),
    marked("stages", "print free"),
    marked("stages", "full cure"),
)
"""What a film reaches, as it is called in sentences."""


def stage_said(stage: Stage) -> Saying:
    """What a film reaches, for a text that is kept."""
    return saying("stages", _stage_text(stage))


def stage_word(stage: Stage) -> str:
    """Say what a film reaches."""
    return translate("stages", _stage_text(stage))


def kind_said(kind: StrEnum) -> Saying:
    """A kind, for a text that is kept."""
    return saying("kinds", kind.value)


def kind_word(kind: StrEnum) -> str:
    """Say a kind in the language that is spoken."""
    return translate("kinds", kind.value)


def _stage_text(stage: Stage) -> str:
    return stage.value.replace("_", " ")
