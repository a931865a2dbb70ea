"""What a drop changes: a pour at another time, its piece on another spot, or both."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.desktop import bar_words
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.words import piece_name
from studio_planner.services.editing.pins import dropped, put_elsewhere
from studio_planner.services.moving.moved_plan import moved_plan, put_on_spot

if TYPE_CHECKING:
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.timeline_work.drag import Drag
    from studio_planner.services.editing.changes import Change
    from studio_planner.services.moving.held import Goes
    from studio_planner.services.moving.judging import Verdict


class Drop(NamedTuple):
    """A change, the coats that it moves itself, and what is said of it."""

    change: Change
    mine: tuple[PlannedCoat, ...]
    said: str


def drop_at(studio: Studio, drag: Drag, verdict: Verdict) -> Drop:
    """What dropping a pour where a verdict allows it changes."""
    goes = drag.goes
    if goes is None:
        return _poured_then(studio, drag, verdict)
    place = studio.place_of_spot(drag.bar.planned.spot)
    if verdict.start == drag.bar.start and studio.place_of_spot(goes.spot) == place:
        return _put_on(studio, drag, goes, verdict)
    return _poured_there(studio, drag, goes, verdict)


def _poured_then(studio: Studio, drag: Drag, verdict: Verdict) -> Drop:
    bar, when = _facts(studio, drag, verdict)
    words = translate("work", "Pour {bar} {when}").format(bar=bar, when=when)
    said = translate("work", "{bar} is pinned to {when}.").format(bar=bar, when=when)
    moved = partial(moved_plan, verdict=verdict)
    return Drop(dropped(verdict.coats, moved, words), verdict.coats, said)


def _poured_there(studio: Studio, drag: Drag, goes: Goes, verdict: Verdict) -> Drop:
    bar, when = _facts(studio, drag, verdict)
    spot = studio.spot(goes.spot).name
    words = translate("work", "Pour {bar} {when} on {spot}").format(
        bar=bar, when=when, spot=spot
    )
    said = translate(
        "work", "{bar} is pinned to {when}, on {spot}; planning leaves it there where it can."
    ).format(bar=bar, when=when, spot=spot)
    moved = partial(moved_plan, verdict=verdict)
    mine = _mine(drag, goes, verdict)
    return Drop(dropped(verdict.coats, moved, words), mine, said)


def _put_on(studio: Studio, drag: Drag, goes: Goes, verdict: Verdict) -> Drop:
    piece, spot = drag.bar.lane.piece, studio.spot(goes.spot).name
    named = piece_name(piece)
    words = translate("work", "Put {piece} on {spot}").format(piece=named, spot=spot)
    said = translate(
        "work", "{piece} goes on {spot}; planning leaves it there where it can."
    ).format(piece=named, spot=spot)
    put = partial(put_on_spot, piece=piece.key, goes=goes)
    return Drop(put_elsewhere(put, words), _mine(drag, goes, verdict), said)


def _mine(drag: Drag, goes: Goes, verdict: Verdict) -> tuple[PlannedCoat, ...]:
    piece = drag.bar.lane.piece.key
    others = (c for c in (*verdict.along, *verdict.after) if c.piece == piece)
    return (*verdict.coats, *(c for c in others if c.coat in goes.coats))


def _facts(studio: Studio, drag: Drag, verdict: Verdict) -> tuple[str, str]:
    """What is poured, and when."""
    return bar_words.short_name(drag.bar), DeskVoice(studio).moment(verdict.start)
