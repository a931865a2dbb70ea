"""What is different between two plans, in words: one line, and a sentence for each thing."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import Joint
from studio_planner.craft.tongue import counted, marked, translate
from studio_planner.services.left_out import why_left_out
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

NOTHING = marked("difference", "Nothing else moved")


def in_short(difference: Difference) -> str:
    """The difference in one line: 3 pours moved, 1 promise later, 1 joint worse."""
    later = [row for row in difference.promises if row.later]
    sooner = [row for row in difference.promises if not row.later]
    counted = (
        _count(
            difference.moved,
            translate("difference", "{count} pour moved"),
            translate("difference", "{count} pours moved"),
        ),
        _count(
            later,
            translate("difference", "{count} promise later"),
            translate("difference", "{count} promises later"),
        ),
        _count(
            sooner,
            translate("difference", "{count} promise sooner"),
            translate("difference", "{count} promises sooner"),
        ),
        _count(
            difference.worsened,
            translate("difference", "{count} joint worse"),
            translate("difference", "{count} joints worse"),
        ),
        _count(
            [joint for joint in difference.joints if not joint.worse],
            translate("difference", "{count} joint better"),
            translate("difference", "{count} joints better"),
        ),
        _count(
            difference.lost,
            translate("difference", "{count} piece not planned"),
            translate("difference", "{count} pieces not planned"),
        ),
        _count(
            difference.gained,
            translate("difference", "{count} piece planned again"),
            translate("difference", "{count} pieces planned again"),
        ),
    )
    return ", ".join(filter(None, counted)) or translate("difference", NOTHING)


def _count(rows: Sequence[object], one: str, many: str) -> str:
    return counted(len(rows), one, many) if rows else ""


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
    return said(_leaving(row), order=name, when=leaves, lasting=Lasting(abs(hours)))


def _leaving(row: ChangedPromise) -> str:
    if row.broken:
        text = "{order} leaves {when}, {lasting} later, and is late."
    elif row.mended:
        text = "{order} leaves {when}, {lasting} sooner, and is in time."
    elif row.later:
        text = "{order} leaves {when}, {lasting} later."
    else:
        text = "{order} leaves {when}, {lasting} sooner."
    return text


def _lost(key: str, studio: Studio) -> Sentence:
    reason = why_left_out(studio.plan, studio.piece(key))
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
    if row.on_other_spot:
        text = (
            "{pour} starts {when}, {lasting} later, on {spot}."
            if hours > 0.0
            else "{pour} starts {when}, {lasting} sooner, on {spot}."
        )
    else:
        text = (
            "{pour} starts {when}, {lasting} later."
            if hours > 0.0
            else "{pour} starts {when}, {lasting} sooner."
        )
    when, lasting = Moment(row.after.start), Lasting(abs(hours))
    return said(text, pour=name, when=when, lasting=lasting, spot=spot)


def _piece(studio: Studio, key: str) -> str:
    return studio.piece(key).name


def _pour(studio: Studio, coat: PlannedCoat) -> str:
    piece = studio.piece(coat.piece)
    return f"{piece.name}, {kind_word(piece.coat(coat.coat).kind)}"
