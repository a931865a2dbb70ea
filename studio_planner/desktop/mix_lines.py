"""A mix of the plan in short lines: its cups in order with their minutes, and what it saves."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.products import ProductKind
from studio_planner.craft.tongue import counted
from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate
from studio_planner.science.pour_depth import DepthReason
from studio_planner.services.mixing.heat import depth_of
from studio_planner.services.mixing.mix_words import heat_words

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mixing.cup_plan import CupTime
    from studio_planner.services.mixing.mix_sheet import MixSheet

_SHOWN_MINUTES = 0.5


def coats_line(studio: Studio, sheet: MixSheet) -> str:
    """The coat, and every piece that is poured from the mix."""
    first = sheet.coats[0]
    names = " + ".join(words.piece_name(studio.piece(one.piece)) for one in sheet.coats)
    return f"{studio.piece(first.piece).coat_name(first.coat)}, {names}"


def cups_line(studio: Studio, sheet: MixSheet) -> str:
    """How many cups, in how many portions, and why."""
    cups = sum(len(portion.cups) for portion in sheet.portions)
    said = counted(cups, translate("mix", "{count} cup"), translate("mix", "{count} cups"))
    if sheet.split.parts == 1:
        return said
    product = sheet.product
    return translate(
        "mix", "{cups}, weighed in {parts} portions one after the other, {limit} each at most"
    ).format(
        cups=said,
        parts=sheet.split.parts,
        limit=words.mass(min(product.cup_limit_g, product.mix_limit_g), studio.units),
    )


def order_lines(sheet: MixSheet) -> list[str]:
    """The cups of the first portion in the order to pour them, each with its minutes."""
    return [_cup_line(cup) for cup in sheet.times[0].cups if cup.cup.mix_grams > 0.0]


def _cup_line(cup: CupTime) -> str:
    if cup.out_by_minute is None:
        said = translate("mix", "{colour}: pour at minute {minute}")
        return said.format(colour=cup.cup.colour, minute=round(cup.pour_minute))
    return translate("mix", "{colour}: pour at minute {minute}, empty by {by}").format(
        colour=cup.cup.colour, minute=round(cup.pour_minute), by=int(cup.out_by_minute)
    )


def fits_line(sheet: MixSheet) -> str:
    """Whether it is out of its cups in time; empty where nobody knows."""
    known = [time.in_time for time in sheet.times]
    if sheet.product.kind is not ProductKind.TWO_PART or None in known:
        return ""
    if sheet.split.fits:
        return translate("mix", "It is out of its cups in time.")
    return translate("mix", "It is not out of its cups in time.")


def sinking_lines(sheet: MixSheet) -> list[str]:
    """From which minute on each pigment stays where it is poured."""
    said = translate("mix", "{colour} stays where it is poured from minute {minute} on.")
    return [
        said.format(colour=cup.cup.colour, minute=round(cup.stays_from_minute))
        for cup in sheet.times[0].cups
        if cup.stays_from_minute is not None and cup.stays_from_minute > _SHOWN_MINUTES
    ]


def saving_line(studio: Studio, sheet: MixSheet) -> str:
    """What its coats save by sharing it; empty where nothing is shared."""
    saving = sheet.saving
    if len(sheet.coats) == 1 or saving.mixes <= 0:
        return ""
    mixes = counted(
        saving.mixes, translate("mix", "{count} mix"), translate("mix", "{count} mixes")
    )
    return translate("mix", "Sharing saves {mixes}, {grams} and {minutes} of hands.").format(
        mixes=mixes,
        grams=words.mass(saving.grams, studio.units),
        minutes=words.length_of_time(saving.minutes / 60.0),
    )


def smallest_line(studio: Studio, sheet: MixSheet) -> str:
    """The smallest mix that the scale weighs exactly enough."""
    return translate("mix", "The scale weighs {grams} or more of it exactly enough.").format(
        grams=words.mass(sheet.smallest_grams, studio.units)
    )


def heat_line(studio: Studio, sheet: MixSheet) -> str:
    """When it gets warm if it is left in its cup; empty where it stays cool."""
    return "" if sheet.heat is None else heat_words(studio, sheet.heat)


def depth_lines(studio: Studio, sheet: MixSheet, celsius: float) -> list[str]:
    """How deep each coat of the mix may be poured in a room of so many °C, and why."""
    why = {
        DepthReason.EDGE: translate("mix", "more runs over the edge"),
        DepthReason.RIM: translate("mix", "the rim holds no more"),
        DepthReason.SHEET: translate("mix", "its sheet says so"),
        DepthReason.HEAT: translate("mix", "deeper it heats itself"),
    }
    lines: dict[str, None] = {}
    for planned in sheet.coats:
        piece = studio.piece(planned.piece)
        coat = piece.coat(planned.coat)
        if coat.film_mm <= 0.0:
            continue
        depth = depth_of(studio, piece, coat, celsius)
        said = (
            translate("mix", "Too deep on {piece}: {film}, at most {limit} ({why}).")
            if depth.too_deep
            else translate("mix", "{piece}: {film} deep, at most {limit} ({why}).")
        )
        lines[
            said.format(
                piece=piece.name,
                film=words.film(coat.film_mm, studio.units),
                limit=words.film(round(depth.limit.film_mm, 1), studio.units),
                why=why[depth.limit.reason],
            )
        ] = None
    return list(lines)
