"""From which bottle the step at the scale takes."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop.tongue import translate
from studio_planner.services.mixing.scale_steps import ScaleWork

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mix_run.stand import Stand
    from studio_planner.services.mix_run.taps import RunningMix


def bottle_said(studio: Studio, running: RunningMix | None, stand: Stand) -> str:
    """The bottle that is in hand at this step; empty where none is noted, or none is."""
    scale = stand.step.scale
    if running is None or scale is None:
        return ""
    lots = {
        ScaleWork.PART_A: running.lot_a,
        ScaleWork.WHOLE: running.lot_a,
        ScaleWork.PART_B: running.lot_b,
    }
    key = lots.get(scale.work, "")
    label = next((one.label for one in studio.lots if one.key == key), "")
    return translate("weigh", "From bottle {label}").format(label=label) if label else ""
