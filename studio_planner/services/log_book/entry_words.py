"""What an entry of the log says, in a sentence, and whom it is about."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.log import EntryKind
from studio_planner.services.log_book.known import (
    coat_name,
    order_name,
    piece_name,
    product_name,
    spot_name,
)
from studio_planner.services.questions.sentences import Lasting, Sentence, said

if TYPE_CHECKING:
    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.studio import Studio


def about(studio: Studio, entry: LogEntry) -> str:
    """The piece and coat, the order or the product that an entry is about."""
    if entry.kind is EntryKind.WEIGHED:
        mix = next((one for one in studio.mixes if one.entry == entry.number), None)
        return "" if mix is None else product_name(studio, mix.product)
    if entry.piece and entry.coat:
        coat = coat_name(studio, entry.piece, entry.coat)
        return f"{piece_name(studio, entry.piece)}, {coat}"
    if entry.piece:
        return piece_name(studio, entry.piece)
    return order_name(studio, entry.order) if entry.order else ""


def what_happened(studio: Studio, entry: LogEntry) -> Sentence:
    """What happened, without whom it is about and when it was."""
    if entry.kind is EntryKind.POURED:
        return _pour(studio, entry)
    if entry.kind is EntryKind.WEIGHED and entry.batch is not None:
        return said("weighed as mix {batch}", batch=entry.batch)
    if entry.touch is not None and entry.verdict is not None:
        touch, verdict = kind_word(entry.touch), kind_word(entry.verdict)
        return said("touched: {touch}, {verdict}", touch=touch, verdict=verdict)
    if entry.kind is EntryKind.MOVED:
        return said("moved to {spot}", spot=spot_name(studio, entry.spot))
    if entry.kind is EntryKind.WITHDRAWN and entry.corrects is not None:
        return said("entry {number} withdrawn: it never happened", number=entry.corrects)
    return Sentence("{kind}", {"kind": kind_word(entry.kind)})


def _pour(studio: Studio, entry: LogEntry) -> Sentence:
    spot = spot_name(studio, entry.spot)
    joint = "" if entry.joint is None else kind_word(entry.joint)
    length = Lasting(((entry.end or entry.at) - entry.at) / timedelta(hours=1))
    if entry.batch is None:
        text = "poured in {length} on {spot}, {joint}"
        return said(text, length=length, spot=spot, joint=joint)
    text = "poured in {length} on {spot}, {joint}, from mix {batch}"
    return said(text, length=length, spot=spot, joint=joint, batch=entry.batch)
