"""Each rule that a moved pour breaks is said in a sentence of its own."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.pins import Pin
from studio_planner.craft.plans import PlannedStep, StepKind
from studio_planner.craft.products import SheetPoint
from studio_planner.science.stages import Stage
from studio_planner.services.desk import DeskView
from studio_planner.services.moving.breaks import Rule
from studio_planner.services.moving.judging import Judge
from tests.desktop import scenes
from tests.services.moving.test_comparing import coat_of, plain_voice, plan_of, with_coat

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.services.moving.judging import Verdict


def judged(studio: Studio, piece: str, coat: str, start: datetime) -> Verdict:
    view = DeskView(studio, scenes.at(-1, "18:00"))
    return Judge(view, coat_of(studio, piece, coat)).at(start)


def said(verdict: Verdict, rule: Rule) -> str:
    found = [one for one in verdict.breaks if one.rule is rule]
    return " ".join(one.words.words(plain_voice()) for one in found)


def with_product(studio: Studio, key: str, **more: object) -> Studio:
    products = tuple(
        replace(product, **more) if product.key == key else product  # type: ignore[arg-type]
        for product in studio.products
    )
    return replace(studio, products=products)


def in_room(humidity: float) -> Place:
    room = scenes.night_room()
    pattern = tuple(replace(point, humidity_pct=humidity) for point in room.pattern)
    return replace(room, pattern=pattern)


LOCK = ("m", "lock")
AT_LOCK = scenes.at(3, "08:05")


@pytest.mark.parametrize(
    ("product", "words"),
    [
        ({"minimum_celsius": 35.0}, "Too cold: the room is at"),
        ({"minimum_celsius": 1.0, "maximum_celsius": 20.0}, "Too warm: the room is at"),
    ],
)
def test_a_room_out_of_a_products_limits(product: dict[str, float], words: str) -> None:
    studio = with_product(scenes.planned(), "fast", **product)
    assert words in said(judged(studio, *LOCK, AT_LOCK), Rule.AIR)


def test_air_that_is_too_damp_for_a_product_or_near_its_dew_point() -> None:
    dry = with_product(scenes.planned(), "fast", humidity_limit_pct=40.0)
    verdict = judged(dry, "h1", "seal", scenes.at(0, "18:20"))
    assert "humidity then, Quick seal (invented) bears 40 %" in said(verdict, Rule.AIR)
    verdict = judged(scenes.planned(in_room(95)), "h1", "seal", scenes.at(0, "18:20"))
    assert "above the dew point" in said(verdict, Rule.AIR)


def test_bare_wood_while_the_room_warms() -> None:
    verdict = judged(scenes.planned(), "h1", "seal", scenes.at(1, "10:00"))
    assert "Bare timber while the room warms by" in said(verdict, Rule.WARMING)
    cooling = judged(scenes.planned(), "h1", "seal", scenes.at(0, "18:20"))
    assert not said(cooling, Rule.WARMING)


def test_dust_after_sanding_and_sanding_beside_wet_work() -> None:
    studio = scenes.planned()
    verdict = judged(studio, "f", "clear", scenes.at(2, "19:15"))
    assert "Dust from sanding Slate coasters settles until" in said(verdict, Rule.DUST)
    verdict = judged(studio, "f", "clear", scenes.at(2, "16:00"))
    assert "Slate coasters is sanded at" in said(verdict, Rule.DUST)
    assert "while this is wet until" in said(verdict, Rule.DUST)


def test_a_spot_that_is_taken_gives_another_one_or_forbids_the_move() -> None:
    studio = with_coat(scenes.planned(), "f", "prime", spot="B1")
    verdict = judged(studio, "f", "prime", scenes.at(0, "21:05"))
    assert "Harbour board 1 stands on its own" in said(verdict, Rule.OTHER_SPOT)
    assert verdict.coats[0].spot not in {"B1", "B2"}
    small = tuple(
        replace(spot, length_mm=10) if spot.key != "B1" else spot
        for spot in scenes.night_room().spots
    )
    places = (replace(studio.places[0], spots=small), *studio.places[1:])
    verdict = judged(replace(studio, places=places), "f", "prime", scenes.at(0, "21:05"))
    assert "B1 is taken by Harbour board 1 until" in said(verdict, Rule.SPOT)


def test_tape_that_would_come_off_in_everybodys_sleep() -> None:
    studio = scenes.planned()
    points = [
        SheetPoint(stage=stage, celsius=20, from_hours=hours)
        for stage, hours in ((Stage.TAPE_OPENS, 1.0), (Stage.TAPE_CLOSES, 6.0))
    ]
    studio = with_product(studio, "fast", sheet=(*scenes.FAST.sheet, *points))
    step = PlannedStep(
        kind=StepKind.TAPE,
        piece="m",
        coat="seal",
        start=scenes.at(1, "20:00"),
        end=scenes.at(1, "20:10"),
        person="ada",
    )
    plan = plan_of(studio)
    studio = replace(studio, plan=replace(plan, steps=(*plan.steps, step)))
    awake = judged(studio, "m", "seal", scenes.at(1, "18:00"))
    assert not said(awake, Rule.AWAKE)
    assert [one.kind for one in awake.steps] == [StepKind.TAPE]
    asleep = judged(studio, "m", "seal", scenes.at(1, "22:30"))
    assert "Everybody sleeps when the tape is to be pulled" in said(asleep, Rule.AWAKE)


def test_coats_keep_their_order_and_a_promise_that_would_be_late_is_said() -> None:
    studio = scenes.planned()
    verdict = judged(studio, "h1", "flood", scenes.at(0, "18:30"))
    assert "The seal comes first, and is poured until" in said(verdict, Rule.ORDER)
    verdict = judged(studio, "c", "tide", scenes.at(9, "19:00"))
    assert "The promise Slate coasters would be late" in said(verdict, Rule.PROMISE)
    assert all(one.rule is not Rule.PROMISE for one in verdict.hard)


def test_hours_that_end_and_hours_that_have_not_begun() -> None:
    studio = scenes.planned()
    verdict = judged(studio, "f", "clear", scenes.at(2, "21:30"))
    assert "hours end 22:00, the pour would end 22:30" in said(verdict, Rule.HANDS)
    verdict = judged(studio, "f", "clear", scenes.at(2, "15:00"))
    assert "hours begin Thu 10 Dec 18:00" in said(verdict, Rule.HANDS)
    nobody = judged(replace(studio, people=()), "f", "clear", scenes.at(2, "19:15"))
    assert said(nobody, Rule.HANDS) == "Nobody works in this studio yet."


def test_a_pinned_coat_after_it_forbids_what_it_would_not_survive() -> None:
    studio = scenes.planned()
    tide = coat_of(studio, "h1", "tide")
    held = replace(studio, pins=(Pin(piece="h1", coat="tide", start=tide.start),))
    verdict = judged(held, "h1", "flood", scenes.at(1, "18:00"))
    assert "is pinned and would not hold" in said(verdict, Rule.LATER)
    assert Rule.LATER in {one.rule for one in verdict.hard}
