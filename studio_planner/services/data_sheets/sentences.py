"""The sentences of a pasted line."""

from __future__ import annotations

import re

from studio_planner.services.data_sheets.words import stages_named

_STOP = re.compile(
    r"(?<!approx)(?<!\bca)(?<!deg)(?<!max)(?<!\bmin)(?<!\bno)\.\s+(?=[A-ZÄÖÜ])"
    r"|(?<=\dmin)\.\s+(?=[A-ZÄÖÜ])|(?<=\d min)\.\s+(?=[A-ZÄÖÜ])|;\s*",
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
