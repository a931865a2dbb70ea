"""How far a whole piece is cured by a moment, as its plan and its clocks say."""

from __future__ import annotations

from enum import StrEnum
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.tongue import translate
from studio_planner.science.stages import Stage
from studio_planner.services.questions.sentences import Moment, Sentence, said

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.services.desk import DeskView
    from studio_planner.services.ready_flags import Flag
    from studio_planner.services.ribbons import Lane


class Reached(StrEnum):
    """Whether a stage is reached by a moment."""

    SURELY = "surely"
    LIKELY = "likely"
    NOT_YET = "not yet"


class Gates(NamedTuple):
    """A piece's ready times; the later ones stand in for one that the sheet lacks."""

    handle: Flag | None
    pack: Flag | None
    full: Flag | None


def lane_of(view: DeskView, piece: str) -> Lane:
    """The lane of a piece (a key); KeyError when there is none."""
    found = {lane.piece.key: lane for lane in view.lanes}
    return found[piece]


def gates_of(lane: Lane) -> Gates | None:
    """The ready times of a piece; None while not all of its coats are planned."""
    if len(lane.coats) < len(lane.piece.stack):
        return None
    flags = {flag.stage: flag for flag in lane.flags}
    full = flags.get(Stage.FULL_CURE)
    pack = flags.get(Stage.PRINT_FREE, full)
    return Gates(flags.get(Stage.HANDLE, pack), pack, full)


def reached(flag: Flag | None, by: datetime) -> Reached:
    """Whether a ready time lies before a moment; one that the sheet lacks never does."""
    if flag is None:
        return Reached.NOT_YET
    if flag.safe is not None and flag.safe <= by:
        return Reached.SURELY
    likely = flag.likely is not None and flag.likely <= by
    return Reached.LIKELY if likely else Reached.NOT_YET


def safe_words(flag: Flag | None) -> Moment | str:
    """When a ready time is sure; "not known" where no sheet or no record says so."""
    return (
        translate("questions", "not known")
        if flag is None or flag.safe is None
        else Moment(flag.safe)
    )


def ready_lines(gates: Gates) -> tuple[Sentence, ...]:
    """The three ready times of a piece, each at its safe edge."""
    return (
        said("It can be handled from {when}.", when=safe_words(gates.handle)),
        said("It is print-free from {when}.", when=safe_words(gates.pack)),
        said("It is fully cured from {when}.", when=safe_words(gates.full)),
    )
