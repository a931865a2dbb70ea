"""The command trace: from a piece to its mixes, lots, air and sisters, and back."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.services.log_book.lots import lot_words
from studio_planner.services.log_book.mix_faults import hardener_off
from studio_planner.services.log_book.trace_names import traced
from studio_planner.services.log_book.trace_words import (
    mix_sentences,
    piece_sentences,
    pour_sentences,
)
from studio_planner.services.log_book.tracing import trace_piece
from studio_planner.services.studio_files import read_studio
from studio_planner.terminal.ask_command import TerminalVoice
from studio_planner.terminal.log_command import entry_json, print_entries
from studio_planner.terminal.writing import (
    iso,
    moment_words,
    say,
    say_json,
    say_table,
    say_wrapped,
)

if TYPE_CHECKING:
    import argparse
    from collections.abc import Iterable

    from studio_planner.craft.mixes import WeighedMix
    from studio_planner.craft.studio import Studio
    from studio_planner.services.log_book.tracing import PieceTrace, Shared, Spread, TracedPour
    from studio_planner.services.questions.sentences import Sentence
    from studio_planner.terminal.surroundings import Surroundings


def trace(arguments: argparse.Namespace, around: Surroundings) -> int:
    """Trace a piece or the pieces of an order, or the number of a mix, or a lot.

    JSON of pieces: pieces, each with piece, name, order, order_name, gone, pours (entry,
    coat_name, former, mixes, air: place, readings, coldest, warmest, dampest, or null; touches)
    and entries, corrections and sisters. JSON of a mix or lot: mixes and coats. Of a mix
    hardener_off is by what share its B is too much, or null where it is right.
    """
    del around
    studio = read_studio(Path(arguments.file))
    asked = traced(studio, arguments.name)
    if asked.spread is None:
        _tell_pieces(studio, [trace_piece(studio, key) for key in asked.pieces], arguments)
    else:
        _tell_spread(studio, asked.spread, arguments)
    return 0


def _tell_spread(studio: Studio, spread: Spread, arguments: argparse.Namespace) -> None:
    if arguments.json:
        say_json(
            {
                "mixes": [_mix_json(studio, mix) for mix in spread.mixes],
                "coats": [_shared_json(studio, one) for one in spread.coats],
            }
        )
        return
    for mix in spread.mixes:
        _print_sentences(studio, mix_sentences(studio, mix))
    say()
    _print_shared(studio, spread.coats)


def _tell_pieces(
    studio: Studio, traces: list[PieceTrace], arguments: argparse.Namespace
) -> None:
    if arguments.json:
        say_json({"pieces": [_piece_json(studio, one) for one in traces]})
        return
    for place, one in enumerate(traces):
        if place:
            say()
        _print_piece(studio, one)


def _print_piece(studio: Studio, found: PieceTrace) -> None:
    _print_sentences(studio, piece_sentences(found))
    for pour in found.pours:
        say_wrapped(pour.name, "  ")
        _print_sentences(studio, pour_sentences(studio, pour), "    ")
    if found.entries:
        say()
        print_entries(studio, found.entries)
    if found.sisters:
        say()
        say("From the same mix or lot:")
        _print_shared(studio, found.sisters)


def _print_sentences(studio: Studio, sentences: Iterable[Sentence], indent: str = "") -> None:
    voice = TerminalVoice(studio)
    for sentence in sentences:
        say_wrapped(sentence.words(voice), indent)


def _print_shared(studio: Studio, coats: Iterable[Shared]) -> None:
    rows = [
        (
            one.name,
            one.coat_name,
            str(one.batch),
            "same mix" if one.same_mix else "same lot",
            one.order_name,
            moment_words(studio.time_zone, one.shipped),
        )
        for one in coats
    ]
    say_table(("Piece", "Coat", "Mix", "Shares", "Order", "Shipped"), rows, "  ")


def _piece_json(studio: Studio, found: PieceTrace) -> dict[str, Any]:
    return {
        "piece": found.piece,
        "name": found.name,
        "order": found.order,
        "order_name": found.order_name,
        "gone": found.gone,
        "pours": [_pour_json(studio, pour) for pour in found.pours],
        "entries": [entry_json(studio, entry) for entry in found.entries],
        "corrections": [entry_json(studio, entry) for entry in found.corrections],
        "sisters": [_shared_json(studio, one) for one in found.sisters],
    }


def _pour_json(studio: Studio, pour: TracedPour) -> dict[str, Any]:
    air = pour.air
    return {
        "entry": entry_json(studio, pour.entry),
        "coat_name": pour.name,
        "former": pour.former,
        "mixes": [_mix_json(studio, mix) for mix in pour.mixes],
        "air": None
        if air is None
        else {
            "place": air.place,
            "readings": len(air.readings),
            "coldest": air.coldest,
            "warmest": air.warmest,
            "dampest": air.dampest,
        },
        "touches": [entry_json(studio, touch) for touch in pour.touches],
    }


def _mix_json(studio: Studio, mix: WeighedMix) -> dict[str, Any]:
    return {
        "batch": mix.batch,
        "product": mix.product,
        "at": iso(studio.time_zone, mix.at),
        "a_grams": mix.a_grams,
        "b_grams": mix.b_grams,
        "hardener_off": hardener_off(studio, mix),
        "colourants": [{"name": one.name, "grams": one.grams} for one in mix.colourants],
        "lot_a": lot_words(studio, mix.lot_a),
        "lot_b": lot_words(studio, mix.lot_b),
        "coats": [{"piece": one.piece, "coat": one.coat} for one in mix.coats],
    }


def _shared_json(studio: Studio, one: Shared) -> dict[str, Any]:
    return {
        "piece": one.piece,
        "name": one.name,
        "coat": one.coat,
        "coat_name": one.coat_name,
        "order": one.order,
        "order_name": one.order_name,
        "batch": one.batch,
        "same_mix": one.same_mix,
        "shipped": iso(studio.time_zone, one.shipped),
        "gone": one.gone,
    }
