"""A trace read aloud: everything for the maker, one sentence a coat for the customer."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind
from studio_planner.craft.mixes import WeighedColour
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.log_book.corrections import corrected
from studio_planner.services.log_book.steps import StepTold, shipped, told
from studio_planner.services.log_book.trace_words import (
    Passage,
    customer_words,
    piece_passages,
    spread_passages,
)
from studio_planner.services.log_book.tracing import trace_batch, trace_piece
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from tests.services.log_book.logged_studio import NOW, ago, pour, studio, with_pours
from tests.services.questions.steady import PlainVoice

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

VOICE = PlainVoice()


def shared() -> Studio:
    """Coaster one and two from one mix of known lots; one of them was touched and shipped."""
    whole = with_pours(
        pour(piece="one", coat="flood", hours=30), pour(piece="two", coat="flood", hours=30)
    )
    mix = WeighingTold(
        product="resin",
        at=ago(30),
        a_grams=30,
        b_grams=15,
        lot_a="L-77",
        lot_b="H-12",
        colourants=(WeighedColour(name="teal", grams=1.5),),
        coats=(("one", "flood"), ("two", "flood")),
    )
    whole = weighed(whole, mix, NOW).make(whole)
    touch = StepTold(
        kind=EntryKind.TOUCHED,
        pieces=("one",),
        coat="flood",
        at=ago(20),
        touch=Touch.TACK,
        verdict=Verdict.ALREADY,
        words="left of the middle",
    )
    whole = told(whole, touch, NOW).make(whole)
    return shipped(whole, "fair", ago(1), NOW).make(whole)


def text(passages: tuple[Passage, ...]) -> str:
    return "\n".join(passage.text(VOICE) for passage in passages)


def test_a_piece_tells_its_pours_mixes_lots_air_touches_and_sisters() -> None:
    whole = shared()
    words = text(piece_passages(whole, trace_piece(whole, "one")))
    for part in (
        "Coaster one, for Fair.",
        "30.0 g A, 15.0 g B, 1.5 g teal, A of lot L-77, B of lot H-12",
        "touched: tape-tack, already (left of the middle)",
        "From the same mix or lot",
        "Coaster two, flood: same mix 1, Fair, shipped",
        "What else happened",
    ):
        assert part in words


def test_the_air_is_told_or_said_to_be_unknown() -> None:
    unread = with_pours(pour(hours=65))
    words = text(piece_passages(unread, trace_piece(unread, "tray")))
    assert "The air around it was not read." in words
    read = with_pours(pour(hours=41))
    assert "up to 50 % humid" in text(piece_passages(read, trace_piece(read, "tray")))


def test_corrections_are_counted_and_weights_that_lack_are_said() -> None:
    whole = with_pours(pour())
    whole = corrected(whole, 1, replace(whole.log[0], end=ago(48.5)), NOW).make(whole)
    words = text(piece_passages(whole, trace_piece(whole, "tray")))
    assert "1 entry was corrected or withdrawn; the log keeps it." in words
    assert "No weights were written down for it." in words
    assert "poured yet" in text(piece_passages(studio(), trace_piece(studio(), "tray")))


def test_a_mix_tells_every_piece_and_order_it_went_to() -> None:
    whole = shared()
    words = text(spread_passages(whole, trace_batch(whole, 1)))
    assert "Coaster one, flood: same mix 1" in words
    assert "Coaster two, flood: same mix 1" in words
    assert words.endswith("Orders\nFair.")


def test_the_customer_gets_one_sentence_a_coat() -> None:
    whole = shared()
    words = customer_words(whole, trace_piece(whole, "two"), VOICE)
    assert words.startswith("Coaster two for Fair: flood poured")
    assert "from mix 1" in words
    assert "A of lot L-77, B of lot H-12" in words
    assert "nothing of it was poured yet" in customer_words(
        studio(), trace_piece(studio(), "tray"), VOICE
    )
    bare = with_pours(pour())
    assert "mix" not in customer_words(bare, trace_piece(bare, "tray"), VOICE)


def test_a_mix_of_a_wrong_ratio_says_so_wherever_it_is_traced() -> None:
    whole = with_pours(pour(piece="one", coat="flood", hours=30))
    mix = WeighingTold(
        product="resin", at=ago(30), a_grams=30, b_grams=21, coats=(("one", "flood"),)
    )
    whole = weighed(whole, mix, NOW).make(whole)
    fault = "Mix 1 has 40.0 % too much B for"
    assert fault in text(piece_passages(whole, trace_piece(whole, "one")))
    assert fault in text(spread_passages(whole, trace_batch(whole, 1)))
    assert "too much" not in customer_words(whole, trace_piece(whole, "one"), VOICE)
