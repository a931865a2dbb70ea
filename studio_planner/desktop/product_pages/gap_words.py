"""What a sheet leaves open, in sentences that say what it means and what to do."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop import words
from studio_planner.desktop.product_pages.law_words import in_a_sentence, stage_name
from studio_planner.desktop.tongue import translate
from studio_planner.services.data_sheets.gaps import Gap

if TYPE_CHECKING:
    from studio_planner.craft.settings import Units
    from studio_planner.services.data_sheets.gaps import SheetGap


def gap_sentence(gap: SheetGap, units: Units) -> str:
    """One gap as one sentence."""
    if gap.gap is Gap.NO_STAGE:
        return _missing_stage(gap)
    at = "" if gap.celsius is None else words.degrees(gap.celsius, units)
    opens, closes = [words.length_of_time(h) for h in gap.hours or (0.0, 0.0)]
    return _sentences()[gap.gap].format(at=at, opens=opens, closes=closes)


def _missing_stage(gap: SheetGap) -> str:
    assert gap.stage is not None  # noqa: S101 - a missing stage has its name
    name = in_a_sentence(stage_name(gap.stage))
    if gap.instead is None:
        return translate(
            "products",
            "No figure for {stage} or later: nothing that waits for it can be planned.",
        ).format(stage=name)
    return translate("products", "No figure for {stage}: {instead} is used instead.").format(
        stage=name, instead=in_a_sentence(stage_name(gap.instead))
    )


def _sentences() -> dict[Gap, str]:
    return {
        Gap.NO_FIGURES: translate(
            "products", "No figures yet: type what the sheet prints, or paste it."
        ),
        Gap.ASSUMED_RATIO: translate(
            "products",
            "The ratio is only a start: enter the one on the sheet, and say whether it is by "
            "weight or by volume.",
        ),
        Gap.NO_OPENING: translate(
            "products", "No figure for recoat opens: nothing can be coated over it."
        ),
        Gap.NO_CLOSING: translate(
            "products",
            "No figure for recoat closes: no window can be planned, only washing and sanding.",
        ),
        Gap.SHUT: translate(
            "products",
            "At {at} the window is not open for sure: opens after {opens}, closes after "
            "{closes}. Only a touch test, or sanding, helps there.",
        ),
        Gap.NO_CUP_LIFE: translate(
            "products", "No cup life: nothing says when a mix has to be out of its cup."
        ),
        Gap.CUP_MASS: translate(
            "products", "The cup life names no mass: 100 g is assumed; larger mixes go faster."
        ),
        Gap.ROOM_COLDER: translate(
            "products",
            "Your room gets colder than the sheet's {at}: times there are outside the sheet.",
        ),
        Gap.ROOM_WARMER: translate(
            "products",
            "Your room gets warmer than the sheet's {at}: times there are outside the sheet.",
        ),
        Gap.UNDER_MINIMUM: translate(
            "products",
            "Your room gets colder than its lowest temperature, {at}: no pour is planned then.",
        ),
    }
