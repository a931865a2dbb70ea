"""At the scale: one number after the other, and what the display reads then."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import TYPE_CHECKING

from studio_planner.services.whole_steps import on_steps

if TYPE_CHECKING:
    from collections.abc import Iterator

    from studio_planner.craft.studio import Studio
    from studio_planner.services.weighing import Cup, MixPortion


class ScaleWork(StrEnum):
    """What goes on the scale in one step."""

    PART_A = "part A"
    PART_B = "part B"
    WHOLE = "whole"
    MIX = "mix"
    COLOURANT = "colourant"


@dataclass(frozen=True, slots=True, kw_only=True)
class ScaleStep:
    """One number at the scale: add so many grams until it reads so many.

    `cup` is the number of the cup that stands on it, 0 for the one that A and B are mixed in;
    where `tare` is set that cup is put on empty and the scale is set to zero first. `name` is
    the colour or the colourant.
    """

    work: ScaleWork
    cup: int
    name: str
    add_grams: float
    reads_grams: float
    tare: bool


def scale_steps(studio: Studio, portion: MixPortion) -> tuple[ScaleStep, ...]:
    """The steps of one portion in order: A, B, then each cup and its colourant.

    A mix of one colour stays in the cup that it was mixed in. What weighs nothing has no step.
    """
    step = studio.settings.scale_step_g
    steps = list(_first_cup(portion))
    if len(portion.cups) == 1:
        steps += _colourant(portion.cups[0], 0, portion.total_grams, step)
    else:
        for cup in portion.cups:
            steps.append(
                ScaleStep(
                    work=ScaleWork.MIX,
                    cup=cup.number,
                    name=cup.colour,
                    add_grams=cup.mix_grams,
                    reads_grams=cup.mix_grams,
                    tare=True,
                )
            )
            steps += _colourant(cup, cup.number, cup.mix_grams, step)
    return tuple(one for one in steps if one.add_grams > 0.0)


def _first_cup(portion: MixPortion) -> Iterator[ScaleStep]:
    a_grams, b_grams, total = portion.a_grams, portion.b_grams, portion.total_grams
    if a_grams is None or b_grams is None:
        yield ScaleStep(
            work=ScaleWork.WHOLE, cup=0, name="", add_grams=total, reads_grams=total, tare=True
        )
        return
    yield ScaleStep(
        work=ScaleWork.PART_A,
        cup=0,
        name="",
        add_grams=a_grams,
        reads_grams=a_grams,
        tare=True,
    )
    yield ScaleStep(
        work=ScaleWork.PART_B,
        cup=0,
        name="",
        add_grams=b_grams,
        reads_grams=total,
        tare=False,
    )


def _colourant(cup: Cup, number: int, before: float, step: float) -> Iterator[ScaleStep]:
    yield ScaleStep(
        work=ScaleWork.COLOURANT,
        cup=number,
        name=cup.colourant,
        add_grams=cup.colourant_grams,
        reads_grams=on_steps(before + cup.colourant_grams, step),
        tare=False,
    )
