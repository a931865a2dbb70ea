"""Speaking another language without Qt: what a planning process says and a sheet prints."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import CoatKind
from studio_planner.services.speaking import ENGLISH, speak

if TYPE_CHECKING:
    from collections.abc import Iterator


@pytest.fixture(autouse=True)
def _english_afterwards() -> Iterator[None]:
    yield
    speak(ENGLISH)


def test_german_is_spoken_from_the_list_of_texts() -> None:
    assert speak("de")
    assert kind_word(CoatKind.TOP_COAT) == "Deckschicht"
    assert speak(ENGLISH)
    assert kind_word(CoatKind.TOP_COAT) == "top coat"


@pytest.mark.parametrize("language", ["xx", "../de", ""])
def test_a_language_without_a_list_is_not_spoken(language: str) -> None:
    assert not speak(language)
    assert kind_word(CoatKind.TOP_COAT) == "top coat"
