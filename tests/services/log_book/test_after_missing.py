"""A missed window offers its real choices; every time is worked out in a steady room.

At 25 °C the seal closes 13.64 h after A met B at its safe edge, likely after 15 h; the glitter
coat, of the same product, can't be sanded and allows a touch test.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind, Poured
from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.services.desk import DeskView
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.log_book.after_missing import (
    WORDS,
    Choice,
    Missed,
    Way,
    choices_after,
    missed_windows,
    way_word,
)
from studio_planner.services.log_book.planned_choices import Dates, dates_of
from studio_planner.services.log_book.steps import StepTold, told
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from studio_planner.services.plan_again import plan_again
from studio_planner.services.trying.trial import as_followed
from tests.desktop.scenes import at
from tests.services.questions.steady import PlainVoice, steady_studio
from tests.services.small_studios import cut_down

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.studio import Studio

TEN = at(1, "10:00")


def planned_choice(view: DeskView, choice: Choice) -> Studio:
    """The studio of a choice with a quick plan, as the desk has it made in a process."""
    assert choice.trial is not None
    studio = as_followed(choice.trial.studio, view.now)
    return replace(studio, plan=plan_again(studio, view.now).plan)


def poured(piece: str, coat: str, begin: str, end: str, spot: str = "B1") -> Poured:
    return Poured(piece=piece, coat=coat, start=at(0, begin), end=at(0, end), spot=spot)


SEAL = poured("h1", "seal", "18:20", "19:05")


def bare(*pours: Poured, piece: str = "h1") -> Studio:
    """The steady studio with that piece alone, its plan forgotten."""
    whole = steady_studio()
    orders = tuple(one.key for one in whole.orders if piece in one.pieces)
    studio = cut_down(whole, piece, orders=orders)
    return replace(studio, plan=None, poured=pours)


def view(studio: Studio, now: datetime = TEN) -> DeskView:
    return DeskView(studio, now)


def glittered() -> Studio:
    """Moon tray with its seal and then glitter, which is never sanded, on Tuesday evening."""
    return bare(
        poured("m", "seal", "12:00", "12:40"),
        replace(poured("m", "glitter", "18:20", "19:00"), joint=Joint.IN_WINDOW),
        piece="m",
    )


def only(one: DeskView) -> Missed:
    (missed,) = missed_windows(one)
    return missed


def ways(one: DeskView) -> dict[Way, Choice]:
    return {choice.way: choice for choice in choices_after(one, only(one))}


def words(choice: Choice) -> str:
    return choice.words.words(PlainVoice())


def test_every_way_has_its_words() -> None:
    assert {way.value for way in Way} <= set(WORDS)
    assert way_word(Way.SCUFF) == "wash and sand it"


def test_a_window_is_missed_when_the_whole_pour_no_longer_fits() -> None:
    # It closes at 07:58; the flood takes 45 min.
    studio = bare(SEAL)
    assert missed_windows(view(studio, at(1, "07:00"))) == ()
    missed = only(view(studio, at(1, "07:30")))
    assert (missed.piece, missed.coat) == ("h1", "flood")
    assert missed.name == "Harbour board 1, flood"
    assert PlainVoice().moment(missed.closed) == "Wed 07:58"


def test_nothing_is_missed_on_a_bare_or_finished_piece_or_one_that_has_left() -> None:
    assert missed_windows(view(bare())) == ()
    done = bare(poured("k", "clear", "18:20", "19:00", "C2"), piece="k")
    assert missed_windows(view(done)) == ()
    left = StepTold(kind=EntryKind.SPOILED, pieces=("h1",), at=at(1, "09:00"))
    spoiled = told(bare(SEAL), left, TEN).make(bare(SEAL))
    assert missed_windows(view(spoiled)) == ()
    gone = Missed(piece="h1", coat="tide", name="", closed=TEN)
    assert choices_after(view(bare(SEAL)), gone) == ()


def test_while_the_likely_window_is_open_a_touch_test_may_save_it() -> None:
    found = ways(view(bare(SEAL), at(1, "07:30")))
    assert words(found[Way.TEST]) == (
        "It likely stays open until Wed 09:20; a touch test says whether it still is."
    )
    assert Way.TEST not in ways(view(bare(SEAL)))


def test_what_can_be_sanded_is_washed_and_sanded_for_twenty_minutes() -> None:
    found = ways(view(bare(SEAL)))
    assert list(found) == [Way.SCUFF, Way.STRIP]
    scuff = found[Way.SCUFF]
    assert (scuff.extra_minutes, scuff.extra_grams) == (20.0, 0.0)
    assert "dry powder" in words(scuff)


def test_a_sheet_without_sandable_says_what_is_missing() -> None:
    studio = bare(SEAL)
    seal = studio.product("fast")
    silent = replace(seal, sheet=tuple(p for p in seal.sheet if p.stage != "sandable"))
    scuff = ways(view(with_thing(studio, silent)))[Way.SCUFF]
    assert scuff.trial is None
    assert "does not say when it can be sanded" in words(scuff)


def test_what_cannot_be_sanded_gets_a_lock_coat_while_the_window_lasts() -> None:
    # The lock coat on glitter is in the stack already; on a flood it would be one more.
    studio = glittered()
    piece = studio.piece("m")
    flood = replace(piece.stack[2], key="flood", kind=CoatKind.FLOOD, piece_minutes=60)
    studio = with_thing(studio, replace(piece, stack=(*piece.stack[:2], flood)))
    now = view(studio, at(1, "08:30"))  # likely closed 09:20; a lock coat takes 30 min
    found = ways(now)
    lock = found[Way.LOCK]
    assert lock.trial is not None
    assert [coat.kind for coat in lock.trial.studio.piece("m").stack][2:] == [
        CoatKind.LOCK, CoatKind.FLOOD,
    ]  # fmt: skip
    assert lock.extra_minutes == 30
    assert lock.extra_grams > 0
    assert "can't be sanded" in words(found[Way.SCUFF])
    late = ways(view(studio, at(1, "09:00")))[Way.LOCK]
    assert late.trial is None
    assert words(late) == "It is too late for a lock coat: its window closes Wed 09:20."


def test_a_lock_coat_that_was_missed_itself_is_no_way_out() -> None:
    assert list(ways(view(glittered()))) == [Way.SCUFF, Way.STRIP]


def test_what_was_meant_wet_in_wet_goes_into_the_next_window() -> None:
    studio = bare(SEAL)
    piece = studio.piece("h1")
    wet = replace(piece.stack[1], joint=Joint.WET_IN_WET)
    studio = with_thing(studio, replace(piece, stack=(piece.stack[0], wet, *piece.stack[2:])))
    found = ways(view(studio, at(0, "19:36")))
    assert list(found) == [Way.FIRM, Way.STRIP]
    firm = found[Way.FIRM].trial
    assert firm is not None
    assert firm.studio.piece("h1").coat("flood").joint is Joint.IN_WINDOW


def test_stripping_costs_every_coat_again() -> None:
    strip = ways(view(glittered()))[Way.STRIP]
    assert strip.trial is not None
    assert strip.trial.studio.pours_of("m") == ()
    assert strip.extra_minutes == 90  # two coats of 45 min
    assert strip.extra_grams > 0
    assert words(strip).endswith("2 coats are poured again.")


def test_each_way_is_planned_with_its_dates_and_its_promise() -> None:
    today = view(bare(SEAL))
    missed = only(today)
    dates = {
        choice.way: dates_of(choice, missed, planned_choice(today, choice))
        for choice in choices_after(today, missed)
    }
    scuff, strip = dates[Way.SCUFF], dates[Way.STRIP]
    assert scuff.next_pour is not None
    assert strip.next_pour is not None
    assert strip.next_pour >= TEN
    # The seal can be sanded 9.9 h after 19:05, so Bo does it in the morning, and Ada pours.
    assert at(1, "18:00") <= scuff.next_pour < at(1, "22:00")
    assert scuff.last_pour is not None
    assert strip.last_pour is not None
    assert scuff.last_pour < strip.last_pour
    assert scuff.keeps_promise is True
    assert scuff.reason == strip.reason == ""


def test_what_has_no_order_keeps_no_promise() -> None:
    nothing = Dates(next_pour=None, last_pour=None, leaves=None, due=None, reason="")
    assert nothing.keeps_promise is None
    assert replace(nothing, due=TEN).keeps_promise is False


def test_a_film_that_may_never_cure_is_named_with_each_way_but_stripping() -> None:
    before = bare(SEAL)
    product = before.piece("h1").coat("seal").product
    wrong = WeighingTold(
        product=product, at=SEAL.start, a_grams=100, b_grams=5, coats=(("h1", "seal"),)
    )
    mixed = weighed(before, wrong, TEN).make(before)
    now = view(replace(mixed, poured=(replace(SEAL, batch=mixed.mixes[-1].batch),)))
    told_of = {one.way: one.words.words(PlainVoice()) for one in choices_after(now, only(now))}
    named = {way for way, words in told_of.items() if "too little B" in words}
    assert named == told_of.keys() - {Way.STRIP}
    assert named
