"""A small workshop and a plan made by hand, in a room that is 20 °C all day.

Every figure of the sheets is published at 20 °C and the room has no band, so a *not before*
stage is safe after its hours x 1.1 and a *not after* stage until its hours / 1.1 (the width at
a published figure is 10 %): all times here are worked out with a pencil.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta

from studio_planner.craft.hands import Person, WorkHours
from studio_planner.craft.log import EntryKind, LogEntry, Poured
from studio_planner.craft.orders import Gate, Order, Promise
from studio_planner.craft.pieces import (
    UNDERSIDE,
    Coat,
    CoatKind,
    Joint,
    Material,
    Piece,
)
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Spot
from studio_planner.craft.plans import (
    Outcome,
    Plan,
    PlannedCoat,
    PlannedStep,
    Readiness,
    StepKind,
    Trust,
    Unplanned,
    Window,
)
from studio_planner.craft.products import MixRatio, Product, ProductKind, SheetPoint
from studio_planner.craft.saying import Saying
from studio_planner.craft.shapes import Rectangle
from studio_planner.craft.studio import Studio
from studio_planner.science.stages import Stage

MONDAY = datetime(2026, 3, 2, tzinfo=UTC)
START = MONDAY + timedelta(hours=8)


def at(day: int, clock: str) -> datetime:
    """A UTC time so many days after the Monday of the plan."""
    hours, minutes = clock.split(":")
    return MONDAY + timedelta(days=day, hours=int(hours), minutes=int(minutes))


def sheet(**hours: float) -> tuple[SheetPoint, ...]:
    return tuple(
        SheetPoint(stage=Stage(name), celsius=20.0, from_hours=h) for name, h in hours.items()
    )


RESIN = Product(
    key="resin",
    name="Resin",
    kind=ProductKind.TWO_PART,
    ratio=MixRatio(a=100, b=50),
    sheet=sheet(
        working_time=3.3,
        cover=2,
        tape_opens=1,
        tape_closes=5,
        trim_opens=6,
        trim_closes=14,
        recoat_opens=4,
        recoat_closes=24,
        sandable=16,
        handle=20,
        print_free=48,
        full_cure=96,
    ),
    minimum_celsius=12.0,
    maximum_celsius=30.0,
    humidity_limit_pct=80.0,
)
PRIMER = Product(
    key="primer",
    name="Primer",
    kind=ProductKind.PRIMER,
    sheet=sheet(tack_free=1, recoat_opens=2, handle=3, print_free=4, full_cure=24),
)
SIZE = Product(
    key="size",
    name="Size",
    kind=ProductKind.SIZE,
    sheet=sheet(tack_free=1, recoat_opens=1, recoat_closes=12),
)
LEAF = Product(key="leaf", name="Leaf", kind=ProductKind.LEAF, sheet=(), maximum_celsius=35.0)


def coat(key: str, kind: CoatKind, product: str = "resin", **fields: object) -> Coat:
    film = 0.0 if kind is CoatKind.LEAF else 1.0
    return Coat(key=key, kind=kind, product=product, film_mm=film, **fields)  # type: ignore[arg-type]


def piece(key: str, material: Material, *stack: Coat, count: int = 1) -> Piece:
    return Piece(
        key=key,
        name=key.title(),
        shape=Rectangle(length_mm=150, width_mm=100),
        material=material,
        body_mm=18,
        stack=stack,
        count=count,
    )


PIECES = (
    piece(
        "tray",
        Material.SLATE,
        coat("flood", CoatKind.FLOOD, taped=True),
        coat("glitter", CoatKind.GLITTER, sandable=False),
        coat("lock", CoatKind.LOCK),
    ),
    piece(
        "board",
        Material.MDF,
        coat("seal", CoatKind.SEAL, "primer"),
        coat("flood", CoatKind.FLOOD, joint=Joint.ON_DRY, trimmed=True),
        coat("under", CoatKind.FLOOD, faces=frozenset({UNDERSIDE})),
    ),
    piece(
        "coasters",
        Material.STONE,
        coat("flood", CoatKind.FLOOD),
        coat("top", CoatKind.TOP_COAT),
        count=2,
    ),
    piece(
        "east",
        Material.GLASS,
        coat("colour", CoatKind.COLOUR),
        coat("veil", CoatKind.COLOUR, joint=Joint.WET_IN_WET),
    ),
    piece(
        "west",
        Material.GLASS,
        coat("colour", CoatKind.COLOUR),
        coat("veil", CoatKind.COLOUR, joint=Joint.WET_IN_WET),
    ),
    piece("dish", Material.SLATE, coat("flood", CoatKind.FLOOD), coat("lock", CoatKind.LOCK)),
    piece(
        "gilded",
        Material.SLATE,
        coat("size", CoatKind.SIZE, "size"),
        coat("leaf", CoatKind.LEAF, "leaf", joint=Joint.ON_DRY),
        coat("lock", CoatKind.LOCK, joint=Joint.ON_DRY),
    ),
    piece("ghost", Material.SLATE, coat("seal", CoatKind.SEAL, "primer", taped=True)),
)
PLACE = Place(
    key="room",
    name="Workshop",
    band_celsius=0.0,
    pattern=(PatternPoint(at=time(0, 0), celsius=20.0, humidity_pct=45.0),),
    spots=tuple(
        Spot(key=key, name=f"Spot {key}", length_mm=400, width_mm=300, height_mm=120)
        for key in "ABCDEFGH"
    ),
)
BOX = Place(
    key="box",
    name="Warm box",
    kind=PlaceKind.WARM_BOX,
    band_celsius=0.0,
    pattern=(PatternPoint(at=time(0, 0), celsius=20.0, humidity_pct=45.0),),
    spots=(Spot(key="X", name="Box shelf", length_mm=400, width_mm=300, height_mm=120),),
)
DAILY = (
    WorkHours(rule="FREQ=WEEKLY;BYDAY=MO,TU,WE,TH,FR,SA,SU", start=time(8, 0), end=time(22, 0)),
)
STUDIO = Studio(
    name="Hand made",
    places=(PLACE, BOX),
    products=(RESIN, PRIMER, SIZE, LEAF),
    people=(
        Person(key="ada", name="Ada", work=DAILY),
        Person(key="ben", name="Ben", work=DAILY),
    ),
    pieces=PIECES,
    orders=(
        Order(key="shop", name="Shop", pieces=("tray",), promised=date(2026, 3, 6)),
        Order(
            key="fair",
            name="Fair",
            pieces=("board",),
            promised=date(2026, 3, 7),
            promise=Promise.MARKET,
            gate=Gate.DISPLAY,
        ),
        Order(
            key="gift",
            name="Gift",
            pieces=("gilded",),
            promised=date(2026, 3, 12),
            promise=Promise.ARRIVE_BY,
            gate=Gate.FULL,
        ),
        Order(key="lost", name="Lost", pieces=("ghost",), promised=date(2026, 3, 13)),
    ),
    poured=(
        Poured(
            piece="dish", coat="flood", start=at(-1, "18:00"), end=at(-1, "18:45"), spot="F"
        ),
    ),
)


def hours(after: datetime, count: float) -> datetime:
    return after + timedelta(hours=count)


def safe(opens: datetime, closes: datetime | None) -> Window:
    return Window(opens=opens, closes=closes, trust=Trust.SAFE)


def _in_window(below_start: datetime, below_end: datetime) -> Window:
    return safe(hours(below_end, 4.4), hours(below_start, 24 / 1.1))


_ROWS: tuple[tuple[str, str, int, str, int, str, str, Joint, int, Window | None], ...] = (
    ("dish", "flood", -1, "18:00", 45, "F", "", Joint.BARE, 1, None),
    ("tray", "flood", 0, "08:00", 45, "A", "ada", Joint.BARE, 2, None),
    ("board", "seal", 0, "09:00", 45, "B", "ada", Joint.BARE, 3, None),
    ("coasters", "flood", 0, "09:00", 70, "C", "ben", Joint.BARE, 4, None),
    ("east", "colour", 0, "11:00", 70, "D", "ben", Joint.BARE, 5, None),
    ("west", "colour", 0, "11:00", 70, "E", "ben", Joint.BARE, 5, None),
    ("board", "flood", 0, "12:00", 45, "B", "ada", Joint.ON_DRY, 6, safe(at(0, "11:57"), None)),
    (
        "east", "veil", 0, "12:10", 70, "D", "ben", Joint.WET_IN_WET, 7,
        safe(at(0, "12:10"), at(0, "14:00")),
    ),
    (
        "west", "veil", 0, "12:10", 70, "E", "ben", Joint.WET_IN_WET, 7,
        safe(at(0, "12:10"), at(0, "14:00")),
    ),
    (
        "tray", "glitter", 0, "13:30", 45, "A", "ada", Joint.IN_WINDOW, 8,
        _in_window(at(0, "08:00"), at(0, "08:45")),
    ),
    ("gilded", "size", 0, "13:30", 45, "G", "ben", Joint.BARE, 9, None),
    (
        "dish", "lock", 0, "14:30", 45, "F", "ada", Joint.IN_WINDOW, 10,
        _in_window(at(-1, "18:00"), at(-1, "18:45")),
    ),
    (
        "gilded", "leaf", 0, "16:00", 45, "G", "ben", Joint.ON_DRY, 11,
        safe(at(0, "15:21"), hours(at(0, "13:30"), 12 / 1.1)),
    ),
    (
        "gilded", "lock", 0, "17:00", 45, "G", "ben", Joint.ON_DRY, 12,
        safe(at(0, "16:45"), None),
    ),
    (
        "tray", "lock", 0, "18:40", 45, "A", "ada", Joint.IN_WINDOW, 13,
        _in_window(at(0, "13:30"), at(0, "14:15")),
    ),
    ("coasters", "top", 1, "10:45", 70, "C", "ben", Joint.SCUFFED, 14, None),
    ("board", "under", 1, "11:10", 45, "B", "ada", Joint.BARE, 15, None),
)  # fmt: skip
COATS = tuple(
    PlannedCoat(
        number=number,
        piece=row[0],
        coat=row[1],
        start=at(row[2], row[3]),
        end=at(row[2], row[3]) + timedelta(minutes=row[4]),
        spot=row[5],
        person=row[6],
        joint=row[7],
        mix=row[8],
        window=row[9],
        poured=row[6] == "",
    )
    for number, row in enumerate(_ROWS, start=1)
)


def step(  # noqa: PLR0913, PLR0917 - a row of the hand-made plan
    kind: StepKind, key: str, day: int, start: str, minutes: int, person: str, coat: str | None
) -> PlannedStep:
    begin = at(day, start)
    end = begin + timedelta(minutes=minutes)
    return PlannedStep(kind=kind, piece=key, start=begin, end=end, person=person, coat=coat)


STEPS = (
    replace(
        step(StepKind.TAPE, "tray", 0, "10:00", 10, "ada", "flood"),
        opens=at(0, "09:51"),
        closes=hours(at(0, "08:00"), 5 / 1.1),
    ),
    replace(
        step(StepKind.TRIM, "board", 0, "19:30", 10, "ben", "flood"),
        opens=at(0, "19:21"),
        closes=hours(at(0, "12:00"), 14 / 1.1),
    ),
    step(StepKind.SAND, "coasters", 1, "08:00", 40, "ben", "top"),
    step(StepKind.TURN, "board", 1, "11:00", 5, "ada", "under"),
    step(StepKind.PACK, "board", 2, "10:00", 15, "ada", None),
    step(StepKind.PACK, "tray", 3, "08:00", 15, "ada", None),
    step(StepKind.PACK, "gilded", 5, "10:00", 15, "ben", None),
)
_LAST = {
    "tray": at(0, "19:25"),
    "board": at(1, "11:55"),
    "coasters": at(1, "11:55"),
    "east": at(0, "13:20"),
    "west": at(0, "13:20"),
    "dish": at(0, "15:15"),
    "gilded": at(0, "17:45"),
}
_CURE = {Stage.HANDLE: 20, Stage.PRINT_FREE: 48, Stage.FULL_CURE: 96}
READY = tuple(
    Readiness(piece=key, stage=stage, likely=hours(end, cure), safe=hours(end, cure * 1.1))
    for key, end in _LAST.items()
    for stage, cure in _CURE.items()
)
OUTCOMES = (
    Outcome(order="shop", due=at(4, "16:00"), leaves=at(3, "16:00")),
    Outcome(order="fair", due=at(5, "09:00"), leaves=at(2, "10:15")),
    Outcome(order="gift", due=at(8, "16:00"), leaves=at(7, "16:00")),
    Outcome(order="lost", due=at(11, "16:00"), leaves=None, reason=Saying("no tape times")),
)
PLAN = Plan(
    made=START,
    start=START,
    coats=COATS,
    steps=STEPS,
    ready=READY,
    outcomes=OUTCOMES,
    unplanned=(
        Unplanned(piece="ghost", coat="seal", reason=Saying("no tape times on the sheet")),
    ),
)


def logged(kind: EntryKind, coat_key: str, when: datetime, studio: Studio = STUDIO) -> Studio:
    """The studio with one thing written down about the dish."""
    entry = LogEntry(number=1, kind=kind, at=when, written=when, piece="dish", coat=coat_key)
    return replace(studio, log=(entry,))


def with_coat(plan: Plan, key: str, coat_key: str, **fields: object) -> Plan:
    """The plan with one coat changed."""
    coats = tuple(
        replace(one, **fields) if (one.piece, one.coat) == (key, coat_key) else one  # type: ignore[arg-type]
        for one in plan.coats
    )
    return replace(plan, coats=coats)


def without_coat(plan: Plan, key: str, coat_key: str) -> Plan:
    """The plan with one coat left out."""
    coats = tuple(one for one in plan.coats if (one.piece, one.coat) != (key, coat_key))
    return replace(plan, coats=coats)


def moved(plan: Plan, key: str, coat_key: str, start: datetime) -> Plan:
    """The plan with one coat's block moved."""
    found = next(one for one in plan.coats if (one.piece, one.coat) == (key, coat_key))
    return with_coat(plan, key, coat_key, start=start, end=start + (found.end - found.start))


def with_step(plan: Plan, kind: StepKind, key: str, **fields: object) -> Plan:
    """The plan with one step changed."""
    steps = tuple(
        replace(one, **fields) if (one.kind, one.piece) == (kind, key) else one  # type: ignore[arg-type]
        for one in plan.steps
    )
    return replace(plan, steps=steps)


def step_moved(plan: Plan, kind: StepKind, key: str, start: datetime) -> Plan:
    """The plan with one step moved."""
    found = next(one for one in plan.steps if (one.kind, one.piece) == (kind, key))
    return with_step(plan, kind, key, start=start, end=start + (found.end - found.start))


def without_step(plan: Plan, kind: StepKind, key: str) -> Plan:
    """The plan with one step left out."""
    steps = tuple(one for one in plan.steps if (one.kind, one.piece) != (kind, key))
    return replace(plan, steps=steps)


def with_piece(
    studio: Studio, key: str, coat_key: str | None = None, **fields: object
) -> Studio:
    """The studio with one piece, or one coat of it, changed."""

    def change(one: Piece) -> Piece:
        if one.key != key:
            return one
        if coat_key is None:
            return replace(one, **fields)  # type: ignore[arg-type]
        stack = tuple(
            replace(c, **fields) if c.key == coat_key else c  # type: ignore[arg-type]
            for c in one.stack
        )
        return replace(one, stack=stack)

    return replace(studio, pieces=tuple(change(one) for one in studio.pieces))


def with_product(studio: Studio, key: str, **fields: object) -> Studio:
    """The studio with one product changed."""
    products = tuple(
        replace(one, **fields) if one.key == key else one  # type: ignore[arg-type]
        for one in studio.products
    )
    return replace(studio, products=products)


def silent(product: Product, *stages: Stage) -> tuple[SheetPoint, ...]:
    """The product's sheet without some stages."""
    return tuple(point for point in product.sheet if point.stage not in stages)


def with_pattern(studio: Studio, *points: PatternPoint, place: str = "room") -> Studio:
    """The studio with another expected temperature in a place."""
    places = tuple(
        replace(one, pattern=points) if one.key == place else one for one in studio.places
    )
    return replace(studio, places=places)
