"""The numbers that planned portions were weighed under."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.mixes import MixedFor
from studio_planner.craft.standing import bare_since
from studio_planner.services.mixing.mix_sheet import mixes_to_pour
from studio_planner.services.weighing import amounts_of

if TYPE_CHECKING:
    from studio_planner.craft.mixes import WeighedMix
    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.studio import Studio


def batch_numbers(studio: Studio, plan: Plan) -> dict[int, tuple[int, ...]]:
    """Give each mix that is still to be poured the numbers of the portions that are weighed.

    A portion has a number only once it is weighed: one that was foretold would go to whatever
    is weighed first.
    """
    found: dict[int, tuple[int, ...]] = {}
    for mix in mixes_to_pour(studio, plan):
        coats = tuple(coat for coat in plan.coats if coat.mix == mix)
        entered = [(studio.piece(c.piece), studio.piece(c.piece).coat(c.coat)) for c in coats]
        parts = amounts_of(studio, entered).parts
        found[mix] = _weighed_already(studio, coats)[-parts:]
    return found


def _weighed_already(studio: Studio, coats: tuple[PlannedCoat, ...]) -> tuple[int, ...]:
    """The numbers of mixes that stand as weighed for coats which are not poured yet."""
    mixes = (mix for mix in studio.standing_mixes if _is_for(studio, mix, coats))
    return tuple(dict.fromkeys(mix.batch for mix in sorted(mixes, key=lambda one: one.at)))


def _is_for(studio: Studio, mix: WeighedMix, coats: tuple[PlannedCoat, ...]) -> bool:
    for coat in coats:
        since = bare_since(studio, coat.piece)
        if MixedFor(piece=coat.piece, coat=coat.coat) in mix.coats:
            return since is None or mix.at >= since
    return False
