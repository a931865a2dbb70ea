"""What is traced is found by whatever name somebody has for it."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.pieces import Piece
from studio_planner.services.editing.nouns import without_thing
from studio_planner.services.log_book.trace_names import traced
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from studio_planner.services.naming import UnknownName
from tests.services.log_book.logged_studio import NOW, ago, pour, studio, with_pours

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio


def mixed() -> Studio:
    whole = with_pours(pour(piece="one", coat="flood", hours=30))
    mix = WeighingTold(
        product="resin",
        at=ago(30),
        a_grams=30,
        b_grams=15,
        lot_a="L 7",
        coats=(("one", "flood"),),
    )
    return weighed(whole, mix, NOW).make(whole)


WHOLE = mixed()


def refused(wanted: str, of: Studio = WHOLE) -> str:
    with pytest.raises(UnknownName) as error:
        traced(of, wanted)
    return str(error.value)


@pytest.mark.parametrize("wanted", ["1", "#1", "mix 1", "Mix #1", " mix1 ", "l 7"])
def test_a_mix_is_found_by_its_number_as_it_is_written_or_by_its_lot(wanted: str) -> None:
    spread = traced(WHOLE, wanted).spread
    assert spread is not None
    assert [mix.batch for mix in spread.mixes] == [1]


@pytest.mark.parametrize(
    ("wanted", "pieces"),
    [
        ("TRAY", ("tray",)),
        ("two", ("two",)),
        ("coaster o", ("one",)),
        ("Fair", ("one", "two")),
        ("fai", ("one", "two")),
    ],
)
def test_pieces_are_found_by_key_name_beginning_or_order(
    wanted: str, pieces: tuple[str, ...]
) -> None:
    assert traced(WHOLE, wanted).pieces == pieces


def test_what_was_taken_out_is_found_under_its_name() -> None:
    without = without_thing(WHOLE, Piece, "one")
    assert traced(without, "Coaster one").pieces == ("one",)


def test_a_beginning_that_several_have_is_refused_with_their_names() -> None:
    assert refused("coaster") == (
        "Nothing is called just coaster; there is: Coaster one, Coaster two."
    )


def test_what_is_not_there_is_refused_with_what_can_be_asked() -> None:
    assert "nobody is no piece, order, number of a mix (1-1) or lot" in refused("nobody")
    assert "number of a mix (none was weighed yet)" in refused("mix 4", studio())
    assert "is no piece" in refused("")
