"""What cannot be planned says why at once: the piece, the coat, and the rule that stops it."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.hands import Absence
from studio_planner.craft.log import Poured
from studio_planner.craft.orders import Courier, Order, Promise
from studio_planner.craft.pieces import UNDERSIDE, Coat, CoatKind, Joint, Material, Piece
from studio_planner.craft.settings import TemperatureUnit, Units
from studio_planner.planning import quick
from studio_planner.planning.checker import check_plan
from studio_planner.planning.late.promises import explain
from studio_planner.planning.quick import quick_plan
from studio_planner.planning.rounds import Rounds
from studio_planner.planning.stuck.why_stuck import CROWDED
from studio_planner.science.stages import Stage
from studio_planner.services.speaking import ENGLISH, speak
from tests.planning.impossible_studios import (
    RESIN_HOURS,
    START,
    beside,
    board,
    coat,
    gilded,
    leaf,
    person,
    resin,
    room,
    size,
    small_studio,
)
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from studio_planner.craft.plans import Unplanned
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio


def hard() -> tuple[Coat, ...]:
    """A seal that cannot be sanded, and a flood on it."""
    return (coat("seal", CoatKind.SEAL, sandable=False), coat("flood", CoatKind.FLOOD))


def veiled(**fields: object) -> Piece:
    """Two colour pours, wet in wet."""
    veil = coat("veil", CoatKind.COLOUR, joint=Joint.WET_IN_WET, **fields)
    return board((coat("base", CoatKind.COLOUR), veil))


def without(*stages: Stage) -> Product:
    """The mix with figures left off its sheet."""
    return resin({key: hours for key, hours in RESIN_HOURS.items() if key not in stages})


def with_hours(hours: dict[Stage, float]) -> Product:
    """The mix with some other figures."""
    return resin(RESIN_HOURS | hours)


def promised_later(**fields: object) -> tuple[Order, ...]:
    """An order with two months to go."""
    order = Order(
        key="o1",
        name="Order 7",
        pieces=("board",),
        promised=START.date() + timedelta(days=60),
    )
    return (replace(order, **fields),)  # type: ignore[arg-type]


def reasons(studio: Studio) -> tuple[str, ...]:
    """Why nothing of a studio can be planned, or what is left out."""
    try:
        plan = quick_plan(studio, START)
    except NoPlanPossible as refusal:
        return refusal.reasons
    assert all(coat.poured for coat in plan.coats)
    return tuple(str(row.reason) for row in plan.unplanned)


_SAID = "the and of for is it its but that takes needs no than has on to"
_ENGLISH = frozenset(_SAID.split())
_TO_DO = (
    "put a size between them.",
    "choose on dry.",
    "choose in the window.",
    "add the figures from the sheet, under Products.",
    "add a larger spot, or give it less clearance.",
    "make room above it, or take a lower cover.",
    "give somebody longer hours on one day, or divide the set.",
    "give somebody longer hours on one day.",
    "a slower product, or less to pour at once, would help.",
    "more hours, or a slower product, would help.",
    "warm it, or choose another product.",
    "cool it, or choose another product.",
    "dry its air, or choose another product.",
    "warm it, or dry its air.",
    "keep the room in its limits, or add hours at another time of day.",
    "add hours in which the room cools, or keep it at one temperature.",
    "add hours for it at another time of day, or do without.",
    "look at them under Products, or do without.",
    "add working hours or shorten an absence, under Studio.",
    "a warmer room or another product would help.",
    "allow sanding or a touch test of it under Pieces, or strip the piece in the log.",
)
NO_HANDS = person(
    absences=(Absence(start=START - timedelta(days=1), end=START + timedelta(days=2000)),)
)
LONG_FLOOD = coat("flood", CoatKind.FLOOD, setup_minutes=300, piece_minutes=400)
UNDER = coat("under", CoatKind.SEAL, faces=frozenset({UNDERSIDE}))
TURNED = small_studio(board((coat("flood", CoatKind.FLOOD), UNDER)), hands=person(8, 9))
RULES: dict[str, tuple[Studio, tuple[str, ...]]] = {
    "leaf straight on a primer": (
        small_studio(board((coat("prime", CoatKind.PRIME, product="primer"), gilded()[1]))),
        ("Board 3, leaf: leaf does not stick to the prime; put a size between them.",),
    ),
    "wet in wet over a primer": (
        small_studio(
            board((coat("prime", CoatKind.PRIME, product="primer"), veiled().stack[1]))
        ),
        ("Board 3, colour pour: only two-part mixes meet wet in wet", "choose on dry."),
    ),
    "on dry over a mix": (
        small_studio(
            board((coat("seal", CoatKind.SEAL), coat("f", CoatKind.FLOOD, joint=Joint.ON_DRY)))
        ),
        ("Board 3, flood: the seal below cures", "choose in the window."),
    ),
    "a figure that is missing": (
        small_studio(product=without(Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)),
        ("Board 3: the data sheet of Clear does not say when it can be handled (handle)",),
    ),
    "a window without a closing figure": (
        small_studio(board(hard()), without(Stage.RECOAT_CLOSES)),
        ("Board 3: the data sheet of Clear", "bonds to it (recoat closes); add the figures"),
    ),
    "a footprint": (
        small_studio(board(footprint_mm=(900.0, 300.0))),
        ("Board 3", "no spot is large enough", "900 by 300 mm", "Spot 1, has 600 by 400 mm"),
    ),
    "a height": (
        small_studio(board(cover_mm=400.0)),
        (
            "Board 3: no spot is high enough; it needs 418 mm of height with its cover",
            "Spot 1 is the highest with 200 mm; make room above it",
        ),
    ),
    "a long block": (
        small_studio(board((coat("seal", CoatKind.SEAL), LONG_FLOOD))),
        ("Board 3: the flood takes 11 h 40 min of hands on end", "longer than 10 h 00 min"),
    ),
    "a long block on coats that have to be sanded": (
        small_studio(
            board(
                (
                    coat("seal", CoatKind.SEAL),
                    coat("flood", CoatKind.FLOOD),
                    replace(LONG_FLOOD, key="top", kind=CoatKind.TOP_COAT),
                )
            ),
            with_hours({Stage.RECOAT_CLOSES: 5.5}),
        ),
        ("Board 3: the top coat takes 11 h 40 min of hands on end",),
    ),
    "turning and a block": (
        replace(TURNED, settings=replace(TURNED.settings, turn_minutes=30)),
        ("Board 3: the seal takes 1 h 15 min", "turning it first", "longer than 1 h 00 min"),
    ),
    "a packing that is longer than a day": (
        small_studio(orders=promised_later(packing_minutes=700)),
        ("Board 3: packing it takes 11 h 40 min", "longer than 10 h 00 min"),
    ),
    "a window shorter than the block": (
        small_studio(board(hard()), with_hours({Stage.RECOAT_CLOSES: 7.6})),
        (
            "Board 3: the flood takes 45 min",
            "never open for more than 25 min",
            "cannot be sanded",
        ),
    ),
    "a window too short for starts on whole five minutes": (
        small_studio(board(hard()), with_hours({Stage.RECOAT_CLOSES: 8.0})),
        ("Board 3: the flood takes 45 min", "for more than 47 min", "whole five minutes"),
    ),
    "a window that closes before it opens, to be safe": (
        small_studio(board(hard()), with_hours({Stage.RECOAT_CLOSES: 5.5})),
        ("Board 3: the flood", "on the safe side the window of the seal below has closed"),
    ),
    "windows that all fall into the night": (
        small_studio(
            board(hard()), with_hours({Stage.RECOAT_CLOSES: 16.0}), hands=person(18, 20)
        ),
        ("Board 3: the flood needs 45 min of hands", "nobody can work", "cannot be sanded"),
    ),
    "wet in wet with a long block": (
        small_studio(veiled(setup_minutes=40, piece_minutes=40)),
        ("Board 3: the colour pour 2 is meant wet in wet and takes 1 h 20 min", "8 min"),
    ),
    "a minimum that is never reached": (
        small_studio(product=resin(minimum_celsius=22.0)),
        ("Board 3: the seal needs 22 °C, the minimum of Clear", "never gets warmer than 20 °C"),
    ),
    "a minimum in a studio that reads °F": (
        replace(
            small_studio(product=resin(minimum_celsius=22.0)),
            units=Units(temperature=TemperatureUnit.FAHRENHEIT),
        ),
        ("Board 3: the seal needs 71.6 °F", "never gets warmer than 68 °F"),
    ),
    "a minimum that is reached only by night": (
        small_studio(
            product=resin(minimum_celsius=19.0),
            place=room((6, 15.0, 45.0), (18, 15.0, 45.0), (22, 21.0, 45.0), (4, 21.0, 45.0)),
        ),
        ("Board 3: the seal needs 19 °C", "while somebody can work"),
    ),
    "a maximum": (
        small_studio(product=resin(maximum_celsius=18.0)),
        ("Board 3: the seal needs 18 °C at most, the maximum of Clear",),
    ),
    "humidity": (
        small_studio(product=resin(humidity_limit_pct=40.0)),
        ("Board 3: the seal needs 40 % of humidity at most", "never gets drier than 45 %"),
    ),
    "dew": (
        small_studio(place=room((0, 20.0, 95.0))),
        ("Board 3: the seal needs a surface at least 3 °C above the dew point", "0.8 °C"),
    ),
    "dew in the night after every pour": (
        small_studio(place=room((8, 20.0, 60.0), (16, 20.0, 60.0), (18, 14.0, 92.0))),
        ("Board 3: the seal finds no time", "the 3 °C above the dew point", "for 12 h after"),
    ),
    "warming while porous work is bare": (
        small_studio(
            board(material=Material.TIMBER), place=room((6, 15.0, 45.0), (20, 25.0, 45.0))
        ),
        ("Board 3: the seal lies on bare porous work", "the room warms by more than 0.3 °C"),
    ),
    "tape that nobody is awake for": (
        small_studio(
            board((coat("flood", CoatKind.FLOOD, taped=True),)),
            hands=replace(person(8, 9), sleeps=START.time().replace(hour=10)),
        ),
        ("Board 3: the flood has to have its tape pulled", "nobody is awake"),
    ),
    "drips whose figures leave no time": (
        small_studio(
            board((coat("flood", CoatKind.FLOOD, trimmed=True),)),
            with_hours({Stage.TRIM_OPENS: 5.0, Stage.TRIM_CLOSES: 5.5}),
        ),
        ("Board 3: the flood has to have its drips trimmed", "leave no time for that"),
    ),
    "leaf whose size is past its tack": (
        small_studio(board(gilded()), products=(resin(), size(closes=2.0), leaf())),
        (
            "Board 3: the leaf takes 45 min",
            "the size below",
            "does not stick to what is sanded",
        ),
    ),
    "leaf on the tack of a mix, gone by morning": (
        small_studio(
            board(
                (
                    coat("flood", CoatKind.FLOOD),
                    replace(gilded()[1], joint=Joint.IN_WINDOW),
                    gilded()[2],
                )
            ),
            with_hours({Stage.RECOAT_CLOSES: 12.0}),
            hands=person(18, 20),
        ),
        ("Board 3: the leaf needs 45 min of hands", "leaf does not stick to what is sanded"),
    ),
    "no hands": (
        small_studio(hands=NO_HANDS),
        (
            "Board 3: nobody works before 22 Apr 2026, which is as far as was looked: ",
            "Ada is away until 23 Aug 2031; add working hours or shorten an absence",
        ),
    ),
    "two people, one away and one without hours": (
        small_studio(people=(NO_HANDS, replace(NO_HANDS, key="bo", name="Bo", work=()))),
        ("Ada is away until 23 Aug 2031 and Bo has no working hours",),
    ),
    "a cure that never ends": (
        small_studio(product=with_hours({Stage.PRINT_FREE: 18000, Stage.FULL_CURE: 19000})),
        ("Board 3: the seal never gets to print free", "cannot be packed"),
    ),
    "a window that has closed on what is poured": (
        small_studio(
            board(hard()),
            poured=(
                Poured(
                    piece="board",
                    coat="seal",
                    start=START - timedelta(days=3),
                    end=START - timedelta(days=3) + timedelta(minutes=45),
                    spot="S1",
                ),
            ),
        ),
        ("Board 3: the flood comes too late", "window of the seal below closed Sat 28 Feb"),
    ),
}


@pytest.mark.parametrize("rule", RULES)
def test_the_rule_that_stops_a_piece_is_named_with_piece_and_coat(rule: str) -> None:
    studio, words = RULES[rule]
    said = " ".join(reasons(studio))
    for part in words:
        assert part in said


@pytest.mark.parametrize("rule", RULES)
def test_every_rule_that_stops_a_piece_is_followed_by_what_to_do(rule: str) -> None:
    for said in reasons(RULES[rule][0]):
        assert said.endswith(_TO_DO), said


def test_without_that_rule_the_small_studio_is_planned() -> None:
    studio = small_studio()
    plan = quick_plan(studio, START)
    assert not plan.unplanned
    assert not check_plan(studio, plan).broken


def test_in_any_studio_what_is_left_out_has_a_sentence_that_names_its_piece() -> None:
    @settings(suppress_health_check=list(HealthCheck))
    @given(studios(most_pieces=3))
    def judge(situation: Situation) -> None:
        studio = situation.studio
        names = tuple(piece.name for piece in studio.pieces)
        try:
            rows = quick_plan(studio, situation.start).unplanned
        except NoPlanPossible as refusal:
            said = refusal.reasons
        else:
            said = tuple(str(row.reason) for row in rows)
            assert all(str(row.reason).startswith(studio.piece(row.piece).name) for row in rows)
        for words in said:
            assert words.startswith(names)
            assert words.endswith(".")
            assert not words.endswith("..")
            assert "; " in words  # what to do

    judge()


@pytest.mark.parametrize("rule", RULES)
def test_what_cannot_be_planned_is_looked_at_patiently_only_once(
    rule: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    seen: list[float] = []

    class Counted(Rounds):
        def __init__(self, *given: object, patience: float = 1.0, **named: object) -> None:
            super().__init__(*given, patience=patience, **named)  # type: ignore[arg-type]
            seen.append(patience)

    monkeypatch.setattr(quick, "Rounds", Counted)
    reasons(RULES[rule][0])
    assert sum(patience > 1.0 for patience in seen) <= 1
    assert len(seen) <= 2


def test_rules_that_were_found_in_english_are_said_in_german() -> None:
    rows = [row for rule in RULES for row in left_out(beside(RULES[rule][0]))]
    assert len(rows) >= 15
    assert all(_ENGLISH & set(str(row.reason).split()) for row in rows)
    try:
        assert speak("de")
        german = [str(row.reason) for row in rows]
    finally:
        speak(ENGLISH)
    assert not [said for said in german if _ENGLISH & set(said.split())]


def test_a_sheet_without_figures_is_told_in_one_sentence_that_names_all_pieces() -> None:
    silent = small_studio(product=without(*RESIN_HOURS), orders=promised_later())
    other = replace(board(), key="other", name="Other")
    both = promised_later(pieces=("other", "board"))
    (said,) = reasons(replace(silent, pieces=(other, *silent.pieces), orders=both))
    assert said.startswith("Other and Board 3: the data sheet of Clear does not say ")
    (said,) = reasons(silent)
    assert said == (
        "Board 3: the data sheet of Clear does not say when it can be handled (handle), from "
        "when the next coat can go on (recoat opens) and when it can be packed (print free); "
        "add the figures from the sheet, under Products."
    )


def test_without_hands_all_pieces_are_told_of_in_one_sentence() -> None:
    studio = small_studio(hands=NO_HANDS)
    (said,) = reasons(replace(studio, pieces=(*studio.pieces, *beside(studio).pieces[1:])))
    assert said.startswith("Board 3 and Easy: nobody works before ")


def test_what_is_left_out_is_told_in_the_order_of_the_pieces() -> None:
    large = replace(board(footprint_mm=(900.0, 300.0)), key="large", name="Large")
    never = replace(RULES["on dry over a mix"][0].pieces[0], key="never", name="Never")
    studio = beside(small_studio(large))
    studio = replace(studio, pieces=(*studio.pieces, never))
    assert [row.piece for row in quick_plan(studio, START).unplanned] == ["large", "never"]


def left_out(studio: Studio) -> tuple[Unplanned, ...]:
    """What a plan leaves out; nothing where there is no plan at all."""
    try:
        return quick_plan(studio, START).unplanned
    except NoPlanPossible:
        return ()


def test_an_order_with_a_piece_that_nothing_helps_says_so_and_no_change_is_tried() -> None:
    studio = beside(small_studio(board(footprint_mm=(900.0, 300.0))))
    plan = explain(studio, quick_plan(studio, START))
    (outcome,) = plan.outcomes
    assert outcome.leaves is None
    assert str(outcome.reason).startswith("Board 3: no spot is large enough")
    assert outcome.changes == ()


def test_an_order_that_a_change_makes_possible_names_the_rule_and_the_change() -> None:
    later = promised_later()
    studio = small_studio(product=resin(minimum_celsius=21.0), orders=later)
    easy = replace(board(), key="easy", name="Easy", stack=(coat("only", CoatKind.SEAL),))
    cold = replace(easy.stack[0], product="size")
    studio = replace(
        studio, pieces=(*studio.pieces, replace(easy, stack=(cold,), cover_mm=90.0))
    )
    (outcome,) = explain(studio, quick_plan(studio, START)).outcomes
    assert outcome.leaves is None
    assert "Board 3: the seal needs 21 °C, the minimum of Clear" in str(outcome.reason)
    kept = [str(change.words) for change in outcome.changes if change.keeps_promise]
    assert any(words.startswith("keep the room at 22 °C or warmer") for words in kept)


def test_a_piece_that_others_leave_no_time_says_that_alone_it_could_be_made() -> None:
    slow = with_hours({Stage.HANDLE: 2000.0, Stage.PRINT_FREE: 2001.0})
    first, second = (
        board((coat("only", CoatKind.FLOOD),), key=name.lower(), name=name)
        for name in ("First", "Second")
    )
    studio = small_studio(first, slow)
    plan = quick_plan(replace(studio, pieces=(first, second), orders=()), START)
    assert [str(row.reason) for row in plan.unplanned] == [f"Second: {CROWDED}"]


def test_a_date_that_the_courier_can_no_longer_keep_says_when_it_had_to_leave() -> None:
    rarely = Courier(days=frozenset({0}), transit_days=60)
    orders = promised_later(promise=Promise.ARRIVE_BY, courier=rarely)
    studio = small_studio(orders=orders)
    (outcome,) = explain(studio, quick_plan(studio, START)).outcomes
    assert str(outcome.reason).startswith(
        "Too late already: to keep the date it had to leave by"
    )
    assert "this plan starts Mon 2 Mar 08:00" in str(outcome.reason)


def test_days_asked_for_are_the_reason_only_where_more_days_would_help() -> None:
    studio = beside(small_studio(board(footprint_mm=(900.0, 300.0))))
    plan = quick_plan(studio, START, START + timedelta(days=3))
    assert [str(row.reason).split(";")[0] for row in plan.unplanned] == [
        "Board 3: no spot is large enough"
    ]
    short = beside(small_studio())
    (row,) = quick_plan(short, START, START + timedelta(hours=3)).unplanned
    assert (
        str(row.reason)
        == "Board 3: the flood does not fit into the days that were asked for; ask for more."
    )
