"""The command weigh."""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any

from studio_planner.craft.products import ProductKind
from studio_planner.craft.settings import MassUnit
from studio_planner.science.units import grams_from
from studio_planner.services.amount_words import grams_said
from studio_planner.services.caution import DEFERRAL
from studio_planner.services.editing.grams import adding_up, parts_of, together
from studio_planner.services.mix_run.bottles import lots_for
from studio_planner.services.mixing.cup_plan import portion_time
from studio_planner.services.mixing.mix_sheet import mix_sheet
from studio_planner.services.paper.batch_numbers import batch_numbers
from studio_planner.services.paper.mix_numbers import mix_numbers
from studio_planner.services.paper.weigh_rows import weigh_table
from studio_planner.services.studio_files import read_planned
from studio_planner.services.weighing import weigh as weighed
from studio_planner.terminal.reading import whole_number
from studio_planner.terminal.writing import (
    clock_words,
    iso,
    moment_words,
    say,
    say_json,
    say_table,
    say_wrapped,
)

if TYPE_CHECKING:
    import argparse

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.stock import LotPart
    from studio_planner.craft.studio import Studio
    from studio_planner.services.mixing.cup_plan import CupTime
    from studio_planner.services.weighing import Cup, MixPortion
    from studio_planner.terminal.surroundings import Surroundings

_LARGEST_NUMBER = 999_999
_TARE = "Put the empty cup on the scale and set it to zero, each cup anew."

_SHOWN_GRAMS = {MassUnit.GRAM: 0.1, MassUnit.OUNCE: grams_from(0.001, MassUnit.OUNCE)}
"""The smallest mass that is said, by the unit that the studio reads."""

_WHERE = {
    "film": "on the faces",
    "edges": "on edges and walls",
    "drips": "drip off",
    "absorbed": "are drunk by the blank",
    "reserve": "are the reserve",
}


def weigh(arguments: argparse.Namespace, around: Surroundings) -> int:
    """List what to weigh for the whole mixes that coats of the kept plan are poured from.

    JSON: mixes, each portion of a mix by itself, with mix, number (under which it was
    weighed; null until then, and where nobody knows), start, poured, lots (labels of the
    bottles by part), warnings, part, parts, product, coats (numbers), spread_grams,
    spread_parts (film, edges, drips, absorbed and reserve, in grams; they add up to
    spread_grams), total_grams, a_grams and b_grams (null for a product that is not mixed),
    scale (readings after A and after B), cups (number, colour, mix_grams, colourant,
    colourant_grams, reads_grams), out_of_cup_minutes (null when the sheet has no cup life),
    order (the cups as they are poured: cup, pour_minute, and out_by_minute and
    stays_from_minute, which are null when the sheet does not tell), notes; and caution, a
    sentence.
    """
    del around
    numbers = [whole_number(text, "COAT", _LARGEST_NUMBER) for text in arguments.coats]
    studio, plan = read_planned(Path(arguments.file))
    mixes = weighed(studio, plan, numbers)
    shown = _Shown(studio, plan)
    if arguments.json:
        say_json({"mixes": [_mix_json(shown, mix) for mix in mixes], "caution": DEFERRAL})
        return 0
    if any(mix.total_grams > 0.0 for mix in mixes):
        say(_TARE)
        say()
    for mix in mixes:
        _print_mix(shown, mix)
        say()
    say_wrapped(DEFERRAL)
    return 0


@dataclass
class _Shown:
    """What there is to say of the mixes of a plan beside their grams."""

    studio: Studio
    plan: Plan

    @cached_property
    def numbers(self) -> dict[int, tuple[int, ...]]:
        """The numbers of the weighed portions of mixes that are still to be poured."""
        return batch_numbers(self.studio, self.plan)

    def number(self, mix: MixPortion) -> int | None:
        """Under which number a portion was weighed; None until then."""
        known = self.numbers.get(mix.mix) or self._weighed(mix)
        return known[mix.part - 1] if len(known) >= mix.part else None

    def _weighed(self, mix: MixPortion) -> tuple[int, ...]:
        done = {(one.piece, one.coat) for one in mix.coats}
        return mix_numbers(
            self.studio, (one for one in self.studio.poured if (one.piece, one.coat) in done)
        )

    def poured(self, mix: MixPortion) -> bool:
        """Whether all its coats are poured."""
        done = self.studio.poured_keys
        return all(one.poured or (one.piece, one.coat) in done for one in mix.coats)

    def lots(self, mix: MixPortion) -> dict[LotPart, str]:
        """The labels of the bottles that are set aside for it; none once it is poured."""
        if self.poured(mix) or mix.product.kind is ProductKind.LEAF:
            return {}
        return lots_for(self.studio, self.plan, mix.mix, mix.product)

    def warnings(self, mix: MixPortion) -> tuple[str, ...]:
        """What to mind before A meets B."""
        if self.poured(mix) or mix.part > 1:
            return ()
        return mix_sheet(self.studio, self.plan, mix.mix).warnings


def _mix_json(shown: _Shown, mix: MixPortion) -> dict[str, Any]:
    studio = shown.studio
    readings = [] if mix.a_grams is None else [mix.a_grams, mix.total_grams]
    return {
        "mix": mix.mix,
        "number": shown.number(mix),
        "start": iso(studio.time_zone, mix.coats[0].start),
        "poured": shown.poured(mix),
        "lots": {str(part): label for part, label in shown.lots(mix).items()},
        "warnings": list(shown.warnings(mix)),
        "part": mix.part,
        "parts": mix.parts,
        "product": mix.product.key,
        "coats": [coat.number for coat in mix.coats],
        "spread_grams": mix.spread_grams,
        "spread_parts": _spread_parts(studio, mix),
        "total_grams": mix.total_grams,
        "a_grams": mix.a_grams,
        "b_grams": mix.b_grams,
        "scale": readings,
        "cups": [_cup_json(cup) for cup in mix.cups],
        "out_of_cup_minutes": mix.out_of_cup_minutes,
        "order": [_order_json(cup) for cup in portion_time(studio, mix).cups],
        "notes": list(mix.notes),
    }


def _cup_json(cup: Cup) -> dict[str, Any]:
    return {
        "number": cup.number,
        "colour": cup.colour,
        "mix_grams": cup.mix_grams,
        "colourant": cup.colourant,
        "colourant_grams": cup.colourant_grams,
        "reads_grams": cup.reads_grams,
    }


def _order_json(time: CupTime) -> dict[str, Any]:
    return {
        "cup": time.cup.number,
        "pour_minute": time.pour_minute,
        "out_by_minute": time.out_by_minute,
        "stays_from_minute": time.stays_from_minute,
    }


def _print_mix(shown: _Shown, mix: MixPortion) -> None:
    studio = shown.studio
    pieces = ", ".join(
        f"{coat.number} {studio.piece(coat.piece).name} ({coat.coat})" for coat in mix.coats
    )
    portion = f", portion {mix.part} of {mix.parts}" if mix.parts > 1 else ""
    number = shown.number(mix)
    name = "Mix" if number is None else f"Mix {number}"
    say_wrapped(f"{name}{portion}: {mix.product.name}, for {pieces}")
    if shown.poured(mix):
        say_wrapped("It is poured; `log` lists what was really weighed.", "  ")
    else:
        start, end = mix.coats[0].start, mix.coats[0].end
        zone = studio.time_zone
        say_wrapped(f"{moment_words(zone, start)} to {clock_words(zone, end)}", "  ")
    if mix.total_grams > 0.0:
        table = weigh_table(studio, mix, shown.lots(mix))
        say_table(("", "Add", "Scale shows"), [row.cells[:3] for row in table.rows], "  ")
        say_wrapped(_spread_words(studio, mix), "  ")
    if mix.out_of_cup_minutes is not None:
        minutes = f"{math.floor(mix.out_of_cup_minutes)} min"
        say_wrapped(f"Be out of the cup {minutes} after A meets B.", "  ")
    if len(mix.cups) > 1:
        say_wrapped(_order_words(portion_time(studio, mix).cups), "  ")
    for note in (*shown.warnings(mix), *mix.notes):
        say_wrapped(note, "  ")


def _order_words(cups: tuple[CupTime, ...]) -> str:
    """The cups as they are poured, each with its minutes after A meets B."""
    said = []
    for time in cups:
        by = "" if time.out_by_minute is None else f" (empty by {int(time.out_by_minute)})"
        said.append(f"{time.cup.colour} at minute {round(time.pour_minute)}{by}")
    return f"Pour in this order: {', '.join(said)}."


def _spread_parts(studio: Studio, mix: MixPortion) -> dict[str, float]:
    """Where the grams go that the coats take of one portion."""
    entered = [(studio.piece(one.piece), one.coat) for one in mix.coats]
    parts = [parts_of(studio, piece, piece.coat(key)) for piece, key in entered]
    return together([one for one in parts if one is not None], mix.parts)


def _spread_words(studio: Studio, mix: MixPortion) -> str:
    units = studio.units
    parts = adding_up(_spread_parts(studio, mix), _SHOWN_GRAMS[units.mass])
    said = ", ".join(
        f"{grams_said(grams, units)} {_WHERE[name]}" for name, grams in parts.items() if grams
    )
    whole = grams_said(sum(parts.values()), units)
    rest = "The rest stays in cups, or rounds up to what the scale can show."
    return f"Of it the coats take {whole}: {said}. {rest}"
