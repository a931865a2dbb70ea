"""Writing down pours: those of the plan, and any other."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.log import EntryKind, Poured
from studio_planner.craft.pieces import Joint
from studio_planner.craft.standing import is_spoiled, last_of, lies_on, life_of
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.hands_on import block_of
from studio_planner.services.log_book.entries import entry_for, logged
from studio_planner.services.log_book.known import piece_name, the_coat, the_piece
from studio_planner.services.log_book.times import require_after, require_end, require_past

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence
    from datetime import datetime

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class PourTold:
    """A pour as the maker tells it; `spot` and `joint` None are those of the plan.

    Without a plan for it, the spot is the one where the piece lies and the joint follows from
    the stack. `batch` is the number of its mix, where that is not clear from the mixes.
    """

    piece: str
    coat: str
    start: datetime
    end: datetime
    spot: str | None = None
    joint: Joint | None = None
    batch: int | None = None
    words: str = ""


def mix_of(plan: Plan, coat: PlannedCoat) -> tuple[PlannedCoat, ...]:
    """All coats that are poured from the same mix as a coat, itself among them."""
    return tuple(one for one in plan.coats if one.mix == coat.mix)


def planned_minutes(studio: Studio, piece: str, coat: str) -> float:
    """How long a pour takes: as planned, else set-up and all single pieces of the set."""
    planned = _planned(studio, piece, coat)
    if planned is not None:
        return (planned.end - planned.start) / timedelta(minutes=1)
    one = studio.piece(piece)
    return block_of(studio, one, one.coat(coat)) / timedelta(minutes=1)


def poured(studio: Studio, told: Sequence[PourTold], now: datetime) -> Change:
    """Write down pours of one mix as one change, at `now` (aware).

    Pins of what is poured are let go. Making it raises InvalidEntry in sentences: it lies
    ahead, its coat is poured already, the coat below is not, the piece is spoiled.
    """
    words = translate("log", "Poured: {what}").format(
        what=", ".join(dict.fromkeys(piece_name(studio, one.piece) for one in told))
    )
    return Change(words, lambda then: _with_told(then, told, now))


def _with_told(studio: Studio, told: Sequence[PourTold], now: datetime) -> Studio:
    rows: list[Poured] = []
    for one in sorted(told, key=lambda one: _place(studio, one)):
        check_pour(studio, one, now, rows)
        rows.append(_row(studio, one))
    words = {(one.piece, one.coat): one.words for one in told}
    entries = [entry_for(row, now, words[row.piece, row.coat]) for row in rows]
    return logged(studio, now, entries)


def _place(studio: Studio, one: PourTold) -> tuple[str, int]:
    coat = the_coat(studio, one.piece, one.coat)
    return one.piece, studio.piece(one.piece).position(coat.key)


def check_pour(
    studio: Studio, told: PourTold, now: datetime, along: Iterable[Poured] = ()
) -> None:
    """Require that a pour can have happened, after those written down `along` with it.

    InvalidEntry with every reason why not.
    """
    the_coat(studio, told.piece, told.coat)
    piece = the_piece(studio, told.piece)
    rules = Rulebook(f"{piece.name}, {piece.coat_name(told.coat)}")
    require_past(rules, told.start, now, "start")
    require_end(rules, told.start, told.end, now)
    rules.require(
        not is_spoiled(life_of(studio, told.piece)),
        "piece",
        translate("log", "it is spoiled; strip it first, or take that back."),
    )
    poured = [*studio.pours_of(told.piece), *(one for one in along if one.piece == told.piece)]
    _check_stack(studio, told, poured, rules)
    spots = {spot.key for spot in studio.spots}
    spot = told.spot or _spot(studio, told)
    rules.require(
        spot in spots,
        "spot",
        translate("log", "say on which spot it lies.")
        if not spot
        else translate("rules", "there is no spot “{spot}”.").format(spot=spot),
    )
    rules.require(
        told.batch is None or any(mix.batch == told.batch for mix in studio.standing_mixes),
        "batch",
        translate("rules", "no mix {batch} was weighed.").format(batch=told.batch),
    )
    rules.close()


def _check_stack(
    studio: Studio, told: PourTold, poured: Sequence[Poured], rules: Rulebook
) -> None:
    piece = studio.piece(told.piece)
    names = [pour.coat for pour in poured]
    if told.coat in names:
        rules.require(False, "coat", _twice(studio, told))  # noqa: FBT003 - found above
    missing = [
        piece.coat_name(coat.key)
        for coat in piece.stack[: piece.position(told.coat)]
        if coat.key not in names
    ]
    rules.require(
        not missing,
        "coat",
        translate("log", "write down {missing} first; it lies below.").format(
            missing=", ".join(missing)
        ),
    )
    if poured and told.start.utcoffset() is not None and told.coat not in names:
        last = max(poured, key=lambda pour: pour.start)
        what = translate("log", "the pour of {coat}").format(coat=piece.coat_name(last.coat))
        require_after(rules, told.start, last.start + timedelta(microseconds=1), what, "start")


def _twice(studio: Studio, told: PourTold) -> str:
    entry = last_of(life_of(studio, told.piece), EntryKind.POURED, told.coat)
    if entry is None:
        return translate("log", "it is written down already; correct that entry instead.")
    text = translate("log", "it is written down already; correct entry {number} instead.")
    return text.format(number=entry.number)


def _row(studio: Studio, told: PourTold) -> Poured:
    planned = _planned(studio, told.piece, told.coat)
    joint = told.joint or (planned.joint if planned is not None else None)
    return Poured(
        piece=told.piece,
        coat=told.coat,
        start=told.start,
        end=told.end,
        spot=told.spot or _spot(studio, told),
        joint=joint or _usual_joint(studio, told.piece, told.coat),
        batch=told.batch,
    )


def _spot(studio: Studio, told: PourTold) -> str:
    """Where the plan has it, else where the piece lay last; empty where nobody knows."""
    planned = _planned(studio, told.piece, told.coat)
    if planned is not None:
        return planned.spot
    return lies_on(studio, told.piece) or ""


def _usual_joint(studio: Studio, key: str, coat: str) -> Joint:
    piece = studio.piece(key)
    bare = piece.below(piece.position(coat)) is None
    return Joint.BARE if bare else piece.coat(coat).joint


def _planned(studio: Studio, piece: str, coat: str) -> PlannedCoat | None:
    coats = () if studio.plan is None else studio.plan.coats
    return next((one for one in coats if (one.piece, one.coat) == (piece, coat)), None)


def with_pour(
    studio: Studio,
    coats: Iterable[PlannedCoat],
    start: datetime,
    end: datetime,
    *,
    written: datetime | None = None,
) -> Studio:
    """Write down that planned coats were poured from `start` to a later `end` (aware).

    Coats below them that the plan had before and that nobody has written down count as poured
    at their planned times, since nothing can lie on a coat that is not there. Pins of what is
    poured are let go. It was `written` at the end, unless told otherwise.
    """
    done = set(studio.poured_keys)
    entries = []
    at = end if written is None else written
    for coat in coats:
        if (coat.piece, coat.coat) in done:
            continue
        for earlier in _before(studio.plan, coat):
            if (earlier.piece, earlier.coat) not in done:
                row = _as_planned(earlier, earlier.start, min(earlier.end, start))
                entries.append(entry_for(row, at, translate("log", "taken as planned")))
                done.add((earlier.piece, earlier.coat))
        entries.append(entry_for(_as_planned(coat, start, end), at))
        done.add((coat.piece, coat.coat))
    return logged(studio, at, entries) if entries else studio


def _before(plan: Plan | None, coat: PlannedCoat) -> list[PlannedCoat]:
    coats = plan.coats if plan else ()
    rows = [one for one in coats if one.piece == coat.piece and one.start < coat.start]
    return sorted(rows, key=lambda one: one.start)


def _as_planned(coat: PlannedCoat, start: datetime, end: datetime) -> Poured:
    return Poured(
        piece=coat.piece,
        coat=coat.coat,
        start=start,
        end=end,
        spot=coat.spot,
        joint=coat.joint,
    )
