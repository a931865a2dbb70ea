"""Recurrence rules: the days they give are dateutil's, and what gives none is refused."""

from __future__ import annotations

from datetime import date, datetime, time, timedelta

import pytest
from dateutil.rrule import rrulestr
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.craft.hands import WorkHours
from tests.craft.nouns import broken, refusal

PARTS = {
    "FREQ": ["DAILY", "WEEKLY", "MONTHLY", "YEARLY", "HOURLY", ""],
    "INTERVAL": ["1", "2", "3", "0", "-1", "x"],
    "COUNT": ["5", "0"],
    "UNTIL": ["20260801", "20260801T120000", "20260801T120000Z", "20269901", "soon"],
    "BYMONTH": ["2", "5,6,7", "13", "0"],
    "BYMONTHDAY": ["1", "-1", "30,31", "32", "0"],
    "BYYEARDAY": ["150", "-1", "366"],
    "BYWEEKNO": ["20,21", "53", "-1", "54"],
    "BYDAY": ["MO", "TU,TH", "SA,SU", "1MO", "-1FR", "5SU", "9MO", "53MO", "XX", ""],
    "BYSETPOS": ["1", "-1", "2", "0"],
    "WKST": ["MO", "SU", "XX"],
    "BYHOUR": ["9"],
    "BYMINUTE": ["30"],
    "BYEASTER": ["1"],
}
OFTEN = st.sampled_from(PARTS.pop("FREQ")).map(lambda often: f"FREQ={often}")
PART = st.sampled_from(sorted(PARTS)).flatmap(
    lambda name: st.sampled_from(PARTS[name]).map(lambda value: f"{name}={value}")
)
RULES = st.tuples(
    OFTEN, st.lists(PART, max_size=3, unique_by=lambda part: part.partition("=")[0])
).map(lambda rule: ";".join([rule[0], *rule[1]]))
FIRST = date(2026, 5, 1)


def hours(rule: str, first: date | None = FIRST) -> WorkHours:
    return WorkHours(rule=rule, start=time(9), end=time(17), first=first)


@given(RULES, st.integers(0, 120), st.integers(0, 60))
def test_any_rule_is_refused_or_gives_the_days_that_dateutil_gives(
    rule: str, ahead: int, length: int
) -> None:
    if rules := refusal(hours, rule=rule):
        assert [broken.field for broken in rules] == ["rule"]
        return
    start = FIRST + timedelta(days=ahead)
    end = start + timedelta(days=length)
    reference = rrulestr(f"RRULE:{rule}", dtstart=datetime.combine(FIRST, time()))
    noon = time(12)
    expected = reference.between(
        datetime.combine(start, noon) - timedelta(days=1), datetime.combine(end, noon)
    )
    assert list(hours(rule).days(start, end)) == [when.date() for when in expected]


@pytest.mark.parametrize(
    "rule",
    [
        "FREQ=DAILY",
        "FREQ=WEEKLY;BYDAY=MO,TH",
        "FREQ=MONTHLY;BYDAY=1MO,-1FR",
        "FREQ=MONTHLY;BYMONTHDAY=-1",
        "FREQ=MONTHLY;BYDAY=MO,TU,WE,TH,FR;BYSETPOS=-1",
        "FREQ=WEEKLY;BYDAY=MO,WE,FR;BYSETPOS=2",
        "FREQ=WEEKLY;INTERVAL=2;BYDAY=SA",
        "FREQ=YEARLY;BYWEEKNO=46,47;BYDAY=MO",
        "freq=weekly;byday=tu",
    ],
)
@given(st.integers(0, 2000), st.integers(0, 40), st.integers(0, 40))
def test_a_day_does_not_depend_on_the_span_that_is_asked_for(
    rule: str, ahead: int, before: int, after: int
) -> None:
    day = FIRST + timedelta(days=ahead)
    wide = hours(rule, None).days(day - timedelta(days=before), day + timedelta(days=after))
    assert list(hours(rule, None).days(day, day)) == [found for found in wide if found == day]


def test_tuesday_and_thursday_come_twice_in_a_week() -> None:
    # 1 May 2026 is a Friday.
    found = list(hours("FREQ=WEEKLY;BYDAY=TU,TH", None).days(FIRST, date(2026, 5, 8)))
    assert found == [date(2026, 5, 5), date(2026, 5, 7)]


def test_every_second_saturday_counts_from_its_first() -> None:
    rule = hours("FREQ=WEEKLY;INTERVAL=2;BYDAY=SA", date(2026, 5, 9))
    assert list(rule.days(FIRST, date(2026, 6, 7))) == [
        date(2026, 5, 9),
        date(2026, 5, 23),
        date(2026, 6, 6),
    ]


def test_a_rule_that_counts_needs_the_date_it_begins_on() -> None:
    assert broken(hours, rule="FREQ=DAILY;COUNT=3", first=None).keys() == {"first"}
    found = hours("FREQ=DAILY;COUNT=3").days(FIRST, date(2026, 6, 1))
    assert list(found) == [FIRST + timedelta(days=n) for n in range(3)]


@pytest.mark.parametrize("often", ["WEEKLY", "MONTHLY", "YEARLY", "YEARLY;BYMONTH=5"])
def test_a_rule_that_names_no_day_takes_it_from_its_first_date_or_is_refused(
    often: str,
) -> None:
    rule = f"FREQ={often}"
    assert broken(hours, rule=rule, first=None).keys() == {"first"}
    assert next(iter(hours(rule).days(FIRST, date(2026, 5, 30)))) == FIRST


@pytest.mark.parametrize(
    "rule",
    [
        "",
        "Tuesdays",
        "BYDAY=MO",
        "FREQ=HOURLY",
        "FREQ=MINUTELY",
        "FREQ=DAILY;BYHOUR=9",
        "FREQ=DAILY;BYMINUTE=30",
        "FREQ=DAILY;FREQ=WEEKLY",
        "FREQ=DAILY;INTERVAL=0",
        "FREQ=DAILY;COUNT=0",
        "FREQ=DAILY;COUNT=2;UNTIL=20260801",
        "FREQ=DAILY;UNTIL=20260101T000000Z",
        "FREQ=DAILY;UNTIL=20260230",
        "FREQ=WEEKLY;BYDAY=1MO",
        "FREQ=MONTHLY;BYDAY=6MO",
        "FREQ=YEARLY;BYMONTH=2;BYDAY=6MO",
        "FREQ=WEEKLY;BYDAY=XX",
        "FREQ=WEEKLY;WKST=XX",
        "FREQ=DAILY;BYMONTH=2;BYMONTHDAY=30",
        "FREQ=DAILY DTSTART:20200101T093000Z",
        "FREQ=DAILY\nRRULE:FREQ=WEEKLY",
        "FREQ=DAILY EXDATE:20260101",
    ],
)
def test_what_is_no_rule_for_days_is_refused_with_an_example(rule: str) -> None:
    told = broken(hours, rule=rule)
    assert told.keys() == {"rule"}
    assert "FREQ=WEEKLY;BYDAY=MO,TH" in told["rule"]


@pytest.mark.parametrize(
    "rule", ["FREQ=DAILY;UNTIL=20260430", "FREQ=DAILY;INTERVAL=7;BYDAY=MO"]
)
def test_a_rule_that_never_gives_a_day_from_its_first_on_is_refused(rule: str) -> None:
    told = broken(hours, rule=rule)
    assert "never gives a day" in told["rule"]


def test_every_seventh_day_that_is_a_monday_begins_on_a_monday() -> None:
    rule = hours("FREQ=DAILY;INTERVAL=7;BYDAY=MO", date(2026, 5, 4))
    assert list(rule.days(FIRST, date(2026, 5, 15))) == [date(2026, 5, 4), date(2026, 5, 11)]


@pytest.mark.parametrize(
    "rule",
    [
        "FREQ=DAILY;BYMONTH=12",
        "FREQ=MONTHLY;BYMONTHDAY=31,-31",
        "FREQ=YEARLY;BYYEARDAY=366,-366",
        "FREQ=YEARLY;BYWEEKNO=53;BYDAY=MO",
        "FREQ=MONTHLY;BYDAY=5FR,-5FR",
        "FREQ=YEARLY;BYDAY=53SU,-53SU",
        "FREQ=DAILY;INTERVAL=1000",
        "FREQ=MONTHLY;BYDAY=MO;BYSETPOS=1;WKST=SU",
    ],
)
def test_the_last_number_of_each_part_is_allowed(rule: str) -> None:
    # RFC 5545, section 3.3.10.
    assert hours(rule).rule == rule


def test_leap_days_are_found() -> None:
    rule = hours("FREQ=YEARLY;BYMONTH=2;BYMONTHDAY=29", None)
    assert list(rule.days(date(2027, 1, 1), date(2032, 12, 31))) == [
        date(2028, 2, 29),
        date(2032, 2, 29),
    ]
