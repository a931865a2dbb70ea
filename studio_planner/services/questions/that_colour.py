"""What made a colour last time, and the grams of it for another coat."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from studio_planner.craft.tongue import figure
from studio_planner.services.amount_words import grams_said
from studio_planner.services.editing.grams import parts_of
from studio_planner.services.mixing.recipes import really_used
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
    not_known,
)
from studio_planner.services.questions.sentences import Moment, Sentence, said

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.craft.pieces import Coat, Colour, Piece
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView

_WHOLE = 100.0


def _colours(studio: Studio) -> dict[str, tuple[Piece, Coat, Colour]]:
    """Every colour of every coat by a key; what went into a batch last comes first."""
    found = {
        f"{piece.key}/{coat.key}/{number}": (piece, coat, colour)
        for piece in studio.pieces
        for coat in piece.stack
        for number, colour in enumerate(coat.colours, start=1)
    }
    last = {
        (one.piece, one.coat): mix.at.timestamp()
        for mix in sorted(studio.standing_mixes, key=lambda one: one.at)
        for one in mix.coats
    }
    return dict(
        sorted(found.items(), key=lambda row: -last.get((row[1][0].key, row[1][1].key), 0.0))
    )


def _coats(studio: Studio) -> dict[str, tuple[Piece, Coat]]:
    """Every coat that is still to be poured and is not laid, by a key."""
    poured = studio.poured_keys
    return {
        f"{piece.key}/{coat.key}": (piece, coat)
        for piece in studio.pieces
        for coat in piece.stack
        if (piece.key, coat.key) not in poured and parts_of(studio, piece, coat) is not None
    }


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    colours, coats = _colours(view.studio), _coats(view.studio)
    named = tuple(
        (key, f"{colour.name} ({piece.name}, {piece.coat_name(coat.key)})")
        for key, (piece, coat, colour) in colours.items()
    )
    coated = tuple(
        (key, f"{piece.name}, {piece.coat_name(coat.key)}")
        for key, (piece, coat) in coats.items()
    )
    return (
        Parameter("colour", "Which colour", Kind.CHOICE, next(iter(colours), ""), named),
        Parameter("coat", "For which coat now", Kind.CHOICE, next(iter(coats), ""), coated),
    )


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    studio = view.studio
    found = _colours(studio).get(given["colour"])
    if found is None:
        return not_known(
            "No coat has a colour yet; enter what goes into its cups on the page Pieces."
        )
    piece, coat, colour = found
    lines = [*_really(studio, piece, coat), *_photos(piece)]
    now = _coats(studio).get(given["coat"])
    if now is not None:
        lines.insert(0, _for_coat(studio, colour, *now))
    product = studio.product(coat.product).name
    if not colour.colourant_pct:
        text = "{colour} is {product} with nothing in it."
        return Answer(Sign.YES, said(text, colour=colour.name, product=product), tuple(lines))
    verdict = said(
        "{colour} is {share} % of {colourant} in {product}.",
        colour=colour.name,
        share=_number(colour.colourant_pct),
        colourant=_stuff(colour),
        product=product,
    )
    return Answer(Sign.YES, verdict, tuple(lines))


def _for_coat(studio: Studio, colour: Colour, piece: Piece, coat: Coat) -> Sentence:
    """The grams for a coat: for its part of that name, or for all of it."""
    parts = parts_of(studio, piece, coat)
    grams = 0.0 if parts is None else parts.mixed
    like = [one for one in coat.colours if one.name.casefold() == colour.name.casefold()]
    share = like[0].share_pct if like else _WHOLE
    mix = grams * share / _WHOLE
    return said(
        "For {piece}, {coat}: {colourant} of {stuff} into {mix} of mix, the cups' loss "
        "included.",
        piece=piece.name,
        coat=piece.coat_name(coat.key),
        colourant=grams_said(mix * colour.colourant_pct / _WHOLE, studio.units),
        stuff=_stuff(colour),
        mix=grams_said(mix, studio.units),
    )


def _really(studio: Studio, piece: Piece, coat: Coat) -> list[Sentence]:
    used = really_used(studio, piece.key, coat.key)
    last = [one for one in used if one.batch == used[-1].batch]
    return [
        said(
            "Really weighed into mix {batch} at {when}: {grams} of {stuff}, {share} % of all "
            "its mix.",
            batch=one.batch,
            when=Moment(one.at),
            grams=grams_said(one.grams, studio.units),
            stuff=one.name,
            share=_number(one.of_mix_pct),
        )
        for one in last
    ]


def _photos(piece: Piece) -> list[Sentence]:
    if not piece.photos:
        text = "No photo of {piece} is kept; keep one on the page Pieces for the next time."
    else:
        text = "How it came out: the photos of {piece} on the page Pieces."
    return [said(text, piece=piece.name)]


def _stuff(colour: Colour) -> str:
    return colour.colourant.replace("_", " ") or colour.name


def _number(pct: float) -> str:
    return figure(f"{pct:.3g}")


QUESTION = Question(
    "that-colour", "What did I mix last time for that colour?", _parameters, _answer
)
