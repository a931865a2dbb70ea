"""What one tap can write down of a piece, and what of that is due now."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.log import EntryKind
from studio_planner.craft.standing import is_spoiled, life_of, shipped_at
from studio_planner.craft.tongue import capital, listed, translate
from studio_planner.services.bench import BenchTask, bench_of
from studio_planner.services.hands_items import HandsKind
from studio_planner.services.log_book.known import coat_name, piece_name
from studio_planner.services.log_book.pours import PourTold, mix_of, planned_minutes, poured
from studio_planner.services.log_book.steps import StepTold, shipped, told
from studio_planner.services.trying.trial import begun_coats

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.craft.touches import Touch, Verdict
    from studio_planner.services.desk import DeskView
    from studio_planner.services.editing.changes import Change

Coats = tuple[tuple[str, str], ...]
"""Pairs of piece and coat; the coat is empty where none is meant."""

_KIND_OF_HANDS = {
    HandsKind.POUR: EntryKind.POURED,
    HandsKind.SAND: EntryKind.SANDED,
    HandsKind.TURN: EntryKind.TURNED,
    HandsKind.TAPE: EntryKind.TAPED,
    HandsKind.TRIM: EntryKind.TRIMMED,
    HandsKind.PACK: EntryKind.PACKED,
}
_ON_LAST = frozenset({EntryKind.TOUCHED, EntryKind.TAPED, EntryKind.TRIMMED})
_FOR_NEXT = frozenset({EntryKind.TURNED, EntryKind.SANDED})
_AFTER_LEAVING = (EntryKind.SPOILED, EntryKind.STRIPPED)
_SOON = timedelta(hours=2)
_LATELY = timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Tap:
    """Something that happened, told by one tap; `coats` are those it happened to.

    A pour has every coat of its mix. A touch test has its touch and what was found. `planned`
    is when the plan has it; None where none does.
    """

    kind: EntryKind
    coats: Coats
    touch: Touch | None = None
    verdict: Verdict | None = None
    planned: datetime | None = None

    @property
    def piece(self) -> str:
        """The key of the piece, or of the first of several."""
        return self.coats[0][0]

    @property
    def coat(self) -> str:
        """The coat of the first piece; empty where none is meant."""
        return self.coats[0][1]


def what_words(studio: Studio, tap: Tap) -> str:
    """What happened, without the piece: Poured: flood."""
    what = kind_word(tap.kind)
    if tap.touch is not None and tap.verdict is not None:
        what = f"{kind_word(tap.touch)}, {kind_word(tap.verdict)}"
    if tap.coat and tap.kind in {EntryKind.POURED, *_ON_LAST}:
        what = translate("taps", "{what}: {coat}").format(
            what=what, coat=coat_name(studio, tap.piece, tap.coat)
        )
    return capital(what)


def tap_words(studio: Studio, tap: Tap) -> str:
    """What happened and to which pieces: Poured: flood (Harbour board 1 and 2)."""
    names = listed(piece_name(studio, piece) for piece, _ in tap.coats)
    return translate("taps", "{what} ({names})").format(
        what=what_words(studio, tap), names=names
    )


def may_happen(studio: Studio, piece: str) -> tuple[EntryKind, ...]:
    """What can be written down of a piece as it stands, in the order of its life."""
    life = life_of(studio, piece)
    if is_spoiled(life):
        return (EntryKind.STRIPPED,)
    if shipped_at(life) is not None:
        return _AFTER_LEAVING
    kinds = []
    if next_coat(studio, piece):
        kinds.append(EntryKind.POURED)
    if last_coat(studio, piece):
        kinds += [EntryKind.TOUCHED, EntryKind.TAPED, EntryKind.TRIMMED]
    kinds += [EntryKind.TURNED, EntryKind.SANDED, EntryKind.MOVED]
    kinds += [EntryKind.PACKED, EntryKind.SHIPPED, EntryKind.SPOILED]
    if life or last_coat(studio, piece):
        kinds.append(EntryKind.STRIPPED)
    return tuple(kinds)


def next_coat(studio: Studio, piece: str) -> str:
    """The coat of a piece that is to be poured next; empty where all are, or none is there."""
    stack = next((one.stack for one in studio.pieces if one.key == piece), ())
    done = {pour.coat for pour in studio.pours_of(piece)} if stack else set()
    return next((coat.key for coat in stack if coat.key not in done), "")


def last_coat(studio: Studio, piece: str) -> str:
    """The coat that lies uppermost on a piece; empty on a bare blank."""
    known = any(one.key == piece for one in studio.pieces)
    pours = studio.pours_of(piece) if known else ()
    return pours[-1].coat if pours else ""


def usual_coat(studio: Studio, kind: EntryKind, piece: str) -> str:
    """The coat that is meant where somebody says only what happened to a piece."""
    if kind in _ON_LAST:
        return last_coat(studio, piece)
    if kind is EntryKind.POURED or kind in _FOR_NEXT:
        return next_coat(studio, piece)
    return ""


def tap_for(
    studio: Studio,
    kind: EntryKind,
    piece: str,
    touch: Touch | None = None,
    verdict: Verdict | None = None,
) -> Tap:
    """The tap that tells of a piece that something happened to it; a pour of its whole mix."""
    coats: Coats = ((piece, usual_coat(studio, kind, piece)),)
    if kind is EntryKind.POURED:
        coats = _with_its_mix(studio, *coats[0])
    return Tap(kind=kind, coats=coats, touch=touch, verdict=verdict)


def _with_its_mix(studio: Studio, piece: str, coat: str) -> Coats:
    """The coat, and those planned from the same mix that can be poured now."""
    plan = studio.plan
    coats = () if plan is None else plan.coats
    planned = next((one for one in coats if (one.piece, one.coat) == (piece, coat)), None)
    if plan is None or planned is None:
        return ((piece, coat),)
    mates = (one for one in mix_of(plan, planned) if one.piece != piece)
    ready = ((m.piece, m.coat) for m in mates if next_coat(studio, m.piece) == m.coat)
    return ((piece, coat), *ready)


def tapped(studio: Studio, tap: Tap, at: datetime, now: datetime) -> Change:
    """Write down that it happened at an instant; a pour ended then and took its usual time.

    Making it raises InvalidEntry in sentences where it can't have happened.
    """
    if tap.kind is EntryKind.POURED:
        length = timedelta(minutes=planned_minutes(studio, *tap.coats[0]))
        pours = [
            PourTold(piece=piece, coat=coat, start=at - length, end=at)
            for piece, coat in tap.coats
        ]
        return poured(studio, pours, now)
    order = studio.order_of(tap.piece) if tap.kind is EntryKind.SHIPPED else None
    if order is not None:
        return shipped(studio, order.key, at, now)
    step = StepTold(
        kind=tap.kind,
        pieces=tuple(piece for piece, _ in tap.coats),
        at=at,
        coat=tap.coat,
        touch=tap.touch,
        verdict=tap.verdict,
    )
    return told(studio, step, now)


def tap_of_task(task: BenchTask, studio: Studio) -> Tap | None:
    """What it means that something on the bench was done; None where nothing is noted."""
    kind = _KIND_OF_HANDS.get(task.item.kind)
    if kind is None:
        return None
    coat = task.item.coat or ""
    if kind is EntryKind.POURED:
        coats = _pours_of_task(studio, task)
    else:
        coats = tuple((piece, coat) for piece in task.pieces)
    return Tap(kind=kind, coats=coats, planned=task.item.start)


def _pours_of_task(studio: Studio, task: BenchTask) -> Coats:
    plan = studio.plan
    coats = () if plan is None else plan.coats
    first = next((one for one in coats if one.number == task.item.number), None)
    if plan is None or first is None:
        return ((task.item.piece, task.item.coat or ""),)
    return tuple((one.piece, one.coat) for one in mix_of(plan, first))


def due_taps(view: DeskView) -> tuple[Tap, ...]:
    """What has probably just happened: what has begun by the plan, or soon begins."""
    if view.plan is None:
        return ()
    bench = bench_of(view.studio, view.plan, view.now, view.timing)
    near = (task for task in bench.tasks if task.item.start <= view.now + _SOON)
    due = (tap for one in near if (tap := tap_of_task(one, view.studio)))
    found: dict[tuple[EntryKind, Coats], Tap] = {}
    for tap in (*_begun(view), *due):
        found.setdefault((tap.kind, tap.coats), tap)
    return tuple(found.values())


def _begun(view: DeskView) -> Iterable[Tap]:
    """Pours that the plan has as begun of late and that nobody has written down."""
    mixes: dict[int, list[PlannedCoat]] = {}
    for one in begun_coats(view.studio, view.now):
        of_late = view.now - one.start <= _LATELY
        if of_late and next_coat(view.studio, one.piece) == one.coat:
            mixes.setdefault(one.mix, []).append(one)
    for mix in mixes.values():
        coats = tuple((one.piece, one.coat) for one in mix)
        yield Tap(kind=EntryKind.POURED, coats=coats, planned=mix[0].start)
