"""What a check finds: broken rules and warnings, in the maker's words."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime  # noqa: TC003 - read by the exchange format at run time
from enum import StrEnum

from typing_extensions import override


class Rule(StrEnum):
    """The rules of a plan, by the name that a finding carries."""

    RECORD = "record"
    UNKNOWN = "unknown"
    BLOCK = "block"
    MIX = "mix"
    HANDS = "hands"
    ORDER = "order"
    JOINT = "joint"
    WINDOW = "window"
    TURN = "turn"
    SPOT = "spot"
    AIR = "air"
    STEADY = "steady"
    DUST = "dust"
    TAPE = "tape"
    TRIM = "trim"
    POURED = "poured"
    PINNED = "pinned"
    PACK = "pack"
    PROMISE = "promise"
    READY = "ready"
    COMPLETE = "complete"
    NUMBER = "number"
    STEP = "step"
    TEST_FIRST = "test first"
    AIR_UNKNOWN = "air unknown"


@dataclass(frozen=True, slots=True, kw_only=True)
class Finding:
    """One broken rule or warning; `piece` and `coat` are keys, `when` is in UTC."""

    rule: Rule
    piece: str | None
    coat: str | None
    when: datetime | None
    words: str

    @override
    def __str__(self) -> str:
        """Give the words alone, as they are shown."""
        return self.words


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckReport:
    """Everything that a check found; a plan with no broken rule can be done as it stands."""

    broken: tuple[Finding, ...]
    warnings: tuple[Finding, ...]

    @property
    def clean(self) -> bool:
        """Whether no rule is broken."""
        return not self.broken
