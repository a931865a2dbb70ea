"""The most fragile pour: the cause is named, with why and with what can be done."""

from __future__ import annotations

from dataclasses import replace
from datetime import time
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.hands import Absence, WorkHours
from studio_planner.craft.plans import PlannedStep, StepKind, Trust, Window
from studio_planner.services.fragile import fragile_of, most_fragile
from studio_planner.terminal.ask_command import TerminalVoice
from tests.desktop import scenes

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

DAY = 4
WEEKS = "1,000 rehearsed weeks"


def at(clock: str, later: int = 0) -> datetime:
    return scenes.at(DAY + later, clock)


def placed(
    *, opens: str | None = "02:01", closes: datetime | None = None, away: bool = True
) -> tuple[Studio, Plan]:
    """One pour from 11:30 to 12:00; its maker works from 8 to 22 and is perhaps off at noon."""
    studio = scenes.planned()
    plan = studio.plan
    assert plan is not None
    window = Window(opens=at(opens or "02:01"), closes=closes, trust=Trust.SAFE)
    coat = replace(
        plan.coats[-1],
        start=at("11:30"),
        end=at("12:00"),
        window=window if opens else None,
        wrong_first=0.998,
        poured=False,
    )
    person = replace(
        studio.people[0],
        work=(WorkHours(rule="FREQ=DAILY", start=time(8), end=time(22)),),
        absences=(Absence(start=at("12:00"), end=at("20:00", 1)),) if away else (),
    )
    coat = replace(coat, person=person.key)
    plan = replace(plan, coats=(coat,), steps=(), rehearsals=1000)
    return replace(studio, people=(person,), plan=plan), plan


def told(studio: Studio, plan: Plan) -> list[str]:
    """The sentences after the first one, which says how often it is missed."""
    found = fragile_of(studio, plan)
    assert found is not None
    voice = TerminalVoice(studio)
    first, *others = [one.words(voice) for one in found.details]
    assert first == f"In over 99 % of {WEEKS} its piece goes wrong, and with this coat first."
    return others


def test_it_is_named_with_piece_coat_day_and_number() -> None:
    studio, plan = placed()
    (coat,) = plan.coats
    found = fragile_of(studio, plan)
    assert found is not None
    assert found.piece == coat.piece
    piece = studio.piece(coat.piece)
    words = found.words(TerminalVoice(studio))
    kind = piece.coat(coat.coat).kind
    assert words.startswith(
        f"Most fragile: {piece.name}, {kind}, Sat 12 Dec 11:30 (pour 17): In"
    )


def test_what_fails_first_is_named_and_not_what_follows() -> None:
    _, plan = placed()
    (cause,) = plan.coats
    follows = replace(cause, number=99, start=at("15:00"), held=0.0, wrong_first=0.001)
    poured = replace(cause, number=98, poured=True, wrong_first=None)
    assert most_fragile(replace(plan, coats=(poured, follows, cause))) == cause


def test_hands_that_leave_before_the_window_closes_are_a_reason() -> None:
    studio, plan = placed(closes=at("18:00"))
    who = studio.people[0].name
    assert told(studio, plan) == [
        "Its window closes Sat 12 Dec 18:00.",
        f"{who} is away from Sat 12 Dec 12:00 on.",
        "It opens Sat 12 Dec 02:01.",
        f"Begin sooner if you can: {who} is free from Sat 12 Dec 08:00.",
    ]


def test_sleep_before_the_window_closes_is_a_reason_too() -> None:
    studio, plan = placed(closes=at("18:00", 1), away=False)
    asleep = replace(studio, people=(replace(studio.people[0], sleeps=time(23)),))
    assert told(asleep, plan)[1].endswith("sleeps from Sat 12 Dec 23:00 on.")


def test_a_window_that_closes_before_hands_leave_is_the_only_reason() -> None:
    studio, plan = placed(opens="11:29", closes=at("12:10"), away=False)
    who = studio.people[0].name
    assert told(studio, plan) == [
        "Its window closes Sat 12 Dec 12:10.",
        "It opens Sat 12 Dec 11:29.",
        f"{who} has no other free time for it: more hours would help.",
    ]


@pytest.mark.parametrize("closes", [None, at("12:00", 2)])
def test_the_next_hands_in_the_window_are_named(closes: datetime | None) -> None:
    studio, plan = placed(opens="11:30", closes=closes)
    who = studio.people[0].name
    assert told(studio, plan)[-1] == f"After that {who} is free again from Sun 13 Dec 20:00."


def test_on_a_bare_piece_the_day_before_is_looked_at() -> None:
    studio, plan = placed(opens=None)
    who = studio.people[0].name
    assert told(studio, plan) == [
        f"{who} is away from Sat 12 Dec 12:00 on.",
        f"Begin sooner if you can: {who} is free from Fri 11 Dec 11:30.",
    ]


def test_hands_that_other_work_needs_are_not_free() -> None:
    studio, plan = placed()
    (coat,) = plan.coats
    other = replace(coat, number=98, mix=98, start=at("08:00"), end=at("09:10"))
    other = replace(other, wrong_first=None)
    steps = tuple(
        PlannedStep(
            kind=kind, piece=coat.piece, start=at(start), end=at(end), person=coat.person
        )
        for kind, start, end in (
            (StepKind.TURN, "09:10", "09:32"),
            (StepKind.TRIM, "09:32", "11:30"),
        )
    )
    sooner = told(studio, replace(plan, coats=(coat, other), steps=steps))[-1]
    assert sooner.endswith("is free from Sat 12 Dec 09:35.")


def test_a_mix_of_several_pieces_has_to_find_all_their_windows_open() -> None:
    studio, plan = placed(closes=at("18:00"))
    (coat,) = plan.coats
    assert coat.window is not None
    narrow = replace(coat.window, opens=at("10:01"), closes=at("17:00"))
    other = replace(coat, number=98, window=narrow, wrong_first=0.1)
    closes, _, opens, sooner = told(studio, replace(plan, coats=(coat, other)))
    assert closes == "Its window closes Sat 12 Dec 17:00."
    assert opens == "It opens Sat 12 Dec 10:01."
    assert sooner.endswith("is free from Sat 12 Dec 10:05.")


def test_a_maker_who_is_gone_gives_no_reason() -> None:
    studio, plan = placed()
    assert told(replace(studio, people=()), plan) == []


def test_a_plan_in_which_nothing_goes_wrong_says_so() -> None:
    studio, plan = placed()
    never = replace(plan, coats=(replace(plan.coats[0], wrong_first=0.0),))
    fragile = fragile_of(studio, never)
    assert fragile is not None
    assert fragile.piece == ""
    words = fragile.words(TerminalVoice(studio))
    assert words == f"Most fragile: None: no piece went wrong in any of {WEEKS}."


def test_a_plan_that_was_not_rehearsed_names_nothing() -> None:
    studio, plan = placed()
    assert fragile_of(studio, replace(plan, rehearsals=0)) is None
    unknown = replace(plan.coats[0], wrong_first=None)
    assert fragile_of(studio, replace(plan, coats=(unknown,))) is None
