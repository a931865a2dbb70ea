"""The rows of the side about the mix of a chosen pour: cups, minutes, sinking, heat, depth."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop import mix_lines, words
from studio_planner.desktop.side_rows import WorthRow
from studio_planner.desktop.tongue import translate
from studio_planner.services.cup_times import air_at
from studio_planner.services.mixing.mix_sheet import mix_sheet, mixes_to_pour
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mixing.mix_sheet import MixSheet
    from studio_planner.services.ribbons import Bar


def mix_rows(bar: Bar) -> tuple[WorthRow, ...]:
    """Everything about the mix that a pour is poured from; nothing for what is poured."""
    studio = bar.lane.studio
    plan = studio.plan
    if (
        plan is None
        or not isinstance(bar, Ribbon)
        or bar.planned.mix not in mixes_to_pour(studio, plan)
    ):
        return ()
    return _rows(studio, mix_sheet(studio, plan, bar.planned.mix))


def _rows(studio: Studio, sheet: MixSheet) -> tuple[WorthRow, ...]:
    first = sheet.coats[0]
    celsius, _ = air_at(studio, first.spot, first.start)
    rows = [
        WorthRow(
            f"{sheet.product.name}, {words.mass(sheet.total_grams, studio.units)}",
            f"{mix_lines.cups_line(studio, sheet)}. {mix_lines.coats_line(studio, sheet)}.",
        )
    ]
    # What has to be put right before it is weighed comes where it is seen without scrolling.
    rows += [
        WorthRow(translate("mix", "Mind"), said, minds=True)
        for said in (*sheet.warnings, *sheet.notes)
    ]
    for title, lines in (
        (translate("mix", "In this order"), _sentences(mix_lines.order_lines(sheet))),
        (translate("mix", "Cup life"), [mix_lines.fits_line(sheet)]),
        (translate("mix", "Sinking"), mix_lines.sinking_lines(sheet)),
        (translate("mix", "Heat"), [mix_lines.heat_line(studio, sheet)]),
        (translate("mix", "Depth"), mix_lines.depth_lines(studio, sheet, celsius)),
        (translate("mix", "Shared"), [mix_lines.saving_line(studio, sheet)]),
        (translate("mix", "Smallest"), [mix_lines.smallest_line(studio, sheet)]),
    ):
        text = " ".join(line for line in lines if line)
        # The heat may be warned of already.
        if text and text not in sheet.warnings:
            rows.append(WorthRow(title, text))
    return (*rows, WorthRow(translate("mix", "Before all"), sheet.caution))


def _sentences(lines: list[str]) -> list[str]:
    return [f"{line}." for line in lines]
