"""The scene's studio after its first evening: pours, a mix, touch tests, a correction."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind
from studio_planner.craft.mixes import WeighedColour
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.log_book.corrections import corrected, withdrawn
from studio_planner.services.log_book.pours import PourTold, poured
from studio_planner.services.log_book.steps import StepTold, told
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from tests.desktop import scenes
from tests.desktop.scenes import at

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

_MARKET = PourTold(piece="k", coat="clear", start=at(-1, "18:10"), end=at(-1, "19:00"))
_SEALS = [
    PourTold(piece=key, coat="seal", start=at(0, "18:20"), end=at(0, "19:05"))
    for key in ("h1", "h2")
]


def logged() -> Studio:
    """What stands in the log at 19:36 on the scene's first day."""
    studio = scenes.planned()
    studio = poured(studio, [_MARKET], at(-1, "19:01")).make(studio)
    studio = poured(studio, _SEALS, at(0, "19:06")).make(studio)
    mix = WeighingTold(
        product="fast",
        at=at(0, "18:18"),
        a_grams=41.2,
        b_grams=18.1,
        lot_a="SF-2207",
        lot_b="SH-0310",
        colourants=(WeighedColour(name="white", grams=0.8),),
        coats=(("h1", "seal"), ("h2", "seal")),
    )
    studio = weighed(studio, mix, at(0, "19:10")).make(studio)
    for touch, verdict, when in (
        (Touch.TACK, Verdict.NOT_YET, at(0, "07:30")),
        (Touch.NO_MARK, Verdict.ALREADY, at(0, "12:40")),
    ):
        test = StepTold(
            kind=EntryKind.TOUCHED,
            pieces=("k",),
            coat="clear",
            at=when,
            touch=touch,
            verdict=verdict,
        )
        studio = told(studio, test, when).make(studio)
    turned = StepTold(kind=EntryKind.TURNED, pieces=("f",), at=at(0, "19:20"))
    studio = told(studio, turned, at(0, "19:21")).make(studio)
    studio = withdrawn(studio, studio.log[-1].number, at(0, "19:22")).make(studio)
    first = studio.log[0]
    right = replace(first, end=at(-1, "19:15"), words="second half was slow")
    return corrected(studio, first.number, right, at(0, "07:31")).make(studio)
