"""Names in a row, in the language that is spoken."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.tongue import listed, speak_with

if TYPE_CHECKING:
    from collections.abc import Iterator

GERMAN = {"{first} and {last}": "{first} und {last}", "{count} more": "{count} weitere"}


@pytest.fixture
def german() -> Iterator[None]:
    speak_with(lambda _context, text: GERMAN.get(text, text))
    yield
    speak_with(None)


@pytest.mark.usefixtures("german")
def test_names_are_listed_in_the_language_that_is_spoken() -> None:
    assert listed(["oben", "unten"]) == "oben und unten"
    assert listed("ABCDE") == "A, B, C und 2 weitere"


def test_a_name_that_comes_twice_is_listed_once() -> None:
    assert listed("ABA") == "A and B"


def test_nothing_is_listed_as_nothing() -> None:
    assert listed([]) == ""
