"""Why no pour of a coat meets the window below it: too short, never open, or by night."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import stage_said
from studio_planner.craft.pieces import Joint
from studio_planner.craft.saying import SILENT, Saying, joined, saying
from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.saying import length_said, moment_said
from studio_planner.planning.spans import grid_down, grid_up
from studio_planner.planning.stuck.joint_windows import window_of
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Iterator
    from zoneinfo import ZoneInfo

    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.problem import Chain

_HOUR = 3600
_LOOKS = 400
"""Pours of the coat below that are looked at, one for each hour in which it may start."""


@dataclass(frozen=True, slots=True)
class _Window:
    """The window (seconds) that one pour of the coat below opens."""

    poured: int
    opens: int | None
    closes: int

    @property
    def length(self) -> int:
        """How long it is open; below 0 when it closes before it opens, or never opens."""
        return -1 if self.opens is None else self.closes - self.opens


class WindowJudge:
    """Looks at all windows for one coat of a chain that stands in one place."""

    def __init__(
        self, zone: ZoneInfo, means: Means, chain: Chain, index: int, place: str
    ) -> None:
        """Judge the joint of coat `index`, which has a coat below it."""
        self._zone = zone
        self._means = means
        self._piece = chain.pieces[0]
        self._task = chain.tasks[index]
        self._below = chain.tasks[self._task.below or 0]
        self._place = place

    def words(self) -> Saying:
        """What stops it, to follow the name of the coat; and why nothing else is allowed."""
        task, lower = self._task, self._lower
        if not task.has_window:
            return saying(
                "stuck",
                "can only go on {lower} after washing and sanding, and no time for that was "
                "found; its data sheet does not say when the window closes: add that figure "
                "under Products.",
                lower=lower,
            )
        opening = [one for one in self._windows() if one.opens is not None]
        if task.sheet_closes is not None:
            # One that does not close would do so after the end of the record.
            opening = [one for one in opening if one.closes < ALWAYS] or opening
        if not opening:
            stage = stage_said(task.sheet_opens or Stage.RECOAT_OPENS)
            return saying(
                "stuck",
                "waits for {lower} to reach {stage}, and that never does{no_scuff}; a warmer "
                "room or another product would help.",
                lower=lower,
                stage=stage,
                no_scuff=self._no_scuff(),
            )
        longest = max(opening, key=lambda one: one.length)
        if not any(self._holds_a_start(one) for one in opening):
            advice = saying("stuck", "a slower product, or less to pour at once, would help.")
            return self._ending(self._too_short(longest), advice)
        if self._below.fixed is not None:
            advice = saying(
                "stuck",
                "allow sanding or a touch test of it under Pieces, or strip the piece in the "
                "log.",
            )
            return self._ending(self._of_poured(longest), advice)
        advice = saying("stuck", "more hours, or a slower product, would help.")
        if not any(self._met(one) for one in opening):
            return self._ending(self._by_night(longest), advice)
        words = saying(
            "stuck",
            "takes {block}, and no pour of {lower} that keeps the other rules opens a window "
            "that somebody can meet",
            block=length_said(task.block),
            lower=lower,
        )
        return self._ending(words, advice)

    def _ending(self, words: Saying, advice: Saying) -> Saying:
        """A rule, why washing and sanding is no way out, and what is."""
        return joined(words, self._no_scuff(), "; ", advice, between="")

    @property
    def _lower(self) -> Saying:
        return saying(
            "stuck", "the {coat} below", coat=self._piece.coat_name_said(self._below.coat.key)
        )

    def _too_short(self, window: _Window) -> Saying:
        takes = length_said(self._task.block)
        if self._task.coat.joint is Joint.WET_IN_WET:
            left = length_said(max(0, window.length))
            return saying(
                "stuck",
                "is meant wet in wet and takes {takes}, but {lower} can be worked for {left} "
                "at most once it is spread (working time, on the safe side)",
                takes=takes,
                lower=self._lower,
                left=left,
            )
        if window.length <= 0:
            return saying(
                "stuck",
                "takes {takes}, but on the safe side the window of {lower} has closed before "
                "it opens",
                takes=takes,
                lower=self._lower,
            )
        fits = window.length >= self._task.block
        tight = saying("stuck", ", and starts are on whole five minutes") if fits else ""
        return saying(
            "stuck",
            "takes {takes}, but the safe window of {lower} is never open for more than "
            "{length}{tight}",
            takes=takes,
            lower=self._lower,
            length=length_said(window.length),
            tight=tight,
        )

    def _of_poured(self, window: _Window) -> Saying:
        opens = moment_said(self._zone, window.opens or 0)
        if window.closes - self._task.block < self._means.now:
            closed = moment_said(self._zone, window.closes)
            return saying(
                "stuck",
                "comes too late: the window of {lower} closed {closed}",
                lower=self._lower,
                closed=closed,
            )
        return saying(
            "stuck",
            "misses the window of {lower}: it opens {opens} and {closing}, when nobody can "
            "work {length} on end",
            lower=self._lower,
            opens=opens,
            closing=self._closing(window),
            length=length_said(self._task.lead + self._task.block),
        )

    def _by_night(self, window: _Window) -> Saying:
        return saying(
            "stuck",
            "needs {length} of hands in the window of {lower}, and each one falls at a time "
            "when nobody can work: poured {poured}, for example, it opens {opens} and "
            "{closing}",
            length=length_said(self._task.lead + self._task.block),
            lower=self._lower,
            poured=moment_said(self._zone, window.poured),
            opens=moment_said(self._zone, window.opens or 0),
            closing=self._closing(window),
        )

    def _closing(self, window: _Window) -> Saying:
        if window.closes >= ALWAYS:
            return saying("stuck", "does not close in the time looked at")
        return saying("stuck", "closes {when}", when=moment_said(self._zone, window.closes))

    def _no_scuff(self) -> Saying:
        """Why washing and sanding is no way out."""
        if self._task.coat.joint is Joint.WET_IN_WET:
            return SILENT
        if not self._task.coat.holds_on_sanded:
            return saying("stuck", "; leaf does not stick to what is sanded")
        name = saying(
            "stuck", "the {coat}", coat=self._piece.coat_name_said(self._below.coat.key)
        )
        if not self._below.coat.sandable:
            return saying("stuck", "; {name} cannot be sanded", name=name)
        if self._task.may_scuff:
            return saying("stuck", "; nor is there a time to wash and sand it")
        return saying(
            "stuck",
            "; the data sheet of {product} does not say when to sand",
            product=self._below.product.name,
        )

    def _windows(self) -> Iterator[_Window]:
        task, below, edges = self._task, self._below, self._means.edges
        for start in self._starts():
            end = start + below.block
            place = self._place
            if below.fixed is not None:
                place = self._means.place_of(below.fixed)
            safe = _Window(start, *window_of(edges, task, below, place, (start, end)))
            yield safe
            if task.may_test:
                looked = window_of(edges, task, below, place, (start, end), likely=True)
                yield _Window(start, *looked)

    def _starts(self) -> list[int]:
        """Starts of the coat below with hands for it, one an hour."""
        if self._below.fixed is not None:
            return [int(self._below.fixed.start.timestamp())]
        wished = [(self._means.now, self._means.until)]
        found = self._means.shop.starts(wished, self._below.lead, self._below.block, _LOOKS)
        starts = [s for low, high in found for s in range(low, high + 1, _HOUR)]
        return starts[:_LOOKS]

    def _starts_in(self, window: _Window) -> tuple[int, int]:
        last = min(window.closes, self._means.until) - self._task.block
        return grid_up(window.opens or 0), grid_down(last)

    def _holds_a_start(self, window: _Window) -> bool:
        """Whether the block fits into a window, on the grid of starts."""
        first, last = self._starts_in(window)
        return first <= last

    def _met(self, window: _Window) -> bool:
        """Whether somebody has the whole block in a window."""
        wished = self._starts_in(window)
        if wished[0] > wished[1]:
            return False
        return bool(self._means.shop.starts([wished], self._task.lead, self._task.block, 1))
