"""The stages a film reaches, and on which side of each it is safe to be wrong."""

from __future__ import annotations

from enum import StrEnum


class Stage(StrEnum):
    """A point that a mix or a film reaches; sheets give them in no fixed order.

    Examples
    --------
    >>> Stage("recoat_opens").not_before, Stage.RECOAT_CLOSES.not_after
    (True, True)
    """

    CUP_LIFE = "cup_life"
    WORKING_TIME = "working_time"
    LAST_TORCH = "last_torch"
    COVER = "cover"
    TAPE_OPENS = "tape_opens"
    TAPE_CLOSES = "tape_closes"
    TRIM_OPENS = "trim_opens"
    TRIM_CLOSES = "trim_closes"
    RECOAT_OPENS = "recoat_opens"
    TACK_FREE = "tack_free"
    RECOAT_CLOSES = "recoat_closes"
    SANDABLE = "sandable"
    HANDLE = "handle"
    PRINT_FREE = "print_free"
    FULL_CURE = "full_cure"

    @property
    def not_before(self) -> bool:
        """Whether the next step has to wait for this stage."""
        return self not in _NOT_AFTER

    @property
    def not_after(self) -> bool:
        """Whether the step has to be done before this stage."""
        return self in _NOT_AFTER

    @property
    def late_cure(self) -> bool:
        """Whether the stage belongs to the late cure, which a cold room slows more."""
        return self in _LATE_CURE

    @property
    def closes(self) -> bool:
        """Whether the stage ends a window, for which no cold slope may be assumed."""
        return self in _CLOSES

    @property
    def teachable(self) -> bool:
        """Whether the studio's own touch tests may teach it: only what a finger can feel.

        The end of a window and the cup are never moved by touch tests.
        """
        return self in _TEACHABLE


_CLOSES = frozenset({Stage.RECOAT_CLOSES, Stage.TAPE_CLOSES, Stage.TRIM_CLOSES})
_NOT_AFTER = _CLOSES | {Stage.CUP_LIFE, Stage.WORKING_TIME, Stage.LAST_TORCH}
_TEACHABLE = frozenset({Stage.RECOAT_OPENS, Stage.TACK_FREE, Stage.HANDLE, Stage.PRINT_FREE})
_LATE_CURE = frozenset({Stage.SANDABLE, Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE})


class Edge(StrEnum):
    """One of the three times every answer is given at; early to late is 90 % in all."""

    EARLY = "early"
    LIKELY = "likely"
    LATE = "late"


class Basis(StrEnum):
    """How well the sheet, or what touch tests taught, supports the hours at a temperature."""

    PUBLISHED = "published"
    TAUGHT = "taught"
    BETWEEN = "between"
    ASSUMED = "assumed"
    OUTSIDE = "outside"


def safe_edge(stage: Stage) -> Edge:
    """Return the edge to plan with: late for *not before*, early for *not after*.

    Examples
    --------
    >>> safe_edge(Stage.RECOAT_OPENS), safe_edge(Stage.RECOAT_CLOSES)
    (<Edge.LATE: 'late'>, <Edge.EARLY: 'early'>)
    """
    return Edge.LATE if stage.not_before else Edge.EARLY
