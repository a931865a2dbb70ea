"""What the page of the stock says of parts and bottles, in the studio's units."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.settings import MassUnit
from studio_planner.craft.stock import LotPart
from studio_planner.desktop import words
from studio_planner.desktop.quantities import Quantity, scale_of
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.grams import adding_up
from studio_planner.services.paper.wall_words import date_said, long_date_said
from studio_planner.services.stocks.matched import one_lot
from studio_planner.services.stocks.stock_words import stuff_said

if TYPE_CHECKING:
    from datetime import date

    from studio_planner.craft.studio import Studio
    from studio_planner.services.stocks.matched import OneLot
    from studio_planner.services.stocks.running_out import StockRow
    from studio_planner.services.stocks.stock_view import LotRow, Stock

_FREE = "\N{WHITE CIRCLE}"
"""No order's key."""

_STEPS = {MassUnit.GRAM: 0.1, MassUnit.OUNCE: 0.001}
"""What `words.mass` shows of each unit, in that unit."""


def letter_of(part: LotPart) -> str:
    """The letter on a bottle; none for what is not mixed of two."""
    return str(part) if part in {LotPart.A, LotPart.B} else ""


def left_line(studio: Studio, row: StockRow) -> str:
    """What is there of a part, and what the plan takes of it."""
    units = studio.units
    if not row.known:
        return translate("stock", "No bottle is entered. The plan takes {planned}.").format(
            planned=words.mass(row.planned_g, units)
        )
    coming = words.mass(row.coming_g, units)
    text = (
        translate("stock", "{left} left, {coming} more to come; the plan takes {planned}.")
        if row.coming_g > 0.0
        else translate("stock", "{left} left; the plan takes {planned}.")
    )
    return text.format(
        left=words.mass(row.left_g, units),
        coming=coming,
        planned=words.mass(row.planned_g, units),
    )


def verdict_line(studio: Studio, row: StockRow, today: date) -> str:
    """Whether it is enough, and if not, at which pour it ends and by when to order."""
    if not row.known:
        return ""
    units = studio.units
    if row.enough:
        if row.planned_g <= 0.0:
            return translate("stock", "Nothing that is planned takes of it.")
        return translate("stock", "Enough: {after} stay when all is poured.").format(
            after=words.mass(max(0.0, row.after_g), units)
        )
    if row.runs_out is None:
        return _under_reserve(studio, row, today)
    keys = dict.fromkeys(share.piece for share in row.runs_out.shares)
    return translate(
        "stock", "Runs out at pour {number} ({pieces}), {when}: {short} short. {order}"
    ).format(
        number=row.runs_out.number,
        pieces=", ".join(studio.piece(key).name for key in keys),
        when=words.moment(row.runs_out.at, words.wall_of(studio)),
        short=words.mass(row.short_g, units),
        order=_order_by(row, today),
    )


def _under_reserve(studio: Studio, row: StockRow, today: date) -> str:
    number = 0 if row.under_reserve is None else row.under_reserve.number
    return translate(
        "stock",
        "Enough for the plan, but after pour {number} less than your reserve of {reserve} is "
        "left. {order}",
    ).format(
        number=number,
        reserve=words.mass(row.reserve_g, studio.units),
        order=_order_by(row, today),
    )


def _order_by(row: StockRow, today: date) -> str:
    if row.order_by is None or row.order_by <= today:
        return translate("stock", "Order at once; it may come too late.")
    return translate("stock", "Order by {date}.").format(date=date_said(row.order_by))


def matched_lines(studio: Studio, stock: Stock) -> list[str]:
    """Of each set that would come from several bottles, whether one of them has enough."""
    levels = tuple(row.level for row in stock.lots)
    labels = {row.lot.key: row.lot.label for row in stock.lots}
    return [
        _matched(studio, one, odd.pieces, labels)
        for odd in stock.odd
        for one in one_lot(studio, stock.uses, levels, odd.pieces)
        if (one.product, one.part) == (odd.product, odd.part)
    ]


def _matched(
    studio: Studio, one: OneLot, pieces: tuple[str, ...], labels: dict[str, str]
) -> str:
    said = (
        translate("stock", "{pieces}: no bottle of {stuff} can spare the {grams} for all.")
        if one.lot is None
        else translate(
            "stock", "{pieces}: lot {label} of {stuff} can spare the {grams} for all."
        )
    )
    return said.format(
        pieces=", ".join(studio.piece(key).name for key in pieces),
        label=labels.get(one.lot or "", ""),
        stuff=stuff_said(studio, one.product, one.part),
        grams=words.mass(one.needed_g, studio.units),
    )


def bottle_head(studio: Studio, row: LotRow) -> str:
    """Which bottle it is: its label and what is in it."""
    return f"{row.lot.label}, {stuff_said(studio, row.lot.product, row.lot.part)}"


def bottle_in_list(studio: Studio, row: LotRow) -> tuple[str, str, str]:
    """A bottle in the list: its key, its name, and under it its part and how full it is."""
    lot = row.lot
    left, new = (words.mass(grams, studio.units) for grams in (row.level.left_g, lot.new_g))
    letter = letter_of(lot.part)
    if not letter:
        said = translate("stock", "{left} of {new}").format(left=left, new=new)
        return lot.key, bottle_head(studio, row), said
    # A long name is cut short: the part is told where it is always read.
    name = f"{lot.label}, {studio.product(lot.product).name}"
    said = translate("stock", "Part {part}, {left} of {new}")
    return lot.key, name, said.format(part=letter, left=left, new=new)


def described(studio: Studio, row: LotRow) -> str:
    """A drawn bottle in words."""
    units = studio.units
    return translate(
        "stock", "{label}: {left} left of {new}, {reserved} of it reserved, {state}."
    ).format(
        label=row.lot.label,
        left=words.mass(row.level.left_g, units),
        new=words.mass(row.lot.new_g, units),
        reserved=words.mass(row.level.left_g - row.free_g, units),
        state=translate("stock", "not opened")
        if row.lot.opened is None
        else translate("stock", "opened"),
    )


def bottle_facts(studio: Studio, stock: Stock, row: LotRow) -> list[tuple[str, str]]:
    """What there is to know of a bottle: (what, about what), the figures first."""
    units = studio.units
    used = row.lot.new_g - row.level.left_g
    facts = [
        (words.mass(row.level.left_g, units), translate("stock", "left")),
        (words.mass(max(0.0, used), units), translate("stock", "used")),
    ]
    grams = {one.order: one.grams for one in row.reserved}
    step = scale_of(Quantity.MASS, units).inside(_STEPS[units.mass])
    shown = adding_up(grams | {_FREE: row.free_g}, step)
    facts += [(words.mass(shown[key], units), _reserved_for(studio, key)) for key in grams]
    facts.append((words.mass(shown[_FREE], units), translate("stock", "free")))
    if row.good_until is not None:
        facts.append((long_date_said(row.good_until), translate("stock", "is its last day")))
    first = next((d for d in stock.drawing.draws if d.lot == row.lot.key), None)
    if first is not None:
        when = words.moment(first.use.at, words.wall_of(studio))
        said = translate("stock", "is the first pour that takes of it, number {number}")
        facts.append((when, said.format(number=first.use.number)))
    return facts


def _reserved_for(studio: Studio, order: str) -> str:
    if not order:
        return translate("stock", "reserved for pieces of no order")
    name = next(one.name for one in studio.orders if one.key == order)
    return translate("stock", "reserved for {order}").format(order=name)


def bottle_warnings(studio: Studio, stock: Stock, row: LotRow, today: date) -> list[str]:
    """What is wrong with a bottle or its book."""
    found = []
    if row.level.lacking_g > 0.0:
        said = translate(
            "stock", "{lacking} more were weighed from it than it held. Count what is left."
        )
        found.append(said.format(lacking=words.mass(row.level.lacking_g, studio.units)))
    if row.good_until is not None and row.good_until < today:
        said = translate("stock", "It is past its last day. Its data sheet says what to do.")
        found.append(said)
    elif any(one.stale for one in stock.drawing.draws if one.lot == row.lot.key):
        found.append(translate("stock", "It will be past its last day at a planned pour."))
    if row.level.guessed_g > 0.0:
        said = translate(
            "stock", "{guessed} were weighed without a lot and count as from this bottle."
        )
        found.append(said.format(guessed=words.mass(row.level.guessed_g, studio.units)))
    return found
