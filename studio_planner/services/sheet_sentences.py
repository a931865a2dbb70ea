"""The sentences of a pasted line, and the mix ratio that one of them prints."""

from __future__ import annotations

import re

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.products import MixRatio, RatioBy
from studio_planner.services.sheet_words import stages_named

_STOP = re.compile(
    r"(?<!approx)(?<!\bca)(?<!deg)(?<!max)(?<!\bmin)(?<!\bno)\.\s+(?=[A-ZÄÖÜ])"
    r"|(?<=\dmin)\.\s+(?=[A-ZÄÖÜ])|(?<=\d min)\.\s+(?=[A-ZÄÖÜ])|;\s*",
    re.IGNORECASE,
)
_NUMBER = r"(\d+(?:[.,]\d+)?)"
_RATIO = re.compile(
    rf"(?:\b(?:mix(?:ing)?\s*)?(?:ratio|parts)\b[^\d.;]{{0,24}})?(?<![\d.,]){_NUMBER}"
    rf"\s*(?::|\bto\b)\s*{_NUMBER}\s*(?:parts\s*)?,?\s*\(?by\s+(weight|volume)\b\)?\.?",
    re.IGNORECASE,
)


def sentences_of(line: str) -> list[str]:
    """The sentences of a line; what follows a semicolon without a stage stays with its stage.

    Examples
    --------
    >>> sentences_of("Working time 55 min. Sandable 1.5 h; 1 h at 25 C")
    ['Working time 55 min', 'Sandable 1.5 h; 1 h at 25 C']
    """
    begin, found = 0, []
    for stop in _STOP.finditer(line):
        semicolon = stop[0].startswith(";")
        if semicolon and not stages_named(_STOP.split(line[stop.end() :])[0]):
            continue
        found.append(line[begin : stop.start()])
        begin = stop.end()
    return [part.strip() for part in [*found, line[begin:]] if part.strip(" .;")]


def without_ratio(line: str) -> tuple[str, MixRatio | None]:
    """A line without the first mix ratio in it, and that ratio.

    Only one that says whether it is by weight or by volume is read.

    Examples
    --------
    >>> without_ratio("Mix ratio 100:45 by weight.")[1].b
    45.0
    """
    match = _RATIO.search(line)
    if match is None:
        return line, None
    a, b = (float(match[index].replace(",", ".")) for index in (1, 2))
    by = RatioBy.WEIGHT if match[3].lower() == "weight" else RatioBy.VOLUME
    try:
        ratio = MixRatio(a=a, b=b, by=by)
    except InvalidEntry:
        return line, None
    return f"{line[: match.start()]} {line[match.end() :]}".rstrip(), ratio
