"""What a bar says in words: its name, and the sentences of its tooltip and description."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.plans import Air, Trust
from studio_planner.craft.tongue import capital
from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate
from studio_planner.services.how_sure import held_words
from studio_planner.services.ribbons import Ribbon
from studio_planner.services.step_words import step_words

if TYPE_CHECKING:
    from studio_planner.services.ribbons import Bar, Lane, StepMark


def name(bar: Bar) -> str:
    """The bar in a few words: Moon tray, glitter, coat 2 of 3."""
    if isinstance(bar, Ribbon):
        said = (
            translate("bars", "{bar}, coat {number} of {count}, pinned")
            if bar.pinned
            else translate("bars", "{bar}, coat {number} of {count}")
        )
        count = len(bar.lane.piece.stack)
        return said.format(bar=short_name(bar), number=bar.position + 1, count=count)
    return short_name(bar)


def short_name(bar: Bar) -> str:
    """The bar in fewer words: Moon tray, glitter."""
    piece = words.piece_name(bar.lane.piece)
    if isinstance(bar, Ribbon):
        return f"{piece}, {kind_word(bar.coat.kind)}"
    return f"{piece}, {step_words(bar.lane.studio, bar.planned)}"


def lines(bar: Bar) -> list[str]:
    """The sentences that tell everything the bar shows."""
    wall = words.wall_of(bar.lane.studio)
    return _ribbon_lines(bar, wall) if isinstance(bar, Ribbon) else _step_lines(bar, wall)


def tooltip(bar: Bar) -> str:
    """The name in bold, then the sentences, one on a line."""
    from html import escape  # noqa: PLC0415 - when somebody points at a bar

    return f"<b>{escape(name(bar))}</b><br>" + "<br>".join(escape(line) for line in lines(bar))


def sure_words(bar: Bar) -> str:
    """How often a coat to come found its window; empty when its plan was not rehearsed."""
    plan = bar.lane.studio.plan
    if plan is None or not isinstance(bar, Ribbon):
        return ""
    held = held_words(bar.planned, plan)
    return capital(held)


def lane_lines(lane: Lane) -> list[str]:
    """What the head of a lane says under the piece's name."""
    text = [words.blank(lane.piece, lane.studio.units)]
    if lane.spots:
        said = translate("bars", "spot {spots}")
        text.append(said.format(spots=", ".join(lane.spots)))
    if lane.reason:
        text.append(translate("bars", "Not planned: {reason}").format(reason=lane.reason))
    return text


def _person(bar: Bar) -> str:
    people = bar.lane.studio.people
    return next((f", {p.name}" for p in people if p.key == bar.planned.person), "")


def _ribbon_lines(bar: Ribbon, wall: words.Wall) -> list[str]:
    planned = bar.planned
    when = words.span(planned.start, planned.end, wall)
    verb = (
        translate("bars", "Poured {when}")
        if planned.poured
        else translate("bars", "Hands {when}")
    )
    spot = bar.lane.studio.spot(planned.spot).name
    film = words.film(bar.coat.film_mm, bar.lane.studio.units)
    window = planned.window
    trust = None if window is None else window.trust
    text = [
        f"{verb.format(when=when)}{_person(bar)}.",
        translate("bars", "{product}, {film}, spot {spot}.").format(
            product=bar.product.name, film=film, spot=spot
        ),
        translate("bars", "Joint: {joint}.").format(joint=words.joint(planned.joint, trust)),
    ]
    if bar.pinned:
        text.append(
            translate("bars", "Pinned: planning leaves it at this time until you let it go.")
        )
    if trust is Trust.TEST_FIRST:
        text.append(
            translate("bars", "Touch the coat below first: it must be tacky and leave no mark.")
        )
    text += _stages(bar, wall)
    text += _doorway(bar, wall)
    held = sure_words(bar)
    if held:
        text.append(f"{held}.")
    if planned.air is Air.UNKNOWN:
        text.append(translate("bars", "Dew-point margin unknown: no humidity was read."))
    return text + _flags(bar, wall)


def _stages(bar: Ribbon, wall: words.Wall) -> list[str]:
    until = bar.until.timestamp()
    found = [
        f"{words.stage_word(mark.stage)} {words.moment(_instant(mark.at), wall)}"
        for mark in bar.film.marks
        if mark.at is not None and mark.at <= until
    ]
    said = translate("bars", "Likely: {stages}.")
    return [said.format(stages=", ".join(found))] if found else []


def _doorway(bar: Ribbon, wall: words.Wall) -> list[str]:
    door = bar.doorway
    if door is None:
        return []
    opens = words.moment(door.opens, wall)
    closes = (
        translate("bars", "stays open")
        if door.closes is None
        else translate("bars", "closes {when}").format(when=words.moment(door.closes, wall))
    )
    said = translate("bars", "Window for the next coat opens {opens}, {closes}.")
    text = [said.format(opens=opens, closes=closes)]
    if door.nobody:
        away = ", ".join(words.span(start, end, wall) for start, end in door.nobody)
        text.append(translate("bars", "Nobody can work {spans}.").format(spans=away))
    return text


def _flags(bar: Ribbon, wall: words.Wall) -> list[str]:
    if bar.planned is not bar.lane.coats[-1]:
        return []
    found = [
        f"{words.flag_word(flag.stage)} {words.moment(flag.safe, wall)}"
        for flag in bar.lane.flags
        if flag.safe is not None
    ]
    said = translate("bars", "Safe to: {stages}.")
    return [said.format(stages=", ".join(found))] if found else []


def _step_lines(bar: StepMark, wall: words.Wall) -> list[str]:
    planned = bar.planned
    when = words.span(planned.start, planned.end, wall)
    said = translate("bars", "Hands {when}").format(when=when)
    text = [f"{said}{_person(bar)}."]
    if planned.opens is not None and planned.closes is not None:
        span = words.span(planned.opens, planned.closes, wall)
        text.append(translate("bars", "Between {span}.").format(span=span))
    if planned.coat is not None:
        coat = bar.lane.piece.coat(planned.coat)
        said = translate("bars", "For the coat: {coat}.")
        text.append(said.format(coat=kind_word(coat.kind)))
    return text


def _instant(second: float) -> datetime:
    return datetime.fromtimestamp(second, UTC)
