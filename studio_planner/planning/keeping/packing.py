"""Packs what a kept plan holds: when it was to be packed, or as soon as it can be."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.planning.keeping.kept_plan import KeptPlan
    from studio_planner.planning.placing.placements import Packed, Placement
    from studio_planner.planning.placing.placer import Placer
    from studio_planner.planning.problem import Chain


class Packing:
    """The packing of placements that are not packed yet, or may be packed sooner."""

    def __init__(self, kept: KeptPlan, placer: Placer) -> None:
        """Work with the hands that a placer's workshop has left."""
        self._kept = kept
        self._placer = placer

    def packed(self, placement: Placement) -> Placement | None:
        """A placement with its packing: when it was, or as soon as it can be.

        None when it can't be packed in the record.
        """
        finisher = self._placer.finisher
        if placement.chain.order is None:
            return replace(placement, packed=(), score=finisher.score(placement.laid, ()))
        after = self._packed_after(placement)
        if after is None:
            return None
        packs: tuple[Packed, ...] | None = self.as_planned(placement.chain, after)
        packs = packs or finisher.packs(placement.chain, after)
        if packs is None:
            return None
        score = finisher.score(placement.laid, packs)
        return replace(placement, packed=packs, score=score)

    def as_planned(self, chain: Chain, after: int) -> tuple[Packed, ...]:
        """A chain's packing as it was planned, if it can be so from `after` on; else none."""
        packs = self._kept.packs(chain) or ()
        hands = self._placer.means.shop.hands
        length = 0 if chain.order is None else chain.order.packing_minutes * 60
        stays = all(
            pack.start >= after
            and pack.end - pack.start == length
            and pack.person in hands
            and hands[pack.person].holds(pack.start, pack.end)
            for pack in packs
        )
        return packs if stays else ()

    def sooner(self, placement: Placement) -> Placement:
        """The placement packed earlier, where hands are free earlier by now."""
        after = self._packed_after(placement) if placement.packed else None
        if after is None:
            return placement
        finisher, shop = self._placer.finisher, self._placer.means.shop
        packs = finisher.packs(placement.chain, after)
        if packs is None or packs[-1].end >= placement.packed[-1].end:
            return placement
        for pack in packs:
            shop.take_hands(pack.person, pack.start, pack.end)
        return replace(placement, packed=packs, score=finisher.score(placement.laid, packs))

    def _packed_after(self, placement: Placement) -> int | None:
        """From when on a placement can be packed; None when never in the record."""
        order = placement.chain.order
        if order is None:
            return None
        gate = self._placer.finisher.gate(placement.laid, order.gate.stage)
        if gate is None:
            return None
        last = placement.starts[-1] + placement.chain.tasks[-1].block
        return max(gate, last, self._placer.means.now)
