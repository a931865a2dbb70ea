"""What the work beside the pours is called, where it depends on the order it is for."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.orders import Gate
from studio_planner.craft.plans import StepKind
from studio_planner.craft.tongue import marked, translate

if TYPE_CHECKING:
    from studio_planner.craft.plans import PlannedStep
    from studio_planner.craft.studio import Studio

_PACKING = {
    Gate.DISPLAY: marked("packing", "pack for display"),
    Gate.PACK: marked("packing", "pack"),
    Gate.FULL: marked("packing", "pack, fully cured"),
}
_GATES = {
    Gate.DISPLAY: marked("packing", "handle (display)"),
    Gate.PACK: marked("packing", "pack"),
    Gate.FULL: marked("packing", "full cure"),
}


def step_words(studio: Studio, step: PlannedStep) -> str:
    """Say what a step is; packing says how far its order lets the cure be."""
    packs = step.kind is StepKind.PACK
    return packing_words(studio, step.piece) if packs else kind_word(step.kind)


def packing_words(studio: Studio, piece: str) -> str:
    """Say how a piece (a key) is packed: for display as soon as it can be handled, or later."""
    order = studio.order_of(piece)
    return translate("packing", _PACKING[Gate.PACK if order is None else order.gate])


def waits_for_words(studio: Studio, piece: str) -> str:
    """Say which ready time the order of a piece (a key) waits for; empty without an order."""
    order = studio.order_of(piece)
    return "" if order is None else gate_words(order.gate)


def gate_words(gate: Gate) -> str:
    """Say what a piece is ready for at a gate, such as handle (display)."""
    return translate("packing", _GATES[gate])
