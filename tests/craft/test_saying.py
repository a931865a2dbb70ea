"""Sayings: facts that are put into words in the language of whoever looks."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.saying import SILENT, Saying, joined, saying
from studio_planner.craft.tongue import speak_with

if TYPE_CHECKING:
    from collections.abc import Iterator

GERMAN = {
    ("kinds", "leaf"): "Blattmetall",
    ("late", "the {coat} at {celsius:.1f} °C"): "{coat} bei {celsius:.1f} °C",
    ("figures", "1,000.5"): "1.000,5",
}
COAT = saying(
    "late", "the {coat} at {celsius:.1f} °C", coat=saying("kinds", "leaf"), celsius=21
)


@pytest.fixture
def _in_german() -> Iterator[None]:
    speak_with(lambda context, text: GERMAN.get((context, text), text))
    yield
    speak_with(None)


def test_a_saying_is_said_in_english_where_nothing_else_is_spoken() -> None:
    assert str(COAT) == "the leaf at 21.0 °C"


@pytest.mark.usefixtures("_in_german")
def test_what_was_made_before_is_said_in_the_language_spoken_now() -> None:
    assert str(COAT) == "Blattmetall bei 21,0 °C"
    assert f"{joined('Board:', COAT)}" == "Board: Blattmetall bei 21,0 °C"


@pytest.mark.usefixtures("_in_german")
def test_words_without_a_context_are_the_same_in_every_language() -> None:
    assert str(Saying("leaf")) == str(joined("leaf")) == "leaf"
    assert str(Saying("{as} it {stands")) == "{as} it {stands"


def test_a_name_with_braces_stands_as_it_is() -> None:
    assert str(joined("Board {3}", Saying("{x"), between=" and ")) == "Board {3} and {x"


def test_what_is_empty_is_left_out() -> None:
    assert not SILENT
    assert not joined(SILENT, "")
    assert str(joined("one", SILENT, "two")) == "one two"


def test_the_end_of_an_inner_saying_is_known_in_any_language() -> None:
    whole = joined(
        "Board:", saying("late", "it {words}", words=saying("late", "does not fit."))
    )
    assert whole.ends_with("does not fit.")
    assert not whole.ends_with("too late.")
    assert Saying("Board: it does not fit.").ends_with("does not fit.")


@pytest.mark.parametrize(
    "text",
    [
        "{b}",
        "{}",
        "{0}",
        "{a.x}",
        "{a[0]}",
        "{a!r}",
        "{a:999999999}",
        "{a:d}",
        "{a",
        "}",
        "{s:g}",
    ],
)
def test_places_that_nothing_fits_are_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"."):
        saying("late", text, a=1.5, s="word")
