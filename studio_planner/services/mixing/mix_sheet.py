"""Everything about a planned mix on one sheet: portions, minutes, heat, savings, warnings."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind
from studio_planner.services.caution import deferral
from studio_planner.services.mixing.heat import heat_in_cup
from studio_planner.services.mixing.mix_words import mix_warnings
from studio_planner.services.mixing.splitting import (
    Saving,
    Split,
    saved_by_sharing,
    split_of,
)
from studio_planner.services.weighing import smallest_mix_grams

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Plan, PlannedCoat
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio
    from studio_planner.science.exotherm import Exotherm
    from studio_planner.services.mixing.cup_plan import PortionTime
    from studio_planner.services.weighing import MixPortion


@dataclass(frozen=True, slots=True, kw_only=True)
class MixSheet:
    """One mix of the plan.

    `split` has its portions minute by minute; `heat` is that of a portion left in its cup, None
    where the sheet has no cup life; `saving` is what its coats save by sharing it. `warnings`
    and `notes` are sentences; whatever shows them ends with `caution`.
    """

    mix: int
    product: Product
    coats: tuple[PlannedCoat, ...]
    start: datetime
    end: datetime
    split: Split
    smallest_grams: float
    heat: Exotherm | None
    saving: Saving
    warnings: tuple[str, ...]
    notes: tuple[str, ...]
    caution: str

    @property
    def portions(self) -> tuple[MixPortion, ...]:
        """What is weighed, portion by portion."""
        return tuple(time.portion for time in self.split.times)

    @property
    def times(self) -> tuple[PortionTime, ...]:
        """The same, minute by minute."""
        return self.split.times

    @property
    def total_grams(self) -> float:
        """All that is weighed for it, without colourants."""
        return sum(portion.total_grams for portion in self.portions)


def mix_sheet(studio: Studio, plan: Plan, mix: int) -> MixSheet:
    """Give the sheet of a mix of the plan; KeyError when there is none of that number."""
    coats = tuple(coat for coat in plan.coats if coat.mix == mix)
    if not coats:
        raise KeyError(mix)
    split = split_of(studio, coats)
    portion = split.times[0].portion
    heat = heat_in_cup(studio, portion)
    return MixSheet(
        mix=mix,
        product=portion.product,
        coats=coats,
        start=coats[0].start,
        end=coats[0].end,
        split=split,
        smallest_grams=smallest_mix_grams(studio, portion.product),
        heat=heat,
        saving=saved_by_sharing(studio, coats),
        warnings=mix_warnings(studio, split, heat),
        notes=portion.notes,
        caution=deferral(),
    )


def mixes_to_pour(studio: Studio, plan: Plan) -> tuple[int, ...]:
    """The numbers of the plan's mixes that are still to be weighed, in order of time.

    What is poured already and what is laid rather than weighed has none.
    """
    starts = {
        coat.mix: (coat.start, coat.mix)
        for coat in plan.coats
        if not coat.poured and (coat.piece, coat.coat) not in studio.poured_keys
        if _product(studio, coat).kind is not ProductKind.LEAF
    }
    return tuple(sorted(starts, key=lambda mix: starts[mix]))


def _product(studio: Studio, planned: PlannedCoat) -> Product:
    return studio.product(studio.piece(planned.piece).coat(planned.coat).product)
