"""The order slip: A5, what goes into the parcel and when it may, with the care card."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.orders import ContactClaim, Promise
from studio_planner.craft.tongue import capital, translate
from studio_planner.services.order_answers import answer_for
from studio_planner.services.paper.care_card import care_card
from studio_planner.services.paper.heading import headed
from studio_planner.services.paper.mix_numbers import mix_numbers
from studio_planner.services.paper.pages import (
    Column,
    Fields,
    Headline,
    PaperSize,
    Part,
    Prose,
    Row,
    Sheet,
    Table,
)
from studio_planner.services.paper.wall_words import (
    clock_said,
    long_date_said,
    minute_after,
    moment_said,
)

if TYPE_CHECKING:
    from studio_planner.craft.orders import Order
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.order_answers import OrderAnswer, PieceAnswer


def order_slip(view: DeskView, key: str) -> Sheet:
    """The slip of the order of that key, then its care card; KeyError when there is none."""
    studio = view.studio
    answer = answer_for(studio, view.plan, key, view.now)
    order = answer.order
    slip = Part(
        blocks=(
            Headline(
                words=order.name, under=(*_promise(studio, order), *_late(studio, answer))
            ),
            _pieces(studio, order, answer.pieces),
            Prose(title="", sentences=_packing(order), listed=True),
            Fields(
                title=translate("paper", "What really happened"),
                labels=_labels(order),
                across=2,
            ),
        ),
        begins=True,
    )
    title = translate("paper", "Order {name}").format(name=order.name)
    return headed(
        view, PaperSize.A5, title, f"order-{order.key}", (slip, care_card(view, order))
    )


def _promise(studio: Studio, order: Order) -> tuple[str, ...]:
    day = long_date_said(order.promised)
    said = translate("paper", "{promise} {date}").format(
        promise=capital(kind_word(order.promise)), date=day
    )
    if order.promise is Promise.MARKET:
        opens = clock_said(studio, order.due(studio.time_zone))
        return (translate("paper", "{market}, opens {clock}").format(market=said, clock=opens),)
    due = moment_said(studio, order.due(studio.time_zone))
    return (said, translate("paper", "last pick-up for it: {moment}").format(moment=due))


def _late(studio: Studio, answer: OrderAnswer) -> tuple[str, ...]:
    """That the plan does not keep the promise, so that nobody packs it unawares."""
    if answer.safe is None or answer.safe <= answer.due:
        return ()
    said = (
        translate("paper", "As planned it is ready {moment}: after the market opens.")
        if answer.order.promise is Promise.MARKET
        else translate("paper", "As planned it leaves {moment}: too late for the promise.")
    )
    return (said.format(moment=moment_said(studio, answer.safe)),)


def _pieces(studio: Studio, order: Order, pieces: tuple[PieceAnswer, ...]) -> Table:
    return Table(
        title=translate("paper", "Pieces"),
        columns=(
            Column(head=translate("paper", "piece"), share=0.34),
            Column(head=translate("paper", "mixes"), share=0.16),
            Column(head=translate("paper", "pack from"), share=0.30),
            Column(head=translate("paper", "packed"), share=0.20, write=True),
        ),
        rows=tuple(_piece(studio, order, one) for one in pieces),
    )


def _piece(studio: Studio, order: Order, answer: PieceAnswer) -> Row:
    piece = answer.piece
    name = f"{piece.name} ×{piece.count}" if piece.count > 1 else piece.name  # noqa: RUF001
    numbers = ", ".join(map(str, mix_numbers(studio, studio.pours_of(piece.key))))
    gate = next(one for one in answer.gates if one.gate is order.gate)
    ready = (
        translate("paper", "not planned")
        if gate.safe is None
        else moment_said(studio, minute_after(gate.safe))
    )
    return Row(cells=(name, numbers, ready, ""))


def _packing(order: Order) -> tuple[str, ...]:
    """How to pack (common practice), and what has to lie in the parcel."""
    sentences = [
        translate(
            "paper",
            "Release paper or soft foam against the face, never bubble wrap: it prints into a "
            "young film.",
        ),
        translate("paper", "The care card goes with it, with the numbers of its mixes."),
    ]
    if order.contact is ContactClaim.DECLARED:
        sentences.append(
            translate("paper", "A declaration is on file: write its number on the care card.")
        )
    return tuple(sentences)


def _labels(order: Order) -> tuple[str, ...]:
    labels = [
        translate("paper", "looked over by"),
        translate("paper", "packed on"),
        translate("paper", "shipped on"),
        translate("paper", "parcel number"),
    ]
    if order.contact is ContactClaim.DECLARED:
        labels.append(translate("paper", "declaration number"))
    return tuple(labels)
