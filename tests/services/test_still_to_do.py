"""What is packed, has left, is spoiled or was turned is known to every plan."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from studio_planner.craft.log import EntryKind, Poured
from studio_planner.craft.mixes import WeighedMix
from studio_planner.craft.pieces import UNDERSIDE
from studio_planner.craft.pins import Pin
from studio_planner.craft.plans import StepKind
from studio_planner.services.checking import checked
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.log_book.steps import StepTold, shipped, told
from studio_planner.services.log_book.weighings import WeighingTold, weighed
from studio_planner.services.next_hands import next_hands
from studio_planner.services.plan_again import explained, plan_again
from studio_planner.services.still_to_do import done_pieces, still_to_do, with_what_is_done
from tests.desktop.scenes import NOW, at
from tests.services.questions.steady import steady_studio
from tests.services.small_studios import cut_down

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Outcome, Plan
    from studio_planner.craft.studio import Studio

LATER = at(5, "10:00")
"""Long after Market board 7 is cured: it can be packed 37.4 h after Monday 19:00."""


def studio(*orders: str) -> Studio:
    """Market board 7 with its only coat poured on Monday, and Slate coasters not begun."""
    whole = cut_down(steady_studio(), "k", "c", orders=orders or ("m", "33"))
    pour = Poured(
        piece="k", coat="clear", start=at(-1, "18:10"), end=at(-1, "19:00"), spot="C2"
    )
    return replace(whole, plan=None, poured=(pour,))


def after(of: Studio, kind: EntryKind, piece: str, when: datetime, **facts: Any) -> Studio:  # noqa: ANN401 - anything
    step = StepTold(kind=kind, pieces=(piece,), at=when, **facts)
    return told(of, step, LATER).make(of)


def packed(of: Studio) -> Studio:
    return after(of, EntryKind.PACKED, "k", at(4, "12:00"))


def outcome(plan: Plan, order: str) -> Outcome:
    return next(row for row in plan.outcomes if row.order == order)


def steps(plan: Plan, kind: StepKind, piece: str) -> int:
    return sum((step.kind, step.piece) == (kind, piece) for step in plan.steps)


def test_what_is_packed_is_not_packed_again_and_leaves_its_spot() -> None:
    bare = plan_again(studio(), NOW).plan
    assert steps(bare, StepKind.PACK, "k") == 1
    made = plan_again(packed(studio()), LATER)
    assert steps(made.plan, StepKind.PACK, "k") == 0
    assert steps(made.plan, StepKind.PACK, "c") == 1
    assert outcome(made.plan, "m").leaves == at(4, "12:00")
    assert [coat.coat for coat in made.plan.coats if coat.piece == "k"] == ["clear"]
    assert len({coat.number for coat in made.plan.coats}) == len(made.plan.coats)
    assert made.report.clean


def test_an_order_has_left_when_its_last_piece_did() -> None:
    left = shipped(studio(), "m", at(4, "15:00"), LATER).make(studio())
    assert outcome(plan_again(left, LATER).plan, "m").leaves == at(4, "15:00")


def test_an_order_with_more_to_do_counts_what_is_left() -> None:
    both = studio()
    order = next(one for one in both.orders if one.key == "33")
    both = replace(both, orders=(replace(order, pieces=("c", "k")),))
    made = plan_again(packed(both), LATER).plan
    leaves = outcome(made, "33").leaves
    assert leaves is not None
    assert leaves > LATER
    assert len(made.outcomes) == 1


def test_a_kept_plan_with_what_is_done_is_checked_explained_and_planned_again() -> None:
    done = packed(studio())
    kept = replace(done, plan=plan_again(done, LATER).plan)
    assert kept.plan is not None
    assert checked(kept, kept.plan).clean
    assert explained(kept, kept.plan).plan.outcomes == kept.plan.outcomes
    again = plan_again(kept, LATER).plan
    assert [(c.piece, c.start) for c in again.coats] == [
        (c.piece, c.start) for c in kept.plan.coats
    ]


def test_what_is_still_to_do_is_the_studio_itself_until_something_is_done() -> None:
    bare = studio()
    assert still_to_do(bare) is bare
    plan = plan_again(bare, NOW).plan
    assert with_what_is_done(plan, bare) is plan
    assert done_pieces(packed(bare)) == {"k"}


def test_mixes_corrections_and_pins_of_what_is_done_are_left_out() -> None:
    whole = packed(studio())
    told_of = WeighingTold(
        product="slow", at=at(-1, "18:00"), a_grams=10, b_grams=5, coats=(("k", "clear"),)
    )
    whole = weighed(whole, told_of, LATER).make(whole)
    whole = replace(whole, pins=(Pin(piece="c", coat="seal", start=at(6, "10:00")),))
    whole = after(whole, EntryKind.TURNED, "c", at(4, "12:00"))
    todo = still_to_do(whole)
    assert [piece.key for piece in todo.pieces] == ["c"]
    assert [entry.kind for entry in todo.log] == [EntryKind.TURNED]
    assert (todo.mixes, todo.poured, todo.gone) == ((), (), ())
    assert todo.pins == whole.pins
    assert isinstance(whole.mixes[0], WeighedMix)


def test_a_spoiled_piece_is_not_planned_until_something_is_done_about_it() -> None:
    spoiled = after(studio(), EntryKind.SPOILED, "k", at(4, "12:00"))
    plan = plan_again(spoiled, LATER).plan
    (row,) = plan.unplanned
    assert row.piece == "k"
    assert "is spoiled; strip it in the log, or take it out" in str(row.reason)
    assert outcome(plan, "m").leaves is None
    assert outcome(plan, "33").leaves is not None
    bare = after(spoiled, EntryKind.STRIPPED, "k", LATER)
    again = plan_again(bare, LATER).plan
    assert not again.unplanned
    assert [c.poured for c in again.coats if c.piece == "k"] == [False]


def under_too() -> Studio:
    """Market board 7 with a seal on its underside yet to come."""
    whole = studio()
    piece = whole.piece("k")
    seal = replace(whole.piece("c").stack[0], faces=frozenset({UNDERSIDE}))
    return with_thing(whole, replace(piece, stack=(*piece.stack, seal)))


def test_what_was_turned_is_not_turned_again() -> None:
    whole = under_too()
    assert steps(plan_again(whole, LATER).plan, StepKind.TURN, "k") == 1
    turned = after(whole, EntryKind.TURNED, "k", LATER)
    made = plan_again(turned, LATER)
    assert steps(made.plan, StepKind.TURN, "k") == 0
    assert [coat.poured for coat in made.plan.coats if coat.piece == "k"] == [True, False]
    other = after(whole, EntryKind.TURNED, "k", LATER, coat="clear")
    assert steps(plan_again(other, LATER).plan, StepKind.TURN, "k") == 1


def test_a_plan_that_turns_again_what_was_turned_is_wrong() -> None:
    whole = under_too()
    plan = plan_again(whole, LATER).plan
    turned = after(whole, EntryKind.TURNED, "k", LATER)
    words = [finding.words for finding in checked(turned, plan).broken]
    assert any("turned never before this coat" in one for one in words)


def test_a_step_that_was_done_asks_for_no_hands() -> None:
    whole = steady_studio()
    pour = Poured(
        piece="k", coat="clear", start=at(-1, "18:10"), end=at(-1, "19:00"), spot="C2"
    )
    whole = replace(whole, poured=(pour,))
    assert whole.plan is not None
    now = at(4, "12:00")
    before = {item.piece for item in next_hands(whole, whole.plan, now) if item.kind == "pack"}
    done = told(whole, StepTold(kind=EntryKind.PACKED, pieces=("k",), at=now), now).make(whole)
    assert done.plan is not None
    later = {item.piece for item in next_hands(done, done.plan, now) if item.kind == "pack"}
    assert (before, later) == ({"k"}, set())
