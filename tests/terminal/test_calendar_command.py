from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

import pytest

from studio_planner.storage.studio_file import create_studio, open_studio
from tests.desktop.scenes import at
from tests.services.calendar.rules import broken_rules, component_lines
from tests.services.questions.steady import steady_studio

if TYPE_CHECKING:
    from pathlib import Path

    from tests.terminal.conftest import Terminal


@pytest.fixture
def steady(terminal: Terminal, tmp_path: Path) -> Path:
    path = tmp_path / "steady.studio"
    create_studio(path, steady_studio()).close()
    terminal.now = at(0, "19:36")
    return path


def uids(target: Path) -> set[str]:
    return {event["UID"] for event in component_lines(target.read_bytes(), "VEVENT")}


def test_the_whole_plan_is_written_and_written_the_same_again(
    terminal: Terminal, steady: Path, tmp_path: Path
) -> None:
    target = tmp_path / "plan.ics"
    first = terminal("calendar", steady, target)
    assert first.code == 0
    assert "Import it into a calendar of its own." in " ".join(first.out.split())
    content = target.read_bytes()
    assert broken_rules(content) == []
    terminal("calendar", steady, target)
    assert target.read_bytes() == content


def test_writing_a_calendar_says_nothing_of_the_studio(
    terminal: Terminal, steady: Path, tmp_path: Path
) -> None:
    with open_studio(steady) as file:
        before = file.revision()
        terminal("calendar", steady, tmp_path / "plan.ics")
        assert file.revision() == before


def test_names_stay_when_the_plan_is_kept_anew(
    terminal: Terminal, steady: Path, tmp_path: Path
) -> None:
    target = tmp_path / "plan.ics"
    terminal("calendar", steady, target)
    before = uids(target)
    with open_studio(steady) as file:
        plan = file.read().plan
        assert plan is not None
        coats = tuple(c for c in plan.coats if c.piece != "f")
        file.keep_plan(replace(plan, coats=coats))
    again = terminal("calendar", steady, target)
    assert "3 cancelled" in " ".join(again.out.split())  # the line may break anywhere
    assert uids(target) == before


def test_one_order_or_one_week_is_written(
    terminal: Terminal, steady: Path, tmp_path: Path
) -> None:
    whole, part = tmp_path / "plan.ics", tmp_path / "part.ics"
    terminal("calendar", steady, whole)
    terminal("calendar", steady, part, "--order", "Harbour pair")
    assert uids(part) < uids(whole)
    assert any(uid.startswith("leaves/31@") for uid in uids(part))
    terminal("calendar", steady, part, "--week", "2026-12-09")
    assert uids(part) < uids(whole)


def test_the_test_event_needs_no_plan(
    terminal: Terminal, unplanned: Path, tmp_path: Path
) -> None:
    target = tmp_path / "test.ics"
    answer = terminal("calendar", unplanned, target, "--test")
    assert (answer.code, len(uids(target))) == (0, 1)
    assert "rings in five minutes" in " ".join(answer.out.split())


def test_without_a_plan_there_is_nothing_to_write(
    terminal: Terminal, unplanned: Path, tmp_path: Path
) -> None:
    target = tmp_path / "plan.ics"
    answer = terminal("calendar", unplanned, target)
    assert answer.code == 1
    assert "keeps no plan yet" in " ".join(answer.out.split())
    assert not target.exists()


def test_what_cannot_be_used_is_said_in_a_sentence(
    terminal: Terminal, steady: Path, tmp_path: Path
) -> None:
    target = tmp_path / "plan.ics"
    order = terminal("calendar", steady, target, "--order", "nothing")
    assert order.code == 2
    assert "There is no order called “nothing”" in order.one_sentence
    week = terminal("calendar", steady, target, "--week", "soon")
    assert (week.code, week.one_sentence) == (
        2,
        "--week “soon” is not a date; write it as 2026-02-02.",
    )
    nowhere = terminal("calendar", steady, tmp_path / "no" / "plan.ics")
    assert nowhere.code == 2
    assert "there is no folder" in nowhere.one_sentence
    assert not target.exists()


def test_nothing_counts_as_told_that_was_not_written(
    terminal: Terminal, steady: Path, tmp_path: Path
) -> None:
    terminal("calendar", steady, tmp_path / "no" / "plan.ics")
    target = tmp_path / "plan.ics"
    terminal("calendar", steady, target)
    numbers = {e["SEQUENCE"] for e in component_lines(target.read_bytes(), "VEVENT")}
    assert numbers == {"0"}


def test_a_week_without_anything_says_when_there_is_something_and_writes_nothing(
    terminal: Terminal, steady: Path, tmp_path: Path
) -> None:
    target = tmp_path / "plan.ics"
    for there in (False, True):
        assert target.exists() is there
        before = target.read_bytes() if there else b""
        answer = terminal("calendar", steady, target, "--week", "2040-11-26")
        assert answer.code == 2
        assert answer.one_sentence.startswith(
            f"{target} is not written. Nothing is planned in that week; pours are planned from"
        )
        assert (target.read_bytes() if there else b"") == before
        terminal("calendar", steady, target)


def test_a_name_that_no_phone_knows_is_said(
    terminal: Terminal, steady: Path, tmp_path: Path
) -> None:
    said = " ".join(terminal("calendar", steady, tmp_path / "plan.txt").out.split())
    assert "A phone opens it only once its name ends with .ics." in said
    assert "ends with" not in terminal("calendar", steady, tmp_path / "plan.ICS").out


def test_a_plan_that_is_over_says_what_to_do(
    terminal: Terminal, steady: Path, tmp_path: Path
) -> None:
    with open_studio(steady) as file:
        studio = file.read()
        assert studio.plan is not None
        done = replace(studio.plan, coats=(), steps=(), outcomes=())
        file.write(replace(studio, plan=done), expected_revision=file.revision())
    answer = terminal("calendar", steady, tmp_path / "plan.ics")
    assert answer.code == 2
    assert answer.one_sentence.endswith(
        "is not written. Nothing of the plan lies ahead; plan FILE --keep plans again."
    )
    assert not (tmp_path / "plan.ics").exists()


def test_an_order_of_which_nothing_is_planned_is_not_written(
    terminal: Terminal, steady: Path, tmp_path: Path
) -> None:
    with open_studio(steady) as file:
        studio = file.read()
        assert studio.plan is not None
        order = next(one for one in studio.orders if one.name == "Harbour pair")
        coats = tuple(one for one in studio.plan.coats if one.piece not in order.pieces)
        outcomes = tuple(one for one in studio.plan.outcomes if one.order != order.key)
        steps = tuple(one for one in studio.plan.steps if one.piece not in order.pieces)
        file.keep_plan(replace(studio.plan, coats=coats, steps=steps, outcomes=outcomes))
    answer = terminal("calendar", steady, tmp_path / "one.ics", "--order", "Harbour pair")
    assert answer.code == 2
    assert answer.one_sentence.endswith(
        "Nothing is planned for that order; plan FILE says why."
    )
