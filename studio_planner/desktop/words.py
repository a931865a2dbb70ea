"""Local times, sizes and states in the maker's words."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from math import floor
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Trust
from studio_planner.craft.settings import LengthUnit, TemperatureUnit
from studio_planner.craft.shapes import Round
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from zoneinfo import ZoneInfo

    from studio_planner.craft.pieces import Joint, Piece
    from studio_planner.craft.plans import Outcome
    from studio_planner.craft.settings import Settings, Units

_DAYS = ("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")
_MONTHS = ("Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec")
_MM_PER_INCH = 25.4
_DAY_HOURS = 24
_MINUTES_IN_HOUR = 60
_CRUMB = 1e-6
"""Minutes that a sum of hours may lack without being a minute less."""

_TIMES = "\N{MULTIPLICATION SIGN}"
TO = "\N{EN DASH}"

STAGE_WORDS = {
    Stage.WORKING_TIME: "working time over",
    Stage.TACK_FREE: "tack-free",
    Stage.RECOAT_OPENS: "recoat opens",
    Stage.SANDABLE: "sandable",
    Stage.HANDLE: "handle",
    Stage.PRINT_FREE: "print-free",
    Stage.FULL_CURE: "full cure",
}

FLAG_WORDS = {Stage.HANDLE: "handle", Stage.PRINT_FREE: "pack", Stage.FULL_CURE: "full"}


def local(second: float, zone: ZoneInfo) -> datetime:
    """An instant [s since 1970 UTC] on the studio's wall clock."""
    return datetime.fromtimestamp(second, UTC).astimezone(zone)


def clock_time(when: datetime, zone: ZoneInfo) -> str:
    """The wall-clock time, such as 07:05."""
    local_time = when.astimezone(zone)
    return f"{local_time.hour:02}:{local_time.minute:02}"


def day_name(when: datetime, zone: ZoneInfo, *, month: bool = True) -> str:
    """The local day, such as Tue 8 Dec, or Tue 8."""
    day = when.astimezone(zone)
    words = f"{_DAYS[day.weekday()]} {day.day}"
    return f"{words} {_MONTHS[day.month - 1]}" if month else words


def moment(when: datetime, zone: ZoneInfo) -> str:
    """Day and time, such as Tue 8 Dec 07:05."""
    return f"{day_name(when, zone)} {clock_time(when, zone)}"


def span(start: datetime, end: datetime, zone: ZoneInfo) -> str:
    """From and to; the day is given again only where it changes."""
    same = start.astimezone(zone).date() == end.astimezone(zone).date()
    last = clock_time(end, zone) if same else moment(end, zone)
    return f"{moment(start, zone)} to {last}"


def length_of_time(hours: float) -> str:
    """A length of time as a maker says it: 35 min, 5 h 20 min, 3 d 15 h; never rounded up."""
    whole, minutes = divmod(floor(hours * _MINUTES_IN_HOUR + _CRUMB), _MINUTES_IN_HOUR)
    if not whole:
        return f"{minutes} min"
    if whole < _DAY_HOURS:
        return f"{whole} h {minutes} min" if minutes else f"{whole} h"
    days, left = divmod(whole, _DAY_HOURS)
    if left:
        return f"{days} d {left} h"
    return "1 day" if days == 1 else f"{days} days"


def lateness(hours: float) -> str:
    """How late something is, to the nearest minute, from a day on to the nearest hour."""
    if hours >= _DAY_HOURS:
        return length_of_time(round(hours))
    return length_of_time(max(round(hours * _MINUTES_IN_HOUR), 1) / _MINUTES_IN_HOUR)


def until_words(when: datetime, now: datetime) -> str:
    """How far off something is."""
    ahead = (when - now) / timedelta(hours=1)
    if ahead <= 0:
        return "now" if ahead > -1 / _MINUTES_IN_HOUR else f"{length_of_time(-ahead)} ago"
    return f"in {length_of_time(ahead)}"


def degrees(celsius: float, units: Units, *, decimals: int = 0) -> str:
    """A temperature in the studio's unit."""
    if units.temperature is TemperatureUnit.FAHRENHEIT:
        return f"{celsius * 1.8 + 32:.{decimals}f} °F"
    return f"{celsius:.{decimals}f} °C"


def degree_step(celsius: float, units: Units, *, decimals: int = 0) -> str:
    """A difference of temperatures in the studio's unit."""
    if units.temperature is TemperatureUnit.FAHRENHEIT:
        return f"{celsius * 1.8:.{decimals}f} °F"
    return f"{celsius:.{decimals}f} °C"


def length(mm: float, units: Units) -> str:
    """A length in the studio's unit."""
    if units.length is LengthUnit.INCH:
        return f"{mm / _MM_PER_INCH:.3g} in"
    return f"{mm:g} mm"


def blank(piece: Piece, units: Units) -> str:
    """The bare body of a piece: timber 400 x 200 mm, or slate ⌀ 100 mm."""
    material = "MDF" if piece.material == "mdf" else str(piece.material)
    if isinstance(piece.shape, Round):
        return f"{material} ⌀ {length(piece.shape.diameter_mm, units)}"
    long = length(piece.shape.length_mm, units).split(" ", maxsplit=1)[0]
    return f"{material} {long} {_TIMES} {length(piece.shape.width_mm, units)}"


def piece_name(piece: Piece) -> str:
    """The piece, and how many there are in a set."""
    return f"{piece.name} {_TIMES}{piece.count}" if piece.count > 1 else piece.name


def joint(joint: Joint, trust: Trust | None) -> str:
    """How a coat meets the one below."""
    if trust is Trust.TEST_FIRST:
        return f"{joint}, test first"
    return str(joint)


def promise_word(outcome: Outcome | None, settings: Settings) -> str:
    """What the plan means for a promise, in a few words."""
    if outcome is None or outcome.late_hours is None or outcome.spare_hours is None:
        return "not planned"
    if outcome.late_hours > 0:
        return f"{lateness(outcome.late_hours)} late"
    if outcome.spare_hours < settings.spare_hours:
        spare = length_of_time(outcome.spare_hours)
        return (
            f"kept, only {spare} spare" if outcome.spare_hours >= 1.0 else "kept, nothing spare"
        )
    return f"kept, {length_of_time(outcome.spare_hours)} spare"
