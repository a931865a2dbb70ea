"""What is different between two plans, in words: one line, and a sentence for each thing."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.services.questions.sentences import Lasting, Moment, Sentence, said

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.moving.comparing import (
        ChangedJoint,
        ChangedPromise,
        Difference,
        MovedPour,
    )

NOTHING = "Nothing else moved"


def in_short(difference: Difference) -> str:
    """The difference in one line: 3 pours moved, 1 promise later, 1 joint worse."""
    later = [row for row in difference.promises if row.later]
    sooner = [row for row in difference.promises if not row.later]
    counted = (
        _count(difference.moved, "pour moved", "pours moved"),
        _count(later, "promise later", "promises later"),
        _count(sooner, "promise sooner", "promises sooner"),
        _count(difference.worsened, "joint worse", "joints worse"),
        _count(difference.lost, "piece not planned", "pieces not planned"),
        _count(difference.gained, "piece planned again", "pieces planned again"),
    )
    return ", ".join(filter(None, counted)) or NOTHING


def _count(rows: Sequence[object], one: str, many: str) -> str:
    return f"{len(rows)} {one if len(rows) == 1 else many}" if rows else ""


def in_full(difference: Difference, studio: Studio) -> tuple[Sentence, ...]:
    """A sentence for each thing that is different, promises first; `studio` names them."""
    return (
        *(_promise(row, studio) for row in difference.promises),
        *(_lost(key, studio) for key in difference.lost),
        *(
            said("{piece} is planned again.", piece=_piece(studio, k))
            for k in difference.gained
        ),
        *(_joint(row, studio) for row in difference.joints),
        *(_moved(row, studio) for row in difference.moved),
    )


def _promise(row: ChangedPromise, studio: Studio) -> Sentence:
    name = next((order.name for order in studio.orders if order.key == row.order), row.order)
    if row.after is None:
        return said("{order} is no longer planned to its end.", order=name)
    leaves = Moment(row.after)
    hours = row.hours_later
    if hours is None:
        return said("{order} leaves {when}.", order=name, when=leaves)
    text = "{order} leaves {when}, {lasting} " + ("later" if row.later else "sooner")
    tail = ", and is late." if row.broken else ", and is in time." if row.mended else "."
    return said(text + tail, order=name, when=leaves, lasting=Lasting(abs(hours)))


def _lost(key: str, studio: Studio) -> Sentence:
    plan = studio.plan
    rows = plan.unplanned if plan else ()
    reason = next((row.reason for row in rows if row.piece == key), "")
    if not reason:
        return said("{piece} is not planned any more.", piece=_piece(studio, key))
    text = "{piece} is not planned any more: {reason}"
    return said(text, piece=_piece(studio, key), reason=reason)


def _joint(row: ChangedJoint, studio: Studio) -> Sentence:
    name = _pour(studio, row.after)
    if not row.worse:
        return said("{pour} stands in its window now.", pour=name)
    if row.after.joint is Joint.SCUFFED:
        return said("{pour} has to be scuffed first.", pour=name)
    return said("{pour} needs a touch test first.", pour=name)


def _moved(row: MovedPour, studio: Studio) -> Sentence:
    name, hours = _pour(studio, row.after), row.hours_later
    spot = studio.spot(row.after.spot).name
    if not hours:
        return said("{pour} stands on {spot}.", pour=name, spot=spot)
    text = "{pour} starts {when}, {lasting} " + ("later" if hours > 0.0 else "sooner")
    tail = ", on {spot}." if row.on_other_spot else "."
    when, lasting = Moment(row.after.start), Lasting(abs(hours))
    return said(text + tail, pour=name, when=when, lasting=lasting, spot=spot)


def _piece(studio: Studio, key: str) -> str:
    return studio.piece(key).name


def _pour(studio: Studio, coat: PlannedCoat) -> str:
    piece = studio.piece(coat.piece)
    return f"{piece.name}, {piece.coat(coat.coat).kind}"
