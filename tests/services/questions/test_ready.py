"""Questions about pieces that are nearly ready; expected times are worked out beside each."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.hands import Person, WorkHours
from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.plans import Plan
from studio_planner.services.desk import DeskView
from studio_planner.services.questions import (
    before_away,
    bottleneck,
    posting,
    to_market,
    warming,
    washing,
)
from studio_planner.services.questions.asking import Sign
from studio_planner.services.questions.every import QUESTIONS
from studio_planner.services.questions.sentences import Moment
from tests.desktop import scenes
from tests.desktop.scenes import DAY, at
from tests.services.questions.steady import lines, steady, steady_room, steady_studio, verdict

if TYPE_CHECKING:
    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.services.questions.asking import Answer

# Market board 7 got its only coat on Monday until 19:00: it can be handled 18.7 h later, Tue
# 13:42 (likely 17 h, 12:00), is print-free 37.4 h later, Wed 08:24, fully cured 99 h later,
# Fri 22:00.


def _market(day: int, opens: str) -> tuple[Sign, str]:
    given = {"piece": "k", "day": DAY + timedelta(days=day), "opens": time.fromisoformat(opens)}
    answer = to_market.QUESTION.asked(steady(), given)
    return answer.sign, verdict(answer)


def test_what_is_fully_cured_is_shown_and_sold() -> None:
    assert _market(4, "09:00") == (Sign.YES, "Yes: show and sell Market board 7 on Sat 12.")


def test_what_can_only_be_handled_is_sold_with_a_note() -> None:
    sign, words = _market(3, "09:00")
    assert sign is Sign.CARE
    assert "handle gently, full cure Fri 22:00" in words


def test_what_is_likely_hard_is_tested_first_and_what_is_not_stays_at_home() -> None:
    assert _market(0, "13:00")[0] is Sign.CARE
    assert _market(0, "13:00")[1].startswith("Perhaps")
    assert _market(0, "10:00")[0] is Sign.NO


def test_the_next_market_is_what_is_asked_about() -> None:
    values = {one.key: one.value for one in to_market.QUESTION.parameters(steady())}
    assert values == {"piece": "k", "day": scenes.ORDERS[3].promised, "opens": time(9)}


def _posted(day: int, now: str, *, hot: bool = False) -> tuple[Sign, str]:
    given = {"piece": "k", "hot": hot}
    answer = posting.QUESTION.asked(steady(now=at(day, now)), given)
    return answer.sign, verdict(answer)


def test_a_parcel_leaves_once_it_is_print_free_and_packed() -> None:
    # The courier comes Monday to Friday at 16:00; packing takes 15 min.
    assert _posted(0, "19:36") == (Sign.NO, "Not before Wed 9.")
    assert _posted(1, "10:00") == (Sign.YES, "Yes: it leaves today at 16:00.")
    assert _posted(1, "15:50") == (Sign.CARE, "Pack it today; it leaves Thu 16:00.")


def test_a_hot_van_asks_for_full_cure() -> None:
    # Fully cured on Friday at 22:00, so it leaves on Monday.
    assert _posted(2, "10:00", hot=True) == (Sign.NO, "Not before Mon 14.")


def test_packing_never_puts_bubble_wrap_on_the_face() -> None:
    answer = posting.QUESTION.asked(steady(), {"piece": "k"})
    assert any("never bubble wrap" in line for line in lines(answer))
    assert answer.caution


def test_a_film_that_stayed_clear_of_the_dew_point_needs_no_washing() -> None:
    answer = washing.QUESTION.asked(steady(), {"film": "k/clear"})
    assert answer.sign is Sign.YES
    assert "11.1 °C" in lines(answer)[0]


def test_a_film_near_the_dew_point_is_washed_first() -> None:
    # 25 °C at 90 % is 1.8 °C above its dew point; blush asks for 3 °C.
    answer = washing.QUESTION.asked(steady(steady_room(25.0, 90.0)), {"film": "k/clear"})
    assert answer.sign is Sign.NO
    assert any("clean water" in line for line in lines(answer))
    unknown = washing.QUESTION.asked(steady(steady_room(25.0, None)), {"film": "k/clear"})
    assert verdict(unknown).startswith("Wash it to be sure")


def _carried(room: Place, box: Place, *moves: tuple[datetime, str], spot: str = "C2") -> Studio:
    """Market board 7, poured on a spot and carried to others at some times."""
    plan = steady_studio(room).plan
    assert plan is not None
    (coat,) = (one for one in plan.coats if one.piece == "k")
    pour = Poured(piece="k", coat="clear", start=coat.start, end=coat.end, spot=spot)
    plan = replace(
        plan, coats=tuple(replace(c, spot=spot) if c is coat else c for c in plan.coats)
    )
    log = tuple(
        LogEntry(number=number, kind=EntryKind.MOVED, at=when, written=when, piece="k", spot=on)
        for number, (when, on) in enumerate(moves, start=1)
    )
    return replace(steady_studio(room), places=(room, box), plan=plan, poured=(pour,), log=log)


def _box(celsius: float, humidity: float | None = 50.0) -> Place:
    pattern = steady_room(celsius, humidity).pattern
    return replace(scenes.warm_box(), pattern=pattern, band_celsius=0.0)


def _washing(*moves: tuple[datetime, str], celsius: float = 25.0) -> Answer:
    view = DeskView(_carried(steady_room(), _box(celsius, 90.0), *moves), scenes.NOW)
    return washing.QUESTION.asked(view, {"film": "k/clear"})


def test_a_film_that_was_carried_into_damp_air_soon_after_its_pour_is_washed() -> None:
    assert _washing().sign is Sign.YES
    answer = _washing((at(-1, "21:00"), "W1"))
    assert answer.sign is Sign.NO
    assert "1.8 °C to the dew point" in lines(answer)[0]

    # Blush can come until twelve hours after 19:00.
    assert _washing((at(0, "08:00"), "W1")).sign is Sign.YES


def test_dew_settles_on_what_is_carried_from_the_cool_into_warm_damp_air() -> None:
    # 30 °C at 90 % has its dew point at 28.2 °C; the board comes in at 25 °C, 3.2 °C below.
    answer = _washing((at(-1, "21:00"), "W1"), celsius=30.0)
    assert verdict(answer) == "Wash it: dew settled on it, and blush is all but sure."
    assert "-3.2 °C to the dew point, at Mon 21:00" in lines(answer)[0]


def test_nothing_is_warmed_before_it_can_be_handled() -> None:
    given = {"piece": "k", "celsius": 40.0}
    answer = warming.QUESTION.asked(steady(now=at(0, "10:00")), given)
    assert (answer.sign, verdict(answer)) == (
        Sign.NO,
        "No, not before Tue 13:42: it would sag, or print where it lies.",
    )


def test_what_holds_is_warmed_slowly_and_gains_time() -> None:
    answer = warming.QUESTION.asked(steady(now=at(0, "14:00")), {"piece": "k"})
    assert answer.sign is Sign.CARE  # timber, and its underside is bare
    assert answer.caution
    said = " ".join(lines(answer))
    assert "up by 5.0 °C an hour to 40 °C" in said
    assert "seal both faces" in said
    assert "instead of Wed 08:24" in said


def _warmed(studio: Studio) -> datetime:
    """When it is print-free if it is warmed from Wednesday noon on."""
    view = DeskView(studio, at(1, "12:00"))
    answer = warming.QUESTION.asked(view, {"piece": "k", "celsius": 40.0})
    (gain,) = (line for line in answer.lines if "if it is warmed" in line.text)
    now = gain.facts["now"]
    assert isinstance(now, Moment)
    return now.when


def test_what_warming_gains_counts_from_where_the_piece_was_until_now() -> None:
    # 15 °C on the shelf, 25 °C in the box.
    shelf, box, pour = steady_room(15.0), _box(25.0), at(-1, "18:10")
    never = _warmed(_carried(shelf, box))
    soon, late = (_warmed(_carried(shelf, box, (at(-1, t), "W1"))) for t in ("19:30", "23:00"))
    assert soon < late < never
    at_once = _warmed(_carried(shelf, box, (pour, "W1")))
    assert at_once == _warmed(_carried(shelf, box, spot="W1")) < soon


def test_what_lies_as_warm_as_that_already_gains_nothing() -> None:
    # It could be handled on Tuesday at 13:42 at the latest, and was carried later.
    studio = _carried(steady_room(), _box(44.0), (at(0, "14:00"), "W1"))
    answer = warming.QUESTION.asked(DeskView(studio, at(0, "15:00")), {"piece": "k"})
    assert answer.sign is Sign.CARE
    assert "if it is warmed" not in " ".join(lines(answer))


def test_timber_is_not_warmed_above_45_degrees() -> None:
    answer = warming.QUESTION.asked(steady(now=at(0, "14:00")), {"piece": "k", "celsius": 48.0})
    assert verdict(answer) == "No: not above 45 °C for this piece."


def _away(piece: str, leaves: tuple[int, str], back: tuple[int, str]) -> dict[str, object]:
    return {
        "piece": piece,
        "leaves_on": DAY + timedelta(days=leaves[0]),
        "leaves_at": time.fromisoformat(leaves[1]),
        "back_on": DAY + timedelta(days=back[0]),
        "back_at": time.fromisoformat(back[1]),
    }


def test_glitter_is_not_poured_before_a_journey() -> None:
    # Planned: seal Wednesday, glitter Thursday 18:20 to 19:10, lock coat Friday 08:05. Away
    # from Thursday 20:00, the glitter would miss its lock coat; the seal can be sanded.
    given = _away("m", (2, "20:00"), (6, "20:00"))
    answer = before_away.QUESTION.asked(steady(), given)
    assert answer.sign is Sign.CARE
    assert verdict(answer) == "Pour no further than the seal, and the rest from Mon 20:00."
    said = " ".join(lines(answer))
    assert "The glitter cannot be sanded" in said
    assert "The seal can be washed and sanded" in said
    assert "Planned while you are away: lock coat, Fri 08:05." in said


def test_glitter_that_is_poured_needs_its_lock_coat_first() -> None:
    given = _away("m", (2, "20:00"), (6, "20:00"))
    answer = before_away.QUESTION.asked(steady(now=at(2, "19:20")), given)
    assert answer.sign is Sign.NO
    assert "its next coat has to be on before you go" in verdict(answer)


def test_what_needs_no_hands_while_away_fits() -> None:
    # The slate's last coat is poured Thursday 20:30 to 21:45; tack-free takes 6.5 h, late
    # 7.15 h: to be dry on Friday at 09:00 it is spread by 01:51, so begun by 00:35.
    given = _away("c", (3, "09:00"), (7, "18:00"))
    answer = before_away.QUESTION.asked(steady(), given)
    assert answer.sign is Sign.YES
    assert lines(answer) == [
        "Latest pour of the colour pour: Fri 00:35, so that it is tack-free when you leave."
    ]


def test_hands_and_spots_are_counted_by_week() -> None:
    # One hour of hands in an evening of four: 25 %. The seal can be handled 8.8 h after
    # 19:00, so the one spot is taken 9.8 of the week's 168 h: 6 %.
    whole = steady_studio()
    room = replace(whole.places[0], spots=whole.places[0].spots[:1])
    work = WorkHours(rule="FREQ=WEEKLY;BYDAY=TU", start=time(18), end=time(22))
    assert whole.plan is not None
    coat = next(c for c in whole.plan.coats if (c.piece, c.coat) == ("h1", "seal"))
    coat = replace(coat, start=at(0, "18:00"), end=at(0, "19:00"), spot="A1")
    studio = replace(
        whole,
        places=(room,),
        people=(Person(key="ada", name="Ada", work=(work,)),),
        pieces=whole.pieces[:1],
        orders=(),
        plan=Plan(made=at(0, "07:00"), start=at(0, "07:00"), coats=(coat,)),
    )
    answer = bottleneck.QUESTION.asked(DeskView(studio, at(0, "12:00")))
    assert verdict(answer) == (
        "Your hands, most of all on Tue 8: up to 25 % of a week's working hours."
    )
    assert lines(answer)[0] == "Week of Mon 7: hands 25 %, spots 6 %."


def test_the_fullest_spot_is_where_the_pieces_were_carried() -> None:
    # It can be handled on Tuesday at 13:42; until then it is in the box.
    studio = _carried(steady_room(), _box(25.0), (at(0, "08:00"), "W1"))
    assert studio.plan is not None
    mine = tuple(one for one in studio.plan.coats if one.piece == "k")
    studio = replace(studio, plan=replace(studio.plan, coats=mine, steps=()))
    answer = bottleneck.QUESTION.asked(DeskView(studio, at(0, "10:00")))
    assert "The fullest spot is Box 1: in use for 100 % of the time." in lines(answer)


def test_every_question_has_an_answer_for_an_empty_studio() -> None:
    empty = DeskView(
        replace(scenes.studio(), people=(), places=(), pieces=(), orders=()), at(0, "12:00")
    )
    for question in QUESTIONS:
        assert question.asked(empty).sign in {Sign.OPEN, Sign.YES}, question.key
        assert verdict(question.asked(empty))


def test_every_question_has_an_answer_at_every_hour_of_the_scene() -> None:
    for hour in range(0, 24 * 8, 7):
        view = steady(now=at(0, "00:30") + timedelta(hours=hour))
        for question in QUESTIONS:
            answer = question.asked(view)
            assert verdict(answer)
            assert all(lines(answer))
