"""What draws the facts of a studio: hypothesis, or a seeded generator."""

from __future__ import annotations

from abc import ABC, abstractmethod
from typing import TypeVar

_T = TypeVar("_T")


class Pick(ABC):
    """Short words for drawing."""

    @abstractmethod
    def one_of(self, *values: _T) -> _T:
        """One of some values."""

    @abstractmethod
    def number(self, low: int, high: int) -> int:
        """A whole number, both ends inside."""

    def sometimes(self) -> bool:
        """True once in three."""
        return self.number(0, 2) == 2

    def rarely(self) -> bool:
        """True once in eight."""
        return self.number(0, 7) == 7
