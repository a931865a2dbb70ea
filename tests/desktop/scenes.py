"""Hand-made studios with plans, all invented: cool nights, a constant room, many bars.

The times of the plans are set by hand; windows and ready rows come from the clocks.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from studio_planner.craft.hands import Person, WorkHours
from studio_planner.craft.log import Poured
from studio_planner.craft.orders import Order, Promise
from studio_planner.craft.pieces import Coat, CoatKind, Joint, Material, Piece
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Spot
from studio_planner.craft.plans import (
    Change,
    Outcome,
    Plan,
    PlannedCoat,
    PlannedStep,
    Readiness,
    StepKind,
    Trust,
    Window,
)
from studio_planner.craft.products import MixRatio, Product, ProductKind, SheetPoint
from studio_planner.craft.saying import saying
from studio_planner.craft.shapes import Rectangle, Round
from studio_planner.craft.studio import Studio
from studio_planner.science.stages import Stage
from studio_planner.services.desk import DeskView
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from collections.abc import Iterable

ZONE = "Europe/Berlin"
_ZONE = ZoneInfo(ZONE)
DAY = date(2026, 12, 8)


class StillClock:
    """A clock that stands until it is set."""

    def __init__(self, when: datetime) -> None:
        self.when = when

    def now(self) -> datetime:
        """Give the instant it was set to."""
        return self.when


def at(day: int, wall: str, first: date = DAY) -> datetime:
    """The instant of a wall-clock time, `day` days after the scene's first day."""
    hour, minute = map(int, wall.split(":"))
    local = datetime.combine(first + timedelta(days=day), time(hour, minute), tzinfo=_ZONE)
    return local.astimezone(UTC)


NOW = at(0, "19:36")


def _sheet(rows: Iterable[tuple[Stage, float, float]]) -> tuple[SheetPoint, ...]:
    points = []
    for stage, warm, cool in rows:
        points.append(SheetPoint(stage=stage, celsius=25, from_hours=warm))
        points.append(SheetPoint(stage=stage, celsius=15, from_hours=cool))
    return tuple(points)


SLOW = Product(
    key="slow",
    name="Slow flood (invented)",
    kind=ProductKind.TWO_PART,
    ratio=MixRatio(a=2, b=1),
    sheet=_sheet(
        [
            (Stage.WORKING_TIME, 0.6, 1.1),
            (Stage.RECOAT_OPENS, 3.5, 7.5),
            (Stage.TACK_FREE, 6.5, 13.0),
            (Stage.RECOAT_CLOSES, 17.0, 28.0),
            (Stage.SANDABLE, 20.0, 42.0),
            (Stage.HANDLE, 17.0, 36.0),
            (Stage.PRINT_FREE, 34.0, 80.0),
            (Stage.FULL_CURE, 90.0, 200.0),
        ]
    ),
    invented=True,
)
FAST = Product(
    key="fast",
    name="Quick seal (invented)",
    kind=ProductKind.TWO_PART,
    ratio=MixRatio(a=100, b=44),
    sheet=_sheet(
        [
            (Stage.WORKING_TIME, 0.4, 0.8),
            (Stage.TACK_FREE, 2.4, 5.0),
            (Stage.RECOAT_OPENS, 2.8, 5.8),
            (Stage.RECOAT_CLOSES, 15.0, 24.0),
            (Stage.SANDABLE, 9.0, 20.0),
            (Stage.HANDLE, 8.0, 17.0),
            (Stage.PRINT_FREE, 20.0, 46.0),
            (Stage.FULL_CURE, 60.0, 130.0),
        ]
    ),
    invented=True,
)
PRIMER = Product(
    key="primer",
    name="Brush-on primer (invented)",
    kind=ProductKind.PRIMER,
    sheet=_sheet(
        [
            (Stage.TACK_FREE, 0.6, 1.2),
            (Stage.RECOAT_OPENS, 1.5, 3.0),
            (Stage.HANDLE, 2.0, 4.0),
        ]
    ),
    invented=True,
)


def _coat(
    key: str, kind: CoatKind, film_mm: float, product: str = "slow", **more: object
) -> Coat:
    return Coat(key=key, kind=kind, product=product, film_mm=film_mm, **more)  # type: ignore[arg-type]


_FLOOD = _coat("flood", CoatKind.FLOOD, 1.6)
_TIDE = _coat("tide", CoatKind.COLOUR, 0.8)
_CLEAR = _coat("clear", CoatKind.TOP_COAT, 0.6)
_SEAL = _coat("seal", CoatKind.SEAL, 0.2, "fast")
_PRIME = _coat("prime", CoatKind.PRIME, 0.1, "primer")
_GLITTER = _coat("glitter", CoatKind.GLITTER, 0.5, "fast", sandable=False, test_first=True)
_LOCK = _coat("lock", CoatKind.LOCK, 0.4, "fast")


def _board(key: str, name: str, stack: tuple[Coat, ...], **more: object) -> Piece:
    facts: dict[str, object] = {
        "shape": Rectangle(length_mm=400, width_mm=200),
        "material": Material.TIMBER,
        "body_mm": 18,
    }
    return Piece(key=key, name=name, stack=stack, **(facts | more))  # type: ignore[arg-type]


_ON_PRIMER = replace(_FLOOD, joint=Joint.ON_DRY)

PIECES = (
    _board("h1", "Harbour board 1", (_SEAL, _FLOOD, _TIDE, _CLEAR)),
    _board("h2", "Harbour board 2", (_SEAL, _FLOOD, _TIDE, _CLEAR)),
    Piece(
        key="c",
        name="Slate coasters",
        shape=Round(diameter_mm=100),
        material=Material.SLATE,
        body_mm=8,
        count=6,
        stack=(_SEAL, _TIDE),
    ),
    _board("m", "Moon tray", (_SEAL, _GLITTER, _LOCK), body_mm=12.0, rim_mm=6.0),
    Piece(
        key="f",
        name="Fen clock",
        shape=Round(diameter_mm=350),
        material=Material.PLYWOOD,
        body_mm=12,
        stack=(_PRIME, _ON_PRIMER, _CLEAR),
    ),
    _board("k", "Market board 7", (_CLEAR,)),
)


def night_room() -> Place:
    """A room that cools at night and is damp towards morning; band and spots included."""
    points = [(time(0), 18.2, 62), (time(6), 16.4, 68), (time(9), 17.5, 63)]
    points += [(time(15), 20.8, 52), (time(20), 20.2, 54)]
    return Place(
        key="room",
        name="Workshop",
        pattern=tuple(PatternPoint(at=t, celsius=c, humidity_pct=h) for t, c, h in points),
        spots=tuple(
            Spot(key=k, name=k, length_mm=900, width_mm=600, height_mm=300)
            for k in ("A1", "A2", "B1", "B2", "C1", "C2")
        ),
    )


def constant_room(celsius: float = 22.0) -> Place:
    """The same spots in a room that never changes."""
    pattern = (PatternPoint(at=time(0), celsius=celsius, humidity_pct=50),)
    return replace(night_room(), pattern=pattern)


def warm_box() -> Place:
    """A heated box with one spot."""
    return Place(
        key="box",
        name="Warm box",
        kind=PlaceKind.WARM_BOX,
        pattern=(PatternPoint(at=time(0), celsius=30),),
        spots=(Spot(key="W1", name="Box 1", length_mm=900, width_mm=600, height_mm=300),),
    )


PEOPLE = (
    Person(
        key="ada",
        name="Ada",
        work=(
            WorkHours(rule="FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR", start=time(18), end=time(22)),
            WorkHours(rule="FREQ=WEEKLY;BYDAY=SA", start=time(9), end=time(17)),
        ),
    ),
    Person(
        key="bo",
        name="Bo",
        work=(WorkHours(rule="FREQ=WEEKLY;BYDAY=WE,FR", start=time(8), end=time(11)),),
    ),
)

ORDERS = (
    Order(key="31", name="Harbour pair", pieces=("h1", "h2"), promised=date(2026, 12, 21)),
    Order(key="33", name="Slate coasters", pieces=("c",), promised=date(2026, 12, 14)),
    Order(key="34", name="Moon tray", pieces=("m",), promised=date(2026, 12, 14)),
    Order(
        key="m",
        name="Quay market",
        pieces=("k",),
        promised=date(2026, 12, 19),
        promise=Promise.MARKET,
    ),
)

_POURS = (
    # piece, coat, day, from, to, spot, joint, trust
    ("k", "clear", -1, "18:10", "19:00", "C2", Joint.BARE, Trust.SAFE),
    ("h1", "seal", 0, "18:20", "19:05", "B1", Joint.BARE, Trust.SAFE),
    ("h2", "seal", 0, "18:20", "19:05", "B2", Joint.BARE, Trust.SAFE),
    ("c", "seal", 0, "20:10", "21:00", "A1", Joint.BARE, Trust.SAFE),
    ("f", "prime", 0, "21:05", "21:30", "C1", Joint.BARE, Trust.SAFE),
    ("h1", "flood", 1, "08:10", "09:20", "B1", Joint.IN_WINDOW, Trust.SAFE),
    ("h2", "flood", 1, "08:10", "09:20", "B2", Joint.IN_WINDOW, Trust.SAFE),
    ("m", "seal", 1, "18:00", "18:40", "W1", Joint.BARE, Trust.SAFE),
    ("f", "flood", 1, "18:45", "20:00", "C1", Joint.ON_DRY, Trust.SAFE),
    ("c", "tide", 2, "20:30", "21:45", "A1", Joint.SCUFFED, Trust.SAFE),
    ("h1", "tide", 1, "20:10", "21:40", "B1", Joint.IN_WINDOW, Trust.SAFE),
    ("h2", "tide", 1, "20:10", "21:40", "B2", Joint.IN_WINDOW, Trust.SAFE),
    ("m", "glitter", 2, "18:20", "19:10", "W1", Joint.SCUFFED, Trust.SAFE),
    ("f", "clear", 2, "19:15", "20:15", "C1", Joint.IN_WINDOW, Trust.SAFE),
    ("m", "lock", 3, "08:05", "08:50", "W1", Joint.IN_WINDOW, Trust.TEST_FIRST),
    ("h1", "clear", 4, "10:20", "11:40", "B1", Joint.SCUFFED, Trust.SAFE),
    ("h2", "clear", 4, "10:20", "11:40", "B2", Joint.SCUFFED, Trust.SAFE),
)

_STEPS = (
    (StepKind.SAND, "c", "tide", 2, "18:00", "18:20", "ada"),
    (StepKind.SAND, "m", "glitter", 1, "21:40", "22:00", "ada"),
    (StepKind.SAND, "h1", "clear", 3, "21:00", "21:20", "ada"),
    (StepKind.SAND, "h2", "clear", 3, "21:20", "21:40", "ada"),
    (StepKind.PACK, "k", None, 4, "13:00", "13:15", "ada"),
)


def studio(
    pieces: tuple[Piece, ...] = PIECES, room: Place | None = None, **more: object
) -> Studio:
    """The scene's studio without a plan."""
    facts: dict[str, object] = {
        "name": "Lantern Yard",
        "zone": ZONE,
        "places": (room or night_room(), warm_box()),
        "products": (SLOW, FAST, PRIMER),
        "people": PEOPLE,
        "orders": ORDERS if pieces is PIECES else (),
    }
    return Studio(pieces=pieces, **(facts | more))  # type: ignore[arg-type]


def planned(room: Place | None = None) -> Studio:
    """The scene's studio with a plan on it."""
    bare = studio(room=room)
    coats = tuple(
        PlannedCoat(
            number=number,
            piece=piece,
            coat=coat,
            start=at(day, begin),
            end=at(day, end),
            spot=spot,
            joint=joint,
            mix=number,
            person="ada",
            poured=day < 0,
        )
        for number, (piece, coat, day, begin, end, spot, joint, _) in enumerate(_POURS, start=1)
    )
    steps = tuple(
        PlannedStep(kind=kind, piece=p, coat=c, start=at(d, b), end=at(d, e), person=who)
        for kind, p, c, d, b, e, who in _STEPS
    )
    plan = Plan(made=at(0, "07:40"), start=at(-1, "18:00"), coats=coats, steps=steps)
    draft = DeskView(replace(bare, plan=plan), NOW)
    plan = replace(
        plan,
        coats=_with_windows(draft),
        ready=_ready(draft),
        outcomes=_outcomes(bare),
    )
    return replace(bare, plan=plan)


def crowded() -> Studio:
    """The scene's studio with one more board, which fits on no spot."""
    door = replace(
        PIECES[-1], key="d", name="Barn door", shape=Rectangle(length_mm=2000, width_mm=900)
    )
    return replace(planned(), pieces=(*PIECES, door))


def poured_studio() -> Studio:
    """The scene's studio without a plan, with one coat written down as poured."""
    pour = Poured(
        piece="k", coat="clear", start=at(-1, "18:10"), end=at(-1, "19:00"), spot="C2"
    )
    return studio(poured=(pour,))


def _with_windows(draft: DeskView) -> tuple[PlannedCoat, ...]:
    trusts = {(row[0], row[1]): row[7] for row in _POURS}
    windows: dict[tuple[str, str], Window] = {}
    for lane in draft.lanes:
        for bar in lane.bars:
            if not isinstance(bar, Ribbon) or bar.covered_by is None:
                continue
            over = bar.covered_by
            opens = bar.film.safe(Stage.RECOAT_OPENS)
            if over.joint in {Joint.IN_WINDOW, Joint.ON_DRY} and opens is not None:
                windows[over.piece, over.coat] = Window(
                    opens=opens,
                    closes=bar.film.safe(Stage.RECOAT_CLOSES),
                    trust=trusts[over.piece, over.coat],
                )
    assert draft.plan is not None
    return tuple(
        replace(coat, window=windows.get((coat.piece, coat.coat))) for coat in draft.plan.coats
    )


def _ready(draft: DeskView) -> tuple[Readiness, ...]:
    return tuple(
        Readiness(piece=lane.piece.key, stage=flag.stage, likely=flag.likely, safe=flag.safe)
        for lane in draft.lanes
        for flag in lane.flags
    )


def _outcomes(bare: Studio) -> tuple[Outcome, ...]:
    zone = bare.time_zone
    due = {order.key: order.due(zone) for order in bare.orders}
    return (
        Outcome(order="31", due=due["31"], leaves=at(9, "16:00")),
        Outcome(order="33", due=due["33"], leaves=at(6, "16:00")),
        Outcome(
            order="34",
            due=due["34"],
            leaves=at(9, "16:00"),
            reason=saying("late", "No hands: the free hours go to pours of other orders."),
            changes=(
                Change(
                    words=saying("late", "work every evening from 18:00 to 22:00"),
                    leaves=at(6, "16:00"),
                    keeps_promise=True,
                ),
            ),
        ),
        Outcome(order="m", due=due["m"], leaves=at(4, "13:15")),
    )


def many(bars: int, coats_each: int = 20) -> Studio:
    """A studio whose plan has about that many bars, for measuring how fast it is drawn."""
    stack = tuple(replace(_FLOOD, key=f"flood {i}") for i in range(coats_each))
    count = -(-bars // coats_each)
    pieces = tuple(_board(f"p{i}", f"Board {i}", stack) for i in range(count))
    coats = []
    for row, piece in enumerate(pieces):
        for index, coat in enumerate(piece.stack):
            start = at(0, "06:00") + timedelta(hours=22 * index, minutes=row * 7 % 600)
            opens = start + timedelta(hours=8)
            coats.append(
                PlannedCoat(
                    number=row * coats_each + index + 1,
                    piece=piece.key,
                    coat=coat.key,
                    start=start,
                    end=start + timedelta(minutes=75),
                    spot="A1",
                    joint=Joint.IN_WINDOW if index else Joint.BARE,
                    mix=row * coats_each + index + 1,
                    person="ada",
                    window=Window(
                        opens=opens, closes=opens + timedelta(hours=15), trust=Trust.SAFE
                    )
                    if index
                    else None,
                )
            )
    lasts = coats[coats_each - 1 :: coats_each]
    ready = tuple(
        Readiness(
            piece=last.piece, stage=stage, likely=last.end, safe=last.end + timedelta(days)
        )
        for last in lasts
        for stage, days in ((Stage.HANDLE, 2), (Stage.PRINT_FREE, 4), (Stage.FULL_CURE, 9))
    )
    plan = Plan(made=NOW, start=at(0, "06:00"), coats=tuple(coats), ready=ready)
    return replace(studio(pieces=pieces), plan=plan)
