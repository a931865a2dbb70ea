"""The answer to a customer in words: dates, how sure they are, and what was tried."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, time
from typing import TYPE_CHECKING

from studio_planner.craft.orders import Promise
from studio_planner.craft.tongue import capital
from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate
from studio_planner.services.how_sure import day_in_doubt, sure_words
from studio_planner.services.step_words import gate_words

if TYPE_CHECKING:
    from datetime import date

    from studio_planner.craft.orders import Gate
    from studio_planner.craft.plans import Change
    from studio_planner.craft.studio import Studio
    from studio_planner.services.order_answers import OrderAnswer, PieceAnswer


@dataclass(frozen=True, slots=True)
class Line:
    """One line of an answer: what it is about, and what it says."""

    about: str
    says: str


@dataclass(frozen=True, slots=True)
class Tried:
    """A change that was tried: what it is, what comes of it, and whether that is enough."""

    change: str
    comes: str
    enough: bool


def gate_word(gate: Gate) -> str:
    """What a gate lets a piece do."""
    return capital(gate_words(gate))


def promise_kind_word(promise: Promise) -> str:
    """What was promised for the date."""
    return {
        Promise.ARRIVE_BY: translate("orders", "arrive by"),
        Promise.SHIP_BY: translate("orders", "leave by"),
        Promise.MARKET: translate("orders", "stand at the market on"),
    }[promise]


def list_line(studio: Studio, answer: OrderAnswer) -> str:
    """The quiet line under an order's name in the list: the day first, the rest may not fit."""
    wall = words.wall_of(studio)
    due = words.day_name(answer.due, wall)
    word = words.promise_word(answer.outcome, studio.settings, answer.shipped)
    return translate("orders", "due {day}: {word}").format(word=word, day=due)


def dates(studio: Studio, answer: OrderAnswer) -> tuple[Line, ...]:
    """When it is due, when it leaves for sure and likely, and how sure that is."""
    wall, order = words.wall_of(studio), answer.order

    def said(when: datetime | None) -> str:
        return translate("orders", "no date yet") if when is None else words.moment(when, wall)

    market = order.promise is Promise.MARKET
    due = words.moment(answer.due, wall)
    day = _day(studio, order.promised)
    promised = translate("orders", "{kind} {day}").format(
        kind=promise_kind_word(order.promise), day=day
    )
    leaves = (
        translate("orders", "Ready, safe date")
        if market
        else translate("orders", "Leaves, safe date")
    )
    likely = (
        translate("orders", "Ready, likely")
        if market
        else translate("orders", "Leaves, likely")
    )
    last = (
        translate("orders", "Has to be there")
        if market
        else translate("orders", "Last pick-up")
    )
    lines = [
        Line(translate("orders", "Promised"), promised),
        Line(last, due),
        *(
            (Line(translate("orders", "Left"), said(answer.shipped)),)
            if answer.shipped is not None
            else (Line(leaves, said(answer.safe)), Line(likely, said(answer.likely)))
        ),
        Line(translate("orders", "Spare"), _spare(answer)),
    ]
    plan = studio.plan
    sure = sure_words(answer.outcome, plan) if plan is not None else ""
    if sure:
        lines.append(Line(translate("orders", "How sure"), sure))
    return tuple(lines)


def _day(studio: Studio, day: date) -> str:
    noon = datetime.combine(day, time(12), studio.time_zone)
    return words.day_name(noon, studio.time_zone)


def _spare(answer: OrderAnswer) -> str:
    outcome = answer.outcome
    if outcome is None or outcome.spare_hours is None or outcome.late_hours is None:
        return translate("orders", "not planned")
    if outcome.late_hours > 0:
        return translate("orders", "none, {time} late").format(
            time=words.lateness(outcome.late_hours)
        )
    return words.length_of_time(outcome.spare_hours)


def tried(studio: Studio, change: Change) -> Tried:
    """One change that was tried."""
    if change.leaves is None:
        comes = translate("orders", "does not help")
    else:
        moment = words.moment(change.leaves, words.wall_of(studio))
        comes = translate("orders", "leaves {moment}").format(moment=moment)
    return Tried(capital(str(change.words)), comes, change.keeps_promise)


def gate_lines(studio: Studio, row: PieceAnswer) -> tuple[Line, ...]:
    """When a piece may be handled, packed, and used: for sure, and likely."""
    wall = words.wall_of(studio)
    lines = []
    for gate in row.gates:
        if gate.safe is None:
            says = translate("orders", "not known")
        else:
            says = words.moment(gate.safe, wall)
            if gate.likely is not None and gate.likely < gate.safe:
                likely = words.moment(gate.likely, wall)
                says = translate("orders", "{safe} (likely {likely})").format(
                    safe=says, likely=likely
                )
        lines.append(Line(gate_word(gate.gate), says))
    return tuple(lines)


def for_the_customer(studio: Studio, answer: OrderAnswer) -> str:
    """One or two sentences that can be sent as they are, with the doubt there is."""
    said = _when_it_comes(studio, answer)
    if not day_in_doubt(answer.outcome):
        return said
    return translate("orders", "{when} But that day is not sure yet.").format(when=said)


def _when_it_comes(studio: Studio, answer: OrderAnswer) -> str:
    order, wall = answer.order, words.wall_of(studio)
    if answer.safe is None:
        return translate("orders", "I cannot give you a date for {name} yet.").format(
            name=order.name
        )
    left = answer.shipped is not None
    if order.promise is Promise.MARKET:
        said = (
            translate("orders", "{name} left on {day}.")
            if left
            else translate("orders", "{name} will be ready on {day}.")
        )
        return said.format(name=order.name, day=words.day_name(answer.safe, wall))
    arrives = order.courier.arrives(answer.safe.astimezone(studio.time_zone).date())
    said = (
        translate("orders", "{name} left on {day} and should be with you by {arrives}.")
        if left
        else translate(
            "orders", "{name} can leave on {day} and should be with you by {arrives}."
        )
    )
    return said.format(
        name=order.name, day=words.day_name(answer.safe, wall), arrives=_day(studio, arrives)
    )
