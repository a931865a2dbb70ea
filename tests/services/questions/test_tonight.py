"""Questions of an evening; the expected times are worked out beside each."""

from __future__ import annotations

from dataclasses import replace
from datetime import time

from studio_planner.craft.places import PatternPoint
from studio_planner.science.stages import Stage
from studio_planner.services.desk import DeskView
from studio_planner.services.questions import (
    colour_window,
    damp_tonight,
    if_left,
    latest_start,
    sanding_now,
)
from studio_planner.services.questions.asking import Sign
from tests.desktop import scenes
from tests.desktop.scenes import at
from tests.services.questions.steady import lines, steady, steady_room, steady_studio, verdict

ROOM = steady_room()


def test_the_latest_start_is_bedtime_less_the_hands_it_needs() -> None:
    # The slate's seal takes 50 min (20:10 to 21:00); Ada goes to bed at 23:00.
    answer = latest_start.QUESTION.asked(steady())
    assert verdict(answer) == "Begin Slate coasters, seal by Tue 22:10 at the latest."
    assert "Bedtime of Ada is Tue 23:00." in lines(answer)
    assert "That reaches beyond the working hours of Ada." in lines(answer)  # they end at 22:00


def test_a_pour_of_ones_own_length_counts_from_the_latest_bedtime() -> None:
    given = {"pour": "another", "minutes": 90}
    assert verdict(latest_start.QUESTION.asked(steady(), given)) == (
        "Begin another pour by Tue 21:30 at the latest."
    )


def test_after_the_latest_start_it_is_too_late() -> None:
    given = {"pour": "another", "minutes": 90}
    answer = latest_start.QUESTION.asked(steady(now=at(0, "21:40")), given)
    assert answer.sign is Sign.NO
    assert "it would have had to begin at 21:30" in verdict(answer)


def test_a_window_that_closes_before_bedtime_is_the_end() -> None:
    # Thursday's test-first lock coat takes 45 min; its window decides, not bedtime at 23:00.
    view = steady(now=at(3, "07:00"))
    (coat,) = (c for c in steady_studio().plan.coats if (c.piece, c.coat) == ("m", "lock"))  # type: ignore[union-attr]
    assert coat.window is not None
    assert coat.window.closes is not None
    answer = latest_start.QUESTION.asked(view)
    assert any(line.startswith("Its window closes at") for line in lines(answer))


def test_nobody_sands_beside_what_is_wet_or_soon_poured() -> None:
    # Sealed until 19:05, tack-free 2.64 h later: 21:43. The slate is sealed 20:10 to 21:00,
    # tack-free 23:38; before that the dust would not settle. So from 23:40.
    answer = sanding_now.QUESTION.asked(steady(ROOM))
    assert answer.sign is Sign.NO
    assert verdict(answer) == "Not now; from Tue 23:40."
    assert "Harbour board 1, seal is wet and in the open until Tue 21:43." in lines(answer)
    assert any("Slate coasters, seal is poured Tue 20:10" in line for line in lines(answer))
    # On Wednesday Bo works from 08:00, but the floods of 08:10 are wet until the afternoon.
    assert not any("begin Wed 08" in line for line in lines(answer))


def test_sanding_is_free_until_dust_has_to_settle_for_the_next_pour() -> None:
    # Nothing is wet on Tuesday noon; the next pour is at 18:20, dust takes two hours.
    answer = sanding_now.QUESTION.asked(steady(now=at(0, "12:00")))
    assert answer.sign is Sign.YES
    assert any("End by Tue 16:20" in line for line in lines(answer))


def test_dry_air_is_dry_enough() -> None:
    # 25 °C at 50 %: dew point 13.9 °C (Magnus), 11.1 °C below the surface.
    answer = damp_tonight.QUESTION.asked(steady())
    assert (answer.sign, verdict(answer)) == (Sign.YES, "No, it is dry enough to pour.")
    assert "Now the surface is 11.1 °C above the dew point." in lines(answer)


def test_air_near_its_dew_point_forbids_a_pour() -> None:
    # 25 °C at 90 %: dew point 23.2 °C, a margin of 1.8 °C.
    answer = damp_tonight.QUESTION.asked(steady(steady_room(25.0, 90.0)))
    assert answer.sign is Sign.NO
    assert "1.8 °C above the dew point" in lines(answer)[0]


def test_a_night_that_cools_asks_for_a_cover_and_warmth() -> None:
    # 21 °C at 60 % has its dew point at 12.9 °C; at 15 °C that is 87 % and a margin of 2.1 °C.
    points = [(time(0), 15.0, 87.0), (time(6), 15.0, 87.0), (time(18), 21.0, 60.0)]
    pattern = tuple(PatternPoint(at=t, celsius=c, humidity_pct=h) for t, c, h in points)
    pattern += (PatternPoint(at=time(20), celsius=21.0, humidity_pct=60.0),)
    answer = damp_tonight.QUESTION.asked(steady(replace(ROOM, pattern=pattern)))
    assert answer.sign is Sign.CARE
    assert verdict(answer) == "It will be: pour only covered and kept warm."
    assert any("Keep the air at 16 °C or more until Wed 07:36" in one for one in lines(answer))
    assert answer.caution


def test_unknown_humidity_is_said_and_not_guessed() -> None:
    answer = damp_tonight.QUESTION.asked(steady(steady_room(25.0, None)))
    assert answer.sign is Sign.OPEN
    assert "not entered" in verdict(answer)


def test_the_next_coat_is_poured_while_its_window_is_open_and_somebody_is_awake() -> None:
    # Poured 18:00, spread 18:45 (20 + 25 min): opens 3.08 h later, 21:49; closes 13.64 h after
    # 18:00, 07:38. Awake until 23:00 and from 07:00: 1.17 h and 0.64 h.
    given = {"coat": "h1/seal", "day": scenes.DAY, "at": time(18)}
    answer = colour_window.QUESTION.asked(steady(now=at(0, "17:00")), given)
    assert answer.sign is Sign.YES
    assert "somebody is awake for it from Tue 21:49" in verdict(answer)
    assert "opens Tue 21:49 at the latest and closes Wed 07:38" in lines(answer)[0]
    assert "awake for 1.81 h of it; the next coat takes 0.75 h" in lines(answer)[1]


def test_two_better_times_are_named_where_nobody_is_awake_in_the_window() -> None:
    # Closes after 6 h (early 5.45 h). Poured 20:00: open 23:49 to 01:27, everybody asleep.
    # At 18:00 it opens 21:49 and 45 min fit before bed; at 18:30 they no longer do; then
    # Wednesday 08:00, when Bo works.
    short = replace(
        scenes.FAST,
        sheet=tuple(
            replace(p, from_hours=6.0) if p.stage is Stage.RECOAT_CLOSES else p
            for p in scenes.FAST.sheet
        ),
    )
    studio = replace(steady_studio(), products=(scenes.SLOW, short, scenes.PRIMER))
    given = {"coat": "h1/seal", "day": scenes.DAY, "at": time(20)}
    answer = colour_window.QUESTION.asked(DeskView(studio, at(0, "17:00")), given)
    assert answer.sign is Sign.NO
    assert "Nobody is awake" in verdict(answer)
    better = [line for line in lines(answer) if line.startswith("Better")]
    assert [line[:26] for line in better] == [
        "Better: pour at Tue 18:00;",
        "Better: pour at Wed 08:00;",
    ]


def test_what_cannot_be_sanded_is_the_worst_to_leave() -> None:
    # On Thursday the lock coat over the glitter is due: glitter does not survive sanding.
    answer = if_left.QUESTION.asked(steady(now=at(3, "08:00")), {"left": "a day"})
    assert answer.sign is Sign.NO
    assert verdict(answer).startswith("Moon tray, lock coat cannot be saved: do it by ")
    assert lines(answer)[0].startswith("Moon tray, lock coat, by ")


def test_nothing_is_lost_where_no_window_closes() -> None:
    answer = if_left.QUESTION.asked(steady(now=at(20, "12:00")))
    assert (answer.sign, answer.lines) == (Sign.YES, ())
