"""What a plan is made from, and how far a studio has it."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Need(StrEnum):
    """What a plan is made from, in the order in which a maker enters it."""

    HANDS = "hands"
    ROOM = "room"
    SPOT = "spot"
    PRODUCT = "product"
    PIECE = "piece"
    ORDER = "order"

    @property
    def optional(self) -> bool:
        """Whether a plan can be made without it."""
        return self is Need.ORDER


@dataclass(frozen=True, slots=True, kw_only=True)
class SetUpStep:
    """How far one need is met.

    `there` says what the studio has of it, `lacking` what stops a plan, and `knowing` what a
    plan can do without, but what a maker should know; each is whole sentences.
    """

    need: Need
    there: str
    lacking: tuple[str, ...] = ()
    knowing: tuple[str, ...] = ()

    @property
    def done(self) -> bool:
        """Whether nothing about it stops a plan any more."""
        return not self.lacking
