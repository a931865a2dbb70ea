"""What the fields of the form say, as the change that they stand for."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.pieces import Joint
from studio_planner.services.log_book.corrections import corrected, pour_corrected
from studio_planner.services.log_book.entries import NEW
from studio_planner.services.log_book.pours import PourTold, poured
from studio_planner.services.log_book.steps import StepTold, shipped, told

if TYPE_CHECKING:
    from collections.abc import Mapping
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.services.editing.changes import Change

FIELDS = {
    EntryKind.POURED: ("coat", "start", "end", "spot", "joint"),
    EntryKind.TOUCHED: ("coat", "at", "touch", "verdict"),
    EntryKind.TAPED: ("coat", "at"),
    EntryKind.TRIMMED: ("coat", "at"),
    EntryKind.TURNED: ("coat", "at"),
    EntryKind.SANDED: ("coat", "at"),
    EntryKind.MOVED: ("at", "spot"),
    EntryKind.PACKED: ("at",),
    EntryKind.SHIPPED: ("at",),
    EntryKind.SPOILED: ("coat", "at"),
    EntryKind.STRIPPED: ("at",),
}
"""What is asked of each kind besides the piece and a note."""


def told_anew(studio: Studio, values: Mapping[str, Any], now: datetime) -> Change:
    """Write down what the fields say; an order leaves with all of its pieces."""
    kind: EntryKind = values["kind"]
    if kind is EntryKind.POURED:
        pour = PourTold(
            piece=values["piece"],
            coat=values["coat"],
            start=values["start"],
            end=values["end"],
            spot=values["spot"],
            joint=values["joint"],
            words=values["words"],
        )
        return poured(studio, [pour], now)
    order = studio.order_of(values["piece"]) if kind is EntryKind.SHIPPED else None
    if order is not None:
        return shipped(studio, order.key, values["at"], now, values["words"])
    given = {name: values[name] for name in FIELDS[kind]}
    step = StepTold(kind=kind, pieces=(values["piece"],), words=values["words"], **given)
    return told(studio, step, now)


def told_right(
    studio: Studio, entry: LogEntry, values: Mapping[str, Any], now: datetime
) -> Change:
    """Let an entry be as the fields say; a pour that is older than the log as well."""
    if entry.kind is EntryKind.POURED and entry.number == NEW:
        return pour_corrected(studio, _pour(entry, values), now, values["words"])
    given: dict[str, Any] = {"piece": values["piece"], "words": values["words"]}
    if entry.kind is EntryKind.POURED:
        pour = _pour(entry, values)
        given |= {
            "coat": pour.coat,
            "at": pour.start,
            "end": pour.end,
            "spot": pour.spot,
            "joint": pour.joint,
        }
    else:
        given |= {name: values[name] for name in FIELDS[entry.kind]}
    return corrected(studio, entry.number, replace(entry, **given), now)


def _pour(entry: LogEntry, values: Mapping[str, Any]) -> Poured:
    return Poured(
        piece=values["piece"],
        coat=values["coat"],
        start=values["start"],
        end=values["end"],
        spot=values["spot"] or entry.spot,
        joint=values["joint"] or entry.joint or Joint.BARE,
        batch=entry.batch,
    )
