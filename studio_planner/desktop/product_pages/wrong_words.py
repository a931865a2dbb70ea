"""What is wrong with a sheet, as the craft's rules say it, in the units that a maker reads."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import sentence
from studio_planner.desktop.quantities import Quantity, number_words, scale_of

if TYPE_CHECKING:
    from studio_planner.craft.errors import InvalidEntry
    from studio_planner.craft.settings import Units

_CELSIUS = re.compile(r"(-?\d+(?:\.\d+)?) °C")
_DIGITS = 4


def wrong_words(error: InvalidEntry, units: Units) -> str:
    """Every rule that is broken, each once, as sentences; temperatures in the studio's unit."""
    scale = scale_of(Quantity.TEMPERATURE, units)

    def shown(match: re.Match[str]) -> str:
        return f"{number_words(scale.shown(float(match[1])), digits=_DIGITS)} {scale.unit}"

    said = dict.fromkeys(sentence(rule.sentence) for rule in error.broken)
    return _CELSIUS.sub(shown, " ".join(said))
