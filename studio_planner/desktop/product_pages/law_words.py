"""Stages of a sheet in the trade's words, and what a law says at a temperature."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from studio_planner.desktop import words
from studio_planner.desktop.tongue import Language, spoken, translate
from studio_planner.science.stages import Stage
from studio_planner.services.data_sheets.law_curves import times_at

if TYPE_CHECKING:
    from studio_planner.craft.products import Product
    from studio_planner.craft.settings import Units
    from studio_planner.services.data_sheets.law_curves import LawPoint
    from studio_planner.services.data_sheets.stage_times import StageTime

_ZEROS = re.compile(r"(?:[.,]0+|(?<=[.,]\d\d)0|(?<=[.,]\d)00)$")

SHEET_ORDER = (
    Stage.WORKING_TIME,
    Stage.LAST_TORCH,
    Stage.COVER,
    Stage.TACK_FREE,
    Stage.RECOAT_OPENS,
    Stage.RECOAT_CLOSES,
    Stage.SANDABLE,
    Stage.HANDLE,
    Stage.PRINT_FREE,
    Stage.FULL_CURE,
    Stage.TAPE_OPENS,
    Stage.TAPE_CLOSES,
    Stage.TRIM_OPENS,
    Stage.TRIM_CLOSES,
)
"""The film's stages as a maker looks for them on a sheet."""

_WINDOW = {Stage.RECOAT_OPENS, Stage.RECOAT_CLOSES}


def stage_name(stage: Stage) -> str:
    """What a stage is called in a row of the sheet."""
    names = {
        Stage.CUP_LIFE: translate("products", "Cup life"),
        Stage.WORKING_TIME: translate("products", "Working time"),
        Stage.LAST_TORCH: translate("products", "Last torch"),
        Stage.COVER: translate("products", "Cover"),
        Stage.TACK_FREE: translate("products", "Tack-free"),
        Stage.RECOAT_OPENS: translate("products", "Recoat opens"),
        Stage.RECOAT_CLOSES: translate("products", "Recoat closes"),
        Stage.SANDABLE: translate("products", "Sandable"),
        Stage.HANDLE: translate("products", "Handle"),
        Stage.PRINT_FREE: translate("products", "Print-free"),
        Stage.FULL_CURE: translate("products", "Full cure"),
        Stage.TAPE_OPENS: translate("products", "Tape from"),
        Stage.TAPE_CLOSES: translate("products", "Tape until"),
        Stage.TRIM_OPENS: translate("products", "Trim from"),
        Stage.TRIM_CLOSES: translate("products", "Trim until"),
    }
    return names[stage]


def in_a_sentence(name: str) -> str:
    """A name as it stands within a sentence; German keeps its capitals."""
    return name[:1].lower() + name[1:] if spoken() is Language.ENGLISH else name


def row_name(stage: Stage, grams: float | None, units: Units) -> str:
    """What a row of the sheet is called; cup life says the mass that it is printed for."""
    if stage is not Stage.CUP_LIFE:
        return stage_name(stage)
    if grams is None:
        return translate("products", "Cup life, mass not printed")
    return translate("products", "Cup life of {mass}").format(mass=short_mass(grams, units))


def short_mass(grams: float, units: Units) -> str:
    """A mass as sheets print it, without zeros behind the point."""
    number, unit = words.mass(grams, units).rsplit(" ", 1)
    return f"{_ZEROS.sub('', number)} {unit}"


def law_sentence(product: Product, stage: Stage, celsius: float, units: Units) -> str:
    """What the law of a stage says at a temperature; both ends of the window for either."""
    times = times_at(product, celsius)
    at = translate("products", "At {degrees}").format(
        degrees=words.degrees(celsius, units, decimals=0)
    )
    shown = [s for s in (Stage.RECOAT_OPENS, Stage.RECOAT_CLOSES) if s in times]
    stages = shown if stage in _WINDOW else [stage]
    said = ", ".join(_said(product, times[one], units) for one in stages if one in times)
    unsure = _unsure(product, stages[0], units)
    return f"{at}: {said}{unsure}."


def _said(product: Product, time: StageTime, units: Units) -> str:
    name = in_a_sentence(row_name(time.stage, time.grams, units))
    if time.early_hours is None or time.likely_hours is None or time.late_hours is None:
        # Steadily warm, only what is colder than the product's minimum never comes.
        return translate(
            "products", "{stage} does not come, since below {minimum} its hours do not count"
        ).format(stage=name, minimum=words.degrees(product.minimum_celsius or 0.0, units))
    safe = time.late_hours if time.stage.not_before else time.early_hours
    return _form(time.stage).format(
        stage=name,
        safe=words.length_of_time(safe),
        likely=words.length_of_time(time.likely_hours),
    )


def _form(stage: Stage) -> str:
    if stage is Stage.RECOAT_OPENS:
        return translate("products", "opens after {safe} (likely {likely})")
    if stage is Stage.RECOAT_CLOSES:
        return translate("products", "closes after {safe} (likely {likely})")
    if stage.not_before:
        return translate("products", "{stage} after {safe} (likely {likely})")
    return translate("products", "{stage} is over after {safe} (likely {likely})")


def _unsure(product: Product, stage: Stage, units: Units) -> str:
    """Where the law is no more than assumed, or not the sheet's, as the end of a sentence."""
    law = product.law(stage)
    if law is not None and law.tests:
        return translate("teaching", "; as your own touch tests found")
    at = sorted({point.celsius for point in product.figures(stage)})
    if not at:
        return ""
    low, high = words.degrees(at[0], units), words.degrees(at[-1], units)
    if len(at) == 1:
        return translate(
            "products", "; assumed everywhere but at {low}, the one temperature of the sheet"
        ).format(low=low)
    return translate("products", "; outside the sheet below {low} and above {high}").format(
        low=low, high=high
    )


def reader_words(point: LawPoint, units: Units) -> str:
    """The three times under the reader of a plot."""
    return translate("products", "{degrees}: {early} to {late}, likely {likely}").format(
        degrees=words.degrees(point.celsius, units, decimals=0),
        early=words.length_of_time(point.early),
        late=words.length_of_time(point.late),
        likely=words.length_of_time(point.likely),
    )
