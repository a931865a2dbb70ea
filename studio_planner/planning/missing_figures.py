"""Figures that a piece can't be planned without, one sentence for each that a sheet lacks."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.joint_rules import clash_at
from studio_planner.craft.kind_words import stage_said
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Unplanned
from studio_planner.craft.products import ProductKind
from studio_planner.craft.saying import Saying, saying
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
from studio_planner.planning.sanded import scuffed_at
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio


def missing_figures(studio: Studio, piece: Piece) -> list[Unplanned]:
    """Sheet figures without which a piece cannot be planned, one sentence each."""
    poured = len(studio.pours_of(piece.key))
    needs: list[tuple[str, Saying]] = []
    for index, coat in enumerate(piece.stack):
        product = studio.product(coat.product)
        needs += [
            (coat.key, _sentence(piece, coat, product.name, stage))
            for stage in _lacking(piece, coat, product)
        ]
        below = piece.below(index)
        # What can never meet the coat below lacks no figure of it.
        if index >= poured and below is not None and not clash_at(studio, piece, index):
            lacking = _joint_needs(studio, piece, index, below)
            # What is sanded already waits for no stage.
            if lacking and scuffed_at(studio, piece, index, sanded_for(studio)) is None:
                needs += lacking
    gate_fault = _gate_fault(studio, piece)
    rows = [*needs, *gate_fault]
    return [Unplanned(piece=piece.key, coat=coat, reason=words) for coat, words in rows]


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


def _joint_needs(
    studio: Studio, piece: Piece, index: int, below: int
) -> list[tuple[str, Saying]]:
    coat, lower = piece.stack[index], piece.stack[below]
    product = studio.product(lower.product)
    opens, _ = window_stages(studio, piece, index)
    if opens is not None and not product.figures(opens):
        return [(lower.key, _sentence(piece, lower, product.name, opens))]
    if coat.joint is Joint.WET_IN_WET and not product.figures(Stage.WORKING_TIME):
        return [(lower.key, _sentence(piece, lower, product.name, Stage.WORKING_TIME))]
    if window_unknown(studio, piece, index) and not may_scuff(studio, piece, index):
        return [(lower.key, _sentence(piece, lower, product.name, Stage.RECOAT_CLOSES))]
    return []


def _gate_fault(studio: Studio, piece: Piece) -> list[tuple[str, Saying]]:
    order = studio.order_of(piece.key)
    if order is None:
        return []
    faults = []
    for coat in gate_coats(studio, piece, order.gate.stage):
        product = studio.product(coat.product)
        if gate_stage(product, order.gate.stage) is None:
            faults.append((coat.key, _sentence(piece, coat, product.name, order.gate.stage)))
    return faults


def _sentence(piece: Piece, coat: Coat, product: str, stage: Stage) -> Saying:
    return saying(
        "missing",
        "{piece}, {coat}: the data sheet of {product} has no figure for {stage}; add one from "
        "the sheet.",
        piece=piece.name,
        coat=piece.coat_name_said(coat.key),
        product=product,
        stage=stage_said(stage),
    )
