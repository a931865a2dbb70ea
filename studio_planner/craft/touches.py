"""Touch tests: what a finger asks of a film, and which stages the answer tells of.

What each touch means is common practice: a film that sticks like tape, pulls no string and
leaves the glove clean can take the next coat; a light fingertip that leaves no mark finds it
tack-free; a thumbnail that leaves no mark finds it print-free.
"""

from __future__ import annotations

from enum import StrEnum

from studio_planner.science.stages import Stage


class Verdict(StrEnum):
    """Whether a film had reached a stage when it was touched."""

    ALREADY = "already"
    NOT_YET = "not yet"


class Touch(StrEnum):
    """What is felt for with a gloved finger; `already` means that it was found so.

    Of a string, *not yet* means that it still pulls one, *already* that it pulls none any more.
    """

    STRING = "string"
    TACK = "tape-tack"
    NO_MARK = "no mark"
    THUMBNAIL = "thumbnail no mark"

    @property
    def usual(self) -> Verdict:
        """The verdict that is meant when only the touch is noted.

        Examples
        --------
        >>> Touch.STRING.usual, Touch.TACK.usual
        (<Verdict.NOT_YET: 'not yet'>, <Verdict.ALREADY: 'already'>)
        """
        return Verdict.NOT_YET if self is Touch.STRING else Verdict.ALREADY

    @property
    def stage(self) -> Stage:
        """The stage that the touch asks about."""
        return _STAGES[self]

    def tells(self, verdict: Verdict) -> tuple[tuple[Stage, Verdict], ...]:
        """Return each stage that an answer tells of, and what it says of it.

        A film without strings may still be too wet for a coat, so that answer alone tells
        nothing. A film that takes the mark of a light finger can't be laid on its face yet; one
        that withstands a thumbnail can.

        Examples
        --------
        >>> Touch.TACK.tells(Verdict.ALREADY)
        ((<Stage.RECOAT_OPENS: 'recoat_opens'>, <Verdict.ALREADY: 'already'>),)
        >>> Touch.STRING.tells(Verdict.ALREADY)
        ()
        """
        return tuple((stage, verdict) for stage in _TOLD.get((self, verdict), ()))


_STAGES = {
    Touch.STRING: Stage.RECOAT_OPENS,
    Touch.TACK: Stage.RECOAT_OPENS,
    Touch.NO_MARK: Stage.TACK_FREE,
    Touch.THUMBNAIL: Stage.PRINT_FREE,
}

_TOLD = {
    (Touch.STRING, Verdict.NOT_YET): (Stage.RECOAT_OPENS,),
    (Touch.TACK, Verdict.NOT_YET): (Stage.RECOAT_OPENS,),
    (Touch.TACK, Verdict.ALREADY): (Stage.RECOAT_OPENS,),
    (Touch.NO_MARK, Verdict.NOT_YET): (Stage.TACK_FREE, Stage.HANDLE),
    (Touch.NO_MARK, Verdict.ALREADY): (Stage.TACK_FREE,),
    (Touch.THUMBNAIL, Verdict.NOT_YET): (Stage.PRINT_FREE,),
    (Touch.THUMBNAIL, Verdict.ALREADY): (Stage.PRINT_FREE, Stage.HANDLE),
}
