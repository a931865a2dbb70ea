"""Times as data sheets print them, read into hours and said again: 4-6 h, 30 min, 3 d."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass

from studio_planner.craft.taught import LONGEST_HOURS
from studio_planner.craft.tongue import figure, quoted, translate

_NUMBER = r"\d+(?:[.,]\d+)?"
_UNITS = {
    "min": (r"min(?:ute[ns]?|s)?\.?|['′]", 1 / 60),  # noqa: RUF001 - a prime is how minutes are printed
    "h": (r"h(?:ou)?rs?\.?|h\.?|std\.?|stunden?", 1.0),
    "d": (r"days?|d\.?|tagen?|tage?|(?-i:T)", 24.0),
    "wk": (r"weeks?|wks?\.?|wochen?", 168.0),
}
_UNIT = "|".join(f"(?:{pattern})" for pattern, _ in _UNITS.values())
_TO = r"\s*(?:-|–|—|−|\bto\b|\bbis\b|\.\.\.?|…)\s*"  # noqa: RUF001 - dashes as sheets print them
_CLOCK = re.compile(r"(\d{1,3}):([0-5]\d)\s*(?:h(?:ou)?rs?\.?|h\.?)", re.IGNORECASE)
_SPAN = re.compile(
    rf"({_NUMBER})\s*({_UNIT})?(?:\s*({_NUMBER})\s*(?:min(?:ute)?s?\.?))?"
    rf"(?:{_TO}({_NUMBER})\s*({_UNIT})?(?:\s*({_NUMBER})\s*(?:min(?:ute)?s?\.?))?)?",
    re.IGNORECASE,
)
_ABOUT = re.compile(
    r"^(?:ca\.?|circa|approx(?:imately)?\.?|about|after|~|≈|min\.?(?=\s*\d)|max\.?(?=\s*\d))\s*",
    re.IGNORECASE,
)
_ONE_SIDED = re.compile(r"^[<>≤≥]|\b(?:more|less) than\b|\bover\b|\bunder\b|\+$", re.IGNORECASE)
_THOUSANDS = re.compile(r"\d,\d{3}(?!\d)")
_IN_DAYS_FROM_HOURS = 72.0
_IN_MINUTES_BELOW_HOURS = 2.0
"""Times that are whole days or minutes are said so from and below these (our choice)."""

FOUND = re.compile(
    rf"(?:\d{{1,3}}:[0-5]\d\s*h(?:ou)?rs?\.?(?!\w))|{_NUMBER}\s*(?:{_UNIT})?(?!\w)"
    rf"(?:\s*{_NUMBER}\s*min(?:ute)?s?\.?(?!\w))?(?:{_TO}{_NUMBER}\s*(?:{_UNIT})?(?!\w)"
    rf"(?:\s*{_NUMBER}\s*min(?:ute)?s?\.?(?!\w))?)?",
    re.IGNORECASE,
)
"""What may be a time inside a line; only with a unit in it is it one."""

HAS_UNIT = re.compile(rf"\d\s*(?:{_UNIT})(?!\w)", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class PrintedTime:
    """Hours as printed, or a range of them from the short to the long end."""

    from_hours: float
    to_hours: float | None = None


def printed_time(text: str, unit: str = "h") -> PrintedTime:
    """Read one printed time; a number alone is in `unit` (min, h, d or wk).

    Decimal comma and point are both understood. ValueError in a sentence for everything else.

    Examples
    --------
    >>> printed_time("4-6 h"), printed_time("30 min to 1 h").from_hours
    (PrintedTime(from_hours=4.0, to_hours=6.0), 0.5)
    >>> printed_time("1,5 h").from_hours, printed_time("7 days").from_hours
    (1.5, 168.0)
    """
    bare = _ABOUT.sub("", text.strip())
    if _ONE_SIDED.search(bare):
        raise _refused(
            translate(
                "sheets", "{text} says only one side; write the time itself, or leave it empty."
            ),
            text,
        )
    if _THOUSANDS.search(bare):
        raise _refused(
            translate("sheets", "{text} can be read two ways; write 1000, or 1.0."), text
        )
    bare = _CLOCK.sub(lambda m: f"{int(m[1])} h {int(m[2])} min", bare)
    match = _SPAN.fullmatch(bare)
    if match is None:
        raise _refused(
            translate("sheets", "{text} is not a time; write for example 4-6 h or 30 min."),
            text,
        )
    return _time_of(match, text.strip(), unit)


def _time_of(match: re.Match[str], text: str, unit: str) -> PrintedTime:
    first, first_unit, first_minutes, last, last_unit, last_minutes = match.groups()
    behind = _unit_named(last_unit) or (unit if last is not None else None)
    start = _hours(first, _unit_named(first_unit) or behind or unit, first_minutes)
    end = None if last is None else _hours(last, behind or unit, last_minutes)
    longest = start if end is None else end
    if start > longest:
        raise _refused(
            translate("sheets", "{text} ends before it starts; write the short end first."),
            text,
        )
    if start <= 0.0:
        raise _refused(
            translate("sheets", "{text} is no time; it has to be more than nothing."), text
        )
    if longest > LONGEST_HOURS:
        raise _refused(
            translate("sheets", "{text} is longer than any cure; check the unit."), text
        )
    return PrintedTime(start, end)


def _refused(words: str, text: str) -> ValueError:
    return ValueError(words.format(text=quoted(text)))


def _hours(number: str, unit: str, minutes: str | None) -> float:
    whole = float(number.replace(",", ".")) * _UNITS[unit][1]
    return whole if minutes is None else whole + float(minutes.replace(",", ".")) / 60


def _unit_named(text: str | None) -> str | None:
    if not text:
        return None
    matches = (k for k, (p, _) in _UNITS.items() if re.fullmatch(p, text, re.IGNORECASE))
    return next(matches, None)


def unit_in(label: str) -> str | None:
    """The unit of time that a label gives for the figures beside it: min in "Gel time (min)".

    Examples
    --------
    >>> unit_in("Full cure [days]"), unit_in("Tack-free")
    ('d', None)
    """
    match = re.search(rf"(?:[(\[,/]|\bin)\s*({_UNIT})\s*[)\]]?\s*:?\s*$", label, re.IGNORECASE)
    return _unit_named(match[1]) if match else None


def time_words(time: PrintedTime) -> str:
    """Say a printed time shortly, so that reading it gives the same hours.

    Examples
    --------
    >>> [time_words(PrintedTime(*ends)) for ends in ((4.0, 6.0), (0.5,), (168.0,))]
    ['4-6 h', '30 min', '7 d']
    """
    ends = [time.from_hours] if time.to_hours is None else [time.from_hours, time.to_hours]
    unit = next((unit for unit in ("min", "d") if all(_fits(end, unit) for end in ends)), "h")
    factor = _UNITS[unit][1]
    return f"{'-'.join(_figure(end / factor) for end in ends)} {unit}"


def shown_time(time: PrintedTime) -> str:
    """Say a printed time shortly with the signs of the language where that is read again."""
    plain = time_words(time)
    here = figure(plain)
    if plain.endswith(" d"):
        here = here.removesuffix("d") + translate("sheets", "d")
    try:
        return here if printed_time(here) == printed_time(plain) else plain
    except ValueError:  # 1,125 could be a thousand and more
        return plain


def _fits(hours: float, unit: str) -> bool:
    """Whether a sheet would print it in that unit: few whole minutes, or many whole days."""
    shown = hours / _UNITS[unit][1]
    usual = hours < _IN_MINUTES_BELOW_HOURS if unit == "min" else hours >= _IN_DAYS_FROM_HOURS
    return usual and shown >= 1.0 and math.isclose(shown, round(shown), rel_tol=1e-9)


def _figure(value: float) -> str:
    whole = round(value)
    if math.isclose(value, whole, rel_tol=1e-12):
        return str(whole)
    text = f"{value:.6f}".rstrip("0")
    # A sheet has no more than six decimals; only what was not printed has more.
    return (
        text if math.isclose(float(text), value, rel_tol=1e-9) else f"{value:.17f}".rstrip("0")
    )
