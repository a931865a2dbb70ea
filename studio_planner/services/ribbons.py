"""What the desk draws of a piece: its lane with ribbons, steps and flags.

Only values and clocks; nothing here knows how a ribbon looks. Films, windows and flags are
worked out when they are first asked for, so that a long plan opens at once.
"""

from __future__ import annotations

from functools import cached_property
from operator import attrgetter
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.science.stages import Stage
from studio_planner.services.doorways import doorway_for, safe_window
from studio_planner.services.film_shades import FIRM, Film
from studio_planner.services.left_out import why_left_out
from studio_planner.services.ready_flags import FLAG_STAGES, flags_of, kept_flags
from studio_planner.services.whereabouts import PlannedStudio, Whereabouts

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence
    from datetime import datetime

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.plans import PlannedCoat, PlannedStep, Readiness
    from studio_planner.craft.products import Product
    from studio_planner.services.doorways import Doorway
    from studio_planner.services.ready_flags import Flag

__all__ = ["Bar", "Lane", "PlannedStudio", "Ribbon", "StepMark"]

_ENDS = (*FLAG_STAGES, Stage.TACK_FREE)
"""The last of these at its safe edge is where a film ends on which nothing lies."""

_WINDOW = (Stage.RECOAT_OPENS, Stage.RECOAT_CLOSES)


class Ribbon:
    """One coat on a lane: its hands-on block, then its film until the next coat covers it.

    `planned.start` to `planned.end` is the block; `begins` and `spread` are the same in
    seconds since 1970 UTC.
    """

    def __init__(self, lane: Lane, planned: PlannedCoat) -> None:
        """Place a planned coat on its lane."""
        self.lane = lane
        self.planned = planned
        self.coat: Coat = lane.piece.coat(planned.coat)
        self.product: Product = lane.studio.product(self.coat.product)
        self.begins = planned.start.timestamp()
        self.spread = planned.end.timestamp()
        self._stages_known = False
        self._fine_known = False

    @cached_property
    def film(self) -> Film:
        """What the clocks say about it."""
        planned, lane = self.planned, self.lane
        return Film(lane.timing, self.product, planned.start, planned.end, lane.legs)

    @property
    def start(self) -> datetime:
        """When hands begin: A meets B."""
        return self.planned.start

    @property
    def pinned(self) -> bool:
        """Whether the maker has put it at its time."""
        return self.planned.coat in self.lane.pinned and not self.planned.poured

    @property
    def position(self) -> int:
        """The coat's place in the stack, 0 for the first."""
        return self.lane.piece.position(self.planned.coat)

    @cached_property
    def covered_by(self) -> PlannedCoat | None:
        """The planned coat that lies on this one, None where it stays in the air."""
        piece = self.lane.piece
        return next(
            (c for c in self._later if piece.below(piece.position(c.coat)) == self.position),
            None,
        )

    @cached_property
    def lifted(self) -> bool:
        """Whether a film on another face is still curing in the open air under this one."""
        earlier = (b for b in self.lane.bars if isinstance(b, Ribbon) and b.start < self.start)
        return any(
            b.covered_by is not self.planned and b.until > self.planned.end for b in earlier
        )

    @cached_property
    def until(self) -> datetime:
        """Where the ribbon ends: the next coat's start, or full cure at its safe edge.

        A film that its data sheet does not follow so far ends at its last known stage.
        """
        if self.covered_by is not None:
            return max(self.covered_by.start, self.planned.end)
        known = {mark.stage for mark in self.film.marks}
        ends = [self.film.safe(stage) for stage in _ENDS if stage in known]
        if not ends:
            return self.planned.end
        return max(end or self.lane.timing.end for end in ends)

    @property
    def hidden_after(self) -> datetime:
        """When nothing of the ribbon shows any more, found without a clock if it can be."""
        return self.covered_by.start if self.covered_by is not None else self.until

    @property
    def shows_until(self) -> float:
        """When nothing of it shows any more, as far as it is known [s since 1970 UTC]."""
        covered = self.covered_by is not None
        return self._seen_last if covered or self._stages_known else self._last_instant

    @cached_property
    def _seen_last(self) -> float:
        return self._last_instant

    @property
    def _last_instant(self) -> float:
        last = self.planned_until.timestamp()
        # A window may stay open behind the coat that covers its film.
        window = self.covered_by.window if self.covered_by is not None else None
        closes = None if window is None else window.closes
        return last if closes is None else max(last, closes.timestamp())

    @cached_property
    def phases(self) -> tuple[tuple[float, float, float], ...]:
        """The film in three tones, wet, firm and hard: (from, to, tone) in seconds."""
        return self.film.phases(self.until.timestamp())

    @cached_property
    def wet_until(self) -> float:
        """When it is likely no longer wet, or where it ends [s since 1970 UTC]."""
        return min(self.film.first_of(FIRM, self.spread), self.until.timestamp())

    @cached_property
    def tones(self) -> tuple[tuple[float, float], ...]:
        """(second, tone 0 wet to 1 hard) from the block's end to where the ribbon ends."""
        return self.film.tones(self.until.timestamp())

    def known(self, *, fine: bool) -> bool:
        """Whether clocks have said when its stages come, and if `fine` all that is drawn."""
        return self._fine_known if fine else self._stages_known

    def ask_clocks(self, *, fine: bool) -> None:
        """Ask for the stages, and if `fine` for shades and doorway; they are kept."""
        for _ in self.asking(fine=fine):
            pass

    def asking(self, *, fine: bool) -> Iterator[None]:
        """Ask as `ask_clocks` does, in parts of one clock each."""
        ends = () if self.covered_by is not None else _ENDS
        film = self.film
        yield
        yield from film.asking((*ends, *_WINDOW) if fine else ends)
        _ = self.until, film.marks
        self._stages_known = True
        if fine:
            yield
            _ = self.tones
            yield
            _ = self.doorway
            self._fine_known = True

    @property
    def planned_until(self) -> datetime:
        """Where the ribbon ends as far as the plan says it, so that no clock is asked."""
        if self.covered_by is not None or self._stages_known:
            return self.hidden_after
        safe = (row.safe for row in self.lane.ready if row.safe is not None)
        return max(safe, default=self.planned.end)

    @cached_property
    def doorway(self) -> Doorway | None:
        """The window to recoat this film; None where no coat is meant to bond to it in one."""
        over = self._over
        if over is None or over.joint is Joint.WET_IN_WET:
            return None
        kept = None if self.covered_by is None else self.covered_by.window
        window = kept or safe_window(self.film, over.joint)
        if window is None:
            return None
        return doorway_for(window, self.until, self.lane.hands, used=kept is not None)

    @property
    def _later(self) -> list[PlannedCoat]:
        coats = self.lane.coats
        return list(coats[coats.index(self.planned) + 1 :])

    @property
    def _over(self) -> Coat | None:
        piece = self.lane.piece
        later = range(self.position + 1, len(piece.stack))
        return next((piece.stack[i] for i in later if piece.below(i) == self.position), None)


class StepMark:
    """One step beside the pours on a lane: sand, turn, tape, trim or pack."""

    def __init__(self, lane: Lane, planned: PlannedStep) -> None:
        """Place a planned step on its lane."""
        self.lane = lane
        self.planned = planned
        self.begins = planned.start.timestamp()
        self.shows_until = planned.end.timestamp()

    @property
    def start(self) -> datetime:
        """When hands begin."""
        return self.planned.start

    @property
    def hidden_after(self) -> datetime:
        """When it is done."""
        return self.planned.end


Bar = Ribbon | StepMark


class Lane(Whereabouts):
    """One piece or set: its bars in order of time, and its ready flags."""

    def __init__(
        self,
        whole: PlannedStudio,
        piece: Piece,
        coats: Sequence[PlannedCoat],
        steps: Sequence[PlannedStep],
        ready: Sequence[Readiness] = (),
    ) -> None:
        """Lay out one piece; `coats`, `steps` and `ready` are all that the plan has for it."""
        super().__init__(whole, piece, coats)
        self.plan = whole.plan
        self.hands = whole.hands
        self.ready = tuple(ready)
        self._steps = tuple(sorted(steps, key=attrgetter("start")))

    @cached_property
    def ribbons(self) -> tuple[Ribbon, ...]:
        """Its coats as bars, earliest first."""
        return tuple(Ribbon(self, coat) for coat in self.coats)

    @cached_property
    def bars(self) -> tuple[Bar, ...]:
        """Ribbons and steps, earliest first."""
        steps = (StepMark(self, step) for step in self._steps)
        return tuple(sorted((*self.ribbons, *steps), key=attrgetter("start")))

    @property
    def known(self) -> bool:
        """Whether the clocks of all its ribbons have been asked when their stages come."""
        return all(bar.known(fine=False) for bar in self.ribbons)

    @cached_property
    def pinned(self) -> frozenset[str]:
        """The keys of its coats that the maker has put at a time."""
        pins = self.studio.pins
        return frozenset(pin.coat for pin in pins if pin.piece == self.piece.key)

    @property
    def bar_count(self) -> int:
        """How many bars there are, without laying them out."""
        return len(self.coats) + len(self._steps)

    @property
    def reason(self) -> str:
        """Why the piece, or the rest of it, is not planned; empty when it is."""
        return why_left_out(self.plan, self.piece)

    @cached_property
    def flags(self) -> tuple[Flag, ...]:
        """When the whole piece can be handled, can be packed, and is fully cured."""
        if len(self.coats) < len(self.piece.stack):
            return ()
        if self.ready:
            return kept_flags(self.ready)
        return flags_of([bar.film for bar in self.ribbons])
