"""A trace in sentences: for the maker with everything, for the customer in one breath."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.tongue import counted, listed, translate
from studio_planner.services.amount_words import grams_said
from studio_planner.services.log_book.entry_words import what_happened
from studio_planner.services.log_book.known import product_name, spot_name
from studio_planner.services.log_book.lots import lot_words
from studio_planner.services.log_book.mix_faults import fault_of
from studio_planner.services.questions.sentences import (
    Degrees,
    Moment,
    Sentence,
    said,
)

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime

    from studio_planner.craft.log import LogEntry
    from studio_planner.craft.mixes import WeighedMix
    from studio_planner.craft.studio import Studio
    from studio_planner.services.log_book.tracing import (
        PieceTrace,
        Shared,
        Spread,
        TracedPour,
    )
    from studio_planner.services.questions.sentences import Voice


@dataclass(frozen=True, slots=True)
class Passage:
    """A few sentences under a heading, which is empty where none is needed."""

    heading: str
    sentences: tuple[Sentence, ...]

    def text(self, voice: Voice) -> str:
        """The passage as plain text."""
        lines = [sentence.words(voice) for sentence in self.sentences]
        return "\n".join([*([self.heading] if self.heading else []), *lines])


def piece_passages(studio: Studio, found: PieceTrace) -> tuple[Passage, ...]:
    """All that is known of a piece: its pours, what else happened, and who shares with it."""
    passages = [Passage("", tuple(piece_sentences(found)))]
    passages += [
        Passage(pour.name, tuple(pour_sentences(studio, pour))) for pour in found.pours
    ]
    if found.entries:
        what = tuple(_happened(studio, one) for one in found.entries)
        passages.append(Passage(translate("trace", "What else happened"), what))
    if found.corrections:
        count = counted(
            len(found.corrections),
            translate("trace", "{count} entry was corrected or withdrawn; the log keeps it."),
            translate(
                "trace", "{count} entries were corrected or withdrawn; the log keeps them."
            ),
        )
        passages.append(Passage("", (said("{count}", count=count),)))
    sisters = tuple(_shared_sentences(found.sisters))
    if sisters:
        passages.append(Passage(translate("trace", "From the same mix or lot"), sisters))
    return tuple(passages)


def spread_passages(studio: Studio, spread: Spread) -> tuple[Passage, ...]:
    """Where a mix or a lot went: what was weighed, then every coat, then the orders."""
    weighed = tuple(one for mix in spread.mixes for one in mix_sentences(studio, mix))
    coats = tuple(_shared_sentences(spread.coats))
    orders = listed_all(one.order_name for one in spread.coats if one.order)
    passages = [Passage(translate("trace", "What was weighed"), weighed)]
    none = (said("Nothing was poured from it yet, as far as the log knows."),)
    passages.append(Passage(translate("trace", "Where it went"), coats or none))
    if orders:
        passages.append(
            Passage(translate("trace", "Orders"), (said("{orders}.", orders=orders),))
        )
    return tuple(passages)


def customer_words(studio: Studio, found: PieceTrace, voice: Voice) -> str:
    """What can be sent to a customer who asks: each coat, its day, its product and lots."""
    coats = []
    for pour in found.pours:
        if pour.former:
            continue
        sentence = _for_customer(studio, pour)
        coats.append(sentence.words(voice))
    if not coats:
        return said("{name}: nothing of it was poured yet.", name=found.name).words(voice)
    order = said(" for {order}", order=found.order_name).words(voice) if found.order else ""
    head = said("{name}{order}:", name=found.name, order=order).words(voice)
    told = "; ".join(coat.removesuffix(".") for coat in coats)
    return f"{head} {told}."


def listed_all(names: Iterable[str]) -> str:
    """Every name once, one after another; a complaint may not leave one out."""
    return ", ".join(dict.fromkeys(names))


def piece_sentences(found: PieceTrace) -> Iterable[Sentence]:
    """Whose piece it is, and whether anything of it was poured."""
    if found.order and found.gone:
        text = "{name}, for {order}; it was taken out of the studio."
        yield said(text, name=found.name, order=found.order_name)
    elif found.order:
        yield said("{name}, for {order}.", name=found.name, order=found.order_name)
    elif found.gone:
        yield said("{name}; it was taken out of the studio.", name=found.name)
    else:
        yield said("{name}, promised to nobody.", name=found.name)
    if not found.pours:
        yield said("Nothing of it was poured yet.")


def pour_sentences(studio: Studio, pour: TracedPour) -> Iterable[Sentence]:
    """When and where a coat was poured, from which mixes, in what air, and its touch tests."""
    entry = pour.entry
    spot = spot_name(studio, entry.spot)
    text = (
        "Poured {when} on {spot}, before it was stripped."
        if pour.former
        else "Poured {when} on {spot}."
    )
    yield said(text, when=Moment(entry.at), spot=spot)
    for mix in pour.mixes:
        yield from mix_sentences(studio, mix)
    if not pour.mixes:
        yield said("No weights were written down for it.")
    yield _air_sentence(pour)
    for touch in pour.touches:
        yield _happened(studio, touch)


def _happened(studio: Studio, entry: LogEntry) -> Sentence:
    return said("{when}: {what}.", when=Moment(entry.at), what=_Told(studio, entry))


@dataclass(frozen=True, slots=True)
class _Told:
    """What happened, and in brackets what the maker remarked on it."""

    studio: Studio
    entry: LogEntry

    def words(self, voice: Voice) -> str:
        """Write it."""
        what = what_happened(self.studio, self.entry).words(voice)
        return f"{what} ({self.entry.words})" if self.entry.words else what


def mix_sentences(studio: Studio, mix: WeighedMix) -> Iterable[Sentence]:
    """What was weighed into a mix, and what is wrong with it."""
    yield said(
        "Mix {batch}, {when}: {facts}.",
        batch=mix.batch,
        when=Moment(mix.at),
        facts=mix_words(studio, mix),
    )
    fault = fault_of(studio, mix)
    if fault is not None:
        yield fault


def mix_words(studio: Studio, mix: WeighedMix) -> str:
    """What was weighed into a mix: product, masses and lots."""
    return ", ".join(_mix_facts(studio, mix))


def _mix_facts(studio: Studio, mix: WeighedMix) -> Iterable[str]:
    yield product_name(studio, mix.product)
    units = studio.units
    a_grams = grams_said(mix.a_grams, units)
    yield f"{a_grams} A" if mix.b_grams else a_grams
    if mix.b_grams:
        yield f"{grams_said(mix.b_grams, units)} B"
    for one in mix.colourants:
        yield f"{grams_said(one.grams, units)} {one.name}"
    yield from _lots(studio, mix)


def _lots(studio: Studio, mix: WeighedMix) -> Iterable[str]:
    a_lot, b_lot = (lot_words(studio, lot) for lot in (mix.lot_a, mix.lot_b))
    if not mix.b_grams and a_lot:
        yield translate("trace", "lot {lot}").format(lot=a_lot)
        return
    if a_lot:
        yield translate("trace", "A of lot {lot}").format(lot=a_lot)
    if b_lot:
        yield translate("trace", "B of lot {lot}").format(lot=b_lot)


def _air_sentence(pour: TracedPour) -> Sentence:
    air = pour.air
    if air is None or air.coldest is None or air.warmest is None:
        return said("The air around it was not read.")
    low, high = Degrees(air.coldest), Degrees(air.warmest)
    if air.dampest is None:
        return said("Air around it: {low} to {high}.", low=low, high=high)
    return said(
        "Air around it: {low} to {high}, up to {damp} % humid.",
        low=low,
        high=high,
        damp=round(air.dampest),
    )


def _shared_sentences(coats: Iterable[Shared]) -> Iterable[Sentence]:
    for one in coats:
        how = (
            translate("trace", "same mix {batch}")
            if one.same_mix
            else translate("trace", "same lot, mix {batch}")
        )
        yield said(
            "{piece}, {coat}: {how}{order}{left}.",
            piece=one.name,
            coat=one.coat_name,
            how=how.format(batch=one.batch),
            order=f", {one.order_name}" if one.order else "",
            left=_Left(one.shipped),
        )


@dataclass(frozen=True, slots=True)
class _Left:
    """When something left, after a comma; nothing while it is there."""

    when: datetime | None

    def words(self, voice: Voice) -> str:
        """Write it."""
        if self.when is None:
            return ""
        return said(", shipped {when}", when=Moment(self.when)).words(voice)


def _for_customer(studio: Studio, pour: TracedPour) -> Sentence:
    mixes = listed_all(str(mix.batch) for mix in pour.mixes)
    lots = listed_all(lot for mix in pour.mixes for lot in _lots(studio, mix))
    product = listed(product_name(studio, mix.product) for mix in pour.mixes) if mixes else ""
    when = Moment(pour.entry.at)
    if not mixes:
        return said("{coat} poured {when}.", coat=pour.name, when=when)
    if not lots:
        text = "{coat} poured {when} from mix {batch} ({product})."
        return said(text, coat=pour.name, when=when, batch=mixes, product=product)
    return said(
        "{coat} poured {when} from mix {batch} ({product}, {lots}).",
        coat=pour.name,
        when=when,
        batch=mixes,
        product=product,
        lots=lots,
    )
