"""One tap writes down what happened; what can't have happened gets a sentence."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING, Any

import pytest

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.log import EntryKind, Poured
from studio_planner.craft.mixes import MixedFor, WeighedColour
from studio_planner.craft.pieces import Joint
from studio_planner.craft.pins import Pin
from studio_planner.craft.standing import is_spoiled, life_of, packed_at, shipped_at
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.services.log_book.pours import (
    PourTold,
    planned_minutes,
    poured,
    with_pour,
)
from studio_planner.services.log_book.steps import StepTold, shipped, told
from studio_planner.services.log_book.weighings import WeighingTold, next_batch, weighed
from tests.services.log_book.logged_studio import (
    NOW,
    ago,
    pour,
    sentences,
    studio,
    with_pours,
)
from tests.storage.full_studio import full_studio

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

SEALED = with_pours(pour())


def step(kind: EntryKind, *pieces: str, hours: float = 1, **facts: Any) -> StepTold:  # noqa: ANN401 - anything
    return StepTold(kind=kind, pieces=pieces or ("tray",), at=ago(hours), **facts)


def after(one: StepTold, of: Studio) -> Studio:
    return told(of, one, NOW).make(of)


def refused(one: StepTold, of: Studio) -> dict[str, str]:
    return sentences(told(of, one, NOW), of)


def pour_refused(*told_of: PourTold, of: Studio) -> dict[str, str]:
    return sentences(poured(of, told_of, NOW), of)


def weighing(**facts: Any) -> WeighingTold:  # noqa: ANN401 - likewise
    given: dict[str, Any] = {
        "product": "resin", "at": ago(51), "a_grams": 120.4, "b_grams": 60.1,
        "coats": (("tray", "seal"),),
    }  # fmt: skip
    return WeighingTold(**(given | facts))


def test_a_pour_is_poured_and_in_the_log_with_its_pin_let_go() -> None:
    pinned = replace(studio(), pins=(Pin(piece="tray", coat="seal", start=NOW),))
    change = poured(pinned, [pour(words="a bit thick")], NOW)
    after = change.make(pinned)
    assert change.words == "Poured: Tray"
    assert after.poured == (
        Poured(piece="tray", coat="seal", start=ago(50), end=ago(49), spot="s1"),
    )
    (entry,) = after.log
    assert (entry.number, entry.kind, entry.at, entry.end, entry.written) == (
        1, EntryKind.POURED, ago(50), ago(49), NOW,
    )  # fmt: skip
    assert (entry.spot, entry.joint, entry.words) == ("s1", Joint.BARE, "a bit thick")
    assert after.pins == ()


def test_several_coats_are_one_change_whatever_their_order() -> None:
    flood = pour(coat="flood", hours=20)
    whole = studio()
    after = poured(whole, [flood, pour(), pour("one", "flood")], NOW).make(whole)
    assert [(p.piece, p.coat) for p in after.poured] == [
        ("tray", "seal"), ("tray", "flood"), ("one", "flood"),
    ]  # fmt: skip
    assert after.pours_of("tray")[1].joint is Joint.IN_WINDOW


def test_a_pour_without_a_spot_lies_where_the_piece_lay() -> None:
    moved = after(step(EntryKind.MOVED, hours=30, spot="s2"), SEALED)
    flooded = with_pours(pour(coat="flood", hours=20, spot=None), of=moved)
    assert flooded.pours_of("tray")[1].spot == "s2"
    assert "which spot" in pour_refused(pour(spot=None), of=studio())["spot"]
    assert "no spot" in pour_refused(pour(spot="moon"), of=studio())["spot"]


@pytest.mark.parametrize(
    ("facts", "field", "words"),
    [
        ({"start": ago(-0.1), "end": ago(-1)}, "start", "ahead"),
        ({"end": NOW + timedelta(hours=13)}, "end", "too far ahead"),
        ({"end": ago(51)}, "end", "after it starts"),
        ({"start": datetime(1970, 1, 1, tzinfo=NOW.tzinfo)}, "start", "clock right"),
        ({"start": datetime(2031, 3, 3, 12)}, "start", "zone"),  # noqa: DTZ001 - meant
        ({"end": datetime(2031, 3, 3, 12)}, "end", "zone"),  # noqa: DTZ001 - likewise
        ({"batch": 9}, "batch", "no mix 9"),
        ({"coat": "flood"}, "coat", "write down seal first"),
        ({"coat": "moon"}, "coat", "the stack is seal, flood, top"),
        ({"piece": "moon"}, "piece", "no piece"),
    ],
)  # fmt: skip
def test_a_pour_that_cannot_have_been_is_refused_in_a_sentence(
    facts: dict[str, Any], field: str, words: str
) -> None:
    assert words in pour_refused(pour(**facts), of=studio())[field]


def test_a_pour_that_goes_on_may_end_soon() -> None:
    soon = pour(start=NOW + timedelta(minutes=4), end=NOW + timedelta(minutes=64))
    assert with_pours(soon).poured


def test_a_coat_is_poured_once_and_after_the_one_below() -> None:
    assert "already" in pour_refused(pour(hours=40), of=SEALED)["coat"]
    early = pour(coat="flood", hours=60)
    assert "before the pour of seal" in pour_refused(early, of=SEALED)["start"]


def test_a_spoiled_piece_is_not_poured_until_it_is_bare_again() -> None:
    spoiled = after(step(EntryKind.SPOILED, coat="seal", words="fish eyes"), SEALED)
    assert "spoiled" in pour_refused(pour(coat="flood", hours=0.5), of=spoiled)["piece"]
    bare = after(step(EntryKind.STRIPPED, hours=0.5), spoiled)
    assert bare.pours_of("tray") == ()
    assert [entry.kind for entry in bare.log] == [
        EntryKind.POURED, EntryKind.SPOILED, EntryKind.STRIPPED,
    ]  # fmt: skip
    again = with_pours(pour(hours=0.25, end=NOW), of=bare)
    assert [one.start for one in again.pours_of("tray")] == [ago(0.25)]


def test_the_steps_of_a_piece_are_written_down() -> None:
    flooded = with_pours(pour(coat="flood", hours=20), of=SEALED)
    steps = (
        step(EntryKind.TOUCHED, coat="flood", touch=Touch.TACK, verdict=Verdict.ALREADY),
        step(EntryKind.TAPED, coat="seal"),
        step(EntryKind.TRIMMED, coat="seal"),
        step(EntryKind.SANDED, coat="top"),
        step(EntryKind.TURNED),
        step(EntryKind.MOVED, spot="b1"),
        step(EntryKind.PACKED, hours=0.5),
    )
    for one in steps:
        flooded = after(one, flooded)
    assert [entry.kind for entry in flooded.log[2:]] == [one.kind for one in steps]
    assert packed_at(life_of(flooded, "tray")) == ago(0.5)
    assert told(flooded, steps[0], NOW).words == f"Tray: {kind_word(EntryKind.TOUCHED)}"


def test_a_step_of_several_pieces_is_one_change() -> None:
    both = after(step(EntryKind.TURNED, "one", "two"), studio())
    assert [(entry.number, entry.piece) for entry in both.log] == [(1, "one"), (2, "two")]
    assert (
        "choose"
        in sentences(told(both, StepTold(kind=EntryKind.TURNED, pieces=(), at=NOW), NOW), both)[
            "piece"
        ]
    )


@pytest.mark.parametrize(
    ("one", "field", "words"),
    [
        (step(EntryKind.TAPED, coat="flood"), "coat", "the pour of flood first"),
        (step(EntryKind.TAPED, coat="seal", hours=51), "at", "before the pour of seal"),
        (step(EntryKind.TAPED, coat="moon"), "coat", "the stack is"),
        (step(EntryKind.TURNED, hours=-1), "at", "ahead"),
        (step(EntryKind.TURNED, "moon"), "piece", "no piece"),
        (step(EntryKind.MOVED, spot="moon"), "spot", "no spot"),
        (step(EntryKind.PACKED, hours=51), "at", "before the pour of seal"),
        (step(EntryKind.STRIPPED, "one"), "piece", "bare blank already"),
        (step(EntryKind.TAPED), "coat", "say which coat"),
        (step(EntryKind.TAPED, "one"), "coat", "nothing is poured on Coaster one yet"),
    ],
)
def test_a_step_that_cannot_have_been_is_refused_in_a_sentence(
    one: StepTold, field: str, words: str
) -> None:
    assert words in refused(one, SEALED)[field]


def test_a_piece_is_packed_once_and_not_when_spoiled() -> None:
    packed = after(step(EntryKind.PACKED, "one"), studio())
    assert "already" in refused(step(EntryKind.PACKED, "one"), packed)["piece"]
    spoiled = after(step(EntryKind.SPOILED, "one", hours=2), studio())
    assert "spoiled" in refused(step(EntryKind.PACKED, "one"), spoiled)["piece"]


def test_an_order_leaves_with_all_pieces_that_have_not_left() -> None:
    whole = studio()
    gone = after(step(EntryKind.SHIPPED, "one", hours=3), whole)
    change = shipped(gone, "fair", ago(1), NOW)
    left = change.make(gone)
    assert change.words == "Shipped: Fair"
    assert [(e.piece, e.order) for e in left.log] == [("one", ""), ("two", "fair")]
    assert shipped_at(life_of(left, "two")) == ago(1)
    assert "left already" in sentences(shipped(left, "fair", ago(1), NOW), left)["order"]
    assert "no order" in sentences(shipped(left, "moon", ago(1), NOW), left)["order"]


def test_an_order_with_a_spoiled_piece_does_not_leave() -> None:
    spoiled = after(step(EntryKind.SPOILED, "one", hours=2), studio())
    assert "spoiled" in sentences(shipped(spoiled, "fair", ago(1), NOW), spoiled)["piece"]


def test_what_has_left_can_only_come_back_spoiled() -> None:
    left = after(step(EntryKind.SHIPPED, "one", hours=3), studio())
    assert "had left" in refused(step(EntryKind.TURNED, "one"), left)["piece"]
    assert after(step(EntryKind.TURNED, "one", hours=4), left).standing
    assert is_spoiled(life_of(after(step(EntryKind.SPOILED, "one"), left), "one"))


def test_a_mix_gets_the_next_number_and_the_pours_from_it_know_it() -> None:
    whole = studio()
    blue = WeighedColour(name="blue", grams=2.2)
    change = weighed(whole, weighing(lot_a=" L-1 ", colourants=(blue,)), NOW)
    mixed = change.make(whole)
    assert change.words == "Weighed: Invented resin"
    (mix,) = mixed.standing_mixes
    assert (mix.entry, mix.batch, mix.lot_a) == (1, 1, "L-1")
    assert mix.grams == pytest.approx(182.7)
    assert mix.coats == (MixedFor(piece="tray", coat="seal"),)
    assert with_pours(pour(), of=mixed).poured[0].batch == 1
    assert next_batch(mixed) == 2
    assert next_batch(whole) == 1


def test_a_mix_that_is_written_down_late_is_given_to_the_pour() -> None:
    mixed = weighed(SEALED, weighing(), NOW).make(SEALED)
    assert mixed.poured[0].batch == 1
    later = weighed(SEALED, weighing(at=ago(2)), NOW).make(SEALED)
    assert later.poured[0].batch is None


def test_a_pour_that_is_older_than_the_log_keeps_what_was_known_of_it() -> None:
    old = full_studio()
    bare = replace(old, log=(), mixes=(), poured=(replace(old.poured[0], batch=None),))
    mixed = weighed(
        bare,
        WeighingTold(product="clear", at=ago(0.5), a_grams=1, b_grams=1, coats=(("p1", "a"),)),
        NOW,
    ).make(bare)
    assert mixed.poured == bare.poured


@pytest.mark.parametrize(
    ("facts", "field", "words"),
    [
        ({"product": "moon"}, "product", "no product"),
        ({"at": NOW + timedelta(hours=1)}, "at", "ahead"),
        ({"a_grams": -1.0}, "a_grams", "outside"),
        ({"b_grams": 0.0}, "b_grams", "both A and B"),
        ({"a_grams": 0.0}, "a_grams", "both A and B"),
        ({"coats": (("tray", "top"),)}, "coats", "is of Clear"),
        ({"coats": (("moon", "top"),)}, "piece", "no piece"),
    ],
)
def test_a_weighing_that_cannot_have_been_is_refused_in_a_sentence(
    facts: dict[str, Any], field: str, words: str
) -> None:
    whole = studio()
    assert words in sentences(weighed(whole, weighing(**facts), NOW), whole)[field]


def test_what_is_not_mixed_has_no_b() -> None:
    whole = full_studio()
    leaf = WeighingTold(product="leaf", at=ago(1), a_grams=1.0, b_grams=1.0)
    assert "not mixed" in sentences(weighed(whole, leaf, NOW), whole)["b_grams"]


def test_what_lies_below_a_planned_pour_is_taken_as_planned() -> None:
    whole = full_studio()
    plan = whole.plan
    assert plan is not None
    bare = replace(whole, poured=(), log=(), mixes=())
    second = plan.coats[1]
    end = second.start + timedelta(hours=1)
    done = with_pour(bare, (second,), second.start, end)
    assert [(e.coat, e.words, e.written) for e in done.log] == [
        ("a", "taken as planned", end), ("b", "", end),
    ]  # fmt: skip
    assert with_pour(done, (second,), second.start, end) is done
    told_later = with_pour(bare, (second,), second.start, end, written=NOW)
    assert {entry.written for entry in told_later.log} == {NOW}


def test_a_pour_takes_as_long_as_planned_or_as_its_pieces_need() -> None:
    assert planned_minutes(studio(), "tray", "seal") == 45
    assert planned_minutes(full_studio(), "p1", "b") == 60


def test_a_pour_of_the_plan_has_its_spot_and_joint() -> None:
    whole = full_studio()
    second = PourTold(piece="p1", coat="b", start=NOW, end=NOW + timedelta(minutes=30))
    done = poured(whole, [second], NOW + timedelta(hours=1)).make(whole)
    assert (done.poured[1].spot, done.poured[1].joint) == ("s1", Joint.IN_WINDOW)


def test_nothing_is_lost_when_an_entry_is_refused() -> None:
    with pytest.raises(InvalidEntry):
        poured(SEALED, [pour("one", "flood"), pour(coat="top")], NOW).make(SEALED)
    assert len(SEALED.log) == 1
