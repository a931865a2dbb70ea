"""The mix ratio that a pasted sheet prints: 100:45 by weight, 2 parts A to 1 part B, A:B = 2:1.

A ratio by weight is taken before one by volume, since it can be weighed without densities.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.products import MixRatio, RatioBy
from studio_planner.services.data_sheets.sentences import sentences_of
from studio_planner.services.data_sheets.words import stages_named

if TYPE_CHECKING:
    from collections.abc import Sequence

_NUMBER = r"(?<![\d.,])(\d+(?:[.,]\d+)?)"
_FIRST = rf"(?<!/){_NUMBER}"
"""Not the lower half of a fraction."""

_OF_A = r"(?:a|resin|base|harz|stammkomponente)"
_OF_B = r"(?:b|hardener|curing agent|härter)"
_PART = r"(?:(?:parts?|components?|comp\.?|komponenten?|komp\.?|teile?)\s*)"
_PARTS = (
    r"(?:\s*(?:parts?|(?:gewichts|volumen|raum)?teile?))?"
    r"(?:\s*by\s*(?:weight|volume))?(?:\s*of)?\s*"
)
_TO = r"\s*(?:,|:|/|\+|to|zu|auf|with|mit|and|und)\s*"
_PAIRS = (
    # 2 parts A : 1 part B
    rf"{_FIRST}{_PARTS}{_PART}?{_OF_A}\b\)?{_TO}{_NUMBER}{_PARTS}{_PART}?{_OF_B}\b\)?",
    # A : B = 100 : 45, also the other way round
    (
        rf"\b{_PART}?(?P<first>{_OF_A}|{_OF_B})\s*(?::|/|to|zu)\s*"
        rf"{_PART}?(?:{_OF_A}|{_OF_B})\b"
        rf"[^\d.;]{{0,30}}{_FIRST}\s*(?::|/|to\b|zu\b)\s*{_NUMBER}"
    ),
    # A 100, B 45
    rf"\b{_PART}?{_OF_A}\s*[:=]?\s*{_FIRST}{_PARTS}(?:{_TO})?{_PART}?{_OF_B}\s*[:=]?\s*{_NUMBER}",
    # mix ratio 100:45, and 100:45 by weight
    rf"{_FIRST}\s*(?::|\bto\b|\bzu\b)\s*{_NUMBER}",
)
_END = r"(?![\d:]|[.,]\d|\s*(?:°|h\b|min|days?\b|tage?\b))(?:\s*(?:parts?|teile?)\b)?"
_ANY_PAIR = tuple(re.compile(pair + _END, re.IGNORECASE) for pair in _PAIRS)
_LAST = len(_PAIRS) - 1
_ORDER = (RatioBy.WEIGHT, RatioBy.VOLUME, RatioBy.ASSUMED)
_HEAD = re.compile(
    r"\b(?:mix(?:ing)?\s*)?ratio\b|\bparts\b|\bmisch(?:ungs)?-?verhältnis\b|\bteile\b",
    re.IGNORECASE,
)
_WEIGHT = (
    r"\bby\s+(?:weight|wt\.?|mass)|\bpbw\b|\bw/w\b|\bnach\s+(?:gewicht|masse)"
    r"|\bgew(?:ichts?)?[.-]*(?:teilen?|anteilen?|%)|\(?\b(?:weight|gewicht)\b\)?"
)
_VOLUME = (
    r"\bby\s+vol(?:ume|\.)?|\bpbv\b|\bv/v\b|\bnach\s+volumen"
    r"|\bvol(?:umen)?[.-]*(?:teilen?|anteilen?|%)|\braumteilen?|\(?\b(?:volume|volumen)\b\)?"
)
_BY = re.compile(rf"\(?(?:(?P<weight>{_WEIGHT})|(?P<volume>{_VOLUME}))\)?", re.IGNORECASE)
_STOPS = " .,;"
_NOTHING_LEFT = re.compile(r"[\W_]*")


@dataclass(frozen=True, slots=True)
class _Found:
    """The ratios of a sentence, from one letter to another."""

    begin: int
    end: int
    ratios: tuple[MixRatio, ...]


def ratio_apart(lines: Sequence[str]) -> tuple[list[str], MixRatio | None]:
    """The lines without the mix ratio in them, and that ratio.

    One that does not say whether it is by weight or by volume is `RatioBy.ASSUMED`. What says
    the same ratio otherwise is left out too; another one is left to be listed.

    Examples
    --------
    >>> lines, ratio = ratio_apart(["2 parts A : 1 part B by volume", "Full cure 7 d"])
    >>> lines, (ratio.a, ratio.b, ratio.by.value)
    (['', 'Full cure 7 d'], (2.0, 1.0, 'volume'))
    """
    found = [ratio for line in lines for one in _ratios_in(line) for ratio in one.ratios]
    best = min(found, key=lambda ratio: _ORDER.index(ratio.by), default=None)
    if best is None:
        return list(lines), None
    taken = {best} | {_first(found, by) for by in _ORDER}
    return [_without(line, taken) for line in lines], best


def names_ratio(sentence: str) -> bool:
    """Whether a sentence speaks of a ratio or of parts."""
    return _HEAD.search(sentence) is not None


def _first(found: Sequence[MixRatio], by: RatioBy) -> MixRatio | None:
    return next((ratio for ratio in found if ratio.by is by), None)


def _without(line: str, taken: set[MixRatio | None]) -> str:
    for one in reversed(_ratios_in(line)):
        if taken.issuperset(one.ratios):
            line = f"{line[: one.begin].rstrip()} {line[one.end :].lstrip(_STOPS)}".rstrip()
    return "" if _NOTHING_LEFT.fullmatch(line) else line


def _ratios_in(line: str) -> list[_Found]:
    found, begin = [], 0
    for sentence in sentences_of(line):
        begin = line.index(sentence, begin)
        one = _ratio_of(sentence)
        if one is not None:
            found.append(replace(one, begin=one.begin + begin, end=one.end + begin))
        begin += len(sentence)
    return found


def _ratio_of(sentence: str) -> _Found | None:
    """The ratios of one sentence; with them goes all that says no more than they do."""
    head = _HEAD.search(sentence)
    for number, pattern in enumerate(_ANY_PAIR):
        matches = list(pattern.finditer(sentence))
        if not matches or (number == _LAST and not head and not _BY.search(sentence)):
            continue
        said = [_by(sentence, one, after) for one, after in _with_next(matches, sentence)]
        pairs = zip(matches, said, strict=True)
        ratios = [ratio for match, (by, _) in pairs if (ratio := _ratio(match, by))]
        if not ratios:
            continue
        if not stages_named(sentence):
            return _Found(0, len(sentence), tuple(ratios))
        begin = min(one.start() for one in (head, *matches) if one is not None)
        return _Found(begin, max(end for _, end in said), tuple(ratios))
    return None


def _with_next(
    matches: Sequence[re.Match[str]], sentence: str
) -> list[tuple[re.Match[str], int]]:
    """Each pair of numbers with where the next one begins."""
    begins = [*(one.start() for one in matches[1:]), len(sentence)]
    return list(zip(matches, begins, strict=True))


def _by(sentence: str, match: re.Match[str], after: int) -> tuple[RatioBy, int]:
    """What the numbers count, said after them or else before, and where all of it ends."""
    said = _BY.search(sentence, match.start(), after) or _BY.search(sentence, 0, match.start())
    if said is None:
        return RatioBy.ASSUMED, match.end()
    by = RatioBy.WEIGHT if said["weight"] else RatioBy.VOLUME
    return by, max(said.end(), match.end())


def _ratio(match: re.Match[str], by: RatioBy) -> MixRatio | None:
    numbers = [float(text.replace(",", ".")) for text in match.groups() if _is_number(text)]
    first = match.groupdict().get("first") or "a"
    a, b = reversed(numbers) if re.fullmatch(_OF_B, first, re.IGNORECASE) else numbers
    try:
        return MixRatio(a=a, b=b, by=by)
    except InvalidEntry:
        return None


def _is_number(text: str | None) -> bool:
    return text is not None and text[:1].isdigit()
