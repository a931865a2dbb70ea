"""What a plan, the log and the air have to be told of; times worked out in a steady room.

At 25 °C the quick seal opens after 3.08 h and closes after 13.64 h (late and early edges).
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.pieces import Joint
from studio_planner.craft.places import Reading
from studio_planner.craft.plans import PlannedStep, StepKind
from studio_planner.craft.products import SheetPoint
from studio_planner.craft.reminders import Reminder, ReminderKind, Reminding, Urgency, uid_of
from studio_planner.science.stages import Stage
from studio_planner.services.reminding.making import reminders_of
from tests.desktop import scenes
from tests.desktop.scenes import at
from tests.services.questions.steady import steady_room, steady_studio

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

MINUTE, HOUR = timedelta(minutes=1), timedelta(hours=1)


def made(studio: Studio, now: datetime = scenes.NOW) -> dict[str, Reminder]:
    return {one.uid: one for one in reminders_of(studio, now)}


def kept(studio: Studio) -> Plan:
    assert studio.plan is not None
    return studio.plan


def logged(studio: Studio, kind: EntryKind, piece: str, **more: str) -> Studio:
    entry = LogEntry(
        number=1, kind=kind, at=scenes.NOW, written=scenes.NOW, piece=piece,
        **more,  # type: ignore[arg-type]
    )  # fmt: skip
    return replace(studio, log=(entry,))


def poured(studio: Studio, piece: str, coat: str, start: datetime, end: datetime) -> Studio:
    planned = next(c for c in kept(studio).coats if (c.piece, c.coat) == (piece, coat))
    pour = Poured(
        piece=piece, coat=coat, start=start, end=end, spot=planned.spot, joint=planned.joint
    )
    return replace(studio, poured=(*studio.poured, pour))


@pytest.fixture(scope="module")
def studio() -> Studio:
    return steady_studio()


def test_without_a_plan_there_is_nothing_to_be_told_of(studio: Studio) -> None:
    assert reminders_of(replace(studio, plan=None), scenes.NOW) == ()


def test_every_pour_is_weighed_ten_minutes_before_it_begins(studio: Studio) -> None:
    rings = made(studio)["weigh-now/c/seal"]
    assert (rings.moment, rings.due) == (at(0, "20:10"), at(0, "20:00"))
    assert rings.saved_until is None


def test_the_makers_own_lead_counts(studio: Studio) -> None:
    early = replace(studio, reminding=Reminding(leads={ReminderKind.WEIGH: 60}))
    assert made(early)["weigh-now/c/seal"].due == at(0, "19:10")


def test_what_the_maker_does_not_want_to_hear_is_left_out(studio: Studio) -> None:
    quiet = replace(studio, reminding=Reminding(off=frozenset({ReminderKind.OPENS})))
    assert any(name.startswith("window-opens") for name in made(studio))
    assert not any(name.startswith("window-opens") for name in made(quiet))


def test_a_coat_that_was_poured_needs_no_word_any_more(studio: Studio) -> None:
    done = poured(studio, "h1", "seal", at(0, "18:20"), at(0, "19:05"))
    assert "weigh-now/h1/seal" not in made(done)
    assert "weigh-now/h2/seal" in made(done)


def test_a_mix_that_something_was_poured_from_is_weighed_already(studio: Studio) -> None:
    plan = kept(studio)
    shared = tuple(replace(c, mix=2) if c.mix == 3 else c for c in plan.coats)
    done = replace(studio, plan=replace(plan, coats=shared))
    done = poured(done, "h1", "seal", at(0, "18:20"), at(0, "19:05"))
    assert "weigh-now/h2/seal" not in made(done)


def test_a_window_that_opens_long_before_its_pour_is_told_of(studio: Studio) -> None:
    opens = made(studio)["window-opens/h1/tide"]
    assert opens.urgency is Urgency.CAN_WAIT
    assert opens.moment < at(1, "20:10") - 30 * MINUTE
    assert "window-opens/h1/seal" not in made(studio)


def test_what_closes_in_the_quiet_hours_is_told_of_before_they_begin(studio: Studio) -> None:
    closing = made(studio)["window-about-to-close/h1/tide"]
    assert at(1, "22:00") < closing.moment < at(2, "07:00")
    assert closing.due == at(1, "20:30")
    assert not closing.strong


def test_what_no_sanding_saves_is_strong_and_rings_at_night_too(studio: Studio) -> None:
    rings = made(studio)
    lock, opens = rings["window-about-to-close/m/lock"], rings["window-opens/m/lock"]
    assert (lock.strong, lock.urgency) == (True, Urgency.LOST_LATER)
    assert lock.due == opens.moment
    assert not opens.strong


def test_a_long_window_asks_for_the_last_start_by_itself(studio: Studio) -> None:
    plan = kept(studio)
    early = tuple(
        replace(c, start=at(1, "13:40"), end=at(1, "15:10"))
        if (c.piece, c.coat) == ("h1", "tide")
        else c
        for c in plan.coats
    )
    none = replace(Reminding(), quiet_from=time(7))
    calm = replace(studio, plan=replace(plan, coats=early), reminding=none)
    pour_by = made(calm)["pour-by/h1/tide"]
    closing = made(calm)["window-about-to-close/h1/tide"]
    assert pour_by.moment == pour_by.saved_until == closing.moment
    assert (pour_by.moment - pour_by.due, closing.moment - closing.due) == (
        20 * MINUTE,
        90 * MINUTE,
    )


def test_a_window_follows_the_film_that_was_really_poured(studio: Studio) -> None:
    late = poured(studio, "h1", "seal", at(0, "20:20"), at(0, "21:05"))
    plan = kept(late)
    seal = next(c for c in plan.coats if (c.piece, c.coat) == ("h1", "seal"))
    moved = tuple(
        replace(c, start=at(0, "20:20"), end=at(0, "21:05"), poured=True) if c is seal else c
        for c in plan.coats
    )
    late = replace(late, plan=replace(plan, coats=moved))
    before, after = made(studio)["weigh-now/h1/flood"], made(late)["weigh-now/h1/flood"]
    assert before.saved_until is not None
    assert after.saved_until is not None
    shift = after.saved_until - before.saved_until
    assert abs(shift - 2 * HOUR) < MINUTE


def test_a_window_that_moved_is_told_of_once_for_each_threshold(studio: Studio) -> None:
    late = poured(studio, "h1", "seal", at(0, "20:20"), at(0, "21:05"))
    plan = kept(late)
    moved = tuple(
        replace(c, start=at(0, "20:20"), end=at(0, "21:05"), poured=True)
        if (c.piece, c.coat) == ("h1", "seal")
        else c
        for c in plan.coats
    )
    late = replace(late, plan=replace(plan, coats=moved))
    now = at(0, "21:30")
    (found,) = [one for one in made(late, now).values() if one.kind is ReminderKind.MOVED]
    # Two hours are four times the half hour that is told of, less what rounding takes.
    assert found.uid in {"window-moved/h1/flood/+4", "window-moved/h1/flood/+3"}
    assert found.moment == at(0, "20:20")
    patient = replace(late, reminding=Reminding(moved_minutes=180))
    assert not [o for o in made(patient, now).values() if o.kind is ReminderKind.MOVED]


def test_a_piece_is_brought_to_the_warm_box_once(studio: Studio) -> None:
    found = [o for o in made(studio).values() if o.kind is ReminderKind.WARM_BOX]
    assert [(o.piece, o.coat, o.place) for o in found] == [("m", "seal", "box")]
    assert found[0].due == at(1, "17:45")


def test_a_film_is_torched_and_covered_until_the_next_coat_lies_on_it(studio: Studio) -> None:
    stages = (Stage.LAST_TORCH, Stage.COVER)
    more = tuple(
        SheetPoint(stage=s, celsius=25, from_hours=h)
        for s, h in zip(stages, (0.4, 1), strict=True)
    )
    products = tuple(
        replace(p, sheet=(*p.sheet, *more)) if p.key == "fast" else p for p in studio.products
    )
    wet = replace(studio, products=products)
    rings = made(wet)
    torch, cover = rings["last-torch/h1/seal"], rings["cover/h1/seal"]
    assert torch.urgency is Urgency.LOST_LATER
    assert torch.moment == torch.saved_until
    assert at(0, "18:20") < torch.moment < cover.moment
    assert cover.saved_until is None
    over = poured(wet, "h1", "seal", at(0, "18:20"), at(0, "19:05"))
    over = poured(over, "h1", "flood", at(1, "08:10"), at(1, "09:20"))
    assert "cover/h1/seal" not in made(over)


@pytest.mark.parametrize("kind", [EntryKind.PACKED, EntryKind.SHIPPED, EntryKind.SPOILED])
def test_a_piece_that_is_packed_or_spoiled_asks_for_nothing_any_more(
    studio: Studio, kind: EntryKind
) -> None:
    assert any(one.piece == "h1" for one in made(studio).values())
    after = made(logged(studio, kind, "h1"))
    assert not any(one.piece == "h1" for one in after.values())
    assert any(one.piece == "h2" for one in after.values())


def test_steps_ring_before_they_begin_until_they_are_done(studio: Studio) -> None:
    sand = made(studio)["wash-and-sand/c/tide"]
    assert (sand.due, sand.moment) == (at(2, "17:55"), at(2, "18:00"))
    # Twenty minutes of sanding, and dust settles for two hours before the pour at 20:30.
    assert sand.saved_until == at(2, "18:10")
    done = logged(studio, EntryKind.SANDED, "c", coat="tide")
    assert "wash-and-sand/c/tide" not in made(done)


def test_tape_is_lost_when_it_closes_and_drips_can_be_ground(studio: Studio) -> None:
    steps = tuple(
        PlannedStep(
            kind=kind, piece="h1", coat="seal", start=at(0, "21:00"), end=at(0, "21:10"),
            person="ada", opens=at(0, "20:50"), closes=at(0, "21:40"),
        )
        for kind in (StepKind.TAPE, StepKind.TRIM)
    )  # fmt: skip
    plan = kept(studio)
    rings = made(replace(studio, plan=replace(plan, steps=steps)))
    tape, trim = rings["pull-tape/h1/seal"], rings["trim-drips/h1/seal"]
    assert (tape.urgency, trim.urgency) == (Urgency.LOST_LATER, Urgency.CAN_WAIT)
    assert tape.saved_until == trim.saved_until == at(0, "21:40")


def test_a_turn_can_wait_until_its_pour(studio: Studio) -> None:
    turn = PlannedStep(
        kind=StepKind.TURN, piece="h1", coat="clear", start=at(4, "10:00"),
        end=at(4, "10:05"), person="ada",
    )  # fmt: skip
    lost = replace(turn, coat="gone")
    plan = kept(studio)
    rings = made(replace(studio, plan=replace(plan, steps=(turn, lost))))
    assert rings["turn-over/h1/clear"].saved_until == at(4, "10:15")
    assert rings["turn-over/h1/gone"].saved_until is None


def test_packing_can_wait_until_the_order_is_due(studio: Studio) -> None:
    pack = made(studio)["ready-to-pack/k"]
    assert pack.moment == at(4, "13:00")
    order = next(o for o in studio.orders if o.key == "m")
    assert pack.saved_until == order.due(studio.time_zone)
    free = replace(studio, orders=())
    assert made(free)["ready-to-pack/k"].saved_until is None


def test_an_order_rings_two_hours_before_it_leaves_until_it_has_left(studio: Studio) -> None:
    outcome = next(o for o in kept(studio).outcomes if o.order == "31")
    ship = made(studio)["order-can-ship/31"]
    assert outcome.leaves is not None
    assert ship.moment - ship.due == 2 * HOUR
    assert ship.moment == ship.saved_until == outcome.leaves
    gone = logged(studio, EntryKind.SHIPPED, "", order="31")
    assert "order-can-ship/31" not in made(gone)
    lost = replace(studio, orders=tuple(o for o in studio.orders if o.key != "31"))
    assert "order-can-ship/31" not in made(lost)


def test_a_night_colder_than_a_sheet_allows_is_told_of_in_the_evening_before(
    studio: Studio,
) -> None:
    room = scenes.night_room()  # 16.4 °C at six in the morning
    products = tuple(replace(p, minimum_celsius=17.0) for p in studio.products)
    cold = replace(scenes.planned(replace(room, band_celsius=0.0)), products=products)
    rings = made(cold)
    first = rings["too-cold-tonight/room/2026-12-08"]
    assert first.due == at(0, "18:00")
    assert at(1, "03:00") < first.moment < at(1, "06:00")
    assert first.saved_until == first.moment
    assert first.place == "room"
    assert "too-cold-tonight/room/2026-12-09" in rings


def test_a_surface_too_near_the_dew_point_is_told_of(studio: Studio) -> None:
    damp = replace(studio, places=(steady_room(22.0, 90.0), *studio.places[1:]))
    found = [o for o in made(damp).values() if o.kind is ReminderKind.DAMP]
    assert found
    assert all(one.place == "room" for one in found)
    unknown = replace(studio, places=(steady_room(22.0, None), *studio.places[1:]))
    assert not [o for o in made(unknown).values() if o.kind is ReminderKind.DAMP]


@pytest.mark.parametrize(("day", "wall", "damp"), [(0, "19:30", True), (1, "07:30", False)])
def test_damp_air_is_told_of_only_for_the_hours_in_which_the_piece_is_there(
    studio: Studio, day: int, wall: str, damp: bool
) -> None:
    # Poured in dry air from 18:20 on: dew can spoil it until 06:20.
    box = replace(studio.places[1], pattern=steady_room(25.0, 90.0).pattern)
    studio = replace(studio, places=(studio.places[0], box))
    studio = poured(studio, "h1", "seal", at(0, "18:20"), at(0, "19:05"))
    told = logged(studio, EntryKind.MOVED, "h1", spot="W1").log[0]
    moved = replace(told, at=at(day, wall), written=at(day, wall))
    names = made(replace(studio, log=(moved,)), at(1, "08:00"))
    assert (uid_of(ReminderKind.DAMP, "box", "2026-12-08") in names) is damp


def test_readings_are_missed_only_where_somebody_reads(studio: Studio) -> None:
    assert not [o for o in made(studio).values() if o.kind is ReminderKind.READINGS]
    last = at(0, "08:00")
    room = replace(studio.places[0], readings=(Reading(when=last, celsius=25.0),))
    read = replace(studio, places=(room, *studio.places[1:]))
    (missing,) = [o for o in made(read).values() if o.kind is ReminderKind.READINGS]
    assert (missing.due, missing.place) == (last + 12 * HOUR, "room")
    later = at(30, "08:00")
    assert not [o for o in made(read, later).values() if o.kind is ReminderKind.READINGS]


def test_a_scuffed_joint_has_no_window_to_tell_of(studio: Studio) -> None:
    coat = next(c for c in kept(studio).coats if (c.piece, c.coat) == ("c", "tide"))
    assert coat.joint is Joint.SCUFFED
    assert not any(name.endswith("close/c/tide") for name in made(studio))


def test_reminders_keep_their_names_when_the_plan_is_made_again(studio: Studio) -> None:
    plan = kept(studio)
    later = tuple(
        replace(c, start=c.start + HOUR, end=c.end + HOUR, mix=c.mix + 40, number=c.number + 7)
        for c in plan.coats
    )
    again = replace(studio, plan=replace(plan, coats=later))
    weighing = {name for name in made(studio) if name.startswith("weigh")}
    assert weighing == {name for name in made(again) if name.startswith("weigh")}
