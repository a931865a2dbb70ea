"""What was wrong is corrected by another entry; pieces follow, and the old one stays."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.standing import life_of, packed_at
from studio_planner.services.log_book.corrections import (
    corrected,
    pour_corrected,
    weighing_corrected,
    withdrawn,
)
from studio_planner.services.log_book.steps import StepTold, told
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from tests.services.log_book.logged_studio import (
    HOUR,
    NOW,
    ago,
    pour,
    sentences,
    studio,
    with_pours,
)

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.editing.changes import Change

FLOODED = with_pours(pour(), pour(coat="flood", hours=20))
LATER = NOW + HOUR


def entry(of: Studio, number: int) -> LogEntry:
    return next(one for one in of.log if one.number == number)


def right(of: Studio, number: int, **facts: object) -> Change:
    return corrected(of, number, replace(entry(of, number), **facts), LATER)  # type: ignore[arg-type]


def step(of: Studio, kind: EntryKind, hours: float, piece: str = "tray") -> Studio:
    return told(of, StepTold(kind=kind, pieces=(piece,), at=ago(hours)), NOW).make(of)


def test_a_corrected_pour_is_what_lies_on_the_piece_and_the_old_entry_stays() -> None:
    change = right(FLOODED, 1, at=ago(52), end=ago(50.5), spot="s2")
    after = change.make(FLOODED)
    assert change.words == "Correct: Tray, poured"
    first, second = after.pours_of("tray")
    assert (first.start, first.end, first.spot) == (ago(52), ago(50.5), "s2")
    assert second == FLOODED.pours_of("tray")[1]
    assert [one.number for one in after.log] == [1, 2, 3]
    assert (after.log[2].corrects, after.log[2].written) == (1, LATER)
    assert [one.number for one in after.standing] == [3, 2]
    again = right(after, 3, at=ago(53)).make(after)
    assert again.pours_of("tray")[0].start == ago(53)


def test_a_pour_is_not_corrected_past_the_ones_below_and_above() -> None:
    late = right(FLOODED, 1, at=ago(10), end=ago(9))
    assert "flood can't be poured before seal" in sentences(late, FLOODED)["coat"]
    early = right(FLOODED, 2, at=ago(70))
    assert "before the pour of seal" in sentences(early, FLOODED)["start"]
    ahead = right(FLOODED, 2, at=ago(-4), end=ago(-5))
    assert "ahead" in sentences(ahead, FLOODED)["start"]


def test_a_pour_on_the_wrong_piece_is_put_on_the_right_one() -> None:
    wrong = with_pours(pour("one", "flood"))
    after = right(wrong, 1, piece="two").make(wrong)
    assert [one.piece for one in after.poured] == ["two"]


def test_a_pour_is_corrected_by_its_coat_too() -> None:
    was = FLOODED.pours_of("tray")[1]
    change = pour_corrected(FLOODED, replace(was, end=ago(18)), LATER, "watch was slow")
    after = change.make(FLOODED)
    assert change.words == "Correct the pour of Tray, flood"
    assert after.pours_of("tray")[1].end == ago(18)
    assert (after.log[-1].corrects, after.log[-1].words) == (2, "watch was slow")
    nothing = pour_corrected(FLOODED, replace(was, coat="top"), LATER)
    assert "the pour of top first" in sentences(nothing, FLOODED)["coat"]


def test_a_pour_that_is_older_than_the_log_is_written_down_before_it_is_corrected() -> None:
    old = Poured(piece="one", coat="flood", start=ago(9), end=ago(8), spot="s1")
    whole = studio(poured=(old,))
    after = pour_corrected(whole, replace(old, start=ago(10)), LATER).make(whole)
    assert after.poured == (replace(old, start=ago(10)),)
    assert [(one.at, one.corrects) for one in after.log] == [(ago(9), None), (ago(10), 1)]


def test_a_withdrawn_pour_is_gone_from_the_piece() -> None:
    change = withdrawn(FLOODED, 2, LATER, "tapped by mistake")
    after = change.make(FLOODED)
    assert change.words == "Withdraw: Tray, poured"
    assert [one.coat for one in after.pours_of("tray")] == ["seal"]
    assert (after.log[-1].words, after.log[-1].kind) == (
        "tapped by mistake", EntryKind.WITHDRAWN,
    )  # fmt: skip
    below = withdrawn(FLOODED, 1, LATER)
    assert "flood can't be poured before seal" in sentences(below, FLOODED)["coat"]


def test_only_what_stands_is_corrected_and_with_its_kind() -> None:
    after = withdrawn(FLOODED, 2, LATER).make(FLOODED)
    never = "entry 3 says that it never happened"
    assert never in sentences(withdrawn(after, 2, LATER), after)["corrects"]
    assert never in sentences(withdrawn(after, 3, LATER), after)["corrects"]
    assert withdrawn(after, 99, LATER).words == "Withdraw: 99"
    assert "no entry 99" in sentences(withdrawn(after, 99, LATER), after)["corrects"]
    other = LogEntry(number=9, kind=EntryKind.TURNED, at=NOW, written=NOW, piece="tray")
    assert "something else" in sentences(corrected(after, 1, other, LATER), after)["corrects"]


def test_a_step_does_not_stand_in_its_own_way() -> None:
    packed = step(FLOODED, EntryKind.PACKED, 2)
    after = right(packed, 3, at=ago(1)).make(packed)
    assert packed_at(life_of(after, "tray")) == ago(1)
    ahead = right(packed, 3, at=ago(-9))
    assert "ahead" in sentences(ahead, packed)["at"]
    assert packed_at(life_of(withdrawn(after, 4, LATER).make(after), "tray")) is None


def test_a_piece_that_was_not_stripped_after_all_has_its_coats_again() -> None:
    bare = step(FLOODED, EntryKind.STRIPPED, 2)
    assert bare.pours_of("tray") == ()
    back = withdrawn(bare, 3, LATER).make(bare)
    assert back.pours_of("tray") == FLOODED.pours_of("tray")
    again = with_pours(pour(hours=1), of=bare)
    assert "seal would be poured twice" in sentences(withdrawn(again, 3, LATER), again)["coat"]


def test_what_was_before_a_piece_was_bare_again_stays_before_that() -> None:
    again = with_pours(pour(hours=1), of=step(FLOODED, EntryKind.STRIPPED, 2))
    after = right(again, 1, at=ago(51)).make(again)
    assert after.pours_of("tray") == again.pours_of("tray")
    across = right(again, 1, at=ago(1.5), end=ago(1.2))
    assert "stripped before that" in sentences(across, again)["at"]
    elsewhere = right(again, 1, piece="one")
    assert "stays with it" in sentences(elsewhere, again)["piece"]


def test_a_stripping_is_corrected_like_all_else() -> None:
    bare = step(FLOODED, EntryKind.STRIPPED, 2)
    after = right(bare, 3, words="new blank").make(bare)
    assert after.pours_of("tray") == ()
    assert after.standing[-1].words == "new blank"


WEIGHED = WeighingTold(
    product="resin", at=ago(51), a_grams=120.0, b_grams=60.0, coats=(("tray", "seal"),)
)


def test_a_corrected_mix_keeps_its_number_and_the_old_figures_stay() -> None:
    mixed = weighed(FLOODED, WEIGHED, NOW).make(FLOODED)
    (mix,) = mixed.standing_mixes
    better = replace(WEIGHED, b_grams=61.5, coats=(("tray", "flood"),))
    change = weighing_corrected(mixed, mix, better, LATER)
    after = change.make(mixed)
    assert change.words == "Correct: 1, weighed"
    assert [(one.batch, one.b_grams) for one in after.mixes] == [(1, 60.0), (1, 61.5)]
    assert [one.b_grams for one in after.standing_mixes] == [61.5]
    assert [pour.batch for pour in after.pours_of("tray")] == [None, 1]
    assert (
        "corrected already; correct entry 4"
        in sentences(weighing_corrected(after, mix, better, LATER), after)["corrects"]
    )


def test_a_correction_that_changes_nothing_is_none() -> None:
    same = sentences(right(FLOODED, 1), FLOODED)["corrects"]
    assert same == "nothing is different from entry 1; change what was wrong."
    mixed = weighed(FLOODED, WEIGHED, NOW).make(FLOODED)
    (mix,) = mixed.standing_mixes
    again = weighing_corrected(mixed, mix, WEIGHED, LATER)
    assert "nothing is different from entry 3" in sentences(again, mixed)["corrects"]
    noted = weighing_corrected(mixed, mix, replace(WEIGHED, words="by Ines"), LATER)
    after = noted.make(mixed)
    assert after.log[-1].words == "by Ines"
    more = weighing_corrected(after, after.mixes[-1], replace(WEIGHED, b_grams=61), LATER)
    assert more.make(after).log[-1].words == "by Ines"


def test_a_withdrawn_mix_is_in_no_pour_any_more() -> None:
    mixed = weighed(FLOODED, WEIGHED, NOW).make(FLOODED)
    after = withdrawn(mixed, 3, LATER).make(mixed)
    assert after.standing_mixes == ()
    assert [pour.batch for pour in after.pours_of("tray")] == [None, None]


def test_a_mix_that_a_pour_names_is_not_withdrawn() -> None:
    whole = weighed(studio(), replace(WEIGHED, coats=()), NOW).make(studio())
    named = with_pours(pour(batch=1), of=whole)
    assert "entry 2 first" in sentences(withdrawn(named, 1, LATER), named)["batch"]


@pytest.mark.parametrize("number", [1, 2])
def test_a_change_and_its_undo_leave_the_studio_as_it_was(number: int) -> None:
    before = with_pours(pour(), pour("one", "flood", hours=30))
    after = withdrawn(before, number, LATER).make(before)
    assert after != before
    assert len(before.log) == 2
