"""Everything that is wrong with an entry is said at once, each with the field it is in."""

from __future__ import annotations

from datetime import UTC, datetime, time, timedelta, timezone
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.errors import (
    BrokenRule,
    InvalidEntry,
    NoPlanPossible,
    Rulebook,
    StudioError,
    StudioFileError,
)
from tests.craft.nouns import utc

BERLIN = ZoneInfo("Europe/Berlin")


def sentences(rules: Rulebook) -> list[BrokenRule]:
    try:
        rules.close()
    except InvalidEntry as error:
        return list(error.broken)
    return []


@given(st.lists(st.tuples(st.booleans(), st.text(), st.text())))
def test_every_broken_rule_is_reported_in_order(notes: list[tuple[bool, str, str]]) -> None:
    rules = Rulebook("tray")
    for kept, field, sentence in notes:
        rules.require(kept, field, sentence)
    told = [(rule.field, rule.sentence) for rule in sentences(rules)]
    assert told == [(field, sentence) for kept, field, sentence in notes if not kept]


def test_the_message_names_the_entry_every_field_and_what_to_do() -> None:
    rules = Rulebook("piece Moon tray")
    rules.named("  ")
    rules.between(700.0, 0.1, 500, "body_mm")
    with pytest.raises(InvalidEntry) as refused:
        rules.close()
    assert refused.value.noun == "piece Moon tray"
    assert str(refused.value) == (
        "piece Moon tray: name: give it a name. thickness of the body: 700 is outside 0.1 "
        "to 500."
    )


@pytest.mark.parametrize("value", [float("nan"), float("inf"), float("-inf"), 0.99, 2.01])
def test_a_number_that_is_none_or_out_of_range_is_refused(value: float) -> None:
    rules = Rulebook("film")
    rules.between(value, 1, 2, "film_mm")
    (rule,) = sentences(rules)
    assert rule.field == "film_mm"
    assert "outside 1 to 2" in rule.sentence


@pytest.mark.parametrize("value", [1, 1.5, 2])
def test_both_ends_of_a_range_are_allowed(value: float) -> None:
    rules = Rulebook("film")
    rules.between(value, 1, 2, "film_mm")
    assert sentences(rules) == []


def test_a_wall_clock_time_has_no_zone() -> None:
    rules = Rulebook("hours")
    rules.wall_clock(time(9, 0), "start")
    rules.wall_clock(time(9, 0, tzinfo=UTC), "end")
    assert [rule.field for rule in sentences(rules)] == ["end"]


def test_each_time_without_a_zone_is_named() -> None:
    rules = Rulebook("absence")
    naive = utc(2026, 1, 1).replace(tzinfo=None)
    rules.forward(naive, naive)
    assert [rule.field for rule in sentences(rules)] == ["start", "end"]


def test_a_time_without_a_zone_is_not_called_too_late_as_well() -> None:
    rules = Rulebook("absence")
    rules.forward(utc(2026, 5, 2).replace(tzinfo=None), utc(2026, 5, 1))
    assert [rule.field for rule in sentences(rules)] == ["start"]


def test_the_doubled_hour_runs_forward_from_its_first_to_its_second_passing() -> None:
    first = datetime(2026, 10, 25, 2, 30, tzinfo=BERLIN)
    second = first.replace(fold=1)
    forward, backward = Rulebook("absence"), Rulebook("absence")
    forward.forward(first, second)
    backward.forward(second, first)
    assert sentences(forward) == []
    assert [rule.field for rule in sentences(backward)] == ["end"]


@given(
    st.datetimes(datetime(2000, 1, 1), datetime(2100, 1, 1)),  # noqa: DTZ001 - zoned below
    st.integers(-720, 720),
    st.integers(-3600, 3600),
)
def test_what_lasts_no_time_or_less_is_refused(
    wall: datetime, offset: int, seconds: int
) -> None:
    start = wall.replace(tzinfo=UTC)
    end = start + timedelta(seconds=seconds)
    rules = Rulebook("absence")
    rules.forward(start, end.astimezone(timezone(timedelta(minutes=offset))))
    assert bool(sentences(rules)) == (seconds <= 0)


def test_everything_a_maker_is_told_has_one_root() -> None:
    assert issubclass(InvalidEntry, StudioError)
    assert issubclass(NoPlanPossible, StudioError)
    assert issubclass(StudioFileError, StudioError)


def test_no_plan_keeps_every_reason() -> None:
    error = NoPlanPossible(["There is no spot.", "There are no hands."])
    assert error.reasons == ("There is no spot.", "There are no hands.")
    assert str(error) == "There is no spot. There are no hands."


def test_a_large_limit_is_written_out() -> None:
    rules = Rulebook("bottle")
    rules.between(-5, 0, 1_000_000, "new_g")
    with pytest.raises(InvalidEntry, match="-5 is outside 0 to 1000000"):
        rules.close()
