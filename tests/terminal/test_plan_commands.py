from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime, timedelta
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.length_words import lateness, length_of_time
from studio_planner.craft.orders import Promise
from studio_planner.craft.plans import Change
from studio_planner.craft.saying import Saying
from studio_planner.services.studio_files import create, read_planned, read_studio
from studio_planner.terminal.plan_commands import _broken_words
from studio_planner.terminal.writing import moment_words
from tests.services.small_studios import cut_down, put_plan, two_trays

if TYPE_CHECKING:
    from pathlib import Path

    from tests.terminal.conftest import Terminal

COAT_KEYS = {
    "number", "piece", "piece_name", "coat", "kind", "product", "start", "end", "spot", "joint",
    "opens", "closes", "trust", "mix", "person", "air", "poured", "held",
    "wrong_first", "ready",
}  # fmt: skip
ORDER_KEYS = {
    "order", "name", "promise", "promised", "gate", "due", "ships", "state", "late_hours",
    "spare_hours", "held", "day_held", "rehearsed_spare_hours", "reason", "changes",
}  # fmt: skip
WORTH_KEYS = {"goals", "grid_minutes", "solved_seconds", "rehearsals", "orders_not_planned"}


def test_plan_prints_the_plan_and_changes_nothing(terminal: Terminal, unplanned: Path) -> None:
    before = unplanned.read_bytes()
    answer = terminal("plan", unplanned)
    assert answer.code == 0
    assert answer.err == ""
    assert "Tide tray" in answer.out
    assert "All times are Europe/Vienna." in answer.out
    assert unplanned.read_bytes() == before


def test_a_plan_that_is_not_kept_says_which_plan_is_followed(
    terminal: Terminal, unplanned: Path
) -> None:
    def told(*words: str) -> str:
        return " ".join(terminal("plan", unplanned, *words).out.split())

    assert told().endswith("weigh, log and sheet know none yet. --keep keeps it.")
    assert "not kept" not in told("--keep")
    made = moment_words(read_studio(unplanned).time_zone, read_planned(unplanned)[1].made)
    terminal.now += timedelta(hours=1)
    assert f"still follow the kept plan of {made}. --keep keeps a new one instead." in told()
    assert "not kept" not in told("--reasons")  # those are numbers of the kept plan


def test_plan_keeps_the_plan_only_when_told(terminal: Terminal, unplanned: Path) -> None:
    assert terminal("plan", unplanned, "--keep").code == 0
    assert read_planned(unplanned)[1].coats
    assert terminal("check", unplanned).code == 0


def test_the_json_of_a_plan_has_the_keys_that_are_written_down(
    terminal: Terminal, unplanned: Path
) -> None:
    plan = terminal("plan", unplanned, "--json").json
    assert set(plan) == {
        "studio", "zone", "made", "start", "coats", "steps", "orders", "unplanned", "reasons",
        "warnings", "kept", *WORTH_KEYS,
    }  # fmt: skip
    assert all(set(coat) == COAT_KEYS for coat in plan["coats"])
    assert all(set(order) == ORDER_KEYS for order in plan["orders"])
    for coat in plan["coats"]:
        assert set(coat["ready"]) == {"handle", "print_free", "full_cure"}
        assert datetime.fromisoformat(coat["start"]).utcoffset() is not None
    assert [coat["number"] for coat in plan["coats"]] == list(range(1, len(plan["coats"]) + 1))


def test_a_plan_from_a_time_starts_nothing_before_it(
    terminal: Terminal, unplanned: Path
) -> None:
    words = ("plan", unplanned, "--from", "2026-02-09T12:00", "--json")
    plan = terminal(*words).json
    assert plan["start"] == "2026-02-09T12:00:00+01:00"
    ahead = [coat["start"] for coat in plan["coats"] if not coat["poured"]]
    assert ahead
    assert min(ahead) >= plan["start"]


def test_a_plan_for_some_days_says_what_does_not_fit_into_them(
    terminal: Terminal, unplanned: Path
) -> None:
    answer = terminal("plan", unplanned, "--days", "1", "--json")
    assert answer.code == 1
    plan = answer.json
    assert all(coat["start"] < "2026-02-03T07:00" for coat in plan["coats"])
    assert plan["reasons"] == [row["reason"] for row in plan["unplanned"]] != []
    assert plan["kept"] is False
    assert "Not planned - Tide tray: the " in terminal("plan", unplanned, "--days", "1").out


def test_a_plan_of_only_some_pieces_is_kept_and_says_so(
    terminal: Terminal, unplanned: Path
) -> None:
    answer = terminal("plan", unplanned, "--days", "1", "--keep", "--json")
    assert answer.code == 1
    assert answer.json["kept"] is True
    assert [str(row.reason) for row in read_planned(unplanned)[1].unplanned] == answer.json[
        "reasons"
    ]


@pytest.mark.parametrize("as_json", [False, True])
def test_a_studio_without_hands_cannot_be_planned_and_says_why(
    terminal: Terminal, tmp_path: Path, as_json: bool
) -> None:
    path = tmp_path / "nobody.studio"
    create(path, replace(two_trays(), people=()))
    answer = terminal("plan", path, *(["--json"] if as_json else []))
    assert answer.code == 1
    assert answer.err == ""
    reasons = answer.json["reasons"] if as_json else answer.out.splitlines()
    assert reasons == ["There are no hands yet: say who can work when."]


def test_no_line_of_any_table_is_wider_than_100_columns(
    terminal: Terminal, sample: Path
) -> None:
    terminal.now = terminal.now.replace(day=3)
    for words in (
        ("check", sample),
        ("promise", sample),
        ("next", sample),
        ("weigh", sample, "7", "8", "9"),
        ("stages", sample, "tarn", "--at", "18C"),
        (sample,),
    ):
        answer = terminal(*words)
        assert answer.code == 0, answer.err
        assert max(len(line) for line in answer.out.splitlines()) <= 100


@pytest.mark.parametrize("command", [["check"], ["next"], ["promise"], ["weigh", "1"]])
@pytest.mark.parametrize("as_json", [False, True])
def test_what_needs_a_kept_plan_says_so_without_one(
    terminal: Terminal, unplanned: Path, command: list[str], as_json: bool
) -> None:
    answer = terminal(command[0], unplanned, *command[1:], *(["--json"] if as_json else []))
    assert answer.code == 1
    assert answer.err == ""
    said = answer.json["reasons"][0] if as_json else " ".join(answer.out.split())
    assert "keeps no plan yet; make one with: studio-planner plan" in said


def test_the_kept_plan_of_the_sample_keeps_every_rule(terminal: Terminal, sample: Path) -> None:
    answer = terminal("check", sample)
    assert answer.code == 0
    assert answer.out.splitlines()[0] == "The kept plan of 53 coats keeps every rule."
    found = terminal("check", sample, "--json").json
    assert found["broken"] == []
    assert {warning["rule"] for warning in found["warnings"]} <= {"test first"}


def test_a_kept_plan_that_breaks_a_rule_ends_with_1(terminal: Terminal, sample: Path) -> None:
    plan = read_planned(sample)[1]
    coats = list(plan.coats)
    coats[-1] = replace(
        coats[-1], spot=coats[-2].spot, start=coats[-2].start, end=coats[-2].end
    )
    put_plan(sample, replace(plan, coats=tuple(coats)))
    answer = terminal("check", sample, "--json")
    assert answer.code == 1
    assert all(
        set(row) == {"rule", "piece", "coat", "when", "words"} for row in answer.json["broken"]
    )
    told = terminal("check", sample)
    assert told.code == 1
    assert re.search(r"breaks (?:a rule once|rules \d+ times)", told.out)
    assert "Broken, " in told.out


def test_promise_ends_with_0_even_when_an_order_is_late(
    terminal: Terminal, sample: Path
) -> None:
    answer = terminal("promise", sample)
    assert answer.code == 0
    assert "late by" in answer.out
    assert "Tried: " in answer.out
    rows = terminal("promise", sample, "--json").json["orders"]
    assert len(rows) == 4
    (late,) = [row for row in rows if row["state"] == "late"]
    assert late["reason"]
    assert any(change["keeps_promise"] for change in late["changes"])
    assert late["ships"] > late["due"]


def test_a_promised_day_stands_beside_the_last_pick_up(
    terminal: Terminal, sample: Path
) -> None:
    # Arrive by a Wednesday with two courier days: it goes on the Monday before.
    (order,) = [one for one in read_studio(sample).orders if one.promise is Promise.ARRIVE_BY]
    assert (order.promised.weekday(), order.courier.transit_days) == (2, 2)
    (line,) = [
        one
        for one in terminal("promise", sample, order.key).out.splitlines()
        if one.startswith(order.name)
    ]
    (row,) = terminal("promise", sample, order.key, "--json").json["orders"]
    assert row["promised"] == order.promised.isoformat()
    assert f"arrive by Wed {order.promised.day} " in line
    assert f"Mon {order.promised.day - 2} " in line


def test_what_is_late_and_what_is_spare_are_said_in_one_way(
    terminal: Terminal, sample: Path
) -> None:
    outcomes = {
        row["order"]: row for row in terminal("promise", sample, "--json").json["orders"]
    }
    said = " ".join(terminal("promise", sample).out.split())
    for row in outcomes.values():
        late, spare = row["late_hours"], row["spare_hours"]
        words = f"late by {lateness(late)}" if late else f"{length_of_time(spare)} to spare"
        assert words in said


def test_spare_is_never_rounded_up_and_doubt_stands_beside_it(
    terminal: Terminal, sample: Path
) -> None:
    plan = read_planned(sample)[1]
    first = next(one for one in plan.outcomes if not one.late_hours)
    leaves = first.due - timedelta(hours=71, minutes=35)

    def stands(held: float | None) -> str:
        one = replace(first, leaves=leaves, held=held)
        others = [one if other is first else other for other in plan.outcomes]
        put_plan(sample, replace(plan, outcomes=tuple(others), rehearsals=1000))
        return " ".join(terminal("promise", sample, first.order).out.split())

    for held in (0.0, 0.49, 0.5, None):
        said = stands(held)
        doubtful = held is not None and held < 0.5
        assert ("in doubt, 2 d 23 h" if doubtful else "2 d 23 h to spare") in said
        assert ("In doubt: it comes true in less than half" in said) == doubtful


def test_a_late_order_says_how_sure_its_new_day_is(terminal: Terminal, sample: Path) -> None:
    plan = read_planned(sample)[1]
    late = next(one for one in plan.outcomes if one.late_hours)
    assert late.late_hours is not None

    def said(day_held: float) -> str:
        one = replace(late, held=0.0, day_held=day_held, rehearsed_spare_hours=-80.0)
        others = [one if other is late else other for other in plan.outcomes]
        put_plan(sample, replace(plan, outcomes=tuple(others), rehearsals=1000))
        return " ".join(terminal("promise", sample, late.order).out.split())

    assert "leaves that day or sooner in 31 % of 1,000 rehearsed weeks." in said(0.31)
    assert "in doubt, late by" in said(0.31)
    assert "in doubt" not in said(0.97)
    assert f"late by {lateness(late.late_hours)}" in said(0.97)


def test_a_change_that_plans_nothing_is_said_in_a_sentence(
    terminal: Terminal, sample: Path
) -> None:
    plan = read_planned(sample)[1]
    late = next(one for one in plan.outcomes if one.reason)
    hopeless = Change(words=Saying("a second pair of hands"), leaves=None, keeps_promise=False)
    outcomes = [
        replace(one, changes=(hopeless,)) if one is late else one for one in plan.outcomes
    ]
    put_plan(sample, replace(plan, outcomes=tuple(outcomes)))
    said = " ".join(terminal("promise", sample, late.order).out.split())
    assert "Tried: a second pair of hands - even then it cannot be planned." in said


def test_a_piece_for_display_is_packed_for_display_and_the_table_says_what_it_waits_for(
    terminal: Terminal, unplanned: Path
) -> None:
    # The market shows its pieces: they go as soon as they can be handled.
    said = terminal("plan", unplanned).out
    assert "pack for display" in said
    ready = said.partition("Ready, on the safe side")[2].partition("Order  ")[0]
    assert "Order waits for" in ready
    (tray,) = [line for line in ready.splitlines() if line.startswith("Dusk tray")]
    assert tray.endswith("handle (display)")


def test_the_words_of_joints_are_explained_where_they_are_used(
    terminal: Terminal, sample: Path, unplanned: Path
) -> None:
    whole = " ".join(terminal(sample).out.split())
    assert "wet in wet - while the coat below can still be worked" in whole
    assert "Closes: never - the sheet gives the window no end" in whole
    small = terminal("plan", unplanned).out
    assert "in window - while the coat below still bonds by itself" in small
    assert "wet in wet" not in small


def test_mixes_are_shown_only_where_coats_share_one(
    terminal: Terminal, unplanned: Path
) -> None:
    assert "  Mix  " not in terminal("plan", unplanned, "--keep").out
    plan = read_planned(unplanned)[1]
    coats = tuple(replace(c, mix=2 if c.number == 3 else c.mix) for c in plan.coats)
    put_plan(unplanned, replace(plan, coats=coats))
    shared = terminal(unplanned).out.splitlines()
    (heads,) = [line for line in shared if line.startswith("No  ")]
    column = heads.index("Mix")
    cells = {line.split()[0]: line[column : column + 3].strip() for line in shared if line}
    assert (cells["1"], cells["2"], cells["3"], cells["4"]) == ("", "2", "2", "")


def test_why_a_piece_is_not_planned_is_said_once(terminal: Terminal, unplanned: Path) -> None:
    said = " ".join(terminal("plan", unplanned, "--days", "1").out.split())
    for row in terminal("plan", unplanned, "--days", "1", "--json").json["unplanned"]:
        assert said.count(row["reason"]) == 1


@pytest.mark.parametrize(("times", "words"), [(1, "once"), (2, "2 times")])
def test_broken_rules_are_counted_in_words(times: int, words: str) -> None:
    assert _broken_words(times).endswith(words)


def test_one_order_is_found_by_key_or_name(terminal: Terminal, sample: Path) -> None:
    by_key = terminal("promise", sample, "market", "--json").json
    assert by_key == terminal("promise", sample, "QUAY winter market", "--json").json
    assert [row["order"] for row in by_key["orders"]] == ["market"]


def test_an_order_that_is_not_there_is_answered_with_those_that_are(
    terminal: Terminal, sample: Path
) -> None:
    answer = terminal("promise", sample, "nobody")
    assert answer.code == 2
    assert "There is no order called “nobody”; the studio has: " in answer.one_sentence


def test_a_studio_without_orders_promises_nothing(terminal: Terminal, tmp_path: Path) -> None:
    path = tmp_path / "plain.studio"
    create(path, cut_down(two_trays(), "tide-tray", "dusk-tray"))
    terminal("plan", path, "--keep")
    assert terminal("promise", path).out == "The studio has no orders.\n"
    found = terminal("promise", path, "--json").json
    assert found.pop("orders") == []
    assert found.keys() == WORTH_KEYS
    assert read_studio(path).orders == ()
