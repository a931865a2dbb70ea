"""How a saying is written down: plain words as text, anything else as a group of fields.

In the file that is one cell of JSON; the exchange format has it as it is.
"""

from __future__ import annotations

import json
import math
from typing import Any

from studio_planner.craft.saying import Fact, Saying

_FIELDS = {"text", "context", "facts"}
_BROKEN = "a text with its facts is broken"
_DEEPEST = 50
"""Sayings in sayings that are read; the program's own go eight deep."""


def plain_of_saying(said: Saying) -> str | dict[str, Any]:
    """Give plain values for a saying: its words, or text, context and facts."""
    if not said.context and not said.facts:
        return said.text
    found: dict[str, Any] = {"text": said.text}
    if said.context:
        found["context"] = said.context
    if said.facts:
        found["facts"] = {
            name: plain_of_saying(fact) if isinstance(fact, Saying) else fact
            for name, fact in said.facts
        }
    return found


def saying_of(plain: object, deepest: int = _DEEPEST) -> Saying:
    """Read what `plain_of_saying` gave; ValueError or TypeError when it is not that."""
    if isinstance(plain, str):
        return Saying(_text(plain))
    if not isinstance(plain, dict) or not deepest or not plain.keys() <= _FIELDS:
        raise TypeError(_BROKEN)
    facts = plain.get("facts", {})
    if not isinstance(facts, dict):
        raise TypeError(_BROKEN)
    return Saying(
        _text(plain.get("text")),
        _text(plain.get("context", "")),
        tuple((_text(name), _fact(fact, deepest - 1)) for name, fact in facts.items()),
    )


def json_of(said: Saying) -> str:
    """Write a saying as the text of one cell."""
    plain = plain_of_saying(said)
    return json.dumps(plain, ensure_ascii=False, separators=(",", ":"), allow_nan=False)


def saying_in(cell: str) -> Saying:
    """Read what `json_of` wrote; ValueError or TypeError when it is not that."""
    try:
        return saying_of(json.loads(cell))
    except RecursionError as error:
        raise ValueError(_BROKEN) from error


def _fact(plain: object, deepest: int) -> Fact:
    if isinstance(plain, str):
        return _text(plain)
    if isinstance(plain, int | float) and not isinstance(plain, bool):
        if not math.isfinite(plain):
            raise ValueError(_BROKEN)
        return plain
    return saying_of(plain, deepest)


def _text(plain: object) -> str:
    if not isinstance(plain, str):
        raise TypeError(_BROKEN)
    plain.encode()  # half a character pair cannot be kept
    return plain
