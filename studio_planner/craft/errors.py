"""What can go wrong, in words fit for the maker.

StudioError
    InvalidEntry      a rule of the craft is broken; carries every broken rule with its field
    NoPlanPossible    the studio cannot be planned as asked; carries the reasons
    StudioFileError   the studio file is locked, full, damaged, foreign or from a newer version
        ChangedElsewhere  somebody else has written to it since it was read

Anything else that is raised is our own bug.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from typing_extensions import override

from studio_planner.craft.tongue import figure, translate

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime, time


@dataclass(frozen=True, slots=True)
class BrokenRule:
    """One rule that an entry breaks: the field, and a sentence that says what to do."""

    field: str
    sentence: str

    @override
    def __str__(self) -> str:
        """Give the field, in the maker's words, and the sentence as one line."""
        from studio_planner.craft.field_words import field_words  # noqa: PLC0415 - few are told

        return f"{field_words(self.field)}: {self.sentence}"


class StudioError(Exception):
    """The root of everything that a maker can be told in a sentence."""


class InvalidEntry(StudioError):  # noqa: N818 - reads as a sentence where it is raised
    """An entry breaks rules of the craft; `broken` has all of them, not only the first."""

    def __init__(self, noun: str, broken: Iterable[BrokenRule]) -> None:
        """Keep what was entered (`noun`, such as "piece Moon tray") and the broken rules."""
        self.noun = noun
        self.broken = tuple(broken)
        super().__init__(f"{noun}: " + " ".join(str(rule) for rule in self.broken))


class NoPlanPossible(StudioError):  # noqa: N818 - reads as a sentence where it is raised
    """Nothing can be planned as asked; `reasons` are sentences in the maker's nouns."""

    def __init__(self, reasons: Iterable[str]) -> None:
        """Keep the reasons, at least one."""
        self.reasons = tuple(reasons)
        super().__init__(" ".join(self.reasons))


class StudioFileError(StudioError):
    """The studio file cannot be opened or written; the file itself is left as it was."""


class ChangedElsewhere(StudioFileError):  # noqa: N818 - reads as a sentence where it is raised
    """Another window or process has changed the studio file since it was read."""


class Rulebook:
    """Collects every broken rule of one entry, then raises them together.

    Nearly every rule is kept, and a studio has thousands: sentences are made for broken ones.
    """

    def __init__(self, noun: str) -> None:
        """Start with no broken rule for the entry called `noun`."""
        self._noun = noun
        self._broken: list[BrokenRule] = []

    def require(self, kept: bool, field: str, sentence: str) -> None:  # noqa: FBT001 - a fact
        """Note `sentence` for `field` unless the rule is kept."""
        if not kept:
            self._break(field, sentence)

    def between(self, value: float, low: float, high: float, field: str) -> None:
        """Require a finite number from `low` to `high`, both allowed."""
        if not low <= value <= high:  # so is NaN
            sentence = translate("rules", "{value} is outside {low} to {high}.")
            said, least, most = (figure(f"{one:.10g}") for one in (value, low, high))
            self._break(field, sentence.format(value=said, low=least, high=most))

    def named(self, value: str, field: str = "name") -> None:
        """Require a text that is not blank."""
        if not value.strip():
            self._break(field, translate("rules", "give it a name."))

    def wall_clock(self, value: time, field: str) -> None:
        """Require a time of day without a zone, as the studio's wall clock shows it."""
        if value.tzinfo is not None:
            self._break(field, translate("rules", "give the time without a zone."))

    def forward(self, start: datetime, end: datetime) -> None:
        """Require a `start` and a later `end`, each with a zone."""
        zoned = [value.utcoffset() is not None for value in (start, end)]
        for kept, field in zip(zoned, ("start", "end"), strict=True):
            if not kept:
                self._break(field, translate("rules", "give the time with a zone."))
        # Two times of one zone compare by the wall clock, which doubles an hour in autumn.
        if all(zoned) and start.timestamp() >= end.timestamp():
            self._break("end", translate("rules", "it has to end after it starts."))

    def _break(self, field: str, sentence: str) -> None:
        self._broken.append(BrokenRule(field, sentence))

    def close(self) -> None:
        """Raise InvalidEntry with everything that was noted, if anything was."""
        if self._broken:
            raise InvalidEntry(self._noun, self._broken)
