"""Calendar files, read by two parsers that did not write them, and held against RFC 5545."""

from __future__ import annotations

import warnings
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import TYPE_CHECKING

import pytest
import vobject
from ical.calendar_stream import IcsCalendarStream

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.reminders import ReminderKind, Reminding
from studio_planner.services.calendar.events import events_of
from studio_planner.services.calendar.files import (
    Calendar,
    Only,
    calendar_of,
    studio_row,
    trial_calendar,
)
from studio_planner.services.calendar.phones import phone_families
from tests.desktop import scenes
from tests.desktop.scenes import at
from tests.services.calendar.rules import broken_rules, component_lines
from tests.services.questions.steady import PlainVoice, steady_studio

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.told_events import ToldEvent

NOW = scenes.NOW
HOUR = timedelta(hours=1)
TIDE = "pour/h1/tide@0011.studio-planner"


@pytest.fixture(scope="module")
def studio() -> Studio:
    return steady_studio()


def kept(studio: Studio) -> Plan:
    assert studio.plan is not None
    return studio.plan


class Phone:
    """A calendar that imports one file after the other."""

    def __init__(self) -> None:
        self.known: tuple[ToldEvent, ...] = ()

    def export(self, studio: Studio, now: datetime = NOW, only: Only | None = None) -> Calendar:
        known = (*self.known, studio_row("0011", NOW))
        made = calendar_of(studio, known, now, events_of(studio, now, PlainVoice()), only)
        self.known = made.told
        return made


def moved(studio: Studio, by: timedelta) -> Studio:
    plan = kept(studio)
    coats = tuple(
        replace(c, start=c.start + by, end=c.end + by)
        if (c.piece, c.coat) == ("h1", "tide")
        else c
        for c in plan.coats
    )
    return replace(studio, plan=replace(plan, coats=coats))


def events(content: bytes) -> dict[str, dict[str, str]]:
    """The properties of every event by its UID, values as they are written."""
    return {properties["UID"]: properties for properties in component_lines(content, "VEVENT")}


def test_every_rule_of_the_standard_is_kept(studio: Studio) -> None:
    content = Phone().export(studio).content
    assert broken_rules(content) == []
    assert len(events(content)) == len(events_of(studio, NOW, PlainVoice()))


def test_one_parser_reads_every_event_and_alarm(studio: Studio) -> None:
    made = Phone().export(studio)
    calendar = IcsCalendarStream.calendar_from_ics(made.content.decode())
    assert len(calendar.events) == made.events
    pour = next(event for event in calendar.events if event.uid == TIDE)
    assert pour.dtstart == at(1, "20:10").astimezone(UTC)
    assert pour.dtend == at(1, "21:40").astimezone(UTC)
    assert pour.summary == "Pour: Harbour board 1, colour pour"
    assert pour.sequence == 0
    (alarm,) = pour.alarm
    assert alarm.trigger == timedelta(minutes=-10)
    assert pour.description is not None
    assert "It has to begin by Wed 22:07." in pour.description


def test_another_parser_reads_the_same(studio: Studio) -> None:
    made = Phone().export(studio)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")  # the parser's own, of the standard library
        calendar = vobject.readOne(made.content.decode())
        calendar.validate(raiseException=True)
    found = {event.uid.value: event for event in calendar.vevent_list}
    assert len(found) == made.events
    pour = found[TIDE]
    assert pour.dtstart.value == at(1, "20:10")
    assert pour.summary.value == "Pour: Harbour board 1, colour pour"
    assert pour.valarm.trigger.value == timedelta(minutes=-10)


def test_the_file_is_the_same_while_nothing_changes(studio: Studio) -> None:
    phone = Phone()
    first = phone.export(studio).content
    assert phone.export(studio, NOW + HOUR).content == first


def test_a_change_raises_the_number_of_its_event_alone(studio: Studio) -> None:
    phone = Phone()
    before = events(phone.export(studio).content)
    later = NOW + HOUR
    after = events(phone.export(moved(studio, HOUR), later).content)
    changed = {uid for uid in before if before[uid] != after[uid]}
    assert changed == {TIDE}
    assert (before[TIDE]["SEQUENCE"], after[TIDE]["SEQUENCE"]) == ("0", "1")
    assert after[TIDE]["DTSTART"] == "20261209T201000Z"
    assert after[TIDE]["LAST-MODIFIED"] == f"{later.astimezone(UTC):%Y%m%dT%H%M%SZ}"


def test_what_is_planned_no_more_is_told_as_cancelled(studio: Studio) -> None:
    phone = Phone()
    phone.export(studio)
    plan = kept(studio)
    coats = tuple(c for c in plan.coats if (c.piece, c.coat) != ("h1", "tide"))
    gone = replace(studio, plan=replace(plan, coats=coats))
    made = phone.export(gone)
    event = events(made.content)[TIDE]
    assert (event["STATUS"], event["SEQUENCE"], made.cancelled) == ("CANCELLED", "1", 1)
    assert event["SUMMARY"] == "Pour: Harbour board 1\\, colour pour"
    assert broken_rules(made.content) == []
    again = phone.export(gone)
    assert again.content == made.content
    back = events(phone.export(studio).content)[TIDE]
    assert (back["STATUS"], back["SEQUENCE"]) == ("CONFIRMED", "2")


def test_what_was_poured_before_its_time_is_cancelled(studio: Studio) -> None:
    phone = Phone()
    phone.export(studio)
    pour = Poured(piece="c", coat="seal", start=at(0, "19:00"), end=at(0, "19:30"), spot="A1")
    done = replace(studio, poured=(*studio.poured, pour))
    event = events(phone.export(done).content)["pour/c/seal@0011.studio-planner"]
    assert event["STATUS"] == "CANCELLED"


def test_what_is_over_is_not_cancelled_afterwards(studio: Studio) -> None:
    phone = Phone()
    phone.export(studio)
    pour = Poured(piece="c", coat="seal", start=at(0, "20:10"), end=at(0, "21:00"), spot="A1")
    done = replace(studio, poured=(*studio.poured, pour))
    made = phone.export(done, at(0, "21:05"))
    assert made.cancelled == 0
    assert "pour/c/seal@0011.studio-planner" not in events(made.content)


def test_one_order_or_one_week_is_a_part_of_the_whole(studio: Studio) -> None:
    phone = Phone()
    whole = events(phone.export(studio).content)
    order = next(one for one in studio.orders if one.key == "31")
    harbour = events(phone.export(studio, only=Only(order=order)).content)
    assert "leaves/31@0011.studio-planner" in harbour
    assert TIDE in harbour
    assert "leaves/33@0011.studio-planner" not in harbour
    assert all(whole[uid] == event for uid, event in harbour.items())
    week = events(phone.export(studio, only=Only(week_of=date(2026, 12, 13))).content)
    days = {event["DTSTART"][:8] for event in week.values()}
    assert min(days) >= "20261207"
    assert max(days) <= "20261213"
    following = events(phone.export(studio, only=Only(week_of=date(2026, 12, 14))).content)
    assert following
    assert not following.keys() & week.keys()


def test_a_week_begins_where_the_makers_week_does(studio: Studio) -> None:
    sunday = replace(studio, units=replace(studio.units, week_starts=6))
    week = Only(week_of=date(2026, 12, 13))
    days = {
        e["DTSTART"][:8] for e in events(Phone().export(sunday, only=week).content).values()
    }
    assert min(days) >= "20261213"


def test_one_mix_is_one_event_with_all_its_pieces(studio: Studio) -> None:
    plan = kept(studio)
    shared = tuple(replace(c, mix=11) if c.mix == 12 else c for c in plan.coats)
    both = replace(studio, plan=replace(plan, coats=shared))
    names = {event.name: event for event in events_of(both, NOW, PlainVoice())}
    pour = names["pour/h1/tide"]
    assert "pour/h2/tide" not in names
    assert "Harbour board 2" in pour.words
    assert pour.orders == ("31",)


def test_the_last_start_over_what_cannot_be_sanded_has_an_event_of_its_own(
    studio: Studio,
) -> None:
    names = {event.name: event for event in events_of(studio, NOW, PlainVoice())}
    closing = names["closing/m/lock"]
    assert closing.words == "Last start: Moon tray, lock coat"
    assert closing.rings_before == timedelta(minutes=90)
    assert "closing/h1/tide" not in names


def test_what_is_done_and_what_has_left_is_in_no_calendar(studio: Studio) -> None:
    names = {event.name for event in events_of(studio, NOW, PlainVoice())}
    assert {"wash-and-sand/c/tide", "pack/k", "leaves/33"} <= names
    entries = (
        LogEntry(number=1, kind=EntryKind.SANDED, at=NOW, written=NOW, piece="c", coat="tide"),
        LogEntry(number=2, kind=EntryKind.SHIPPED, at=NOW, written=NOW, order="33"),
    )
    done = {event.name for event in events_of(replace(studio, log=entries), NOW, PlainVoice())}
    assert names - done == {"wash-and-sand/c/tide", "leaves/33"}


def test_the_phone_rings_as_early_as_the_maker_wants(studio: Studio) -> None:
    early = replace(studio, reminding=Reminding(leads={ReminderKind.WEIGH: 45}))
    content = Phone().export(early).content
    assert b"TRIGGER:-PT45M" in content


def test_a_studio_without_a_plan_has_no_events(studio: Studio) -> None:
    assert events_of(replace(studio, plan=None), NOW, PlainVoice()) == ()


def test_the_test_event_rings_in_five_minutes() -> None:
    content = trial_calendar(NOW)
    assert broken_rules(content) == []
    (event,) = IcsCalendarStream.calendar_from_ics(content.decode()).events
    (alarm,) = event.alarm
    assert isinstance(event.dtstart, datetime)
    assert isinstance(alarm.trigger, timedelta)
    assert event.dtstart + alarm.trigger == NOW.astimezone(UTC) + timedelta(minutes=5)


@pytest.mark.parametrize(
    ("text", "rule"),
    [
        ("BEGIN:VCALENDAR\nEND:VCALENDAR\n", "CRLF"),
        ("BEGIN:VCALENDAR\r\nX:" + "a" * 80 + "\r\nEND:VCALENDAR\r\n", "75 octets"),
        ("BEGIN:VCALENDAR\r\nEND:VCALENDAR\r\n", "VERSION"),
        ("BEGIN:VCALENDAR\r\nBEGIN:VEVENT\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n", "DTSTAMP"),
    ],
)
def test_our_own_rules_notice_what_parsers_let_pass(text: str, rule: str) -> None:
    assert any(rule in broken for broken in broken_rules(text.encode()))


def test_every_family_of_phones_begins_with_the_test_event() -> None:
    families = phone_families()
    assert len(families) >= 3
    assert all(len(family.steps) > 3 for family in families)
    assert len({family.steps[0] for family in families}) == 1
