"""The rows of the side about the mix of a chosen pour: cups, minutes, sinking, heat, depth.

Of what is poured they say what was really weighed into it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.mixes import MixedFor
from studio_planner.craft.tongue import figure
from studio_planner.desktop import mix_lines, words
from studio_planner.desktop.side_rows import WorthRow
from studio_planner.desktop.tongue import translate
from studio_planner.services.cup_times import air_at
from studio_planner.services.log_book.trace_words import mix_words
from studio_planner.services.mixing.mix_sheet import mix_sheet, mixes_to_pour
from studio_planner.services.mixing.recipes import really_used
from studio_planner.services.ribbons import Ribbon

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.studio import Studio
    from studio_planner.services.mixing.mix_sheet import MixSheet
    from studio_planner.services.ribbons import Bar


def mix_rows(bar: Bar) -> tuple[WorthRow, ...]:
    """Everything about the mix that a pour is poured from, or what was weighed for it."""
    studio = bar.lane.studio
    plan = studio.plan
    if plan is None or not isinstance(bar, Ribbon):
        return ()
    if bar.planned.mix in mixes_to_pour(studio, plan):
        return _rows(studio, mix_sheet(studio, plan, bar.planned.mix))
    return tuple(_weighed(studio, bar.lane.piece.key, bar.coat.key))


def _weighed(studio: Studio, piece: str, coat: str) -> Iterator[WorthRow]:
    """What was weighed into each mix of a coat, and how much of it its colours are."""
    mixes = [
        mix for mix in studio.standing_mixes if MixedFor(piece=piece, coat=coat) in mix.coats
    ]
    for mix in mixes:
        title = translate("mix", "Mix {number}, weighed {when}").format(
            number=mix.batch, when=words.moment(mix.at, words.wall_of(studio))
        )
        yield WorthRow(title, f"{mix_words(studio, mix)}.")
    said = translate("mix", "{name}: {share} of all of mix {number}.")
    colours = [
        said.format(
            name=used.name,
            share=f"{figure(f'{used.of_mix_pct:.3g}')}\N{NO-BREAK SPACE}%",
            number=used.batch,
        )
        for used in really_used(studio, piece, coat)
    ]
    if colours:
        yield WorthRow(translate("mix", "Colours"), " ".join(colours))


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
