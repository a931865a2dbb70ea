"""The minutes of one portion of a mix: when each cup is poured, and by when it has to be empty.

All minutes count from A meets B. What is used of a cup's life adds up: first the whole portion
stands in one cup, then each colour in its own, smaller one.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Colour
from studio_planner.science.cups import SHARE_TO_USE
from studio_planner.science.stages import Edge
from studio_planner.services.colour_stuff import ColourStuff, Heaviness, light_first, stuff_of
from studio_planner.services.cup_times import air_at
from studio_planner.services.mixing.settling import settling_of

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.studio import Studio
    from studio_planner.services.mixing.settling import Settling
    from studio_planner.services.weighing import Cup, MixPortion

STIR_MINUTES = 6.0
"""Stirring, the second cup and stirring again (common practice: 3 to 5, then 1 to 3)."""

COLOUR_MINUTES = 1.5
"""Weighing a part into its colour's cup and stirring the pigment in (common practice)."""

POUR_MINUTES = 2.5
"""Pouring one single piece from its cups, torch and drips left out (common practice)."""

_CLEAR = Colour(name="clear")


@dataclass(frozen=True, slots=True, kw_only=True)
class CupTime:
    """One cup: when it is poured, when it is empty, and by when it has to be.

    `pour_minute` waits for heavy pigments to stay, or for the maker's own minute, as far as
    the lives of this and the next cups and the hands-on block allow. From `stays_from_minute`
    on what is in it would stay where it is poured; it `sinks_mm` when it is poured as planned:
    None where the sheet has no working time. At `gone_minute` its whole life is used, which is
    later than `out_by_minute`; both are None where the sheet has no cup life.
    """

    cup: Cup
    stuff: ColourStuff
    pour_minute: float
    empty_minute: float
    out_by_minute: float | None
    gone_minute: float | None
    stays_from_minute: float | None
    sinks_mm: float | None

    @property
    def in_time(self) -> bool | None:
        """Whether it is empty in time; None where nobody knows."""
        return None if self.out_by_minute is None else self.empty_minute <= self.out_by_minute


@dataclass(frozen=True, slots=True, kw_only=True)
class PortionTime:
    """One portion of a mix, minute by minute; `poured_minute` is when its last cup is empty."""

    portion: MixPortion
    stirred_minute: float
    split_minute: float
    cups: tuple[CupTime, ...]

    @property
    def poured_minute(self) -> float:
        """When its last cup is empty."""
        return max((cup.empty_minute for cup in self.cups), default=self.split_minute)

    @property
    def in_time(self) -> bool | None:
        """Whether every cup is empty in time; None where the sheet has no cup life."""
        known = [cup.in_time for cup in self.cups if cup.in_time is not None]
        return all(known) if known else None

    @property
    def late_minutes(self) -> float:
        """By how much its worst cup is too late; 0.0 when none is."""
        late = [
            c.empty_minute - c.out_by_minute for c in self.cups if c.out_by_minute is not None
        ]
        return max((0.0, *late))


def portion_time(studio: Studio, portion: MixPortion) -> PortionTime:
    """The minutes of one portion, whose cups are poured one after another, light first."""
    coats = [studio.piece(c.piece).coat(c.coat) for c in portion.coats]
    colours = light_first(coats[0].colours, studio.pigments) or (_CLEAR,)
    split = STIR_MINUTES + _split_minutes(colours)
    settling = settling_of(studio, portion.product, portion.coats[0])
    slots = _slots(studio, portion, split)
    made: list[CupTime] = []
    ready = split
    for slot, colour in zip(slots, colours, strict=False):
        stuff = stuff_of(colour, studio.pigments)
        begun = max(ready, min(_wanted_minute(stuff, settling), slot.latest))
        ready = begun + slot.minutes
        made.append(
            CupTime(
                cup=slot.cup,
                stuff=stuff,
                pour_minute=begun,
                empty_minute=ready,
                out_by_minute=slot.out_by,
                gone_minute=slot.gone,
                stays_from_minute=None if settling is None else settling.stays_from(stuff),
                sinks_mm=None if settling is None else settling.sinks_mm(stuff, begun),
            )
        )
    return PortionTime(
        portion=portion, stirred_minute=STIR_MINUTES, split_minute=split, cups=tuple(made)
    )


@dataclass(frozen=True, slots=True)
class _Slot:
    """One cup, the minutes that it takes to pour, its ends, and its latest start."""

    cup: Cup
    minutes: float
    out_by: float | None
    gone: float | None
    latest: float


def _slots(studio: Studio, portion: MixPortion, split: float) -> list[_Slot]:
    first = portion.coats[0]
    pour = _pour_minutes(studio, portion)
    life = _life_minutes(studio, portion)
    latest = (first.end - first.start).total_seconds() / 60.0 / portion.parts
    slots: list[_Slot] = []
    for cup in reversed(portion.cups):
        minutes = pour * cup.mix_grams / portion.total_grams
        out_by = _used_by(SHARE_TO_USE, life, portion, cup, split)
        gone = _used_by(1.0, life, portion, cup, split)
        # Whoever waits with a cup keeps all the cups after it waiting.
        latest = min(latest, latest if out_by is None else out_by) - minutes
        slots.append(_Slot(cup, minutes, out_by, gone, latest))
    return slots[::-1]


def _split_minutes(colours: tuple[Colour, ...]) -> float:
    coloured = [colour for colour in colours if colour.colourant_pct > 0.0]
    return COLOUR_MINUTES * (len(colours) if len(colours) > 1 else len(coloured))


def _pour_minutes(studio: Studio, portion: MixPortion) -> float:
    minutes = 0.0
    for planned in portion.coats:
        piece = studio.piece(planned.piece)
        coat = piece.coat(planned.coat)
        minutes += min(POUR_MINUTES, coat.piece_minutes) * piece.count
    return minutes / portion.parts


def _wanted_minute(stuff: ColourStuff, settling: Settling | None) -> float:
    """The minute to wait for: the maker's own, else the one from which a heavy colour stays."""
    if stuff.colour.pour_at_minute is not None:
        return stuff.colour.pour_at_minute
    if settling is None or stuff.heaviness is not Heaviness.HEAVY:
        return 0.0
    return settling.stays_from(stuff)


def _life_minutes(studio: Studio, portion: MixPortion) -> Callable[[float], float] | None:
    """Cup life by mass [min] at the warmest likely air; None where the sheet has none."""
    life = portion.product.cup_life()
    if life is None or portion.a_grams is None:
        return None
    first = portion.coats[0]
    celsius, band = air_at(studio, first.spot, first.start)
    return lambda grams: 60.0 * life.hours(celsius, grams, Edge.EARLY, band)


def _used_by(
    share: float,
    life: Callable[[float], float] | None,
    portion: MixPortion,
    cup: Cup,
    split: float,
) -> float | None:
    """The minute by which a share of a cup's life is used; None where nobody knows."""
    if life is None or cup.mix_grams <= 0.0:
        return None
    if len(portion.cups) == 1:
        return share * life(portion.total_grams)
    used = split / life(portion.total_grams)
    return split + max(0.0, share - used) * life(cup.mix_grams)
