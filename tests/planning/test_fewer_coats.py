"""A coat fewer is offered only where a maker may decide it, and said to change the piece."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.log import Poured
from studio_planner.craft.pieces import CoatKind, Colour, Joint
from studio_planner.planning.checker import check_plan
from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.late.fewer_coats import fewer_coats
from studio_planner.planning.late.trials import Trials
from studio_planner.planning.quick import quick_plan
from tests.planning.impossible_studios import START, board, coat, gilded, resin, small_studio

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.studio import Studio

SEAL = coat("seal", CoatKind.SEAL)
FLOOD = coat("flood", CoatKind.FLOOD)
SECOND = coat("second", CoatKind.FLOOD)
GLITTER = coat("glitter", CoatKind.GLITTER, sandable=False)
LOCK = coat("lock", CoatKind.LOCK)


def offered(*stack: Coat, studio: Studio | None = None) -> dict[str, tuple[str, ...]]:
    """The words of each offer, and the coats that are left."""
    studio = studio or small_studio(board(stack), resin(depth_limit_mm=3.0))
    return {
        str(one.words): tuple(c.key for c in one.studio.pieces[0].stack)
        for one in fewer_coats(studio, studio.orders[0])
    }


def test_a_second_flood_may_be_left_out_or_poured_as_one_with_the_first() -> None:
    found = offered(SEAL, FLOOD, SECOND, LOCK)
    changes = "(this changes the piece, so it is for you and the customer to decide)"
    assert found == {
        f"leave out the flood 2 on Board 3 {changes}": ("seal", "flood", "lock"),
        f"pour the flood 1 and the flood 2 on Board 3 as one of 2 mm {changes}": (
            "seal",
            "second",
            "lock",
        ),
    }


@pytest.mark.parametrize(
    "stack",
    [
        (SEAL, FLOOD),
        (FLOOD, GLITTER, LOCK),
        (FLOOD, GLITTER, SECOND),
        gilded(),
        (FLOOD, replace(SECOND, taped=True)),
        (FLOOD, replace(SECOND, trimmed=True)),
        (FLOOD, replace(SECOND, colours=(Colour(name="Blue"),))),
        (FLOOD, replace(SECOND, joint=Joint.WET_IN_WET)),
        (FLOOD, SECOND, coat("veil", CoatKind.COLOUR, joint=Joint.WET_IN_WET)),
        (coat("half", CoatKind.FLOOD, faces=frozenset({"left half"})), SECOND),
    ],
)
def test_a_coat_that_the_piece_needs_is_never_left_out(stack: tuple[Coat, ...]) -> None:
    assert offered(*stack) == {}


def test_coats_are_poured_as_one_only_where_the_sheet_and_the_rim_allow_it() -> None:
    thick = tuple(replace(one, film_mm=1.4) for one in (FLOOD, SECOND))
    as_one = [words for words in offered(*thick) if words.startswith("pour")]
    assert not as_one
    silent = small_studio(board((FLOOD, SECOND)))
    assert all(words.startswith("leave out") for words in offered(studio=silent))
    rimmed = small_studio(board(thick, rim_mm=4.0), resin(depth_limit_mm=3.0))
    assert any("as one of 2.8 mm" in words for words in offered(studio=rimmed))


def test_what_is_poured_is_not_left_out() -> None:
    studio = small_studio(board((FLOOD, SECOND)), resin(depth_limit_mm=3.0))
    plan = quick_plan(studio, START)

    poured = tuple(
        Poured(piece=c.piece, coat=c.coat, start=c.start, end=c.end, spot=c.spot)
        for c in plan.coats
    )
    assert offered(studio=replace(studio, poured=poured)) == {}
    assert list(offered(studio=replace(studio, poured=poured[:1])).values()) == [("flood",)]


def late_board() -> Studio:
    """A board with a coat that may go, promised too soon."""
    studio = small_studio(board((SEAL, FLOOD, SECOND)), resin(depth_limit_mm=3.0))
    order = replace(studio.orders[0], promised=START.date() + timedelta(days=2))
    return replace(studio, orders=(order,))


def test_a_coat_fewer_is_not_tried_where_another_order_pours_from_the_same_mix() -> None:
    studio = late_board()
    (mine,) = studio.pieces
    studio = replace(studio, pieces=(mine, replace(mine, key="other", name="Other board")))
    plan = quick_plan(studio, START)
    first = {coat.piece: coat.mix for coat in reversed(plan.coats)}
    shared = tuple(
        replace(coat, mix=first["other"]) if coat.mix == first[mine.key] else coat
        for coat in plan.coats
    )
    tried = Trials(studio, replace(plan, coats=shared), Clockworks())
    assert not any("decide" in str(one.name) for one in tried.all())


def test_a_coat_fewer_is_tried_for_a_late_order_and_keeps_every_rule() -> None:
    studio = late_board()
    (order,) = studio.orders
    plan = quick_plan(studio, START)
    (late,) = plan.outcomes
    assert late.late_hours
    trials = [
        one for one in Trials(studio, plan, Clockworks()).all() if "decide" in str(one.name)
    ]
    assert trials
    for trial in trials:
        assert trial.plan is not None
        assert check_plan(trial.studio, trial.plan).clean
        then = trial.outcome(order.key)
        assert then is not None
        assert then.leaves is not None
        assert late.leaves is not None
        assert then.leaves < late.leaves
