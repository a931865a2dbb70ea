"""What a pasted sheet is headed with: the product's name, without "technical data sheet"."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from studio_planner.services.data_sheets.marks import masses_in, warmths_in
from studio_planner.services.data_sheets.ratios import names_ratio
from studio_planner.services.data_sheets.sentences import sentences_of
from studio_planner.services.data_sheets.times import HAS_UNIT
from studio_planner.services.data_sheets.words import stages_named

if TYPE_CHECKING:
    from collections.abc import Sequence

_LONGEST = 60
_SHORTEST = 2
_SHEET = re.compile(
    r"\b(?:technical|product)?\s*data\s*sheet\b|\b(?:technisches\s+)?(?:daten|merk)blatt\b"
    r"|\bTDS\b|\b(?:product|produkt)(?:name)?\s*:",
    re.IGNORECASE,
)
_CELLS = re.compile(r"\t|\||;| {2,}")
_EDGES = " \t.,:;|-\N{EN DASH}\N{EM DASH}\N{BULLET}"


def name_apart(lines: Sequence[str]) -> tuple[list[str], str]:
    """The lines without the name that they are headed with, and that name; "" without one.

    A name is the first sentence, where it holds no figure of a film, of a cup or of the air.

    Examples
    --------
    >>> name_apart(["Slow mix 40 - Technical data sheet", "Full cure 7 d"])
    (['', 'Full cure 7 d'], 'Slow mix 40')
    """
    for index, line in enumerate(lines):
        if not line.strip():
            continue
        first = next(iter(sentences_of(line)), "")
        name = " ".join(_SHEET.sub(" ", first).split()).strip(_EDGES)
        rest = line.replace(first, "", 1).lstrip(_EDGES)
        only_says_sheet = not name and _SHEET.search(first) is not None
        if only_says_sheet and not rest:
            return _after(lines, index)
        if _CELLS.search(line.strip()) or not _is_name(name, first):
            break
        return [*lines[:index], rest, *lines[index + 1 :]], name
    return list(lines), ""


def _after(lines: Sequence[str], index: int) -> tuple[list[str], str]:
    left, name = name_apart(lines[index + 1 :])
    return [*lines[:index], "", *left], name


def _is_name(name: str, sentence: str) -> bool:
    if not _SHORTEST <= len(name) <= _LONGEST or not any(letter.isalpha() for letter in name):
        return False
    film = names_ratio(sentence) or bool(stages_named(sentence))
    air = warmths_in(sentence) or masses_in(sentence)
    return not film and not air and not HAS_UNIT.search(sentence)
