"""What the craft's kinds are called, and in which language."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.craft import tongue
from studio_planner.craft.kind_words import WORDS, kind_word
from studio_planner.craft.log import EntryKind
from studio_planner.craft.orders import ContactClaim, Gate, Promise
from studio_planner.craft.pieces import CoatKind, Joint, Material
from studio_planner.craft.places import PlaceKind
from studio_planner.craft.plans import StepKind
from studio_planner.craft.products import ProductKind
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.hands_items import HandsKind

if TYPE_CHECKING:
    from enum import StrEnum

KINDS: tuple[type[StrEnum], ...] = (
    CoatKind,
    Joint,
    Material,
    ProductKind,
    PlaceKind,
    StepKind,
    HandsKind,
    Gate,
    ContactClaim,
    Promise,
    Touch,
    Verdict,
    EntryKind,
)


@pytest.mark.parametrize("kinds", KINDS)
def test_the_list_of_words_holds_every_kind(kinds: type[StrEnum]) -> None:
    assert {kind.value for kind in kinds} <= set(WORDS)


def test_without_a_speaker_everything_is_said_in_english() -> None:
    assert kind_word(CoatKind.TOP_COAT) == "top coat"
    assert tongue.translate("any", "as it is") == "as it is"


def test_a_speaker_says_everything_from_then_on() -> None:
    tongue.speak_with(lambda context, text: f"{context}/{text}")
    try:
        assert kind_word(Joint.SCUFFED) == "kinds/scuffed"
    finally:
        tongue.speak_with(None)


@pytest.mark.parametrize(("count", "said"), [(0, "0 coats"), (1, "1 coat"), (2, "2 coats")])
def test_one_thing_is_said_otherwise_than_none_or_several(count: int, said: str) -> None:
    assert tongue.counted(count, "{count} coat", "{count} coats") == said


def test_a_sentence_begins_with_a_capital_and_ends_once() -> None:
    assert tongue.sentence("the Moon tray waits") == "The Moon tray waits."
    assert tongue.sentence("Is it dry?") == "Is it dry?"


def test_figures_are_written_with_the_signs_of_the_language() -> None:
    assert tongue.figure("1,250.5 h") == "1,250.5 h"
    tongue.speak_with(lambda _context, text: "1.000,5" if text == "1,000.5" else text)
    try:
        assert tongue.figure("1,250.5 h") == "1.250,5 h"
    finally:
        tongue.speak_with(None)
