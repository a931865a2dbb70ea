"""Windows that moved since they were planned; every time is worked out in a steady room.

At 25 °C the seal opens 3.08 h after it is spread and closes 13.64 h after A met B.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind
from studio_planner.craft.places import Reading
from studio_planner.craft.reminders import Reminding
from studio_planner.services.desk import DeskView
from studio_planner.services.log_book.moved_windows import MovedWindow, moved_windows
from studio_planner.services.log_book.pours import with_pour
from studio_planner.services.log_book.steps import StepTold, told
from tests.desktop.scenes import NOW, at
from tests.services.questions.steady import PlainVoice, steady_room, steady_studio

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

HOUR = timedelta(hours=1)


def sealed(hours_late: float = 0.0) -> Studio:
    """Harbour board 1 with its seal poured so much later than planned, 18:20 to 19:05."""
    studio = steady_studio()
    assert studio.plan is not None
    seal = next(c for c in studio.plan.coats if (c.piece, c.coat) == ("h1", "seal"))
    late = hours_late * HOUR
    return with_pour(studio, (seal,), seal.start + late, seal.end + late)


def moved(studio: Studio) -> list[MovedWindow]:
    return [one for one in moved_windows(DeskView(studio, NOW)) if one.piece == "h1"]


def words(one: MovedWindow) -> list[str]:
    return [sentence.words(PlainVoice()) for sentence in one.sentences]


def test_a_pour_as_planned_moves_no_window() -> None:
    assert moved(sealed()) == []
    assert moved_windows(DeskView(replace(sealed(), plan=None), NOW)) == ()


def test_a_late_pour_moves_its_window_and_says_whether_the_next_one_fits() -> None:
    (one,) = moved(sealed(2.0))
    assert (one.piece, one.coat, one.name) == ("h1", "flood", "Harbour board 1, flood")
    assert one.later is not None
    assert abs(one.later - 2 * HOUR) < timedelta(seconds=1)
    assert one.fits
    # 21:05 and 3.08 h; 20:20 and 13.64 h.
    assert words(one) == [
        "It opens Wed 00:09 instead of Tue 22:09.",
        "It closes Wed 09:58 instead of Wed 07:58.",
        "The pour of Wed 08:10 still fits.",
    ]


def test_a_pour_that_fits_no_more_comes_first_and_says_by_how_much() -> None:
    (early,) = moved(sealed(10.5))
    assert not early.fits
    assert words(early)[-1] == "The pour of Wed 08:10 is 0.50 h too early; plan again."
    (late,) = moved(sealed(-2.0))
    assert words(late)[-1] == "The pour of Wed 08:10 ends 3.36 h too late; plan again."


def test_what_moved_by_less_than_the_threshold_is_not_told() -> None:
    assert moved(sealed(0.4)) == []
    sharp = replace(sealed(0.4), reminding=Reminding(moved_minutes=20))
    assert len(moved(sharp)) == 1


def test_a_room_that_was_colder_than_thought_moves_the_window() -> None:
    cold = tuple(Reading(when=at(0, f"{hour}:00"), celsius=18) for hour in (18, 19, 20, 21, 22))
    studio = sealed()
    room = replace(studio.places[0], readings=cold)
    studio = replace(studio, places=(room, *studio.places[1:]))
    (one,) = moved(studio)
    assert one.later is not None
    assert one.later > timedelta(minutes=30)


def test_a_window_that_opens_no_more_is_told_first() -> None:
    studio = sealed()
    product = next(one for one in studio.products if one.key == "fast")
    frozen = replace(steady_room(-20.0), spots=studio.places[0].spots)
    cold = replace(
        studio,
        places=(frozen, *studio.places[1:]),
        products=tuple(
            replace(one, minimum_celsius=10.0) if one is product else one
            for one in studio.products
        ),
    )
    (one,) = moved(cold)
    assert (one.now, one.later, one.fits) == (None, None, False)
    assert "too cold" in words(one)[0]


def test_a_film_that_was_carried_into_the_warm_box_moves_its_window() -> None:
    studio = sealed()
    step = StepTold(kind=EntryKind.MOVED, pieces=("h1",), at=at(0, "20:00"), spot="W1")
    (one,) = moved(told(studio, step, at(0, "20:05")).make(studio))
    assert one.coat == "flood"
    assert one.later is not None
    assert one.later < timedelta()
    assert words(one)[0].startswith("It opens Tue 21:")


def test_a_film_that_was_carried_moves_the_windows_of_no_other_piece() -> None:
    studio = sealed()
    step = StepTold(kind=EntryKind.MOVED, pieces=("h1",), at=at(0, "20:00"), spot="W1")
    carried = told(studio, step, at(0, "20:05")).make(studio)
    found = moved_windows(DeskView(carried, NOW))
    assert {one.piece for one in found} == {"h1"}
