"""Which thing of a studio a place in the exchange file belongs to, in the maker's words."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

from studio_planner.craft.field_words import WORDS

if TYPE_CHECKING:
    from collections.abc import Iterator

_ONE_OF = {
    "absences": "absence",
    "colours": "colour",
    "gone": "removed piece",
    "log": "entry",
    "lots": "bottle",
    "mixes": "mix",
    "orders": "order",
    "patterns": "stack pattern",
    "pattern": "expected temperature",
    "people": "person",
    "photos": "photo",
    "pieces": "piece",
    "pigments": "pigment",
    "pins": "pin",
    "places": "place",
    "poured": "pour",
    "products": "product",
    "readings": "reading",
    "sheet": "sheet figure",
    "spells": "temperature for a time",
    "spots": "spot",
    "stack": "coat",
    "work": "working hours",
}
"""What one of a list is called; another list keeps its own word."""

_PATH = re.compile(r"[\w.\[\]]+")
_STEP = re.compile(r"([^.\[\]]+)(?:\[(\d+)\])?")


def named_place(studio: object, place: str) -> str:
    """Name a place of a studio in plain values, with the path in brackets after it.

    Examples
    --------
    >>> named_place({"people": [{"name": "Ilka"}]}, "people[0].wakes")
    'person Ilka, gets up (people[0].wakes)'
    """
    path, _, rest = place.partition(", ")
    if not _PATH.fullmatch(path):
        return place  # a rule between things names them already
    words = ", ".join([*_words(studio, path), *([rest] if rest else [])])
    return place if words == place else f"{words} ({path})"


def _words(plain: Any, path: str) -> Iterator[str]:  # noqa: ANN401 - whatever the file holds
    for name, number in _STEP.findall(path):
        plain = plain.get(name) if isinstance(plain, dict) else None
        word = WORDS.get(name, name.replace("_", " "))
        if number:
            plain = plain[int(number)] if isinstance(plain, list) else None
            word = f"{_ONE_OF.get(name, word)} {_name(plain, int(number) + 1)}"
        yield word


def _name(plain: Any, number: int) -> str:  # noqa: ANN401 - likewise
    """What one of a list is called in the file; its number where it has no name."""
    fields = plain if isinstance(plain, dict) else {}
    names = [fields.get(field) for field in ("name", "label", "key")]
    return next((name for name in names if isinstance(name, str) and name), str(number))
