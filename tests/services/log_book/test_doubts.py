"""What can hardly be right is written down all the same, and said with what to do about it."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from typing import TYPE_CHECKING, Any

import pytest

from studio_planner.craft.log import EntryKind
from studio_planner.craft.products import MixRatio, RatioBy
from studio_planner.craft.stock import Lot, LotPart
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.log_book.corrections import corrected, withdrawn
from studio_planner.services.log_book.doubts import doubts
from studio_planner.services.log_book.mix_faults import hardener_off
from studio_planner.services.log_book.steps import StepTold, shipped, told
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from studio_planner.services.room_logs import typed_reading
from studio_planner.terminal.ask_command import TerminalVoice
from tests.craft.nouns import resin
from tests.services.log_book.logged_studio import NOW, ago, pour, studio, with_pours

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.editing.changes import Change

RESIN = resin(ratio=MixRatio(a=100, b=38, by=RatioBy.WEIGHT))
PLAIN = studio(products=(RESIN, resin(key="clear", name="Clear")))
SEALED = with_pours(pour(), of=PLAIN)
BOTTLE = Lot(
    key="a1", product="resin", part=LotPart.A, label="L 7", received=date(2031, 1, 2), new_g=900
)


def said(change: Change, of: Studio) -> str:
    after = change.make(of)
    return " ".join(one.words(TerminalVoice(after)) for one in doubts(of, after))


def weights(a: float, b: float, **facts: Any) -> Change:  # noqa: ANN401 - anything
    told_of = WeighingTold(product="resin", at=ago(2), a_grams=a, b_grams=b, **facts)
    return weighed(PLAIN, told_of, NOW)


def touch(asked: Touch, verdict: Verdict, hours: float) -> Change:
    step = StepTold(
        kind=EntryKind.TOUCHED,
        pieces=("tray",),
        coat="seal",
        at=ago(hours),
        touch=asked,
        verdict=verdict,
    )
    return told(SEALED, step, NOW)


def step(kind: EntryKind, *pieces: str) -> Change:
    return told(PLAIN, StepTold(kind=kind, pieces=pieces, at=ago(1)), NOW)


@pytest.mark.parametrize(("b", "share"), [(20, "34.2 % too little B"), (54, "77.6 % too much")])
def test_a_wrong_ratio_is_said_with_what_to_add(b: float, share: str) -> None:
    words = said(weights(80, b), PLAIN)
    assert f"Mix 1 has {share}" in words
    assert ("add 10.4 g of B" if b == 20 else "add 62.1 g of A") in words
    assert "correct entry 1" in words


def test_what_the_cup_may_not_hold_is_not_added() -> None:
    small = replace(PLAIN, products=(replace(RESIN, cup_limit_g=150), PLAIN.products[1]))
    words = said(weights(80, 54), small)
    assert "it may never cure: weigh a new one." in words
    assert "add" not in words


def test_what_is_poured_from_a_wrong_mix_is_not_told_to_be_mended_in_the_cup() -> None:
    late = weights(80, 20, coats=(("tray", "seal"),))
    assert "weigh a new one" in said(late, SEALED)
    early = WeighingTold(
        product="resin", at=ago(51), a_grams=80, b_grams=20, coats=(("tray", "seal"),)
    )
    words = said(weighed(SEALED, early, NOW), SEALED)
    assert "It is poured and may never cure" in words
    assert "weigh a new one" not in words


def test_a_mix_a_little_off_is_only_watched() -> None:
    words = said(weights(100, 39.2), PLAIN)
    assert "3.2 % too much B" in words
    assert "Watch how it cures." in words


@pytest.mark.parametrize(("a", "b"), [(100, 38), (100, 38.5), (2, 0.9)])
def test_within_the_tolerance_or_a_step_of_the_scale_nothing_is_said(
    a: float, b: float
) -> None:
    whole = replace(PLAIN, settings=replace(PLAIN.settings, scale_step_g=0.2))
    assert said(weights(a, b), whole) == ""


def test_nobody_knows_whether_a_mix_of_an_assumed_ratio_is_wrong() -> None:
    assumed = replace(RESIN, ratio=MixRatio(a=100, b=38, by=RatioBy.ASSUMED))
    of = replace(PLAIN, products=(assumed, PLAIN.products[1]))
    assert said(weights(80, 20), of) == ""
    mix = weights(80, 20).make(PLAIN).mixes[0]
    assert hardener_off(PLAIN, replace(mix, product="gone")) is None
    assert hardener_off(PLAIN, replace(mix, a_grams=0.0)) is None


def test_a_lot_that_no_bottle_has_is_said_where_bottles_are_kept() -> None:
    stocked = replace(PLAIN, lots=(BOTTLE,))
    words = said(weights(100, 38, lot_a="nix"), stocked)
    assert "No bottle of Table resin has the lot nix; there is L 7." in words.replace(
        RESIN.name, "Table resin"
    )
    assert said(weights(100, 38, lot_a="l 7 "), stocked) == ""
    assert said(weights(100, 38, lot_b="nix"), stocked) == ""
    assert said(weights(100, 38, lot_a="nix"), PLAIN) == ""


def test_what_leaves_without_being_poured_is_said_by_name() -> None:
    words = said(step(EntryKind.PACKED, "tray"), SEALED)
    assert "Tray: packed, but no pour of flood and top coat is written down." in words
    assert "withdraw entry 2" in words
    both = said(shipped(PLAIN, "fair", ago(1), NOW), PLAIN)
    assert "Coaster one: shipped" in both
    assert "Coaster two: shipped" in both
    assert "more of what went" not in both


def test_of_many_pieces_that_leave_bare_three_are_named() -> None:
    many = replace(PLAIN, orders=())
    more = tuple(replace(many.pieces[1], key=f"x{n}", name=f"Extra {n}") for n in range(3))
    many = replace(many, pieces=(*many.pieces, *more))
    words = said(step(EntryKind.PACKED, "one", "two", "x0", "x1", "x2"), many)
    assert "Extra 0: packed" in words
    assert "Extra 1" not in words
    assert "with 2 more" in words


def test_what_is_all_poured_leaves_without_a_word() -> None:
    coats = [pour(coat=c, hours=h) for c, h in (("seal", 60), ("flood", 50), ("top", 30))]
    assert said(step(EntryKind.PACKED, "tray"), with_pours(*coats, of=PLAIN)) == ""


@pytest.mark.parametrize(
    ("first", "then", "at_odds"),
    [
        ((Touch.NO_MARK, Verdict.ALREADY), (Touch.STRING, Verdict.NOT_YET), True),
        ((Touch.NO_MARK, Verdict.ALREADY), (Touch.NO_MARK, Verdict.NOT_YET), True),
        ((Touch.THUMBNAIL, Verdict.ALREADY), (Touch.TACK, Verdict.NOT_YET), True),
        ((Touch.TACK, Verdict.ALREADY), (Touch.NO_MARK, Verdict.NOT_YET), False),
        ((Touch.STRING, Verdict.ALREADY), (Touch.STRING, Verdict.NOT_YET), False),
        ((Touch.TACK, Verdict.NOT_YET), (Touch.NO_MARK, Verdict.ALREADY), False),
    ],
)
def test_touch_tests_that_cannot_both_be_true_are_set_against_each_other(
    first: tuple[Touch, Verdict], then: tuple[Touch, Verdict], at_odds: bool
) -> None:
    once = touch(*first, hours=20).make(SEALED)
    words = said(touch(*then, hours=19), once)
    assert ("does not become wet again" in words) is at_odds
    assert ("(entry 2)" in words) is at_odds
    later = touch(*then, hours=19).make(SEALED)
    assert ("does not become wet again" in said(touch(*first, hours=20), later)) is at_odds


def test_a_touch_test_that_was_taken_back_contradicts_nothing() -> None:
    once = touch(Touch.NO_MARK, Verdict.ALREADY, hours=20).make(SEALED)
    without = withdrawn(once, once.log[-1].number, NOW).make(once)
    assert said(touch(Touch.STRING, Verdict.NOT_YET, hours=19), without) == ""


def test_a_corrected_entry_is_looked_at_as_well() -> None:
    once = touch(Touch.NO_MARK, Verdict.ALREADY, hours=20).make(SEALED)
    twice = touch(Touch.STRING, Verdict.ALREADY, hours=19).make(once)
    right = replace(twice.log[-1], verdict=Verdict.NOT_YET)
    assert "wet again" in said(corrected(twice, right.number, right, NOW), twice)


def test_a_room_that_leaps_is_said_and_one_that_warms_is_not() -> None:
    place = PLAIN.places[0]
    leap = said(typed_reading(place, ago(0.9), 36.0, None), PLAIN)
    assert "36 °C is far from the 19.9 °C of" in leap
    assert said(typed_reading(place, NOW, 24.0, None), PLAIN) == ""
    assert said(typed_reading(place, ago(20), 36.0, None), PLAIN) == ""
    assert said(typed_reading(PLAIN.places[1], NOW, 36.0, None), PLAIN) == ""


def test_a_loggers_whole_file_is_not_looked_at_reading_by_reading() -> None:
    place = PLAIN.places[0]
    more = tuple(
        replace(place.readings[-1], when=ago(n / 60), celsius=20 + 9 * n) for n in (5, 1)
    )
    after = replace(
        PLAIN, places=(replace(place, readings=(*place.readings, *more)), PLAIN.places[1])
    )
    assert doubts(PLAIN, after) == ()
