"""What is different between two plans: pours, promises, joints, and pieces left out."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Trust, Unplanned
from studio_planner.craft.saying import Saying
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.services.moving.comparing import Difference, compare
from studio_planner.services.moving.difference_words import NOTHING, in_full, in_short
from tests.desktop import scenes

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio

HOUR = timedelta(hours=1)


def plain_voice() -> DeskVoice:
    """Facts as the desk writes them on the scene's clock."""
    return DeskVoice(scenes.planned())


def with_coat(studio: Studio, piece: str, coat: str, **more: object) -> Studio:
    plan = plan_of(studio)
    rows = [
        replace(row, **more) if (row.piece, row.coat) == (piece, coat) else row  # type: ignore[arg-type]
        for row in plan.coats
    ]
    return replace(studio, plan=replace(plan, coats=tuple(rows)))


def plan_of(studio: Studio) -> Plan:
    assert studio.plan is not None
    return studio.plan


def coat_of(studio: Studio, piece: str, coat: str) -> PlannedCoat:
    rows = plan_of(studio).coats
    return next(row for row in rows if (row.piece, row.coat) == (piece, coat))


def leaving(studio: Studio, order: str, leaves: datetime | None) -> Studio:
    plan = plan_of(studio)
    rows = [replace(o, leaves=leaves) if o.order == order else o for o in plan.outcomes]
    return replace(studio, plan=replace(plan, outcomes=tuple(rows)))


def told(before: Studio, after: Studio) -> list[str]:
    return [s.words(plain_voice()) for s in in_full(compare(before, after), after)]


def test_the_same_plan_has_no_difference() -> None:
    studio = scenes.planned()
    found = compare(studio, scenes.planned())
    assert found == Difference()
    assert found.nothing
    assert in_short(found) == NOTHING
    assert compare(studio, replace(studio, plan=None)).nothing


def test_a_pour_at_another_time_or_on_another_spot_has_moved() -> None:
    before = scenes.planned()
    was = coat_of(before, "f", "flood")
    after = with_coat(before, "f", "flood", start=was.start + 2 * HOUR, end=was.end + 2 * HOUR)
    after = with_coat(after, "c", "tide", spot="A2")
    found = compare(before, after)
    assert [(row.piece, row.coat, row.hours_later) for row in found.moved] == [
        ("f", "flood", 2.0),
        ("c", "tide", 0.0),
    ]
    assert found.moved[1].on_other_spot
    assert in_short(found) == "2 pours moved"
    assert told(before, after) == [
        "Fen clock, flood starts Wed 9 Dec 20:45, 2 h later.",
        "Slate coasters, colour pour stands on A2.",
    ]
    assert "2 h sooner" in told(after, before)[0]


def test_what_is_poured_has_not_moved() -> None:
    before = scenes.planned()
    was = coat_of(before, "k", "clear")
    assert was.poured
    assert compare(before, with_coat(before, "k", "clear", start=was.start - HOUR)).nothing


def test_a_promise_that_changes_is_named_with_its_direction() -> None:
    before = scenes.planned()
    outcome = next(row for row in plan_of(before).outcomes if row.order == "33")
    assert outcome.leaves is not None
    after = leaving(before, "33", outcome.due + 24 * HOUR)
    (row,) = compare(before, after).promises
    assert row.later
    assert row.broken
    assert not row.mended
    assert in_short(compare(before, after)) == "1 promise later"
    assert in_short(compare(after, before)) == "1 promise sooner"
    assert told(before, after)[0].endswith("later, and is late.")
    assert told(after, before)[0].endswith("sooner, and is in time.")


def test_an_order_that_is_planned_no_more_has_no_time() -> None:
    before = scenes.planned()
    after = leaving(before, "33", None)
    (row,) = compare(before, after).promises
    assert row.hours_later is None
    assert row.later
    assert row.broken
    assert told(before, after) == ["Slate coasters is no longer planned to its end."]
    assert not compare(after, before).promises[0].later
    assert told(after, before)[0].startswith("Slate coasters leaves ")


def test_joints_that_become_worse_are_told() -> None:
    before = scenes.planned()
    after = with_coat(before, "h1", "flood", joint=Joint.SCUFFED, window=None)
    window = coat_of(before, "h2", "flood").window
    assert window is not None
    after = with_coat(after, "h2", "flood", window=replace(window, trust=Trust.TEST_FIRST))
    found = compare(before, after)
    assert len(found.worsened) == 2
    assert not compare(after, before).worsened
    assert in_short(found) == "2 joints worse"
    assert in_short(compare(after, before)) == "2 joints better"
    assert told(before, after) == [
        "Harbour board 1, flood has to be scuffed first.",
        "Harbour board 2, flood needs a touch test first.",
    ]
    assert told(after, before)[0] == "Harbour board 1, flood stands in its window now."


def test_pieces_that_are_left_out_are_told_with_the_reason() -> None:
    before = scenes.planned()
    row = Unplanned(piece="f", coat="flood", reason=Saying("nobody can work then."))
    after = replace(before, plan=replace(plan_of(before), unplanned=(row,)))
    found = compare(before, after)
    assert found.lost == ("f",)
    assert compare(after, before).gained == ("f",)
    assert in_short(found) == "1 piece not planned"
    assert told(before, after) == ["Fen clock is not planned any more: nobody can work then."]
    assert told(after, before) == ["Fen clock is planned again."]
