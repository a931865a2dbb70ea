"""Where what is left in a cup can still go."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.pieces import Colour
from studio_planner.craft.plans import Trust, Window
from studio_planner.science.cups import SHARE_TO_USE
from studio_planner.services.desk import DeskView
from studio_planner.services.mixing.left_over import LeftOver, homes_for, minutes_left
from tests.services.mixing.bench_mixes import (
    FLOOD,
    START,
    bench,
    coasters,
    flood_coat,
    plan_of,
    portions,
    poured,
)

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.products import Product

NOW = START + timedelta(minutes=15)
LATER = START + timedelta(hours=20)
WHITE = Colour(name="white", colourant="paste", colourant_pct=2)


def small(key: str = "small", *colours: Colour) -> Piece:
    return coasters(key, 1, flood_coat(colours))


def later(piece: str = "small", **entries: object) -> PlannedCoat:
    return poured(2, piece, 2, start=LATER, end=LATER + timedelta(hours=1), **entries)


def view_of(
    *pieces: Piece, coats: tuple[PlannedCoat, ...], product: Product = FLOOD
) -> DeskView:
    studio = bench(coasters("set", 6, flood_coat()), *pieces, product=product)
    return DeskView(replace(studio, plan=plan_of(poured(1), *coats)), NOW)


def left(
    view: DeskView, grams: float = 40.0, colour: str = "", minute: float = 15.0
) -> LeftOver:
    (portion,) = portions(view.studio)
    return LeftOver(portion=portion, colour=colour, grams=grams, minute=minute)


def homes(view: DeskView, grams: float = 40.0, colour: str = "") -> list[str]:
    return [one.coat.piece for one in homes_for(view, left(view, grams, colour)).coats]


def test_forty_grams_go_on_a_bare_piece_that_is_planned_for_tomorrow() -> None:
    view = view_of(small(), coats=(later(),))
    found = homes_for(view, left(view))
    assert [one.coat.piece for one in found.coats] == ["small"]
    assert found.coats[0].minutes == 2.5
    assert 20.0 < found.coats[0].grams < 25.0


def test_what_is_left_is_good_for_what_is_left_of_two_thirds_of_its_life() -> None:
    """By hand: 15 minutes in the whole portion, then its own smaller mass."""
    view = view_of(coats=())
    life = FLOOD.cup_life()
    assert life is not None
    one = left(view)
    whole, own = (
        60.0 * life.hours(20.0, grams) / 1.1 for grams in (one.portion.total_grams, 40.0)
    )
    expected = (SHARE_TO_USE - 15.0 / whole) * own
    assert minutes_left(view, one) == pytest.approx(expected, rel=1e-3)


def test_what_is_old_goes_nowhere() -> None:
    view = view_of(small(), coats=(later(),))
    old = homes_for(view, left(view, minute=60.0))
    assert (old.good_minutes, old.coats) == (0.0, ())


def test_without_a_cup_life_nobody_knows_how_long_it_is_good() -> None:
    bare = replace(FLOOD, sheet=FLOOD.sheet[2:])
    view = view_of(small(), coats=(later(),), product=bare)
    assert minutes_left(view, left(view)) is None
    assert homes(view) == ["small"]


def test_too_little_goes_nowhere_but_on_a_chip() -> None:
    view = view_of(small(), coats=(later(),))
    found = homes_for(view, left(view, grams=5.0))
    assert found.coats == ()
    assert found.chip_grams == pytest.approx(9.0 * 0.2 * 1.10)


def test_a_chip_takes_no_more_than_there_is() -> None:
    view = view_of(coats=())
    assert homes_for(view, left(view, grams=1.0)).chip_grams == 1.0


def test_a_set_is_poured_whole_or_not_at_all() -> None:
    view = view_of(coasters("small", 2, flood_coat()), coats=(later(),))
    assert homes(view) == []
    assert homes(view, grams=60.0) == ["small"]


def test_a_colour_goes_only_where_that_colour_is_planned() -> None:
    view = view_of(small("small"), small("white", WHITE), coats=(later(), later("white")))
    assert [o.coat.piece for o in homes_for(view, left(view, colour="white")).coats] == [
        "white"
    ]
    assert homes(view) == ["small"]


def test_a_spot_on_which_something_wet_lies_is_not_free() -> None:
    view = view_of(small(), coats=(later(spot="s1"),))
    assert homes(view) == []


def test_what_was_carried_away_leaves_its_spot_and_takes_the_other() -> None:
    coats = later(spot="s1"), later("third", spot="s2")
    view = view_of(small(), small("third"), coats=coats)
    pour = Poured(
        piece="set", coat="flood", start=START, end=START + timedelta(minutes=5), spot="s1"
    )
    move = LogEntry(
        number=1,
        kind=EntryKind.MOVED,
        at=START + timedelta(minutes=6),
        written=NOW,
        piece="set",
        spot="s2",
    )
    assert homes(view) == ["third"]
    moved = replace(view.studio, poured=(pour,), log=(move,))
    assert homes(DeskView(moved, NOW)) == ["small"]


def test_a_spot_is_free_again_once_what_lay_there_can_be_handled() -> None:
    view = view_of(small(), small("third"), coats=(later(spot="s3"), later("third", spot="s3")))
    assert homes(view) == ["small", "third"]


def test_a_coat_waits_for_the_coats_below_it() -> None:
    two = coasters("small", 1, flood_coat(), replace(flood_coat(), key="top"))
    second = later(coat="top")
    assert homes(view_of(two, coats=(second,))) == []


def _over(below_start: timedelta, window: Window | None) -> list[str]:
    two = coasters("small", 1, flood_coat(), replace(flood_coat(), key="top"))
    begun = START + below_start
    below = poured(3, "small", 3, start=begun, end=begun + timedelta(hours=1), spot="s3")
    return homes(view_of(two, coats=(below, later(coat="top", window=window))))


def test_a_joint_that_may_be_made_now_takes_what_is_left() -> None:
    yesterday = timedelta(hours=-12)
    opens = START - timedelta(hours=6)
    open_now = Window(opens=opens, closes=LATER, trust=Trust.SAFE)
    assert _over(yesterday, open_now) == ["small"]
    assert _over(yesterday, replace(open_now, closes=None)) == ["small"]
    assert _over(yesterday, replace(open_now, opens=LATER)) == []
    assert _over(yesterday, replace(open_now, closes=NOW)) == []
    assert _over(yesterday, replace(open_now, trust=Trust.TEST_FIRST)) == []
    assert _over(yesterday, None) == []


def test_what_is_poured_or_under_way_takes_nothing() -> None:
    view = view_of(small(), coats=(later(),))
    begun = replace(view.studio, plan=plan_of(poured(1), replace(later(), start=NOW)))
    assert homes(DeskView(begun, NOW)) == []


def test_without_a_plan_only_the_chip_is_left() -> None:
    view = view_of(small(), coats=())
    bare = DeskView(replace(view.studio, plan=None), NOW)
    assert homes_for(bare, left(view)).coats == ()
