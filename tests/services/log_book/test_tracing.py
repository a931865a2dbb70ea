"""From a complaint to mixes, lots, air and sisters, and from a lot to every piece."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, datetime
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.log import EntryKind, Poured
from studio_planner.craft.pieces import Piece
from studio_planner.craft.places import Reading
from studio_planner.craft.stock import Lot, LotPart
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.editing.nouns import without_thing
from studio_planner.services.log_book.corrections import withdrawn
from studio_planner.services.log_book.entry_words import about, what_happened
from studio_planner.services.log_book.lots import lot_words
from studio_planner.services.log_book.steps import StepTold, shipped, told
from studio_planner.services.log_book.tracing import trace_batch, trace_lot, trace_piece
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from studio_planner.terminal.ask_command import TerminalVoice
from tests.services.log_book.logged_studio import NOW, ago, pour, studio, with_pours

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

TRAY, ONE, TWO = ("tray", "seal"), ("one", "flood"), ("two", "flood")
BOTTLE = Lot(
    key="bottle-1", product="resin", part=LotPart.A, label="L-0815",
    received=date(2031, 1, 1), new_g=1000,
)  # fmt: skip


def mixed(of: Studio, hours: float, lot: str, *coats: tuple[str, str]) -> Studio:
    mix = WeighingTold(
        product="resin", at=ago(hours), a_grams=100, b_grams=50, lot_a=lot, lot_b="B-7",
        coats=coats,
    )  # fmt: skip
    return weighed(of, mix, NOW).make(of)


def noted(of: Studio, kind: EntryKind, hours: float, piece: str, **facts: object) -> Studio:
    step = StepTold(kind=kind, pieces=(piece,), at=ago(hours), **facts)  # type: ignore[arg-type]
    return told(of, step, NOW).make(of)


def traced() -> Studio:
    """Tray and coaster one from mix 1, coaster two from mix 2 of the same lot of A."""
    whole = studio(lots=(BOTTLE,))
    whole = mixed(whole, 51, "bottle-1", TRAY, ONE)
    whole = mixed(whole, 31, "l-0815 ", TWO)
    return with_pours(
        pour(), pour("one", "flood"), pour("two", "flood", hours=30, spot="b1"), of=whole
    )


def test_a_piece_is_traced_to_its_mixes_and_the_air_around() -> None:
    whole = noted(
        traced(), EntryKind.TOUCHED, 45, "tray",
        coat="seal", touch=Touch.NO_MARK, verdict=Verdict.NOT_YET,
    )  # fmt: skip
    whole = noted(whole, EntryKind.TURNED, 5, "tray")
    trace = trace_piece(whole, "tray")
    (seal,) = trace.pours
    assert (trace.name, trace.order_name, trace.gone) == ("Tray", "Ines", False)
    assert (seal.name, seal.former) == ("seal", False)
    assert [mix.batch for mix in seal.mixes] == [1]
    assert [one.kind for one in seal.touches] == [EntryKind.TOUCHED]
    assert [one.kind for one in trace.entries] == [EntryKind.TURNED]
    assert seal.air is not None
    assert [one.when for one in seal.air.readings] == [ago(40)]
    assert (seal.air.coldest, seal.air.warmest, seal.air.dampest) == (16.0, 16.0, 50.0)


def test_the_air_around_a_pour_is_read_where_the_piece_was_carried() -> None:
    whole = traced()
    room, box = whole.places
    read = tuple(Reading(when=ago(hours), celsius=31.0) for hours in (49, 46, 45, 20))
    whole = replace(whole, places=(room, replace(box, readings=read)))

    def when(studio: Studio) -> list[datetime]:
        (seal,) = trace_piece(studio, "tray").pours
        assert seal.air is not None
        assert seal.air.place == room.key
        return [one.when for one in seal.air.readings]

    assert when(whole) == [ago(40)]
    whole = noted(whole, EntryKind.MOVED, 46, "tray", spot="b1")
    assert when(whole) == [ago(46), ago(45)]
    whole = noted(whole, EntryKind.MOVED, 44, "tray", spot="s1")
    assert when(whole) == [ago(46), ago(45), ago(40)]


def test_sisters_share_the_mix_or_a_lot_however_it_was_noted() -> None:
    trace = trace_piece(traced(), "tray")
    assert [(one.piece, one.batch, one.same_mix) for one in trace.sisters] == [
        ("one", 1, True), ("two", 2, False),
    ]  # fmt: skip
    assert [(one.order_name, one.coat_name) for one in trace.sisters] == [("Fair", "flood")] * 2


@pytest.mark.parametrize("lot", ["bottle-1", "L-0815", " l-0815", "b-7"])
def test_a_lot_is_traced_to_all_its_pieces_and_orders(lot: str) -> None:
    whole = traced()
    left = shipped(whole, "ines", ago(1), NOW).make(whole)
    spread = trace_lot(left, lot)
    assert [mix.batch for mix in spread.mixes] == [1, 2]
    assert [one.piece for one in spread.coats] == ["tray", "one", "two"]
    assert [one.order for one in spread.coats] == ["ines", "fair", "fair"]
    assert [one.shipped for one in spread.coats] == [ago(1), None, None]


def test_a_number_of_a_mix_is_traced_and_nothing_is_found_of_others() -> None:
    whole = traced()
    assert [one.piece for one in trace_batch(whole, 2).coats] == ["two"]
    assert trace_batch(whole, 99).mixes == ()
    assert trace_lot(whole, "unknown").coats == ()
    assert trace_lot(whole, " ").coats == ()
    withdrawn_mix = withdrawn(whole, 2, NOW).make(whole)
    assert trace_batch(withdrawn_mix, 2).coats == ()


def test_words_on_labels_of_two_makers_are_two_lots() -> None:
    whole = mixed(mixed(studio(), 51, "17", TRAY), 31, "17", ONE)
    other = WeighingTold(
        product="clear", at=ago(9), a_grams=1, b_grams=1, lot_a="17", coats=(("tray", "top"),)
    )
    whole = weighed(whole, other, NOW).make(whole)
    whole = with_pours(pour(), of=whole)
    assert [one.piece for one in trace_piece(whole, "tray").sisters] == ["one"]
    assert lot_words(whole, "17") == "17"
    assert lot_words(traced(), "bottle-1") == "L-0815"


def test_a_pour_that_names_a_mix_is_traced_though_the_mix_does_not_name_it() -> None:
    whole = mixed(studio(), 51, "17")
    whole = with_pours(pour(batch=1), of=whole)
    assert [mix.batch for mix in trace_piece(whole, "tray").pours[0].mixes] == [1]
    assert [one.piece for one in trace_batch(whole, 1).coats] == ["tray"]


def test_a_piece_that_is_gone_is_traced_under_its_name() -> None:
    whole = without_thing(traced(), Piece, "one")
    trace = trace_piece(whole, "one")
    assert (trace.name, trace.order_name, trace.gone) == ("Coaster one", "Fair", True)
    assert [(one.name, one.former) for one in trace.pours] == [("flood", False)]
    assert [one.gone for one in trace_batch(whole, 1).coats] == [False, True]
    both = without_thing(whole, Piece, "two")
    assert trace_piece(both, "one").order_name == "Fair"


def test_a_coat_before_the_piece_was_stripped_keeps_its_own_mix_and_touches() -> None:
    whole = noted(
        traced(), EntryKind.TOUCHED, 45, "tray",
        coat="seal", touch=Touch.STRING, verdict=Verdict.NOT_YET,
    )  # fmt: skip
    whole = noted(whole, EntryKind.STRIPPED, 20, "tray")
    whole = mixed(whole, 11, "bottle-1", TRAY)
    whole = with_pours(pour(hours=10), of=whole)
    whole = noted(
        whole, EntryKind.TOUCHED, 5, "tray",
        coat="seal", touch=Touch.TACK, verdict=Verdict.ALREADY,
    )  # fmt: skip
    first, second = trace_piece(whole, "tray").pours
    assert (first.former, second.former) == (True, False)
    assert ([m.batch for m in first.mixes], [m.batch for m in second.mixes]) == ([1], [3])
    assert [one.touch for one in first.touches] == [Touch.STRING]
    assert [one.touch for one in second.touches] == [Touch.TACK]


def test_what_is_older_than_the_log_and_what_was_corrected_is_told_too() -> None:
    old = Poured(piece="two", coat="flood", start=ago(9), end=ago(8), spot="s1")
    trace = trace_piece(studio(poured=(old,)), "two")
    assert [(one.entry.at, one.former) for one in trace.pours] == [(ago(9), False)]
    wrong = withdrawn(traced(), 5, NOW).make(traced())
    assert [one.number for one in trace_piece(wrong, "two").corrections] == [5]


def test_where_nothing_was_read_or_the_spot_is_gone_that_is_said() -> None:
    whole = traced()
    (flood,) = trace_piece(whole, "two").pours
    assert flood.air is not None
    assert (flood.air.place, flood.air.coldest, flood.air.dampest) == ("box", None, None)
    assert flood.air.warmest is None
    gone = without_thing(whole, Piece, "two")
    no_box = replace(gone, places=gone.places[:1])
    assert trace_piece(no_box, "two").pours[0].air is None


def test_an_entry_says_what_happened_and_to_whom() -> None:
    whole = noted(traced(), EntryKind.MOVED, 4, "tray", spot="b1")
    whole = noted(
        whole, EntryKind.TOUCHED, 3, "tray",
        coat="seal", touch=Touch.TACK, verdict=Verdict.NOT_YET,
    )  # fmt: skip
    whole = withdrawn(whole, 7, NOW).make(noted(whole, EntryKind.PACKED, 1, "tray"))
    voice = TerminalVoice(whole)
    lines = [(about(whole, e), what_happened(whole, e).words(voice)) for e in whole.log]
    assert lines == [
        ("Invented resin", "weighed as mix 1"),
        ("Invented resin", "weighed as mix 2"),
        ("Tray, seal", "poured in 1 h 00 min on s1, on bare"),
        ("Coaster one, flood", "poured in 1 h 00 min on s1, on bare"),
        ("Coaster two, flood", "poured in 1 h 00 min on b1, on bare"),
        ("Tray", "moved to b1"),
        ("Tray, seal", "touched: tape-tack, not yet"),
        ("Tray", "packed"),
        ("", "entry 7 withdrawn: it never happened"),
    ]
