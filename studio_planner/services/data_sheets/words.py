"""The words by which data sheets call the stages of a film, in English and in German.

Common practice: collected from how sheets of this trade are worded, not from one of them.
Bare *gel time* is read as the working time, as in ``resources/published``.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from studio_planner.science.stages import Stage

_COAT = r"(?:re-?\s?coat(?:ing|able)?|over-?\s?coat(?:ing|able)?|next coat|second coat)"
_LEAST = r"(?:min(?:imum)?\.?|earliest|not before)"
_MOST = r"(?:max(?:imum)?\.?|latest|not after|within|no later than|until|up to)"

_WINDOW = "window"
"""A phrase for both ends: the first time, or the short end of one range, opens it."""

_RECOAT = "recoat"
"""A phrase that means when it opens, and with a second time behind it when it closes."""

_PHRASES: tuple[tuple[str, Stage | str], ...] = (
    (rf"{_COAT}\s*window\s*(?:opens?|start|from)", Stage.RECOAT_OPENS),
    (rf"{_COAT}\s*window\s*(?:closes?|ends?|until)", Stage.RECOAT_CLOSES),
    (rf"{_COAT}\s*(?:window|interval|time)s?[\s,:(]*{_LEAST}", Stage.RECOAT_OPENS),
    (rf"{_COAT}\s*(?:window|interval|time)s?[\s,:(]*{_MOST}", Stage.RECOAT_CLOSES),
    (rf"{_LEAST}\s*{_COAT}(?:\s*(?:interval|time))?", Stage.RECOAT_OPENS),
    (rf"{_MOST}\s*{_COAT}(?:\s*(?:interval|time))?", Stage.RECOAT_CLOSES),
    (rf"{_COAT}[\s_]*(?:opens?|after|from)", Stage.RECOAT_OPENS),
    (rf"{_COAT}[\s_]*(?:closes?|ends?|before)", Stage.RECOAT_CLOSES),
    (rf"{_COAT}[\s,:(]*{_LEAST}", Stage.RECOAT_OPENS),
    (rf"{_COAT}[\s,:(]*{_MOST}", Stage.RECOAT_CLOSES),
    (rf"{_COAT}\s*(?:window|interval)s?", _WINDOW),
    (rf"{_COAT}(?:\s*times?)?", _RECOAT),
    (r"(?:über-?\s?arbeit|über-?\s?beschicht)(?:bar|ung)\s*(?:ab|nach)", Stage.RECOAT_OPENS),
    (r"(?:über-?\s?arbeit|über-?\s?beschicht)(?:bar|ung)\s*(?:bis|vor)", Stage.RECOAT_CLOSES),
    (r"überarbeitungs(?:fenster|intervall|zeitraum)", _WINDOW),
    (r"(?:über-?\s?arbeit|über-?\s?beschicht)(?:bar|ung)", _RECOAT),
    (r"topfzeit", Stage.CUP_LIFE),
    (r"(?:verarbeitungs|offen|gelier)(?:e )?zeit", Stage.WORKING_TIME),
    (r"staub(?:trocken|frei)", Stage.COVER),
    (r"(?:kleb(?:e)?frei|berührungstrocken)", Stage.TACK_FREE),
    (r"schleif(?:bar|fähig)", Stage.SANDABLE),
    (r"griff?-?fest", Stage.HANDLE),
    (r"(?:abdruckfrei|stapelbar)", Stage.PRINT_FREE),
    (r"(?:(?:voll(?:ständig)?|end)?\s*(?:aus|durch)(?:ge)?härt(?:et|ung)|endhärte)",
     Stage.FULL_CURE),
    (r"(?:pot|cup)[\s_-]*life", Stage.CUP_LIFE),
    (r"gel(?:ation)?\s*time\s*(?:in (?:the )?cup|in mass)", Stage.CUP_LIFE),
    (r"(?:work(?:ing|able)?|open|usable)[\s_-]*(?:time|life)", Stage.WORKING_TIME),
    (r"gel(?:ation)?[\s_-]*time", Stage.WORKING_TIME),
    (r"(?:last[\s_-]*torch(?:ing)?|torch(?:ing)?\s*(?:until|up to|within))", Stage.LAST_TORCH),
    (r"(?:dust[\s_-]*(?:free|dry)|cover(?:ed)?(?:\s*(?:after|from))?\b)", Stage.COVER),
    (r"(?:tape[\s_]*(?:opens?|off (?:after|from)|after|from)|remove tape (?:after|from))",
     Stage.TAPE_OPENS),
    (r"(?:tape[\s_]*(?:closes?|off (?:before|by)|before|by)|remove tape (?:before|by))",
     Stage.TAPE_CLOSES),
    (r"trim(?:ming)?[\s_]*(?:drips\s*)?(?:opens?|after|from)", Stage.TRIM_OPENS),
    (r"trim(?:ming)?[\s_]*(?:drips\s*)?(?:closes?|before|until|by)", Stage.TRIM_CLOSES),
    (r"(?:tack[\s_-]*free|(?:dry|set|cured?)\s*to\s*(?:the\s*)?touch|touch[\s_-]*dry)",
     Stage.TACK_FREE),
    (r"(?:sand(?:able|ing)\b(?:\s*after)?|(?:can be|ready to) sand(?:ed)?|hard[\s_-]*dry)",
     Stage.SANDABLE),
    (r"(?:handl(?:e|ing|eable)\b(?:\s*(?:strength|time|after))?|can be turned)", Stage.HANDLE),
    (r"(?:print[\s_-]*(?:free|proof)|stack(?:able|ing)|ready to pack)", Stage.PRINT_FREE),
    (r"(?:full(?:y)?[\s_-]*cure[ds]?(?:\s*time)?|(?:final|complete)\s*cure)", Stage.FULL_CURE),
)  # fmt: skip
_ANY = tuple((re.compile(rf"(?<!\w){p}", re.IGNORECASE), stage) for p, stage in _PHRASES)


@dataclass(frozen=True, slots=True)
class Named:
    """A stage named in a line, from one letter to another; recoating names two of them.

    `window` tells whether a single range of times is both ends of the recoat window.
    """

    begin: int
    end: int
    stages: tuple[Stage, ...]
    window: bool = False

    @property
    def both(self) -> bool:
        """Whether both ends of the recoat window may be meant."""
        return len(self.stages) > 1


def stages_named(line: str) -> list[Named]:
    """The stages that a line of a sheet names, from left to right; they never overlap.

    Examples
    --------
    >>> [named.stages[0].value for named in stages_named("Tack free 8 h, full cure 7 d")]
    ['tack_free', 'full_cure']
    >>> [stage.value for stage in stages_named("Recoat window 4 h to 24 h")[0].stages]
    ['recoat_opens', 'recoat_closes']
    """
    found: list[Named] = []
    for pattern, stage in _ANY:
        for match in pattern.finditer(line):
            if any(match.start() < one.end and one.begin < match.end() for one in found):
                continue
            found.append(Named(match.start(), match.end(), _stages(stage), stage == _WINDOW))
    return sorted(found, key=lambda one: one.begin)


def _stages(stage: Stage | str) -> tuple[Stage, ...]:
    if isinstance(stage, Stage):
        return (stage,)
    return (Stage.RECOAT_OPENS, Stage.RECOAT_CLOSES)
