"""An invented studio in which every field of every noun is used."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, time, timedelta

from studio_planner.craft.hands import Absence, Person, WorkHours
from studio_planner.craft.log import EntryKind, Gone, GoneKind, LogEntry, Poured
from studio_planner.craft.mixes import MixedFor, WeighedColour, WeighedMix
from studio_planner.craft.orders import ContactClaim, Courier, Gate, Order, Promise
from studio_planner.craft.pieces import (
    Coat,
    CoatKind,
    Colour,
    Joint,
    Material,
    Photo,
    Piece,
    StackPattern,
)
from studio_planner.craft.pigments import Pigment
from studio_planner.craft.pins import Pin
from studio_planner.craft.places import PatternPoint, Place, PlaceKind, Reading, Spot
from studio_planner.craft.plans import (
    Air,
    Change,
    Goal,
    GoalValue,
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
from studio_planner.craft.prices import PriceRule, Prices
from studio_planner.craft.products import MixRatio, Product, ProductKind, RatioBy, SheetPoint
from studio_planner.craft.reminders import Means, ReminderKind, Reminding
from studio_planner.craft.saying import Saying, joined, saying
from studio_planner.craft.settings import (
    ClockForm,
    FilmUnit,
    LengthUnit,
    MassUnit,
    Settings,
    TemperatureUnit,
    Units,
    VolumeUnit,
)
from studio_planner.craft.shapes import FreeArea, Oval, Rectangle, Round, Shape
from studio_planner.craft.spells import Spell
from studio_planner.craft.stock import Lot, LotCount, LotPart, StockRules
from studio_planner.craft.studio import Studio
from studio_planner.craft.taught import TaughtStage
from studio_planner.craft.touches import Touch, Verdict
from studio_planner.science.film_limits import Colourant
from studio_planner.science.stages import Stage

NOON = datetime(2031, 3, 4, 12, tzinfo=UTC)

_SHAPES_BUT_ROUND: tuple[Shape, ...] = (
    Rectangle(length_mm=300, width_mm=200),
    Oval(length_mm=300, width_mm=200),
    FreeArea(area_cm2=100, perimeter_mm=500, length_mm=200, width_mm=100),
)


def _full_plan() -> Plan:
    return Plan(
        made=NOON,
        start=NOON + timedelta(minutes=5),
        coats=(
            PlannedCoat(
                number=1,
                piece="p1",
                coat="a",
                start=NOON,
                end=NOON + timedelta(microseconds=1),
                spot="s1",
                joint=Joint.BARE,
                mix=1,
                person="me",
                poured=True,
            ),
            PlannedCoat(
                number=2,
                piece="p1",
                coat="b",
                start=NOON + timedelta(days=1),
                end=NOON + timedelta(days=1, hours=1),
                spot="s1",
                joint=Joint.IN_WINDOW,
                mix=2,
                person="me",
                window=Window(opens=NOON, closes=None, trust=Trust.TEST_FIRST),
                air=Air.UNKNOWN,
                held=0.93,
                wrong_first=0.0625,
            ),
        ),
        steps=(
            PlannedStep(kind=StepKind.PACK, piece="p1", start=NOON, end=NOON, person="me"),
            PlannedStep(
                kind=StepKind.TAPE,
                piece="p1",
                start=NOON,
                end=NOON,
                person="me",
                coat="b",
                opens=NOON,
                closes=NOON,
            ),
        ),
        ready=(
            Readiness(piece="p1", stage=Stage.HANDLE, likely=NOON, safe=None),
            Readiness(piece="p1", stage=Stage.FULL_CURE, likely=None, safe=None),
        ),
        outcomes=(
            Outcome(
                order="o1",
                due=NOON,
                leaves=None,
                reason=Saying("The night closes the window."),
                held=0.125,
                day_held=0.875,
                rehearsed_spare_hours=-7.5,
                changes=(
                    Change(
                        words=saying("late", "a {box}", box=saying("kinds", "warm box")),
                        leaves=NOON,
                        keeps_promise=True,
                    ),
                    Change(
                        words=Saying("another pair of hands"), leaves=None, keeps_promise=False
                    ),
                ),
            ),
            Outcome(order="gone since", due=NOON, leaves=NOON),
        ),
        unplanned=(
            Unplanned(piece="p2", coat="x", reason=Saying("No spot is long enough.")),
            Unplanned(piece="gone since", coat=None, reason=joined("Too", "cold.")),
        ),
        goals=(
            GoalValue(goal=Goal.LATENESS, value=14.5, bound=6.0),
            GoalValue(goal=Goal.MIXES, value=3.0),
        ),
        grid_minutes=10,
        solved_seconds=20.25,
        rehearsals=1000,
    )


def _full_log() -> tuple[LogEntry, ...]:
    poured = LogEntry(
        number=2,
        kind=EntryKind.POURED,
        at=NOON - timedelta(hours=2),
        written=NOON,
        piece="p1",
        coat="a",
        end=NOON,
        spot="s1",
        joint=Joint.BARE,
        batch=17,
    )
    return (
        LogEntry(number=1, kind=EntryKind.WEIGHED, at=NOON, written=NOON, batch=17),
        poured,
        replace(poured, number=3, at=NOON - timedelta(hours=1), corrects=2),
        LogEntry(number=5, kind=EntryKind.WEIGHED, at=NOON, written=NOON, batch=17, corrects=1),
        LogEntry(
            number=6,
            kind=EntryKind.TOUCHED,
            at=NOON + timedelta(microseconds=3),
            written=NOON + timedelta(hours=1),
            piece="p1",
            coat="a",
            touch=Touch.TACK,
            verdict=Verdict.NOT_YET,
            words="near the handle, still soft",
        ),
        LogEntry(
            number=7, kind=EntryKind.SHIPPED, at=NOON, written=NOON, piece="p0", order="m1"
        ),
    )


def _full_mixes() -> tuple[WeighedMix, ...]:
    wrong = WeighedMix(entry=1, batch=17, product="clear", at=NOON, a_grams=150.0)
    right = replace(
        wrong,
        entry=5,
        b_grams=75.25,
        lot_a="L-0815",
        lot_b="of May",
        colourants=(WeighedColour(name="sea", grams=1.5),),
        coats=(MixedFor(piece="p1", coat="a"), MixedFor(piece="p0", coat="gone")),
    )
    return (wrong, right)


def full_studio() -> Studio:
    return Studio(
        name="Zwei Möwen \u2013 \u201cSüd\u201d",
        zone="Europe/Berlin",
        currency="EUR",
        units=Units(
            temperature=TemperatureUnit.FAHRENHEIT,
            mass=MassUnit.OUNCE,
            length=LengthUnit.INCH,
            film=FilmUnit.MIL,
            volume=VolumeUnit.FLUID_OUNCE_IMPERIAL,
            clock=ClockForm.HOURS_12,
            week_starts=6,
        ),
        settings=Settings(
            settle_minutes=90, tariff_per_kwh=0.31, surface_lag_hours={Material.SLATE: 1.25}
        ),
        reminding=Reminding(
            quiet_from=time(21, 30),
            quiet_to=time(6, 45),
            evening=time(17),
            readings_hours=8.5,
            moved_minutes=20,
            stays_in_tray=True,
            leads={ReminderKind.TAPE: 12},
            off=frozenset({ReminderKind.READINGS, ReminderKind.SHIP}),
            means_off=frozenset({Means.SOUND}),
        ),
        places=(
            Place(
                key="room",
                name="Room",
                heat_loss_w_per_k=85.5,
                pattern=(
                    PatternPoint(at=time(7), celsius=21.5, humidity_pct=48.0),
                    PatternPoint(at=time(22, 30, 15), celsius=16.25, day=6),
                ),
                spots=(Spot(key="s1", name="1", length_mm=600, width_mm=400, height_mm=300),),
                readings=(
                    Reading(when=NOON, celsius=20.1, humidity_pct=51.0),
                    Reading(when=NOON + timedelta(microseconds=1), celsius=20.2),
                ),
                spells=(
                    Spell(
                        start=NOON,
                        end=NOON + timedelta(hours=9),
                        celsius=23.5,
                        humidity_pct=40.0,
                    ),
                ),
            ),
            Place(
                key="box",
                name="Box",
                kind=PlaceKind.WARM_BOX,
                pattern=(PatternPoint(at=time(0), celsius=30.0),),
            ),
        ),
        products=(
            Product(
                key="clear",
                name="Clear (invented)",
                kind=ProductKind.TWO_PART,
                sheet=(
                    SheetPoint(stage=Stage.CUP_LIFE, celsius=22, from_hours=0.5, mass_g=100),
                    SheetPoint(stage=Stage.RECOAT_OPENS, celsius=20, from_hours=4, to_hours=6),
                    SheetPoint(stage=Stage.RECOAT_CLOSES, celsius=20, from_hours=24),
                ),
                ratio=MixRatio(a=2, b=1, by=RatioBy.VOLUME),
                density_a=1.12,
                density_b=0.98,
                minimum_celsius=16,
                maximum_celsius=30,
                humidity_limit_pct=75,
                depth_limit_mm=6,
                invented=True,
                viscosity_mpas=650.5,
                taught=(
                    TaughtStage(
                        stage=Stage.RECOAT_OPENS,
                        celsius=18.5,
                        sheet_hours=5.5,
                        early_hours=4.5,
                        likely_hours=5.25,
                        late_hours=6.125,
                        sheet_factor=0.95,
                        band_left=0.5,
                        tests=7,
                        pours=3,
                        at=NOON,
                    ),
                ),
            ),
            Product(
                key="leaf",
                name="Leaf",
                kind=ProductKind.LEAF,
                sheet=(),
                leaf_mm=140,
                leaf_price=0.3,
            ),
        ),
        stock=StockRules(lead_days=5, opened_days=200, reserve_g=120.5),
        prices=Prices(
            hourly_wage=24.5,
            consumables_per_mix=1.25,
            consumables_per_piece=0.75,
            overhead_pct=12.5,
            scrap_pct=8.0,
            fees_pct=6.5,
            rule=PriceRule.OF_PRICE,
            margin_pct=35.0,
            rush_wage_pct=25.0,
            rush_freight=9.5,
            round_to=1.0,
        ),
        lots=(
            Lot(
                key="b1",
                product="clear",
                part=LotPart.A,
                label="L-0815",
                received=date(2031, 2, 1),
                new_g=1000.0,
                price=39.9,
                opened=date(2031, 2, 3),
                best_before=date(2032, 2, 1),
                kept_for="o1",
                note="the dented one",
                counts=(LotCount(at=NOON, left_g=640.5, words="on the scale"),),
            ),
            Lot(
                key="c1",
                product="sea",
                part=LotPart.COLOURANT,
                label="S-3",
                received=date(2031, 2, 1),
                new_g=50.0,
            ),
        ),
        pigments=(
            Pigment(
                key="sea",
                name="Sea",
                kind=Colourant.MICA,
                density=3.1,
                diameter_um=45.0,
                price_per_100g=18.5,
                note="settles",
            ),
        ),
        people=(
            Person(
                key="me",
                name="Me",
                work=(
                    WorkHours(rule="FREQ=WEEKLY;BYDAY=TU,TH", start=time(18), end=time(22)),
                    WorkHours(
                        rule="FREQ=WEEKLY;INTERVAL=2;BYDAY=SA",
                        start=time(22),
                        end=time(2),
                        first=date(2031, 3, 1),
                    ),
                ),
                absences=(Absence(start=NOON, end=NOON + timedelta(days=2), why="market"),),
            ),
        ),
        patterns=(
            StackPattern(
                key="tide",
                name="Tide",
                stack=(
                    Coat(
                        key="a",
                        kind=CoatKind.COLOUR,
                        product="clear",
                        film_mm=1.5,
                        colours=(Colour(name="sea", pour_at_minute=6.5),),
                    ),
                ),
            ),
        ),
        pieces=(
            Piece(
                key="p1",
                name="Moon tray",
                note="Ask about the handles.",
                blank_price=14.75,
                photos=(Photo(key="5f2c", taken=NOON, words="before the lock coat"),),
                shape=Round(diameter_mm=300),
                material=Material.TIMBER,
                body_mm=18,
                rim_mm=6,
                footprint_mm=(350.0, 340.5),
                stack=(
                    Coat(key="a", kind=CoatKind.SEAL, product="clear", film_mm=0.3),
                    Coat(
                        key="b",
                        kind=CoatKind.COLOUR,
                        product="clear",
                        film_mm=1.5,
                        faces=frozenset({"top", "edge"}),
                        colours=(
                            Colour(name="sea", share_pct=60, colourant="blue", colourant_pct=3),
                            Colour(name="sand", share_pct=40, pour_at_minute=12.0),
                        ),
                        sandable=False,
                        test_first=True,
                        taped=True,
                        trimmed=True,
                        area_cm2=650.5,
                    ),
                    Coat(key="c", kind=CoatKind.LEAF, product="leaf", film_mm=0),
                ),
            ),
            *(
                Piece(
                    key=f"p{number}",
                    name="Board",
                    shape=shape,
                    material=Material.SLATE,
                    body_mm=10,
                    count=number,
                    stack=(Coat(key="x", kind=CoatKind.FLOOD, product="clear", film_mm=1.0),),
                )
                for number, shape in enumerate(
                    _SHAPES_BUT_ROUND,
                    start=2,
                )
            ),
        ),
        orders=(
            Order(
                key="o1",
                name="Ines",
                pieces=("p3", "p1"),
                promised=date(2031, 4, 1),
                promise=Promise.ARRIVE_BY,
                gate=Gate.FULL,
                courier=Courier(days=frozenset({1, 4}), cut_off=time(15, 30), transit_days=3),
                weight=2.5,
                note="Rings before she comes.",
                price=129.5,
                contact=ContactClaim.OWN_USE,
            ),
            Order(
                key="m1",
                name="Spring market",
                pieces=("p2",),
                promised=date(2031, 4, 5),
                promise=Promise.MARKET,
                opens=time(8, 15),
            ),
        ),
        poured=(
            Poured(
                piece="p1",
                coat="a",
                start=NOON - timedelta(hours=1),
                end=NOON,
                spot="s1",
                batch=17,
            ),
        ),
        log=_full_log(),
        mixes=_full_mixes(),
        gone=(
            Gone(kind=GoneKind.PIECE, key="p0", name="First try", order="m1"),
            Gone(kind=GoneKind.PRODUCT, key="old", name="Old clear"),
        ),
        pins=(Pin(piece="p1", coat="b", start=NOON + timedelta(days=1)),),
        plan=_full_plan(),
    )
