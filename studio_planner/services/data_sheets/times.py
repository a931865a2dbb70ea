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
_NEXT_UNIT = {"wk": "d", "d": "h", "h": "min"}
"""What may follow a unit in one time: 1 day 12 h, 1 h 30 min."""

_QUARTERS = {"1/2": ".5", "1/4": ".25", "3/4": ".75", "½": ".5", "¼": ".25", "¾": ".75"}
_SIGNS = "¼-¾⅐-⅞"
_INSIDE = r"[.,:/⁄]"  # noqa: RUF001 - a fraction slash is what sheets are set with
_NUMBER_LIKE = rf"(?:\d+(?:{_INSIDE}\d+)*(?:\s+\d+[/⁄]\d+|\s*[{_SIGNS}]+)?|[{_SIGNS}]+)"  # noqa: RUF001 - likewise
"""A number with all that is written with it, whether it can be read or not."""

_NOT_INSIDE = rf"(?<![\d{_SIGNS}])(?<!\d{_INSIDE})(?<!\d[^\W\d])"
_ENDS = rf"(?![\d{_SIGNS}])(?!{_INSIDE}\d)"
_TO = r"\s*(?:-|–|—|−|\bto\b|\bbis\b|\.\.\.?|…)\s*"  # noqa: RUF001 - dashes as sheets print them
_CLOCK = re.compile(r"(\d{1,3}):([0-5]\d)\s*(?:h(?:ou)?rs?\.?|h\.?)", re.IGNORECASE)
_ALONE = r"(?<!\d\s)(?<!\d\s\s)"
"""No number before it that it may belong to: over two blanks nobody can say."""

_FRACTION = re.compile(
    rf"{_NOT_INSIDE}(?:(?P<whole>\d+)[ \N{{NO-BREAK SPACE}}]?(?P<sign>[½¼¾])"
    rf"|(?P<more>\d+)[ \N{{NO-BREAK SPACE}}](?P<with>1/2|1/4|3/4)|{_ALONE}(?P<alone>[½¼¾])"
    rf"|{_ALONE}(?P<timed>1/2|1/4|3/4)(?=\s*(?:{_UNIT})(?!\w)|{_TO}[\d½¼¾])){_ENDS}",
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


def _one_time(number: str) -> str:
    """The pattern of one time with or without a unit, such as 4, 4 h, 1 h 30 min."""
    parted = "|".join(
        rf"(?:{_UNITS[unit][0]})\s*(?:(?:and|und)\s+)?{number}\s*(?:{_UNITS[after][0]})"
        for unit, after in _NEXT_UNIT.items()
    )
    return rf"{number}(?:\s*(?:{parted}|{_UNIT}))?(?!\w)"


_SPAN = re.compile(rf"({_one_time(_NUMBER)})(?:{_TO}({_one_time(_NUMBER)}))?", re.IGNORECASE)
_PART = re.compile(rf"({_NUMBER})\s*({_UNIT})?", re.IGNORECASE)

_NO_MORE = r"(?!\s+\d+\s*\.?$)"
"""No last number without a unit after it: 1 h 30 may be half an hour more, or 30 degrees."""

FOUND = re.compile(
    rf"{_NOT_INSIDE}{_one_time(_NUMBER_LIKE)}(?:{_TO}{_one_time(_NUMBER_LIKE)})?{_NO_MORE}",
    re.IGNORECASE,
)
"""What may be a time inside a line; only with a unit in it is it one."""

HAS_UNIT = re.compile(rf"[\d{_SIGNS}]\s*(?:{_UNIT})(?!\w)", re.IGNORECASE)


@dataclass(frozen=True, slots=True)
class PrintedTime:
    """Hours as printed, or a range of them from the short to the long end."""

    from_hours: float
    to_hours: float | None = None


def printed_time(text: str, unit: str = "h") -> PrintedTime:
    """Read one printed time; a number alone is in `unit` (min, h, d or wk).

    Decimal comma and point, halves and quarters are understood. ValueError in a sentence for
    everything else.

    Examples
    --------
    >>> printed_time("4-6 h"), printed_time("30 min to 1 h").from_hours
    (PrintedTime(from_hours=4.0, to_hours=6.0), 0.5)
    >>> printed_time("1,5 h").from_hours, printed_time("7 days").from_hours
    (1.5, 168.0)
    """
    bare = _ABOUT.sub("", without_fractions(text.strip()))
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
    first, last = match.groups()
    behind = unit if last is None else _unit_named(_PART.findall(last)[0][1]) or unit
    start = _hours(first, behind)
    end = None if last is None else _hours(last, behind)
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


def _hours(text: str, unit: str) -> float:
    """The hours of one time; a number alone is in `unit`."""
    return sum(
        float(number.replace(",", ".")) * _UNITS[_unit_named(named) or unit][1]
        for number, named in _PART.findall(text)
    )


def without_fractions(text: str) -> str:
    """Write halves and quarters as decimals: 3 1/2 h and 3½ h as 3.5 h.

    A fraction alone may be a ratio or two ends, such as 1/2; it is one before a unit of time.

    Examples
    --------
    >>> without_fractions("1/2 h, 3 1/4 h, 4½ h, A/B 1/2")
    '0.5 h, 3.25 h, 4.5 h, A/B 1/2'
    """
    return _FRACTION.sub(_decimal, text)


def _decimal(match: re.Match[str]) -> str:
    whole = match["whole"] or match["more"] or "0"
    part = match["sign"] or match["with"] or match["alone"] or match["timed"]
    return f"{whole}{_QUARTERS[part]}"


def _unit_named(text: str) -> str | None:
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
