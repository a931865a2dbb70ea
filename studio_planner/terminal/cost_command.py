"""The command cost: what an order or a piece costs, and which price follows from it."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.craft.tongue import quoted
from studio_planner.services.amount_words import money_said, percent_said
from studio_planner.services.costs.cost_sums import (
    amounts_by_kind,
    cents_by_kind,
    minutes_by_kind,
    one_scuffed_joint,
)
from studio_planner.services.costs.cost_words import (
    cost_word,
    hands_word,
    missing_said,
    price_warnings,
)
from studio_planner.services.costs.extras import rush_extra
from studio_planner.services.costs.order_cost import order_cost, price_for
from studio_planner.services.costs.piece_cost import piece_cost
from studio_planner.services.naming import all_named, find_named, find_piece
from studio_planner.services.studio_files import read_studio
from studio_planner.terminal.bad_input import BadInput
from studio_planner.terminal.writing import say, say_json, say_table, say_wrapped

if TYPE_CHECKING:
    import argparse
    from collections.abc import Sequence

    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.services.costs.extras import Extra
    from studio_planner.services.costs.order_cost import OrderCost, Price
    from studio_planner.services.costs.piece_cost import PieceCost
    from studio_planner.terminal.surroundings import Surroundings


def cost(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Say what an order or a piece costs by the kept plan, by kind, and its price.

    JSON: name, currency, cost, amounts (by kind), attended_minutes, minutes (by kind), floor,
    price, margin, missing (sentences); of an order also pieces (key and cost), agreed,
    agreed_margin (null where no price was agreed on), rush and scuffed (cost and minutes, or
    null), warnings.
    """
    del around
    studio = read_studio(Path(arguments.file))
    wanted = arguments.name.strip()
    if all_named(studio.orders, wanted):
        order = find_named(studio.orders, wanted, "order")
        _tell_order(studio, order, as_json=arguments.json)
    elif all_named(studio.pieces, wanted):
        _tell_piece(studio, find_piece(studio, wanted), as_json=arguments.json)
    else:
        raise BadInput(
            f"{quoted(wanted)} is no order and no piece of this studio; "
            "promise lists the orders, plan the pieces."
        )
    return 0


def _tell_order(studio: Studio, order: Order, *, as_json: bool) -> None:
    found = order_cost(studio, studio.plan, order)
    warnings = price_warnings(studio, found)
    rush = rush_extra(studio, studio.plan, order)
    scuffed = one_scuffed_joint(studio, studio.plan, order)
    if as_json:
        whole = _json(studio, order.name, found.pieces, found.price)
        whole["pieces"] = [{"piece": one.piece, "cost": one.total} for one in found.pieces]
        whole |= {"agreed": found.agreed, "agreed_margin": found.agreed_margin}
        whole |= {"rush": _extra_json(rush), "scuffed": _extra_json(scuffed)}
        say_json(whole | {"warnings": list(warnings)})
        return
    _print_cost(studio, order.name, found.pieces)
    say()
    _print_pieces(studio, found)
    _print_price(studio, found.price)
    if found.agreed is not None and found.agreed_margin is not None:
        agreed, left = _money(studio, found.agreed), _money(studio, found.agreed_margin)
        rest = f", of which {left} are left" if found.agreed_margin >= 0.0 else ""
        say_wrapped(f"Agreed: {agreed}{rest}.")
    _print_extra(studio, "A rush would add", rush)
    if scuffed is not None:
        _print_extra(studio, "One more scuffed joint would add up to", scuffed)
    _print_sentences((*warnings, *missing_said(studio, found.missing)))


def _tell_piece(studio: Studio, piece: Piece, *, as_json: bool) -> None:
    found = piece_cost(studio, studio.plan, piece)
    price = price_for(studio.prices, found.total)
    if as_json:
        say_json(_json(studio, piece.name, (found,), price))
        return
    _print_cost(studio, piece.name, (found,))
    say()
    _print_price(studio, price)
    _print_sentences(missing_said(studio, found.missing))


def _print_cost(studio: Studio, name: str, pieces: Sequence[PieceCost]) -> None:
    minutes = minutes_by_kind(pieces)
    total = sum(one.total for one in pieces)
    say_wrapped(f"{name}: {_money(studio, total)}")
    rows = [
        (cost_word(kind), _money(studio, amount))
        for kind, amount in cents_by_kind(pieces).items()
    ]
    say_table(("", "Cost"), rows, "  ")
    spent = ", ".join(f"{hands_word(kind)} {amount:.0f}" for kind, amount in minutes.items())
    say_wrapped(f"Attended: {sum(minutes.values()):.0f} min ({spent}).", "  ")


def _print_pieces(studio: Studio, found: OrderCost) -> None:
    if len(found.pieces) > 1:
        rows = [
            (studio.piece(one.piece).name, _money(studio, one.total)) for one in found.pieces
        ]
        say_table(("Piece", "Cost"), rows)
        say()


def _print_price(studio: Studio, price: Price) -> None:
    floor, asked = _money(studio, price.floor), _money(studio, price.asked)
    stays = f"{_money(studio, price.margin)} ({percent_said(price.margin_share, 0)} %)"
    say_wrapped(f"Floor price: {floor}. Price by your rule: {asked}, of which {stays} stay.")


def _print_extra(studio: Studio, words: str, extra: Extra) -> None:
    minutes = round(extra.minutes)
    spent = f" and {minutes} min" if minutes else ""
    say_wrapped(f"{words} {_money(studio, extra.cost)}{spent}.")


def _print_sentences(sentences: Sequence[str]) -> None:
    if sentences:
        say()
    for sentence in sentences:
        say_wrapped(sentence)


def _json(
    studio: Studio, name: str, pieces: Sequence[PieceCost], price: Price
) -> dict[str, Any]:
    minutes = minutes_by_kind(pieces)
    missing = dict.fromkeys(one for piece in pieces for one in piece.missing)
    return {
        "name": name,
        "currency": studio.currency,
        "cost": price.cost,
        "amounts": {str(kind): one for kind, one in amounts_by_kind(pieces).items()},
        "attended_minutes": sum(minutes.values()),
        "minutes": {str(kind): one for kind, one in minutes.items()},
        "floor": price.floor,
        "price": price.asked,
        "margin": price.margin,
        "missing": list(missing_said(studio, missing)),
    }


def _extra_json(extra: Extra | None) -> dict[str, float] | None:
    return None if extra is None else {"cost": extra.cost, "minutes": extra.minutes}


def _money(studio: Studio, amount: float) -> str:
    return money_said(amount, studio.currency)
