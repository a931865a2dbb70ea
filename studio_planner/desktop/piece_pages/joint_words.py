"""What is written beside a coat and on its joint: film, pour, kind of joint and its window."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule
from studio_planner.craft.joint_rules import WISHED, possible_joints
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Trust
from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.plans import Plan, PlannedCoat, Window
    from studio_planner.craft.studio import Studio
    from studio_planner.services.editing.stack_faults import StackFault


_FILM_SAID = re.compile(r"(\d+(?:\.\d+)?) mm\b")


@dataclass(frozen=True, slots=True)
class CoatWords:
    """What is said of one coat: its head, its pour, its joint, and what is wrong with it."""

    head: str
    pour: str
    joint: Joint
    joint_line: str
    faults: tuple[str, ...]
    poured: bool

    @property
    def spoken(self) -> str:
        """All of it in one sentence."""
        parts = [self.head, self.pour, self.joint_line, *self.faults]
        return ", ".join(part for part in parts if part)


def coat_words(
    studio: Studio,
    piece: Piece,
    coat: Coat,
    planned: PlannedCoat | None,
    faults: tuple[StackFault, ...],
) -> CoatWords:
    """What is written beside a coat; `planned` is its row in the kept plan, or None."""
    index = piece.position(coat.key)
    poured = index < len(studio.pours_of(piece.key))
    bare = piece.below(index) is None
    joint = Joint.BARE if bare else (planned.joint if planned else coat.joint)
    return CoatWords(
        head=_head(studio, piece, coat),
        pour=_pour(studio, planned, poured=poured),
        joint=joint,
        joint_line=_joint_line(studio, joint, planned),
        faults=tuple(fault_words(studio, fault) for fault in faults if fault.coat == coat.key),
        poured=poured,
    )


def joints_offered(studio: Studio, piece: Piece, coat: Coat) -> list[tuple[Joint, str]]:
    """The joints that a coat may be given where it lies, and the one that it has.

    On a bare face nothing is asked: it keeps what it has, and that is called on bare.
    """
    possible = possible_joints(studio, piece.stack, piece.position(coat.key))
    if possible is None:
        return [(coat.joint, kind_word(Joint.BARE))]
    return [(one, kind_word(one)) for one in WISHED if one in {*possible, coat.joint}]


def fault_words(studio: Studio, fault: StackFault) -> str:
    """A fault with its films in the studio's unit."""
    films = {name: words.film(mm, studio.units) for name, mm in fault.films}
    if films:
        return fault.sentence.format(**films)
    if fault.refused and fault.field == "film_mm":
        # The craft's own rules say films as they are kept, in mm.
        return _FILM_SAID.sub(
            lambda found: words.film(float(found[1]), studio.units), fault.sentence
        )
    return fault.sentence


def _head(studio: Studio, piece: Piece, coat: Coat) -> str:
    name = _name(piece, coat)
    # Leaf has no film to speak of.
    return f"{name} {words.film(coat.film_mm, studio.units)}" if coat.film_mm else name


def _name(piece: Piece, coat: Coat) -> str:
    alike = [one.key for one in piece.stack if one.kind is coat.kind]
    name = kind_word(coat.kind)
    return name if len(alike) == 1 else f"{name} {alike.index(coat.key) + 1}"


def _pour(studio: Studio, planned: PlannedCoat | None, *, poured: bool) -> str:
    if poured:
        return translate("pieces", "poured")
    if planned is None:
        return translate("pieces", "to come")
    when = words.moment(planned.start, words.wall_of(studio))
    return translate("pieces", "to come, {when}").format(when=when)


def _joint_line(studio: Studio, joint: Joint, planned: PlannedCoat | None) -> str:
    window = None if planned is None else planned.window
    said = kind_word(joint)
    if window is not None and window.trust is Trust.TEST_FIRST:
        said = translate("pieces", "{joint}, test first").format(joint=said)
    return said if window is None else f"{said}, {_window(studio, window)}"


def _window(studio: Studio, window: Window) -> str:
    wall = words.wall_of(studio)
    opens = _short(window.opens, wall)
    if window.closes is None:
        return translate("pieces", "opens {opens}, stays open").format(opens=opens)
    same = words.day_name(window.opens, wall) == words.day_name(window.closes, wall)
    closes = (words.clock_time if same else _short)(window.closes, wall)
    return translate("pieces", "opens {opens}, closes {closes}").format(
        opens=opens, closes=closes
    )


def _short(when: datetime, wall: words.Wall) -> str:
    return f"{words.day_name(when, wall, month=False)} {words.clock_time(when, wall)}"


def for_form(fault: StackFault, key: str) -> BrokenRule:
    """A fault as the form says it: beside its field, or at the foot if it is another coat's."""
    here = fault.coat == key and fault.field != "stack"
    return BrokenRule(fault.field if here else "", fault.sentence)


def planned_rows(plan: Plan | None, piece: Piece) -> dict[str, PlannedCoat]:
    """The rows of a plan for a piece, by its coats."""
    rows = plan.coats if plan else ()
    return {row.coat: row for row in rows if row.piece == piece.key}
