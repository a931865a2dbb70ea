"""Rules of RFC 5545 that parsers let pass, read off the bytes: sections 3.1, 3.6 and 3.8."""

from __future__ import annotations

import re
from collections import Counter
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterator

_OCTETS = 75
_INSTANT = re.compile(r"\d{8}T\d{6}Z")
_DURATION = re.compile(r"-?P(?:\d+W|(?:\d+D)?(?:T(?:\d+H)?(?:\d+M)?(?:\d+S)?)?)")
_NEEDED = {
    "VCALENDAR": {"VERSION", "PRODID"},
    "VEVENT": {"UID", "DTSTAMP", "DTSTART"},
    "VALARM": {"ACTION", "TRIGGER", "DESCRIPTION"},
}
_ONCE = {"UID", "DTSTAMP", "DTSTART", "DTEND", "SEQUENCE", "STATUS", "SUMMARY", "LAST-MODIFIED"}


def broken_rules(content: bytes) -> list[str]:
    """Every rule that a calendar file breaks, in words."""
    return [*_lines_broken(content), *_components_broken(content)]


def component_lines(content: bytes, kind: str) -> Iterator[dict[str, str]]:
    """The properties of every component of a kind, without those of components inside."""
    for name, properties in _components(content):
        if name == kind:
            yield dict(properties)


def _lines_broken(content: bytes) -> Iterator[str]:
    if b"\n" in content.replace(b"\r\n", b"") or not content.endswith(b"\r\n"):
        yield "a line does not end with CRLF"
    lines = content.split(b"\r\n")
    if any(len(line) > _OCTETS for line in lines):
        yield "a line is longer than 75 octets"
    try:
        content.decode("utf-8")
        [line.decode("utf-8") for line in lines]
    except UnicodeDecodeError:
        yield "a line is cut in the middle of a letter"


def _components_broken(content: bytes) -> Iterator[str]:
    uids = Counter(one.get("UID") for one in component_lines(content, "VEVENT"))
    yield from (
        f"the UID {uid} comes {count} times" for uid, count in uids.items() if count > 1
    )
    for kind, pairs in _components(content):
        names = Counter(name for name, _ in pairs)
        missing = _NEEDED.get(kind, set()) - names.keys()
        yield from (f"{kind} has no {name}" for name in sorted(missing))
        double = {name for name in _ONCE if names[name] > 1}
        yield from (f"{kind} has {name} more than once" for name in sorted(double))
        if kind == "VEVENT":
            yield from _event_broken(dict(pairs))
        if kind == "VALARM" and not _DURATION.fullmatch(dict(pairs).get("TRIGGER", "")):
            yield "an alarm's TRIGGER is no duration"


def _event_broken(event: dict[str, str]) -> Iterator[str]:
    for name in ("DTSTAMP", "DTSTART", "DTEND", "LAST-MODIFIED"):
        if name in event and not _INSTANT.fullmatch(event[name]):
            yield f"{name} is not in UTC"
    if event.get("DTEND", "~") <= event.get("DTSTART", ""):
        yield "an event ends before it starts"
    if event.get("STATUS") not in {"CONFIRMED", "CANCELLED"}:
        yield "an event has no STATUS"
    if not event.get("SEQUENCE", "").isdigit():
        yield "an event has no SEQUENCE"


def _components(content: bytes) -> Iterator[tuple[str, list[tuple[str, str]]]]:
    open_ones: list[tuple[str, list[tuple[str, str]]]] = []
    for line in content.decode().replace("\r\n ", "").split("\r\n"):
        name, _, value = line.partition(":")
        if name == "BEGIN":
            open_ones.append((value, []))
        elif name == "END" and open_ones:
            yield open_ones.pop()
        elif name and open_ones:
            open_ones[-1][1].append((name, value))
