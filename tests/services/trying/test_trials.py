"""What is changed for a trial, worked out by hand; nothing is planned here."""

from __future__ import annotations

from dataclasses import replace
from datetime import time, timedelta

import pytest

from studio_planner.craft.places import PatternPoint, PlaceKind
from studio_planner.craft.settings import Settings
from studio_planner.science.air import dew_point
from studio_planner.services.desk import DeskView
from studio_planner.services.trying import (
    being_away,
    heating,
    more_hours,
    more_spots,
    pouring_then,
    warm_boxes,
)
from studio_planner.services.trying.energy import energy_of
from studio_planner.services.trying.trial import (
    CannotTry,
    Trial,
    as_followed,
    begun_coats,
    done_with,
)
from tests.desktop import scenes
from tests.desktop.scenes import DAY, NOW, at
from tests.services.questions.steady import steady, steady_room


def _heated(celsius: float = 22.0, end: str = "07:00") -> Trial:
    given = {
        "place": "room",
        "celsius": celsius,
        "start": time(21),
        "end": time.fromisoformat(end),
    }
    return heating.WHAT_IF.tried(steady(steady_room(20.0)), given)


def _air(trial: Trial, day: int, wall: str) -> tuple[float | None, float | None]:
    room = trial.studio.places[0]
    record = room.history(trial.studio.time_zone, at(-1, "00:00"), at(20, "00:00"))
    second = at(day, wall).timestamp()
    return record.celsius_at(second), record.humidity_at(second)


def test_a_heater_warms_one_night_and_nothing_before_or_after_it() -> None:
    trial = _heated()
    assert [_air(trial, 0, wall)[0] for wall in ("20:59", "21:00", "23:59")] == [20, 22, 22]
    assert [_air(trial, 1, wall)[0] for wall in ("00:00", "06:59", "07:00")] == [22, 22, 20]
    assert [_air(trial, day, "23:00")[0] for day in (-1, 1, 2, 3, 6)] == [20] * 5


def test_the_same_night_a_week_later_is_as_it_was() -> None:
    assert _air(_heated(), 7, "23:00")[0] == 20


def test_warm_air_is_drier_but_its_dew_point_stays() -> None:
    celsius, humidity = _air(_heated(), 0, "23:00")
    assert celsius == 22
    assert humidity is not None
    assert dew_point(22.0, humidity) == pytest.approx(dew_point(20.0, 50.0), abs=0.01)


def test_a_heater_never_cools_and_counts_only_what_it_adds() -> None:
    # 18 °C at midnight up to 24 °C at 06:00: warmed to 21 °C it adds 3 °C falling to none over
    # 3 h: 4.5 degree-hours; before midnight it falls from 24 to 18 °C, so 1.5 h add 2.25.
    room = steady_room(20.0)
    pattern = tuple(
        PatternPoint(at=t, celsius=c)
        for t, c in ((time(0), 18.0), (time(6), 24.0), (time(21), 24.0))
    )
    given = {"place": "room", "celsius": 21.0, "start": time(21), "end": time(6)}
    trial = heating.WHAT_IF.tried(steady(replace(room, pattern=pattern)), given)
    assert trial.warmth is not None
    assert trial.warmth.degree_hours == pytest.approx(4.5 + 2.25, abs=0.02)
    assert _air(trial, 1, "05:00")[0] == pytest.approx(23.0)
    assert _air(trial, 1, "00:00")[0] == pytest.approx(21.0)


def test_energy_is_heat_loss_times_degree_hours_and_costs_by_the_tariff() -> None:
    # 2 °C for 10 h in a room that loses 60 W for each °C: 1.2 kWh; at 0.30 that is 0.36.
    trial = _heated()
    assert trial.warmth is not None
    assert trial.warmth.degree_hours == pytest.approx(20.0)
    studio = replace(trial.studio, settings=Settings(tariff_per_kwh=0.3))
    energy = energy_of(studio, trial.warmth, 60.0)
    assert energy.kilowatt_hours == pytest.approx(1.2)
    assert energy.cost == pytest.approx(0.36)
    assert energy_of(trial.studio, trial.warmth, 60.0).cost is None
    assert energy_of(studio, trial.warmth, None).kilowatt_hours is None


def test_a_heater_that_adds_nothing_is_not_tried() -> None:
    with pytest.raises(CannotTry, match="as warm as that anyway"):
        _heated(celsius=19.0)
    with pytest.raises(CannotTry, match="more than 35"):
        _heated(celsius=36.0)


def test_heat_is_expected_of_the_place_and_the_maker_is_told_to_set_the_heater() -> None:
    trial = _heated()
    assert trial.to_do is not None
    (spell,) = trial.studio.places[0].spells
    assert (spell.start, spell.end, spell.celsius) == (at(0, "21:00"), at(1, "07:00"), 22.0)
    assert trial.studio.places[0].pattern == steady_room(20.0).pattern


def test_a_second_heating_takes_the_place_of_the_first_where_they_meet() -> None:
    first = _heated()
    given = {"place": "room", "celsius": 24.0, "start": time(23), "end": time(2)}
    second = heating.WHAT_IF.tried(steady(first.studio.places[0]), given)
    spells = second.studio.places[0].spells
    assert [(s.start, s.end, s.celsius) for s in spells] == [
        (at(0, "21:00"), at(0, "23:00"), 22.0),
        (at(0, "23:00"), at(1, "02:00"), 24.0),
        (at(1, "02:00"), at(1, "07:00"), 22.0),
    ]


def test_a_pour_at_another_time_is_pinned_with_all_of_its_mix() -> None:
    given = {"coat": "c/seal", "day": DAY, "at": time(23)}
    trial = pouring_then.WHAT_IF.tried(steady(), given)
    assert [(p.piece, p.coat, p.start) for p in trial.studio.pins] == [
        ("c", "seal", at(0, "23:00"))
    ]
    assert trial.to_do is None
    with pytest.raises(CannotTry, match="past"):
        pouring_then.WHAT_IF.tried(steady(), given | {"at": time(12)})


def test_one_more_spot_is_like_the_chosen_one_under_a_name_of_its_own() -> None:
    trial = more_spots.WHAT_IF.tried(steady(), {"like": "A2"})
    new = trial.studio.places[0].spots[-1]
    like = trial.studio.spot("A2")
    assert (new.length_mm, new.width_mm, new.height_mm) == (
        like.length_mm,
        like.width_mm,
        like.height_mm,
    )
    assert new.key not in {spot.key for spot in steady().studio.spots}


def test_an_evening_more_is_worked_on_that_day_alone() -> None:
    given = {"person": "bo", "day": DAY, "start": time(19), "end": time(22)}
    trial = more_hours.EVENING_MORE.tried(steady(), given)
    bo = next(one for one in trial.studio.people if one.key == "bo")
    zone = trial.studio.time_zone
    assert bo.working(zone, at(0, "12:00"), at(1, "00:00")) == (
        (at(0, "19:00"), at(0, "22:00")),
    )
    assert bo.working(zone, at(7, "12:00"), at(8, "00:00")) == ()
    with pytest.raises(CannotTry, match="past"):
        more_hours.EVENING_MORE.tried(steady(), given | {"start": time(8), "end": time(9)})


def test_beginning_earlier_adds_the_time_before_the_usual_hours() -> None:
    given = {"person": "ada", "day": DAY + timedelta(days=1), "start": time(16)}
    trial = more_hours.EARLIER.tried(steady(), given)
    ada = trial.studio.people[0]
    spans = ada.working(trial.studio.time_zone, at(1, "12:00"), at(2, "00:00"))
    assert spans == ((at(1, "16:00"), at(1, "22:00")),)
    with pytest.raises(CannotTry, match="begins at 18:00"):
        more_hours.EARLIER.tried(steady(), given | {"start": time(19)})
    with pytest.raises(CannotTry, match="does not work"):
        more_hours.EARLIER.tried(steady(), given | {"day": DAY + timedelta(days=5)})


def test_a_warm_box_has_one_spot_and_the_rooms_moisture() -> None:
    given = {"length_mm": 500.0, "width_mm": 400.0, "height_mm": 150.0, "celsius": 30.0}
    trial = warm_boxes.WHAT_IF.tried(steady(steady_room(20.0)), given)
    box = trial.studio.places[-1]
    assert box.kind is PlaceKind.WARM_BOX
    assert [(s.length_mm, s.width_mm, s.height_mm) for s in box.spots] == [(500, 400, 150)]
    humidity = box.pattern[0].humidity_pct
    assert humidity is not None
    assert dew_point(30.0, humidity) == pytest.approx(dew_point(20.0, 50.0), abs=0.01)
    # 10 °C above the room for a day.
    assert trial.warmth is not None
    assert trial.warmth.degree_hours == pytest.approx(240.0)
    with pytest.raises(CannotTry, match="15 °C to 50 °C"):
        warm_boxes.WHAT_IF.tried(steady(), given | {"celsius": 70.0})


def test_an_absence_is_one_of_the_person() -> None:
    given = {
        "person": "ada",
        "leaves_on": DAY + timedelta(days=1),
        "leaves_at": time(8),
        "back_on": DAY + timedelta(days=2),
        "back_at": time(20),
    }
    trial = being_away.WHAT_IF.tried(steady(), given)
    assert [(a.start, a.end) for a in trial.studio.people[0].absences] == [
        (at(1, "08:00"), at(2, "20:00"))
    ]
    with pytest.raises(CannotTry, match="after the one to leave"):
        being_away.WHAT_IF.tried(steady(), given | {"back_on": DAY})


def test_without_people_rooms_or_pours_it_is_said_what_is_missing() -> None:
    bare = replace(scenes.studio(pieces=()), people=(), places=())
    view = DeskView(bare, NOW)
    for what_if in (
        heating.WHAT_IF,
        pouring_then.WHAT_IF,
        more_spots.WHAT_IF,
        more_hours.EVENING_MORE,
        more_hours.EARLIER,
        being_away.WHAT_IF,
    ):
        given = {one.key: one.value for one in what_if.parameters(view)}
        with pytest.raises(CannotTry):
            what_if.tried(view, given)


def test_whoever_is_pouring_has_no_hands_for_anything_else() -> None:
    # At 18:30 Ada seals both boards, until 19:05.
    followed = as_followed(scenes.planned(), at(0, "18:30"))
    ada, bo = followed.people
    zone = followed.time_zone
    assert ada.working(zone, at(0, "18:30"), at(1, "00:00")) == (
        (at(0, "19:05"), at(0, "22:00")),
    )
    assert bo.absences == ()


def test_what_has_begun_counts_as_poured_in_the_trial_and_as_planned_again_afterwards() -> None:
    studio = scenes.planned()
    assert [(c.piece, c.coat) for c in begun_coats(studio, NOW)] == [
        ("k", "clear"),
        ("h1", "seal"),
        ("h2", "seal"),
    ]
    followed = as_followed(studio, NOW)
    assert len(followed.poured) == 3
    assert studio.plan is not None
    coats = tuple(replace(c, poured=c.start <= NOW) for c in studio.plan.coats)
    planned = replace(followed, plan=replace(studio.plan, start=NOW, coats=coats))
    trial = Trial(words="Nothing", studio=studio)
    done = done_with(trial, planned)
    assert done.poured == ()
    assert done.plan is not None
    # Only the numbers of mixes are others, so that none is taken twice.
    plain = [replace(coat, mix=0) for coat in done.plan.coats]
    assert plain == [replace(coat, mix=0) for coat in studio.plan.coats]
    assert len({coat.mix for coat in done.plan.coats}) == len(done.plan.coats)
    assert done.plan.start == studio.plan.start
