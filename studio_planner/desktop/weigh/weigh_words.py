"""What stands on the weigh view, in as few words as can be."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, log10
from typing import TYPE_CHECKING

from studio_planner.craft.settings import MassUnit
from studio_planner.craft.tongue import figure
from studio_planner.desktop import words
from studio_planner.desktop.quantities import Quantity, scale_of
from studio_planner.desktop.tongue import translate
from studio_planner.services.colour_stuff import stuff_of
from studio_planner.services.mix_run.stand import Do
from studio_planner.services.mixing.at_the_scale import cups_for
from studio_planner.services.mixing.cup_plan import STIR_MINUTES
from studio_planner.services.mixing.left_over import LeftOver, homes_for
from studio_planner.services.mixing.scale_steps import ScaleWork

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView
    from studio_planner.services.mix_run.stand import PortionRun, Stand
    from studio_planner.services.mixing.cup_plan import CupTime
    from studio_planner.services.mixing.scale_steps import ScaleStep

_OUNCE_DECIMALS = 3
_MOST_HOMES = 2
_CRUMB = 1e-6
_TOGETHER = "\N{NO-BREAK SPACE}"


@dataclass(frozen=True, slots=True, kw_only=True)
class Shown:
    """One step in words: what to do, to what, the one number, what the display reads then.

    `target` is what the large button says, `other` what the one beside it says, or nothing.
    """

    verb: str
    about: str
    number: str
    meaning: str = ""
    reads: str = ""
    target: str
    other: str = ""


def reading(grams: float, studio: Studio) -> str:
    """A mass as the scale shows it: with the decimals of its step, in the studio's unit."""
    scale = scale_of(Quantity.MASS, studio.units)
    step = studio.settings.scale_step_g
    decimals = _OUNCE_DECIMALS
    if studio.units.mass is not MassUnit.OUNCE:
        decimals = max(0, ceil(-log10(step) - 1e-9))
    # A number never stands apart from its unit.
    return figure(f"{scale.shown(grams):.{decimals}f}{_TOGETHER}{scale.unit}")


def shown(
    studio: Studio, stand: Stand, minute: float | None, batches: tuple[int, ...]
) -> Shown:
    """A step in words; `minute` is how long ago A met B, `batches` are those in the log."""
    do = stand.step.do
    if do is Do.STIR:
        return _stir()
    if do is Do.POUR:
        return _pour(studio, stand, minute)
    if do is Do.DIVIDE:
        return _divide(studio, stand)
    if do in {Do.WRITE, Do.WRITTEN}:
        return _end(studio, stand, batches)
    return _weigh(studio, stand)


def nothing_shown(*, pieces: bool) -> Shown:
    """That nothing is to be weighed, and what to do first; whether there are any `pieces`."""
    return Shown(
        verb=translate("weigh", "Nothing is to be weighed."),
        about=translate("weigh", "Pours of the plan are weighed here; plan again to get some.")
        if pieces
        else translate(
            "weigh", "Pours of the plan are weighed here; enter a piece and plan first."
        ),
        number="",
        target="",
    )


def reading_shown() -> Shown:
    """That there is no studio yet."""
    said = translate("weigh", "The studio is still being read.")
    return Shown(verb=said, about="", number="", target="")


def _weigh(studio: Studio, stand: Stand) -> Shown:
    scale = stand.step.scale
    assert scale is not None  # noqa: S101 - every such step has one
    reads = reading(scale.reads_grams, studio)
    tapped = translate("weigh", "It reads {grams}").format(grams=reads)
    meets = stand.step.do is Do.MEET
    return Shown(
        verb=_verb(scale, more=stand.step.do is Do.MORE),
        about=_about(studio, stand.now, scale),
        number=reading(scale.add_grams, studio),
        reads=translate("weigh", "The display then reads {grams}").format(grams=reads),
        target=translate("weigh", "B goes in now: start the clock") if meets else tapped,
        other="" if meets else translate("weigh", "Another number…"),
    )


def _verb(scale: ScaleStep, *, more: bool) -> str:
    if scale.work is ScaleWork.PART_A:
        return translate("weigh", "Add more A") if more else translate("weigh", "Part A")
    if scale.work is ScaleWork.PART_B:
        return translate("weigh", "Add more B") if more else translate("weigh", "Add part B")
    if scale.work is ScaleWork.WHOLE:
        return translate("weigh", "Weigh out")
    if scale.work is ScaleWork.MIX:
        said = translate("weigh", "Into cup {cup}: {colour}")
        return said.format(cup=scale.cup, colour=scale.name)
    name = scale.name or translate("weigh", "colourant")
    return translate("weigh", "Add {colourant}").format(colourant=name)


def _about(studio: Studio, now: PortionRun, scale: ScaleStep) -> str:
    if scale.work is ScaleWork.COLOURANT:
        return _colourant(studio, now, scale)
    if scale.tare:
        said = translate("weigh", "Empty cup on the scale, display at {zero}")
        return said.format(zero=reading(0.0, studio))
    before = reading(max(0.0, scale.reads_grams - scale.add_grams), studio)
    return translate("weigh", "Same cup, {grams} are in it").format(grams=before)


def _colourant(studio: Studio, now: PortionRun, scale: ScaleStep) -> str:
    planned = now.portion.coats[0]
    coat = studio.piece(planned.piece).coat(planned.coat)
    cup = next(c for c in now.portion.cups if c.number == scale.cup or not scale.cup)
    colour = next((one for one in coat.colours if one.name == cup.colour), None)
    if colour is None:
        return ""
    mix = max(0.0, scale.reads_grams - scale.add_grams)
    share = figure(f"{colour.colourant_pct:g}")
    ceiling = stuff_of(colour, studio.pigments).ceiling_pct
    if ceiling is None:
        said = translate("weigh", "Same cup; {share} % of its mix")
        return said.format(share=share)
    said = translate("weigh", "Same cup; {share} % of its mix, usually {most} at most")
    return said.format(share=share, most=reading(mix * ceiling / 100.0, studio))


def _divide(studio: Studio, stand: Stand) -> Shown:
    portion = stand.now.portion
    cups = cups_for(portion)
    return Shown(
        verb=translate("weigh", "Stop: {cups} cups").format(cups=cups),
        about=portion.product.name,
        number=reading(portion.total_grams / cups, studio),
        meaning=translate("weigh", "into each"),
        target=translate("weigh", "It is in {cups} cups").format(cups=cups),
    )


def _stir() -> Shown:
    return Shown(
        verb=translate("weigh", "Stir slowly"),
        about=translate(
            "weigh", "Scrape sides and bottom, then into a second cup and stir again"
        ),
        number=f"{STIR_MINUTES:.0f}{_TOGETHER}min",
        meaning=translate("weigh", "in all, on the cup clock"),
        target=translate("weigh", "It is stirred"),
    )


def _pour(studio: Studio, stand: Stand, minute: float | None) -> Shown:
    time = stand.step.pour
    assert time is not None  # noqa: S101 - every such step has one
    names = " + ".join(words.piece_name(studio.piece(c.piece)) for c in stand.now.portion.coats)
    only = len(stand.now.portion.cups) == 1
    verb = (
        translate("weigh", "Pour") if only else translate("weigh", "Pour cup {cup}: {colour}")
    )
    number, meaning = _pour_number(time, minute if stand.now.mixed else None)
    return Shown(
        verb=verb.format(cup=time.cup.number, colour=time.cup.colour),
        about=names,
        number=number,
        meaning=meaning,
        reads=_pour_minutes(time) if stand.now.mixed else "",
        target=translate("weigh", "The rest is poured")
        if time.cup.number in stand.now.left
        else translate("weigh", "The cup is empty"),
        other=translate("weigh", "Some is left…"),
    )


def _pour_number(time: CupTime, minute: float | None) -> tuple[str, str]:
    """How long there is to wait, or that it is time, or that time is over."""
    if minute is not None and time.gone_minute is not None and minute >= time.gone_minute:
        return translate("weigh", "gone"), translate(
            "weigh", "do not pour what is hot or stiff"
        )
    wait = 0 if minute is None else ceil(time.pour_minute - minute - 1e-6)
    if wait > 0:
        return f"{wait}{_TOGETHER}min", translate("weigh", "to wait")
    return translate("weigh", "now"), ""


def _pour_minutes(time: CupTime) -> str:
    if time.out_by_minute is None:
        return ""
    said = translate("weigh", "Pour at minute {at}, empty by {by}").format(
        at=round(time.pour_minute), by=int(time.out_by_minute)
    )
    stays = time.stays_from_minute or 0.0
    if stays <= time.pour_minute + 1.0:
        return said
    sinks = translate("weigh", "it would stay where it is poured from minute {stays} on")
    return f"{said}; {sinks.format(stays=round(stays))}"


def _end(studio: Studio, stand: Stand, batches: tuple[int, ...]) -> Shown:
    names = " + ".join(words.piece_name(studio.piece(c.piece)) for c in stand.now.portion.coats)
    written = stand.step.do is Do.WRITTEN
    number = " + ".join(str(batch) for batch in batches)
    return Shown(
        verb=translate("weigh", "Written down")
        if written
        else translate("weigh", "All is poured"),
        about=names,
        number=number,
        meaning=translate("weigh", "is the number of the mix: write it under the piece"),
        target=translate("weigh", "Done")
        if written
        else translate("weigh", "Poured: write it down"),
    )


def left_lines(view: DeskView, stand: Stand) -> list[str]:
    """Where what is left can go: of this portion, and at the end of all of them."""
    lines: list[str] = []
    ended = stand.step.do in {Do.WRITE, Do.WRITTEN}
    for run, left in stand.lefts:
        if run is not stand.now and not ended:
            continue
        since = run.since or left.at
        over = LeftOver(
            portion=run.portion,
            colour=left.colour,
            grams=left.grams,
            minute=(view.now - since).total_seconds() / 60.0,
        )
        lines += _homes(view, over)
    return lines


def _homes(view: DeskView, over: LeftOver) -> list[str]:
    studio, homes = view.studio, homes_for(view, over)
    what = f"{reading(over.grams, studio)} {over.colour}".strip()
    good = homes.good_minutes
    lines = [_good(what, good)]
    for home in homes.coats[:_MOST_HOMES]:
        piece = studio.piece(home.coat.piece)
        said = translate("weigh", "It is enough for {piece}, {coat}: {grams}, spot {spot}.")
        lines.append(
            said.format(
                piece=words.piece_name(piece),
                coat=piece.coat_name(home.coat.coat),
                grams=reading(home.grams, studio),
                spot=studio.spot(home.coat.spot).name,
            )
        )
    if not homes.coats:
        said = translate(
            "weigh",
            "No planned coat takes it now: {grams} make a witness chip; spread the rest thin "
            "on what does not burn.",
        )
        lines.append(said.format(grams=words.mass(homes.chip_grams, studio.units)))
    return lines


def _good(what: str, good: float | None) -> str:
    if good is None:
        return translate("weigh", "{what} left; nobody knows how long it is good.").format(
            what=what
        )
    if good < 1.0:
        return translate("weigh", "{what} left; its time in the cup is over.").format(what=what)
    return translate("weigh", "{what} left, good for {minutes} min.").format(
        what=what, minutes=int(good)
    )
