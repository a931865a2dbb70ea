"""Figures that a piece can't be planned without, one sentence for each product."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.joint_rules import clash_at
from studio_planner.craft.kind_words import stage_said
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Unplanned
from studio_planner.craft.products import ProductKind
from studio_planner.craft.saying import saying
from studio_planner.craft.sheet_stages import (
    gate_coats,
    gate_stage,
    handle_stage,
    may_scuff,
    under_another,
    window_stages,
    window_unknown,
)
from studio_planner.craft.standing import sanded_for
from studio_planner.craft.tongue import marked
from studio_planner.planning.sanded import scuffed_at
from studio_planner.planning.saying import listed
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.products import Product
    from studio_planner.craft.saying import Saying
    from studio_planner.craft.studio import Studio

_ASKED = {
    Stage.WORKING_TIME: marked("missing", "how long it can be worked ({stage})"),
    Stage.TAPE_OPENS: marked("missing", "from when its tape can be pulled ({stage})"),
    Stage.TAPE_CLOSES: marked("missing", "until when its tape can be pulled ({stage})"),
    Stage.TRIM_OPENS: marked("missing", "from when its drips can be trimmed ({stage})"),
    Stage.TRIM_CLOSES: marked("missing", "until when its drips can be trimmed ({stage})"),
    Stage.RECOAT_OPENS: marked("missing", "from when the next coat can go on ({stage})"),
    Stage.RECOAT_CLOSES: marked("missing", "until when the next coat bonds to it ({stage})"),
    Stage.TACK_FREE: marked("missing", "from when the next coat can go on ({stage})"),
    Stage.HANDLE: marked("missing", "when it can be handled ({stage})"),
    Stage.PRINT_FREE: marked("missing", "when it can be packed ({stage})"),
    Stage.FULL_CURE: marked("missing", "when it is cured through ({stage})"),
}
"""What a sheet does not say, with the name that the figure has there."""

_Lack = tuple["Coat", Stage]


def missing_figures(studio: Studio, piece: Piece) -> list[Unplanned]:
    """What sheets lack for a piece to be planned, a row for each product, first coat first."""
    stages: dict[str, list[Stage]] = {}
    coats: dict[str, Coat] = {}
    for coat, stage in (*_stack_lacks(studio, piece), *_gate_lacks(studio, piece)):
        stages.setdefault(coat.product, []).append(stage)
        coats.setdefault(coat.product, coat)
    return [
        Unplanned(
            piece=piece.key,
            coat=coats[key].key,
            reason=_sentence(piece, studio.product(key), lacking),
        )
        for key, lacking in stages.items()
    ]


def _stack_lacks(studio: Studio, piece: Piece) -> Iterator[_Lack]:
    poured = len(studio.pours_of(piece.key))
    for index, coat in enumerate(piece.stack):
        for stage in _lacking(piece, coat, studio.product(coat.product)):
            yield coat, stage
        below = piece.below(index)
        # What can never meet the coat below lacks no figure of it.
        if index >= poured and below is not None and not clash_at(studio, piece.stack, index):
            needed = _joint_needs(studio, piece, index, piece.stack[below])
            # What is sanded already waits for no stage.
            if needed and scuffed_at(studio, piece, index, sanded_for(studio)) is None:
                yield piece.stack[below], needed


def _lacking(piece: Piece, coat: Coat, product: Product) -> list[Stage]:
    stages = []
    if coat.taped:
        stages += [Stage.TAPE_OPENS, Stage.TAPE_CLOSES]
    if coat.trimmed:
        stages += [Stage.TRIM_OPENS, Stage.TRIM_CLOSES]
    lacking = [stage for stage in stages if not product.figures(stage)]
    if not _may_be_silent(piece, coat, product) and handle_stage(product) is None:
        lacking.append(Stage.HANDLE)
    return lacking


def _may_be_silent(piece: Piece, coat: Coat, product: Product) -> bool:
    """Size under another coat, and leaf, have no handle of their own."""
    if product.kind is ProductKind.LEAF:
        return True
    return product.kind is ProductKind.SIZE and under_another(piece, coat)


def _joint_needs(studio: Studio, piece: Piece, index: int, lower: Coat) -> Stage | None:
    """The figure of the coat below that a joint cannot do without; None where it has all."""
    product = studio.product(lower.product)
    opens, _ = window_stages(studio, piece, index)
    if opens is not None and not product.figures(opens):
        return opens
    wet = piece.stack[index].joint is Joint.WET_IN_WET
    if wet and not product.figures(Stage.WORKING_TIME):
        return Stage.WORKING_TIME
    if window_unknown(studio, piece, index) and not may_scuff(studio, piece, index):
        return Stage.RECOAT_CLOSES
    return None


def _gate_lacks(studio: Studio, piece: Piece) -> Iterator[_Lack]:
    order = studio.order_of(piece.key)
    if order is None:
        return
    for coat in gate_coats(studio, piece, order.gate.stage):
        if gate_stage(studio.product(coat.product), order.gate.stage) is None:
            yield coat, order.gate.stage


def _sentence(piece: Piece, product: Product, lacking: list[Stage]) -> Saying:
    asked = [saying("missing", _ASKED[stage], stage=stage_said(stage)) for stage in lacking]
    return saying(
        "missing",
        "{piece}: the data sheet of {product} does not say {asked}; add the figures from the "
        "sheet, under Products.",
        piece=piece.name,
        product=product.name,
        asked=listed(asked, most=len(_ASKED)),
    )
