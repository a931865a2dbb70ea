"""Local times, sizes and states in the maker's words, in the units that the studio reads."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft import day_words, length_words
from studio_planner.craft.degree_words import degrees_said
from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import Material
from studio_planner.craft.plans import Trust
from studio_planner.craft.settings import ClockForm, MassUnit
from studio_planner.craft.shapes import Round
from studio_planner.craft.tongue import figure
from studio_planner.desktop import tongue
from studio_planner.desktop.quantities import Quantity, scale_of, shown_number
from studio_planner.desktop.tongue import marked, translate
from studio_planner.science.stages import Stage
from studio_planner.services.how_sure import in_doubt

if TYPE_CHECKING:
    from datetime import time
    from zoneinfo import ZoneInfo

    from studio_planner.craft.pieces import Joint, Piece
    from studio_planner.craft.plans import Outcome
    from studio_planner.craft.settings import Settings, Units
    from studio_planner.craft.studio import Studio

_NOON = 12
_MINUTES_IN_HOUR = 60

_TIMES = "\N{MULTIPLICATION SIGN}"
TO = "\N{EN DASH}"

_STAGE_WORDS = {
    Stage.WORKING_TIME: marked("stages", "working time over"),
    Stage.TACK_FREE: marked("stages", "tack-free"),
    Stage.RECOAT_OPENS: marked("stages", "recoat opens"),
    Stage.SANDABLE: marked("stages", "sandable"),
    Stage.HANDLE: marked("stages", "handle"),
    Stage.PRINT_FREE: marked("stages", "print-free"),
    Stage.FULL_CURE: marked("stages", "full cure"),
}

_FLAG_WORDS = {
    Stage.HANDLE: marked("flags", "handle"),
    Stage.PRINT_FREE: marked("flags", "pack"),
    Stage.FULL_CURE: marked("flags", "full"),
}


def stage_word(stage: Stage) -> str:
    """What a film reaches."""
    return translate("stages", _STAGE_WORDS[stage])


def flag_word(stage: Stage) -> str:
    """What a piece is ready for, on a flag."""
    return translate("flags", _FLAG_WORDS[stage])


@dataclass(frozen=True, slots=True)
class Wall:
    """The clock on the studio's wall: its time zone, and how times are read off it."""

    zone: ZoneInfo
    form: ClockForm = ClockForm.HOURS_24


def wall_of(studio: Studio) -> Wall:
    """The clock on a studio's wall."""
    return Wall(studio.time_zone, studio.units.clock)


def local(second: float, zone: ZoneInfo) -> datetime:
    """An instant [s since 1970 UTC] on the studio's wall clock."""
    return datetime.fromtimestamp(second, UTC).astimezone(zone)


def time_of_day(at: time | datetime, form: ClockForm) -> str:
    """A time of day as it is, without a zone: 07:05, or 7:05 am."""
    return day_words.time_of_day(at, form)


def hour_mark(hour: int, form: ClockForm) -> str:
    """A whole hour from 0 to 24 on an axis: 06, or 6 am; 12 is noon there."""
    if form is ClockForm.HOURS_24:
        return f"{hour:02}"
    if hour == _NOON:
        return translate("words", "noon")
    return f"{hour % _NOON or _NOON} {'am' if hour % (2 * _NOON) < _NOON else 'pm'}"


def clock_time(when: datetime, wall: Wall) -> str:
    """The wall-clock time, such as 07:05 or 7:05 am."""
    return time_of_day(when.astimezone(wall.zone), wall.form)


def day_name(when: datetime, wall: Wall | ZoneInfo, *, month: bool = True) -> str:
    """The local day, such as Tue 8 Dec, or Tue 8."""
    day = when.astimezone(wall.zone if isinstance(wall, Wall) else wall)
    said = (
        translate("words", "{weekday} {day} {month}")
        if month
        else translate("words", "{weekday} {day}")
    )
    return said.format(
        weekday=tongue.weekday(day.weekday()), day=day.day, month=tongue.month(day.month)
    )


def moment(when: datetime, wall: Wall) -> str:
    """Day and time, such as Tue 8 Dec 07:05."""
    return f"{day_name(when, wall)} {clock_time(when, wall)}"


def span(start: datetime, end: datetime, wall: Wall) -> str:
    """From and to; the day is given again only where it changes."""
    same = start.astimezone(wall.zone).date() == end.astimezone(wall.zone).date()
    last = clock_time(end, wall) if same else moment(end, wall)
    return translate("words", "{start} to {end}").format(start=moment(start, wall), end=last)


def length_of_time(hours: float) -> str:
    """A length of time as a maker says it, never rounded up."""
    return length_words.length_of_time(hours)


def lateness(hours: float) -> str:
    """How late something is, to the nearest minute, from a day on to the nearest hour."""
    return length_words.lateness(hours)


def until_words(when: datetime, now: datetime) -> str:
    """How far off something is."""
    ahead = (when - now) / timedelta(hours=1)
    if ahead <= 0:
        if ahead > -1 / _MINUTES_IN_HOUR:
            return translate("words", "now")
        return translate("words", "{time} ago").format(time=length_of_time(-ahead))
    return translate("words", "in {time}").format(time=length_of_time(ahead))


def degrees(celsius: float, units: Units, *, decimals: int | None = None) -> str:
    """A temperature in the studio's unit.

    Without `decimals` it is as somebody typed it: to a tenth where it is no whole degree.
    """
    if decimals is None:
        return str(degrees_said(celsius, units))
    scale = scale_of(Quantity.TEMPERATURE, units)
    return figure(f"{scale.shown(celsius):.{decimals}f} {scale.unit}")


def degree_step(celsius: float, units: Units, *, decimals: int = 0) -> str:
    """A difference of temperatures in the studio's unit."""
    scale = scale_of(Quantity.DEGREES, units)
    return figure(f"{scale.shown(celsius):.{decimals}f} {scale.unit}")


def length(mm: float, units: Units) -> str:
    """The size of a piece or a spot in the studio's unit, to a hundredth of it at most."""
    return _measured(mm, Quantity.LENGTH, units)


def film(mm: float, units: Units) -> str:
    """The thickness of a film in the studio's unit, to a micrometre or a tenth of a mil."""
    return _measured(mm, Quantity.FILM, units)


def mass(grams: float, units: Units) -> str:
    """A mass in the studio's unit: to a tenth of a gram, or a thousandth of an ounce."""
    scale = scale_of(Quantity.MASS, units)
    decimals = 3 if units.mass is MassUnit.OUNCE else 1
    return figure(f"{scale.shown(grams):.{decimals}f} {scale.unit}")


def volume(ml: float, units: Units) -> str:
    """A volume in the studio's unit, to a hundredth of it at most."""
    return _measured(ml, Quantity.VOLUME, units)


def area(cm2: float, units: Units) -> str:
    """An area in the studio's unit, to a tenth of it at most."""
    return _measured(cm2, Quantity.AREA, units)


def _measured(inside: float, quantity: Quantity, units: Units) -> str:
    return f"{shown_number(inside, quantity, units)} {scale_of(quantity, units).unit}"


def blank(piece: Piece, units: Units) -> str:
    """The bare body of a piece: timber 400 x 200 mm, or slate ⌀ 100 mm."""
    made_of = material(piece)
    if isinstance(piece.shape, Round):
        return f"{made_of} ⌀ {length(piece.shape.diameter_mm, units)}"
    long = length(piece.shape.length_mm, units).split(" ", maxsplit=1)[0]
    return f"{made_of} {long} {_TIMES} {length(piece.shape.width_mm, units)}"


def material(piece: Piece) -> str:
    """What a blank is of."""
    said = kind_word(piece.material)
    return "MDF" if piece.material is Material.MDF else said


def piece_name(piece: Piece) -> str:
    """The piece, and how many there are in a set."""
    return f"{piece.name} {_TIMES}{piece.count}" if piece.count > 1 else piece.name


def joint(joint: Joint, trust: Trust | None) -> str:
    """How a coat meets the one below."""
    if trust is Trust.TEST_FIRST:
        return translate("words", "{joint}, test first").format(joint=kind_word(joint))
    return kind_word(joint)


def promise_word(
    outcome: Outcome | None, settings: Settings, shipped: datetime | None = None
) -> str:
    """What the plan means for a promise, in a few words, and whether that is in doubt.

    Of an order that was `shipped` it says so.
    """
    if outcome is None or outcome.late_hours is None or outcome.spare_hours is None:
        return translate("words", "not planned")
    if outcome.late_hours > 0:
        if shipped is not None:
            said = translate("words", "shipped, {time} late")
        elif in_doubt(outcome):
            said = translate("words", "in doubt, {time} late or more")
        else:
            said = translate("words", "{time} late")
        return said.format(time=lateness(outcome.late_hours))
    if shipped is not None:
        return translate("words", "shipped")
    return _spare_words(outcome, outcome.spare_hours, settings)


def _spare_words(outcome: Outcome, hours: float, settings: Settings) -> str:
    if in_doubt(outcome):
        said = translate("words", "in doubt, {time} spare as planned")
    elif hours >= settings.spare_hours:
        said = translate("words", "kept, {time} spare")
    elif hours < 1.0:
        said = translate("words", "kept, nothing spare")
    else:
        said = translate("words", "kept, only {time} spare")
    return said.format(time=length_of_time(hours))
