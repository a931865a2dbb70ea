"""A studio that touches its films, in a room that stays at 20 °C; every figure is invented."""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import time
from typing import TYPE_CHECKING, Any

from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.pieces import Joint
from studio_planner.craft.places import PatternPoint, PlaceKind
from studio_planner.craft.products import SheetPoint
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.science.stages import Stage
from tests.craft.nouns import coat, piece, place, resin, spot
from tests.services.log_book.logged_studio import NOW, ago, studio

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

OPENS, TACK_FREE, HANDLE, PRINT_FREE = (
    Stage.RECOAT_OPENS,
    Stage.TACK_FREE,
    Stage.HANDLE,
    Stage.PRINT_FREE,
)
HOURS = {OPENS: 4.0, TACK_FREE: 8.0, HANDLE: 20.0, PRINT_FREE: 40.0}
SHEET = tuple(
    SheetPoint(stage=stage, celsius=celsius, from_hours=hours * factor)
    for stage, hours in HOURS.items()
    for celsius, factor in ((20.0, 1.0), (30.0, 0.5))
)


def room(celsius: float = 20.0, **facts: Any) -> Any:  # noqa: ANN401 - anything
    steady = PatternPoint(at=time(0), celsius=celsius)
    return place(steady, spots=(spot("s1"), spot("s2")), band_celsius=0.0, **facts)


def box(celsius: float = 30.0) -> Any:  # noqa: ANN401 - likewise
    steady = PatternPoint(at=time(0), celsius=celsius)
    return place(
        steady,
        key="box",
        name="Box",
        kind=PlaceKind.WARM_BOX,
        spots=(spot("b1"),),
        band_celsius=0.0,
    )


def entry(kind: EntryKind, hours: float, number: int = 1, **facts: Any) -> LogEntry:  # noqa: ANN401
    given: dict[str, Any] = {"piece": "tray", "written": NOW, "at": ago(hours)} | facts
    return LogEntry(number=number, kind=kind, **given)


def poured(hours: float, name: str = "tray", **facts: Any) -> LogEntry:  # noqa: ANN401 - likewise
    """A pour whose block ended so many hours ago."""
    given: dict[str, Any] = {"spot": "s1", "joint": Joint.BARE, "coat": "flood"} | facts
    return entry(EntryKind.POURED, hours + 1, piece=name, end=ago(hours), **given)


def touched(
    hours: float,
    touch: Touch,
    verdict: Verdict,
    name: str = "tray",
    **facts: Any,  # noqa: ANN401
) -> LogEntry:
    """A touch so many hours ago."""
    given = {"coat": "flood", "touch": touch, "verdict": verdict, "piece": name} | facts
    return entry(EntryKind.TOUCHED, hours, **given)


def logged(*entries: LogEntry, **facts: Any) -> Studio:  # noqa: ANN401 - likewise
    numbered = tuple(replace(one, number=n) for n, one in enumerate(entries, start=1))
    given: dict[str, Any] = {
        "places": (room(), box()),
        "products": (resin(sheet=SHEET, minimum_celsius=None), resin(key="clear", name="C")),
        "pieces": tuple(piece(coat("flood"), key=key, name=key) for key in ("tray", "one")),
        "orders": (),
        "log": numbered,
    }
    return studio(**(given | facts))


def taught_studio(truth: float = 1.15) -> Studio:
    """Ten films, each touched once: about half of them before the stage, half after."""
    entries = []
    for n in range(10):
        share = truth * math.exp((n - 4.5) / 25)
        hours = 200.0 - 15 * n
        entries += [
            poured(hours, "one"),
            touched(hours - 4 * share, Touch.TACK, _verdict(share > truth), "one"),
            entry(EntryKind.STRIPPED, hours - 10, piece="one"),
        ]
    return logged(*entries)


def _verdict(already: bool) -> Verdict:
    return Verdict.ALREADY if already else Verdict.NOT_YET
