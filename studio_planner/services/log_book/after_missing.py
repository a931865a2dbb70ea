"""After a missed window: the real choices, each to be tried, with its dates and its cost.

Which choices there are is common practice: what can be sanded is washed and sanded, what can't
is covered by a thin lock coat as long as some of the window is left, and else it is stripped.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import timedelta
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.craft.amounts import coat_grams
from studio_planner.craft.log import EntryKind
from studio_planner.craft.pieces import CoatKind, Joint
from studio_planner.craft.sheet_stages import may_scuff, window_stages, window_unknown
from studio_planner.craft.standing import is_spoiled, life_of, shipped_at
from studio_planner.craft.tongue import marked, translate
from studio_planner.science.stages import Edge
from studio_planner.services.editing.new_coats import new_coat
from studio_planner.services.editing.nouns import with_thing
from studio_planner.services.hands_on import block_of
from studio_planner.services.lanes import lanes_of
from studio_planner.services.log_book.mix_faults import bad_mix_of
from studio_planner.services.log_book.steps import StepTold, told
from studio_planner.services.questions.sentences import Inner, Moment, Sentence, said
from studio_planner.services.trying.trial import Trial

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Lane, Ribbon


class Way(StrEnum):
    """What can be done about a missed window."""

    TEST = "touch-test it and pour"
    FIRM = "pour it on the firm film"
    SCUFF = "wash and sand it"
    LOCK = "put a lock coat on"
    STRIP = "strip it back to the blank"


WORDS = (
    marked("after missing", "touch-test it and pour"),
    marked("after missing", "pour it on the firm film"),
    marked("after missing", "wash and sand it"),
    marked("after missing", "put a lock coat on"),
    marked("after missing", "strip it back to the blank"),
)
"""The values of those ways; a test says which are missing."""


def way_word(way: Way) -> str:
    """Say a way out in the language that is spoken."""
    return translate("after missing", way.value)


@dataclass(frozen=True, slots=True, kw_only=True)
class Missed:
    """A coat that can't be poured in its safe window any more, over a film that lies there.

    `closed` is when the window closes at its safe edge; the whole block has to lie before.
    """

    piece: str
    coat: str
    name: str
    closed: datetime


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """One way out; `words` say what it means, or why it is none where `trial` is None.

    `extra_minutes` of hands and `extra_grams` of mix are what it costs more than a pour in the
    window, for this piece; minutes of stripping itself are not known and not counted.
    """

    way: Way
    words: Sentence
    trial: Trial | None = None
    extra_minutes: float = 0.0
    extra_grams: float = 0.0


@dataclass(frozen=True, slots=True)
class _Over:
    """A coat that is next on a piece, over a film that lies there, with the window's end."""

    piece: Piece
    index: int
    below: Ribbon
    safe: datetime
    likely: datetime

    @property
    def coat(self) -> Coat:
        return self.piece.stack[self.index]

    @property
    def lower(self) -> Coat:
        return self.below.coat


def missed_windows(view: DeskView) -> tuple[Missed, ...]:
    """The coats that are next on their pieces and whose safe window is too short by now."""
    return tuple(_missed(over) for over in _next_coats(view) if _too_late(view, over))


def choices_after(view: DeskView, missed: Missed) -> tuple[Choice, ...]:
    """Every way out of a missed window, those that are none with the reason why."""
    over = next((one for one in _next_coats(view) if _missed(one) == missed), None)
    if over is None:
        return ()
    ways = (_tested(view, over), *_firm(view, over), _scuffed(view, over), *_locked(view, over))
    real = (_with_doubt(view.studio, over, way) for way in ways if way is not None)
    return (*real, _stripped(view, over))


def _with_doubt(studio: Studio, over: _Over, way: Choice) -> Choice:
    """What goes onto a film that never cures is lost with it; only stripping is sure then."""
    fault = bad_mix_of(studio, over.piece.key, over.lower.key)
    if fault is None:
        return way
    text = "{what} {fault} Make sure by a touch test that the film below cures at all."
    return replace(way, words=said(text, what=Inner(way.words), fault=Inner(fault)))


def _next_coats(view: DeskView) -> Iterable[_Over]:
    studio = view.studio
    for lane in lanes_of(studio, None, view.timing):
        life = life_of(studio, lane.piece.key)
        if is_spoiled(life) or shipped_at(life) is not None:
            continue
        over = _next_on(lane)
        if over is not None:
            yield over


def _next_on(lane: Lane) -> _Over | None:
    """The next coat of a piece over a film with a window that closes; None without one."""
    piece, index = lane.piece, len(lane.coats)
    position = piece.below(index) if 0 < index < len(piece.stack) else None
    if position is None or window_unknown(lane.studio, piece, index):
        return None
    _, closes = window_stages(lane.studio, piece, index)
    below = next(bar for bar in lane.ribbons if bar.coat.key == piece.stack[position].key)
    if closes is None:
        return None
    safe = below.film.safe(closes)
    likely = below.film.reached(closes, Edge.LIKELY)
    if safe is None:
        return None
    return _Over(piece, index, below, safe, likely or lane.timing.end)


def _too_late(view: DeskView, over: _Over) -> bool:
    return view.now + block_of(view.studio, over.piece, over.coat) > over.safe


def _missed(over: _Over) -> Missed:
    piece = over.piece
    return Missed(
        piece=piece.key,
        coat=over.coat.key,
        name=f"{piece.name}, {piece.coat_name(over.coat.key)}",
        closed=over.safe,
    )


def _trial(view: DeskView, over: _Over, way: Way, studio: Studio | None = None) -> Trial:
    words = f"{over.piece.name}: {way_word(way)}"
    coats = frozenset({(over.piece.key, over.coat.key)})
    return Trial(words=words, studio=studio or view.studio, coats=coats)


def _tested(view: DeskView, over: _Over) -> Choice | None:
    """While the likely window is open, where the coat below allows it."""
    wet = over.coat.joint is Joint.WET_IN_WET
    fits = view.now + block_of(view.studio, over.piece, over.coat) <= over.likely
    if wet or not fits or not (over.lower.sandable or over.lower.test_first):
        return None
    text = "It likely stays open until {likely}; a touch test says whether it still is."
    words = said(text, likely=Moment(over.likely))
    return Choice(way=Way.TEST, words=words, trial=_trial(view, over, Way.TEST))


def _firm(view: DeskView, over: _Over) -> Iterable[Choice]:
    """A coat that was to go wet in wet may still bond once the film is firm."""
    if over.coat.joint is not Joint.WET_IN_WET:
        return
    stack = tuple(
        replace(coat, joint=Joint.IN_WINDOW) if coat is over.coat else coat
        for coat in over.piece.stack
    )
    piece = replace(over.piece, stack=stack)
    after = with_thing(view.studio, piece)
    if window_unknown(after, piece, over.index):
        return
    words = said("It is no longer wet; pour it in the window that comes instead.")
    yield Choice(way=Way.FIRM, words=words, trial=_trial(view, over, Way.FIRM, after))


def _scuffed(view: DeskView, over: _Over) -> Choice | None:
    if not over.coat.holds_on_sanded:
        return None
    name = over.piece.coat_name(over.lower.key)
    if not over.lower.sandable:
        words = said("The {below} can't be sanded: no sanding helps here.", below=name)
        return Choice(way=Way.SCUFF, words=words)
    if not may_scuff(view.studio, over.piece, over.index):
        text = "The sheet of the {below} does not say when it can be sanded; add that figure."
        return Choice(way=Way.SCUFF, words=said(text, below=name))
    minutes = view.studio.settings.sand_minutes * over.piece.count
    text = "Wash it, sand it once it sands to dry powder, and pour when the dust has settled."
    return Choice(
        way=Way.SCUFF,
        words=said(text),
        trial=_trial(view, over, Way.SCUFF),
        extra_minutes=float(minutes),
    )


def _locked(view: DeskView, over: _Over) -> Iterable[Choice]:
    """A lock coat is for what can't be sanded, and takes less time than most coats."""
    kept = {CoatKind.LOCK, CoatKind.LEAF}
    if over.lower.sandable or over.coat.kind in kept or over.coat.joint is Joint.WET_IN_WET:
        return
    lock = new_coat(view.studio, CoatKind.LOCK, over.piece.stack, over.index)
    lock = replace(lock, faces=over.coat.faces, joint=over.coat.joint)
    stack = (*over.piece.stack[: over.index], lock, *over.piece.stack[over.index :])
    piece = replace(over.piece, stack=stack)
    block = block_of(view.studio, piece, lock)
    last = over.likely if over.lower.test_first else over.safe
    if view.now + block > last:
        text = "It is too late for a lock coat: its window closes {closes}."
        yield Choice(way=Way.LOCK, words=said(text, closes=Moment(last)))
        return
    after = with_thing(view.studio, piece)
    text = "A thin clear coat until {closes} keeps the bond; it can be sanded later."
    yield Choice(
        way=Way.LOCK,
        words=said(text, closes=Moment(last)),
        trial=_trial(view, over, Way.LOCK, after),
        extra_minutes=block / timedelta(minutes=1),
        extra_grams=_grams(view.studio, piece, lock),
    )


def _stripped(view: DeskView, over: _Over) -> Choice:
    step = StepTold(kind=EntryKind.STRIPPED, pieces=(over.piece.key,), at=view.now)
    after = told(view.studio, step, view.now).make(view.studio)
    again = over.piece.stack[: over.index]
    blocks = (block_of(view.studio, over.piece, one) for one in again)
    text = (
        "Everything comes off, or a new blank is taken: one coat is poured again."
        if len(again) == 1
        else "Everything comes off, or a new blank is taken: {count} coats are poured again."
    )
    return Choice(
        way=Way.STRIP,
        words=said(text, count=len(again)),
        trial=_trial(view, over, Way.STRIP, after),
        extra_minutes=sum(blocks, timedelta()) / timedelta(minutes=1),
        extra_grams=sum(_grams(view.studio, over.piece, one) for one in again),
    )


def _grams(studio: Studio, piece: Piece, coat: Coat) -> float:
    return coat_grams(piece, coat, studio.product(coat.product), studio.settings)
