"""What follows a mix once it is spread: torch, cover, tape, windows, and what comes next."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.plans import StepKind, Trust
from studio_planner.craft.tongue import listed, translate
from studio_planner.science.stages import Stage
from studio_planner.services.paper.cup_clock import ClockTime
from studio_planner.services.paper.wall_words import minute_after, moment_said
from studio_planner.services.ribbons import Ribbon, StepMark
from studio_planner.services.step_words import step_words

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator
    from datetime import datetime

    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Bar

_WATCHED = {StepKind.TAPE, StepKind.TRIM}


def after_pour(view: DeskView, coats: tuple[PlannedCoat, ...]) -> tuple[ClockTime, ...]:
    """Everything that the clocks and the plan have for the films of a mix, in order of time."""
    ribbons = tuple(_ribbons(view, coats))
    lines = [
        *_at_the_bench(view, ribbons),
        *_windows(ribbons),
        *_next(view, ribbons),
    ]
    return tuple(sorted(lines, key=lambda line: line.when))


def _ribbons(view: DeskView, coats: Iterable[PlannedCoat]) -> Iterator[Ribbon]:
    wanted = {(coat.piece, coat.coat) for coat in coats}
    for lane in view.lanes:
        for bar in lane.ribbons:
            if (lane.piece.key, bar.coat.key) in wanted:
                yield bar


def _at_the_bench(view: DeskView, ribbons: tuple[Ribbon, ...]) -> Iterator[ClockTime]:
    """Last torch and cover: the first that any film asks for, the last that one allows."""
    torch = [when for one in ribbons if (when := one.film.safe(Stage.LAST_TORCH)) is not None]
    if torch:
        words = translate("paper", "last torch: no heat after this")
        yield ClockTime(when=min(torch), minute="", words=words)
    cover = [when for one in ribbons if (when := one.film.safe(Stage.COVER)) is not None]
    if cover:
        words = translate("paper", "cover: now it leaves no mark")
        yield ClockTime(when=minute_after(max(cover)), minute="", words=words)
    yield from _watched(view, ribbons)


def _watched(view: DeskView, ribbons: tuple[Ribbon, ...]) -> Iterator[ClockTime]:
    """Tape and drips, which have windows of their own."""
    studio = view.studio
    for one in ribbons:
        for bar in one.lane.bars:
            if not isinstance(bar, StepMark) or bar.planned.kind not in _WATCHED:
                continue
            step = bar.planned
            if step.coat != one.coat.key:
                continue
            words = f"{one.lane.piece.name}: {kind_word(step.kind)}"
            if step.closes is not None:
                words = translate("paper", "{words} (until {time} at the latest)").format(
                    words=words, time=moment_said(studio, step.closes)
                )
            yield ClockTime(when=step.start, minute="", words=words)


def _windows(ribbons: tuple[Ribbon, ...]) -> Iterator[ClockTime]:
    """The windows to recoat these films; pieces with the same window share its lines."""
    opens: dict[tuple[datetime, bool], list[str]] = {}
    closes: dict[datetime, list[str]] = {}
    for one in ribbons:
        door = one.doorway
        if door is None:
            continue
        name = one.lane.piece.name
        tested = door.trust is Trust.TEST_FIRST
        opens.setdefault((minute_after(door.opens), tested), []).append(name)
        if door.closes is not None:
            closes.setdefault(_minute(door.closes), []).append(name)
    for (when, tested), names in opens.items():
        words = (
            translate("paper", "recoat opens, test first: {pieces}")
            if tested
            else translate("paper", "recoat opens: {pieces}")
        )
        yield ClockTime(when=when, minute="", words=words.format(pieces=listed(names)))
    for when, names in closes.items():
        words = translate("paper", "recoat closes: {pieces}").format(pieces=listed(names))
        yield ClockTime(when=when, minute="", words=words, strong=True)


def _next(view: DeskView, ribbons: tuple[Ribbon, ...]) -> Iterator[ClockTime]:
    """What comes next on each piece; what is the same for several is said once."""
    found: dict[tuple[datetime, str], list[str]] = {}
    for one in ribbons:
        bar = _bar_after(one)
        if bar is not None:
            key = (bar.start, _bar_words(view.studio, bar))
            found.setdefault(key, []).append(one.lane.piece.name)
    for (when, what), names in found.items():
        words = translate("paper", "next, {pieces}: {what}").format(
            pieces=listed(names), what=what
        )
        yield ClockTime(when=when, minute="", words=words)


def _bar_after(ribbon: Ribbon) -> Bar | None:
    later = (
        bar
        for bar in ribbon.lane.bars
        if bar.start >= ribbon.planned.end
        if isinstance(bar, Ribbon) or bar.planned.kind not in _WATCHED
    )
    return next(later, None)


def _bar_words(studio: Studio, bar: Bar) -> str:
    if isinstance(bar, Ribbon):
        return bar.lane.piece.coat_name(bar.coat.key)
    return step_words(studio, bar.planned)


def _minute(when: datetime) -> datetime:
    return when.replace(second=0, microsecond=0)
