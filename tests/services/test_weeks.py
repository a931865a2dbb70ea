"""A painted week says exactly the hours that it was read from, and the other way round."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.services.editing.rule_words import rule_words
from studio_planner.services.editing.weeks import (
    DAY_MINUTES,
    WEEKDAYS,
    Block,
    WeekRule,
    hours_of,
    joined,
    painted_week,
    week_rule,
    with_week,
)

BERLIN = ZoneInfo("Europe/Berlin")
START = datetime(2026, 12, 7, tzinfo=UTC)  # three weeks without a change of the clocks
END = START + timedelta(days=21)


@st.composite
def blocks(draw: st.DrawFn, longest: int = DAY_MINUTES) -> Block:
    start = draw(st.integers(0, DAY_MINUTES - 1))
    return Block(draw(st.integers(0, 6)), start, start + draw(st.integers(1, longest)))


@st.composite
def weekly_hours(draw: st.DrawFn) -> WorkHours:
    days = draw(st.sets(st.sampled_from(WEEKDAYS), min_size=1))
    minute = st.integers(0, DAY_MINUTES - 1)
    start, end = draw(st.tuples(minute, minute).filter(lambda both: both[0] != both[1]))
    first = draw(st.none() | st.dates(date(2026, 1, 1), date(2026, 12, 20)))
    every = draw(st.integers(1, 3)) if first is not None else 1
    return WorkHours(
        rule=f"FREQ=WEEKLY;INTERVAL={every};BYDAY={','.join(sorted(days))}",
        start=time(start // 60, start % 60),
        end=time(end // 60, end % 60),
        first=first,
    )


def spans(work: tuple[WorkHours, ...]) -> object:
    return Person(key="ada", name="Ada", work=work).working(BERLIN, START, END)


@given(week=st.lists(blocks(), max_size=12))
def test_hours_painted_and_read_back_are_the_same_spans(week: list[Block]) -> None:
    painted = with_week((), week)
    assert spans(with_week((), painted_week(painted))) == spans(painted)
    each_alone = tuple(hours for block in week for hours in with_week((), [block]))
    assert spans(painted) == spans(each_alone)


@given(work=st.lists(weekly_hours(), max_size=6).map(tuple))
def test_painting_the_week_that_is_read_changes_no_hour(work: tuple[WorkHours, ...]) -> None:
    assert spans(with_week(work, painted_week(work))) == spans(work)


@given(week=st.lists(blocks(), max_size=20))
def test_blocks_that_are_joined_are_joined_for_good(week: list[Block]) -> None:
    once = joined(week)
    assert joined(once) == once
    assert all(one.end < other.start for one, other in pairwise(once) if one.day == other.day)


@given(week=st.lists(blocks(longest=DAY_MINUTES - 1), max_size=3))
def test_blocks_that_do_not_meet_are_read_as_they_were_painted(week: list[Block]) -> None:
    wanted = joined(week)
    if all(block.end - block.start < DAY_MINUTES for block in wanted):
        assert painted_week(with_week((), week)) == wanted


@given(hours=weekly_hours())
def test_a_row_of_days_and_weeks_says_the_rule_it_was_read_from(hours: WorkHours) -> None:
    rule = week_rule(hours)
    assert rule is not None
    assert spans((hours_of(rule),)) == spans((hours,))


def test_hours_on_the_same_days_are_one_rule() -> None:
    week = [Block(day, 18 * 60, 22 * 60) for day in (3, 0, 1)]
    assert with_week((), week) == (
        WorkHours(rule="FREQ=WEEKLY;BYDAY=MO,TU,TH", start=time(18), end=time(22)),
    )


def test_a_whole_day_can_be_painted() -> None:
    work = with_week((), [Block(6, 0, DAY_MINUTES)])
    assert painted_week(work) == (Block(6, 0, DAY_MINUTES),)


@pytest.mark.parametrize(
    ("rule", "first", "words"),
    [
        ("FREQ=MONTHLY;BYDAY=1SA", None, "every month on the first Saturday"),
        (
            "FREQ=MONTHLY;BYDAY=2TU,-1TH",
            None,
            "every month on the second Tuesday and the last Thursday",
        ),
        ("FREQ=DAILY;INTERVAL=3", date(2026, 1, 5), "every 3 days, from 5 Jan 2026"),
        (
            "FREQ=WEEKLY;BYDAY=MO;COUNT=4",
            date(2026, 1, 5),
            "every week on Monday, 4 times in all, from 5 Jan 2026",
        ),
        (
            "FREQ=WEEKLY;BYDAY=MO,WE;UNTIL=20261224",
            None,
            "every week on Monday and Wednesday, until 24 Dec 2026",
        ),
        ("FREQ=MONTHLY;BYMONTHDAY=1,15;BYMONTH=3", None, "every month on day 1 and 15 in Mar"),
        (
            "FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO",
            None,
            "by the rule FREQ=YEARLY;BYWEEKNO=20;BYDAY=MO",
        ),
    ],
)
def test_a_rule_that_no_row_can_say_is_said_in_words_and_left_alone(
    rule: str, first: date | None, words: str
) -> None:
    hours = WorkHours(rule=rule, start=time(9), end=time(12), first=first)
    assert week_rule(hours) is None
    assert rule_words(rule, first) == words
    assert with_week((hours,), [Block(0, 60, 120)])[-1] == hours


def test_every_second_saturday_counts_from_its_date() -> None:
    rule = WeekRule(
        days=frozenset({5}), start=time(9), end=time(13), every=2, first=date(2026, 12, 5)
    )
    hours = hours_of(rule)
    assert hours.rule == "FREQ=WEEKLY;INTERVAL=2;BYDAY=SA"
    assert list(hours.days(date(2026, 12, 1), date(2027, 1, 3))) == [
        date(2026, 12, 5),
        date(2026, 12, 19),
        date(2027, 1, 2),
    ]
    assert painted_week((hours,)) == ()


def test_hours_on_no_day_are_refused_at_their_field() -> None:
    with pytest.raises(InvalidEntry) as refused:
        hours_of(WeekRule(days=frozenset(), start=time(9), end=time(13)))
    assert [rule.field for rule in refused.value.broken] == ["days"]


def test_an_absence_is_of_one_person() -> None:
    away = Absence(start=START, end=END)
    assert Person(key="a", name="A", work=(), absences=(away,)).awake(BERLIN, START, END) == ()
