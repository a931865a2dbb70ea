"""The stock list: A4, what is left, what the plan takes, what to order, and every bottle."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind
from studio_planner.craft.stock import LotPart
from studio_planner.craft.tongue import translate
from studio_planner.services.amount_words import grams_said
from studio_planner.services.paper.heading import headed
from studio_planner.services.paper.pages import (
    Block,
    Column,
    PaperSize,
    Part,
    Prose,
    Row,
    Sheet,
    Table,
)
from studio_planner.services.paper.wall_words import (
    date_said,
    local_day,
    long_date_said,
    moment_said,
)
from studio_planner.services.stocks.stock_view import LotRow, Stock, stock_of
from studio_planner.services.stocks.stock_words import stuff_said

if TYPE_CHECKING:
    from datetime import date

    from studio_planner.craft.stock import Lot
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.stocks.running_out import StockRow


def stock_list(view: DeskView) -> Sheet:
    """The stock as it is now, and what the kept plan makes of it."""
    studio = view.studio
    today = local_day(studio, view.now)
    stock = stock_of(studio, view.plan, view.now)
    blocks: list[Block] = []
    if stock.warnings:
        title = translate("paper", "Mind")
        blocks.append(Prose(title=title, sentences=stock.warnings, listed=True))
    parts = [Part(blocks=tuple(blocks))] if blocks else []
    parts += [Part(blocks=(_rows(studio, stock, today),))] if stock.rows else []
    parts += _bottles(studio, stock)
    if not parts:
        words = translate(
            "paper", "No bottle is entered and nothing is planned: there is nothing to list."
        )
        parts = [Part(blocks=(Prose(title="", sentences=(words,), large=True),))]
    title = translate("paper", "Stock, {date}").format(date=long_date_said(today))
    return headed(view, PaperSize.A4, title, f"stock-{today.isoformat()}", parts)


def _rows(studio: Studio, stock: Stock, today: date) -> Table:
    return Table(
        title=translate("paper", "What is left, and what the plan takes"),
        columns=(
            Column(head="", share=0.35),
            Column(head=translate("paper", "left"), share=0.11, right=True),
            Column(head=translate("paper", "plan takes"), share=0.12, right=True),
            Column(head=translate("paper", "left after"), share=0.11, right=True),
            Column(head=translate("paper", "runs out"), share=0.18),
            Column(head=translate("paper", "order by"), share=0.13),
        ),
        rows=tuple(_row(studio, row, today) for row in stock.rows),
    )


def _row(studio: Studio, row: StockRow, today: date) -> Row:
    units = studio.units
    runs_out = "" if row.runs_out is None else moment_said(studio, row.runs_out.at)
    order_by = "" if row.order_by is None else _by(row.order_by, today)
    unknown = translate("paper", "not entered")
    return Row(
        cells=(
            stuff_said(studio, row.product, row.part),
            grams_said(row.left_g, units) if row.known else unknown,
            grams_said(row.planned_g, units),
            grams_said(max(row.after_g, 0.0), units) if row.known else "",
            runs_out if row.known else "",
            order_by,
        ),
        strong=not row.enough and row.known,
    )


def _by(day: date, today: date) -> str:
    return translate("paper", "at once") if day <= today else date_said(day)


def _bottles(studio: Studio, stock: Stock) -> list[Part]:
    """A table of bottles for each product that has any, so that a page breaks between them."""
    parts = []
    for product in studio.products:
        own = [
            row
            for row in stock.lots
            if row.lot.product == product.key and row.lot.part is not LotPart.COLOURANT
        ]
        if own:
            title = translate("paper", "Bottles of {product}").format(product=product.name)
            part = translate("paper", "part") if product.kind is ProductKind.TWO_PART else ""
            parts.append(Part(blocks=(_lots(studio, title, part, own),)))
    pigments = [row for row in stock.lots if row.lot.part is LotPart.COLOURANT]
    if pigments:
        title, what = translate("paper", "Pigments"), translate("paper", "pigment")
        parts.append(Part(blocks=(_lots(studio, title, what, pigments),)))
    return parts


def _lots(studio: Studio, title: str, what: str, rows: list[LotRow]) -> Table:
    """Bottles with what is in each, headed `what`: a part, or the pigment."""
    return Table(
        title=title,
        columns=(
            Column(head=translate("paper", "lot"), share=0.16),
            Column(head=what, share=0.2),
            Column(head=translate("paper", "left"), share=0.13, right=True),
            Column(head=translate("paper", "free"), share=0.13, right=True),
            Column(head=translate("paper", "good until"), share=0.18),
            Column(head=translate("paper", "counted"), share=0.2, write=True),
        ),
        rows=tuple(_lot(studio, row) for row in rows),
    )


def _lot(studio: Studio, row: LotRow) -> Row:
    good = "" if row.good_until is None else long_date_said(row.good_until)
    return Row(
        cells=(
            row.lot.label,
            _what(studio, row.lot),
            grams_said(row.level.left_g, studio.units),
            grams_said(row.free_g, studio.units),
            good,
            "",
        )
    )


def _what(studio: Studio, lot: Lot) -> str:
    if lot.part is LotPart.WHOLE:
        return ""
    colour = lot.part is LotPart.COLOURANT
    return stuff_said(studio, lot.product, lot.part) if colour else str(lot.part)
