"""What a log was found to be, in sentences."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.words import Wall
    from studio_planner.services.room_logs import LogLook

_SHOWN = 6


def found_words(look: LogLook, wall: Wall, units: Units) -> list[str]:
    """Columns, units, zone, extent, what overlaps; one sentence each."""
    found = look.found
    if look.questions:
        return [translate("room", "Answer that first; then you see what would be kept.")]
    said = [_columns(look)]
    if look.new:
        warmths = [reading.celsius for reading in found.readings]
        said.append(
            translate("room", "{count} readings, {first} to {last}, {low} to {high}.").format(
                count=f"{len(found.readings):,}",
                first=_dated(look, found.readings[0].when, wall),
                last=_dated(look, found.readings[-1].when, wall),
                low=words.degrees(min(warmths), units, decimals=1),
                high=words.degrees(max(warmths), units, decimals=1),
            )
        )
    else:
        said.append(translate("room", "No row of it could be read."))
    zone = translate("room", "Its times: {zone}; dates: {order}.")
    said.append(zone.format(zone=found.zone, order=found.date_order))
    if look.thinned:
        said.append(
            translate("room", "One reading in ten minutes is kept: {count}.").format(
                count=f"{len(look.new):,}"
            )
        )
    if look.overlapping:
        said.append(
            translate("room", "{count} of them fall where there are readings already.").format(
                count=f"{look.overlapping:,}"
            )
        )
    if look.new and not look.added:
        said.append(
            translate("room", "Nothing would be added: let the new ones replace the others.")
        )
    return [*said, *found.notes]


def _dated(look: LogLook, when: datetime, wall: Wall) -> str:
    """Day and time, with the year where it is another one than now."""
    said = words.moment(when, wall)
    this_year = look.now is None or look.now.year == when.year
    return said if this_year else f"{said} ({when.year})"


def _columns(look: LogLook) -> str:
    found = look.found
    humidity = found.humidity_column or translate("room", "none")
    return translate(
        "room",
        "Time from “{time}”, temperature from “{warmth}” in °{unit}, humidity: {damp}; "
        "{delimiter} between columns, “{mark}” for decimals.",
    ).format(
        time=found.time_column,
        warmth=found.temperature_column,
        unit=found.unit,
        damp=humidity,
        delimiter=found.delimiter,
        mark=found.decimal_mark,
    )


def gap_words(look: LogLook, wall: Wall) -> list[str]:
    """The longest stretches without a reading."""
    gaps = look.longest_gaps
    if not gaps:
        return []
    head = translate("room", "Stretches without readings: {count}.").format(
        count=len(look.found.gaps)
    )
    return [head, *(f"    {words.span(gap.start, gap.end, wall)}" for gap in gaps[:_SHOWN])]


def skipped_words(look: LogLook) -> list[str]:
    """The rows that gave no reading, and why; the first few."""
    skipped = look.found.skipped
    if not skipped:
        return []
    head = translate("room", "Rows that gave no reading: {count}.").format(
        count=f"{len(skipped):,}"
    )
    row = translate("room", "    line {line}: {why}")
    rows = [row.format(line=one.line, why=one.why) for one in skipped[:_SHOWN]]
    return [head, *rows]
