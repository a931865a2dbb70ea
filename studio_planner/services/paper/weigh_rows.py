"""The weigh list of a portion: what to add, and what the scale shows then.

What is printed is what the scale can show. In ounces what is added is the difference of two
printed readings, and a cup that of two printed fill levels: so every list adds up as printed.
"""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from typing import TYPE_CHECKING

from studio_planner.craft.settings import MassUnit
from studio_planner.craft.stock import LotPart
from studio_planner.craft.tongue import figure, translate
from studio_planner.science.units import grams_to
from studio_planner.services.mixing.scale_steps import ScaleStep, ScaleWork, scale_steps
from studio_planner.services.paper.pages import Column, Row, Table

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.studio import Studio
    from studio_planner.services.weighing import MixPortion

_OUNCE_DECIMALS = 3


@dataclass(frozen=True, slots=True)
class Reading:
    """One step as it is printed: in the studio's unit, on the decimals that are shown."""

    step: ScaleStep
    add: float
    reads: float


@dataclass(frozen=True, slots=True)
class Display:
    """How a studio's scale shows masses."""

    unit: MassUnit
    decimals: int

    @staticmethod
    def of(studio: Studio) -> Display:
        """Grams to the scale's own step, ounces to a thousandth."""
        unit = studio.units.mass
        if unit is MassUnit.OUNCE:
            return Display(unit, _OUNCE_DECIMALS)
        exponent = Decimal(str(studio.settings.scale_step_g)).normalize().as_tuple().exponent
        return Display(unit, max(0, -int(exponent)))

    def shown(self, grams: float) -> float:
        """A mass as the display shows it, in its unit."""
        return round(grams_to(grams, str(self.unit)), self.decimals)

    def said(self, amount: float) -> str:
        """An amount that is shown, with its unit."""
        return figure(f"{amount:.{self.decimals}f} {self.unit}")

    def grams_said(self, grams: float) -> str:
        """A mass with its unit."""
        return self.said(self.shown(grams))


def readings(studio: Studio, portion: MixPortion) -> tuple[Reading, ...]:
    """Every step of a portion at the scale, as it is printed."""
    display = Display.of(studio)
    found: list[Reading] = []
    filled = 0.0
    for step in scale_steps(studio, portion):
        before = 0.0 if step.tare or not found else found[-1].reads
        if step.work is ScaleWork.MIX:
            after = filled + step.add_grams
            add = display.shown(after) - display.shown(filled)
            filled = after
        elif step.work is ScaleWork.COLOURANT:
            add = display.shown(step.add_grams)
        else:
            add = display.shown(step.reads_grams) - before
        add = round(add, display.decimals)
        found.append(Reading(step, add, round(before + add, display.decimals)))
    return tuple(found)


def weigh_table(studio: Studio, portion: MixPortion, lots: Mapping[LotPart, str]) -> Table:
    """The weigh list with the labels of the bottles, and room for what was really weighed."""
    display = Display.of(studio)
    shown = readings(studio, portion)
    rows = [_row(display, one, portion, lots) for one in shown]
    return Table(
        title=translate("paper", "Weigh: set each empty cup to zero first"),
        columns=(
            Column(head="", share=0.50),
            Column(head=translate("paper", "add"), share=0.18, right=True),
            Column(head=translate("paper", "scale shows"), share=0.18, right=True),
            Column(head=translate("paper", "really"), share=0.14, write=True),
        ),
        rows=tuple(rows),
        large=True,
    )


def _row(
    display: Display, reading: Reading, portion: MixPortion, lots: Mapping[LotPart, str]
) -> Row:
    return Row(
        cells=(_what(reading.step, portion, lots), display.said(reading.add),
               display.said(reading.reads), ""),
        strong=reading.step.work is not ScaleWork.COLOURANT,
    )  # fmt: skip


def _of_bottle(what: str, lot: str | None) -> str:
    if not lot:
        return what
    return translate("paper", "{what}: {lot}").format(what=what, lot=lot)


def _what(step: ScaleStep, portion: MixPortion, lots: Mapping[LotPart, str]) -> str:
    match step.work:
        case ScaleWork.PART_A:
            return _of_bottle(translate("paper", "A"), lots.get(LotPart.A))
        case ScaleWork.PART_B:
            return _of_bottle(translate("paper", "B"), lots.get(LotPart.B))
        case ScaleWork.WHOLE:
            return _of_bottle(portion.product.name, lots.get(LotPart.WHOLE))
        case ScaleWork.MIX:
            return translate("paper", "cup {number}: {colour}").format(
                number=step.cup, colour=step.name
            )
        case ScaleWork.COLOURANT:
            name = step.name or translate("paper", "colourant")
            return translate("paper", "+ {colourant}").format(colourant=name)
