"""What a studio lacks for a plan: everything at first, nothing once each need is met."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta

import pytest

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.craft.pieces import Coat, CoatKind, Joint, Material, Piece
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Spot
from studio_planner.craft.products import MixRatio, Product, ProductKind, SheetPoint
from studio_planner.craft.shapes import Rectangle
from studio_planner.craft.studio import Studio
from studio_planner.planning.quick import quick_plan
from studio_planner.science.stages import Stage
from studio_planner.services.needs import Need, SetUpStep
from studio_planner.services.setting_up import (
    plan_possible,
    ready,
    set_up_steps,
)

NOW = datetime(2026, 12, 7, 8, tzinfo=UTC)
EVENINGS = WorkHours(rule="FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR", start=time(18), end=time(22))
ADA = Person(key="ada", name="Ada", work=(EVENINGS,))
ROOM = Place(
    key="room",
    name="Workshop",
    pattern=(PatternPoint(at=time(0), celsius=22, humidity_pct=50),),
    spots=(Spot(key="a", name="A", length_mm=600, width_mm=400, height_mm=200),),
)


def sheet(**hours: float) -> tuple[SheetPoint, ...]:
    return tuple(
        SheetPoint(stage=Stage(stage), celsius=22, from_hours=figure)
        for stage, figure in hours.items()
    )


FLOOD = Product(
    key="flood",
    name="Slow flood",
    kind=ProductKind.TWO_PART,
    ratio=MixRatio(a=2, b=1),
    sheet=sheet(working_time=0.5, recoat_opens=4, recoat_closes=20, handle=20, print_free=40),
)
BOARD = Piece(
    key="board",
    name="Moon board",
    shape=Rectangle(length_mm=400, width_mm=200),
    material=Material.SLATE,
    body_mm=8,
    stack=(Coat(key="flood", kind=CoatKind.FLOOD, product="flood", film_mm=1.0),),
)
WHOLE = Studio(name="Tern", people=(ADA,), places=(ROOM,), products=(FLOOD,), pieces=(BOARD,))


def step(studio: Studio, need: Need) -> SetUpStep:
    return next(one for one in set_up_steps(studio, NOW) if one.need is need)


def test_a_new_studio_lacks_everything_and_says_what_to_do() -> None:
    steps = set_up_steps(Studio(name="New"), NOW)
    assert [one.need for one in steps] == list(Need)
    assert all(one.lacking and not one.there for one in steps)
    assert not ready(steps)


def test_with_every_need_met_planning_can_begin_and_does() -> None:
    steps = set_up_steps(WHOLE, NOW)
    assert ready(steps)
    assert plan_possible(WHOLE)
    assert [one.need for one in steps if not one.done] == [Need.ORDER]
    assert len(quick_plan(WHOLE, NOW).coats) == 1


@pytest.mark.parametrize(
    ("without", "need"),
    [
        ({"people": ()}, Need.HANDS),
        ({"places": ()}, Need.ROOM),
        ({"places": (replace(ROOM, spots=()),)}, Need.SPOT),
        ({"places": (replace(ROOM, kind=PlaceKind.WARM_BOX),)}, Need.ROOM),
        ({"pieces": ()}, Need.PIECE),
    ],
)
def test_what_a_plan_refuses_to_do_without_is_what_the_set_up_lacks(
    without: dict[str, object], need: Need
) -> None:
    studio = replace(WHOLE, **without)  # type: ignore[arg-type]
    assert not step(studio, need).done
    assert not plan_possible(studio)
    with pytest.raises(NoPlanPossible):
        quick_plan(studio, NOW)


def test_hands_without_an_hour_in_the_coming_weeks_are_no_hands() -> None:
    idle = replace(ADA, work=())
    assert "four weeks" in step(replace(WHOLE, people=(idle,)), Need.HANDS).lacking[0]
    bo = replace(ADA, key="bo", name="Bo")
    both = step(replace(WHOLE, people=(idle, bo)), Need.HANDS)
    assert both.done
    assert "Ada" in both.knowing[0]


def test_a_coat_longer_than_any_stretch_of_hands_is_named() -> None:
    long = replace(BOARD, count=30)
    found = step(replace(WHOLE, pieces=(long,)), Need.HANDS)
    assert found.done
    assert "Moon board, flood" in found.knowing[0]


def test_a_week_in_which_everybody_is_away_is_spoken_of() -> None:
    away = Absence(start=NOW - timedelta(days=1), end=NOW + timedelta(days=8))
    gone = replace(ADA, absences=(away,))
    assert any(
        "awake" in words for words in step(replace(WHOLE, people=(gone,)), Need.HANDS).knowing
    )


def test_without_humidity_the_margin_to_the_dew_point_is_unknown() -> None:
    dry = replace(ROOM, pattern=(PatternPoint(at=time(0), celsius=22),))
    found = step(replace(WHOLE, places=(dry,)), Need.ROOM)
    assert found.done
    assert "dew point" in found.knowing[0]


def test_a_room_that_is_never_as_warm_as_the_sheet_asks_is_spoken_of() -> None:
    picky = replace(FLOOD, minimum_celsius=24)
    found = step(replace(WHOLE, products=(picky,)), Need.ROOM)
    assert "Slow flood" in found.knowing[-1]


def test_a_piece_larger_than_every_spot_stops_a_plan_only_if_no_other_fits() -> None:
    door = replace(
        BOARD, key="door", name="Door", shape=Rectangle(length_mm=2000, width_mm=900)
    )
    alone = step(replace(WHOLE, pieces=(door,)), Need.SPOT)
    assert not alone.done
    beside = step(replace(WHOLE, pieces=(BOARD, door)), Need.SPOT)
    assert beside.done
    assert beside.knowing == alone.lacking


def test_coats_that_can_never_meet_stop_a_plan_only_if_no_other_piece_can_be() -> None:
    dry = replace(BOARD.stack[-1], key="dry", joint=Joint.ON_DRY)
    never = replace(BOARD, key="never", name="Never", stack=(*BOARD.stack, dry))
    alone = step(replace(WHOLE, pieces=(never,)), Need.PIECE)
    assert not alone.done
    assert "Never, flood 2: " in alone.lacking[0]
    beside = step(replace(WHOLE, pieces=(BOARD, never)), Need.PIECE)
    assert beside.done
    assert beside.knowing == alone.lacking


def test_a_sheet_without_handle_stops_a_plan_and_one_without_a_window_is_spoken_of() -> None:
    silent = replace(FLOOD, sheet=sheet(recoat_opens=4, recoat_closes=20))
    found = step(replace(WHOLE, products=(silent,)), Need.PRODUCT)
    assert not found.done
    assert "handle" in " ".join(found.lacking)
    open_ended = replace(FLOOD, sheet=sheet(recoat_opens=4, handle=20))
    found = step(replace(WHOLE, products=(open_ended,)), Need.PRODUCT)
    assert found.done
    assert "scuffed" in found.knowing[0]
    shut = replace(FLOOD, sheet=sheet(handle=20))
    assert "recoat opens" in step(replace(WHOLE, products=(shut,)), Need.PRODUCT).knowing[0]


def test_figures_that_only_one_piece_needs_are_asked_for_by_its_name() -> None:
    taped = replace(BOARD, key="t", name="Taped", stack=(replace(BOARD.stack[0], taped=True),))
    found = step(replace(WHOLE, pieces=(BOARD, taped)), Need.PRODUCT)
    assert found.done
    assert any("Taped" in words and "tape opens" in words for words in found.knowing)
    assert not step(replace(WHOLE, pieces=(taped,)), Need.PRODUCT).done


def test_a_primer_without_figures_is_spoken_of_while_nothing_needs_it() -> None:
    primer = Product(key="p", name="Primer", kind=ProductKind.PRIMER, sheet=())
    found = step(replace(WHOLE, products=(FLOOD, primer)), Need.PRODUCT)
    assert found.done
    assert "Primer" in found.knowing[0]


def test_many_names_are_cut_short() -> None:
    people = tuple(replace(ADA, key=str(n), name=f"N{n}") for n in range(6))
    assert step(replace(WHOLE, people=people), Need.HANDS).there == "N0, N1, N2 and 3 more"


def test_a_coat_over_another_needs_its_window() -> None:
    second = Coat(
        key="top", kind=CoatKind.TOP_COAT, product="flood", film_mm=0.5, joint=Joint.IN_WINDOW
    )
    shut = replace(FLOOD, sheet=sheet(handle=20))
    piece = replace(BOARD, stack=(*BOARD.stack, second))
    found = step(replace(WHOLE, products=(shut,), pieces=(piece,)), Need.PRODUCT)
    assert not found.done
