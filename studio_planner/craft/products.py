"""Products: what is in the bottles, and the figures their data sheets publish."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from functools import lru_cache
from typing import TYPE_CHECKING

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.taught import LONGEST_HOURS, TaughtStage
from studio_planner.craft.tongue import translate
from studio_planner.science.cups import CupFigure, CupLife, cup_life
from studio_planner.science.laws import LawError, SheetFigure, StageLaw, stage_law
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Sequence

_LAWS = 1024
CUP_SHEET_GRAMS = 100.0
"""The mass that a printed cup life holds for when the sheet names none (common practice)."""


class ProductKind(StrEnum):
    """What kind of thing a product is."""

    TWO_PART = "two-part mix"
    PRIMER = "one-part primer"
    SIZE = "size"
    LEAF = "leaf"


class RatioBy(StrEnum):
    """How a data sheet states its mix ratio.

    ASSUMED: nobody has said yet; until then the numbers are taken as parts by weight.
    """

    WEIGHT = "weight"
    VOLUME = "volume"
    ASSUMED = "assumed"


@dataclass(frozen=True, slots=True, kw_only=True)
class MixRatio:
    """A to B as printed on the data sheet, by weight or by volume."""

    a: float
    b: float
    by: RatioBy = RatioBy.WEIGHT

    def __post_init__(self) -> None:
        """Check that both parts are positive."""
        rules = Rulebook(translate("nouns", "mix ratio"))
        rules.between(self.a, 0.01, 10_000, "a")
        rules.between(self.b, 0.01, 10_000, "b")
        rules.close()


@dataclass(frozen=True, slots=True, kw_only=True)
class SheetPoint:
    """One published figure: a stage, at a temperature, after so many hours (or a range).

    `mass_g` is the mixed mass the figure holds for; only cup life has one.
    """

    stage: Stage
    celsius: float
    from_hours: float
    to_hours: float | None = None
    mass_g: float | None = None

    def __post_init__(self) -> None:
        """Check ranges; what the points say together is checked by the product."""
        rules = Rulebook(
            translate("nouns", "sheet figure for {stage} at {celsius:g} °C").format(
                stage=self.stage, celsius=self.celsius
            )
        )
        rules.between(self.celsius, -40, 150, "celsius")
        rules.between(self.from_hours, 1e-4, LONGEST_HOURS, "from_hours")
        if self.to_hours is not None:
            rules.between(self.to_hours, self.from_hours, LONGEST_HOURS, "to_hours")
        if self.mass_g is not None:
            rules.between(self.mass_g, 0.1, 1_000_000, "mass_g")
        rules.close()

    @property
    def figure(self) -> SheetFigure:
        """The same figure as the laws take it."""
        return SheetFigure(self.celsius, self.from_hours, self.to_hours)


@dataclass(frozen=True, slots=True, kw_only=True)
class Product:
    """A product with its data sheet; densities in g/cm³, masses in grams, air in °C and %.

    `mix_limit_g` is the largest mix that can be spread in time, `cup_limit_g` the largest cup.
    A one-part product has no ratio. `viscosity_mpas` is that of the mix as the sheet has it.
    A leaf is a square of `leaf_mm` that costs `leaf_price` in the studio's currency.
    `taught` is what the studio's own touch tests say of its stages, once the maker has said yes
    to it.
    """

    key: str
    name: str
    kind: ProductKind
    sheet: tuple[SheetPoint, ...]
    ratio: MixRatio | None = None
    density_a: float | None = None
    density_b: float | None = None
    density: float = 1.10
    minimum_celsius: float | None = None
    maximum_celsius: float | None = None
    humidity_limit_pct: float | None = None
    depth_limit_mm: float | None = None
    cup_limit_g: float = 200.0
    mix_limit_g: float = 600.0
    invented: bool = False
    viscosity_mpas: float | None = None
    taught: tuple[TaughtStage, ...] = ()
    leaf_mm: float | None = None
    leaf_price: float = 0.0

    def __post_init__(self) -> None:
        """Check figures, limits, and that every stage's points make a law."""
        rules = Rulebook(
            translate("nouns", "product {name}").format(name=self.name or self.key)
        )
        rules.named(self.key, "key")
        rules.named(self.name)
        self._check_mixing(rules)
        self._check_air(rules)
        for stage in sorted({point.stage for point in self.sheet}):
            self._check_law(stage, rules)
        self._check_windows(rules)
        self._check_taught(rules)
        rules.close()

    def _check_mixing(self, rules: Rulebook) -> None:
        two_part = self.kind is ProductKind.TWO_PART
        rules.require(
            two_part == (self.ratio is not None),
            "ratio",
            translate("rules", "a two-part mix needs its ratio.")
            if two_part
            else translate("rules", "only a two-part mix has a ratio."),
        )
        by_volume = self.ratio is not None and self.ratio.by is RatioBy.VOLUME
        rules.require(
            not by_volume or None not in {self.density_a, self.density_b},
            "density_a",
            translate(
                "rules",
                "a ratio by volume can be weighed only with the densities of A and of B.",
            ),
        )
        for field in ("density_a", "density_b", "density"):
            value = getattr(self, field)
            if value is not None:
                rules.between(value, 0.5, 5.0, field)
        if self.leaf_mm is not None:
            rules.between(self.leaf_mm, 5, 1000, "leaf_mm")
        rules.between(self.leaf_price, 0, 10_000, "leaf_price")
        rules.between(self.cup_limit_g, 1, 100_000, "cup_limit_g")
        rules.between(self.mix_limit_g, 1, 100_000, "mix_limit_g")
        if self.viscosity_mpas is not None:
            rules.between(self.viscosity_mpas, 1, 1_000_000, "viscosity_mpas")

    def _check_air(self, rules: Rulebook) -> None:
        low, high = self.minimum_celsius, self.maximum_celsius
        for field in ("minimum_celsius", "maximum_celsius"):
            value = getattr(self, field)
            if value is not None:
                rules.between(value, -20, 80, field)
        rules.require(
            low is None or high is None or low < high,
            "minimum_celsius",
            translate("rules", "the lowest temperature must be under the highest."),
        )
        if self.humidity_limit_pct is not None:
            rules.between(self.humidity_limit_pct, 1, 100, "humidity_limit_pct")
        if self.depth_limit_mm is not None:
            rules.between(self.depth_limit_mm, 0.01, 500, "depth_limit_mm")

    def _check_law(self, stage: Stage, rules: Rulebook) -> None:
        try:
            if stage is Stage.CUP_LIFE:
                cup_life_of(self.sheet, None)
            else:
                self.law(stage)
        except LawError as error:
            sentence = str(error).removeprefix(f"{stage}: ")
            rules.require(False, f"sheet, {stage}", sentence)  # noqa: FBT003

    def _check_windows(self, rules: Rulebook) -> None:
        opening = {
            Stage.RECOAT_OPENS: Stage.RECOAT_CLOSES,
            Stage.TAPE_OPENS: Stage.TAPE_CLOSES,
            Stage.TRIM_OPENS: Stage.TRIM_CLOSES,
        }
        for opens, closes in opening.items():
            later = {p.celsius: p for p in self.figures(closes)}
            for point in self.figures(opens):
                pair = later.get(point.celsius)
                rules.require(
                    pair is None or point.from_hours < (pair.to_hours or pair.from_hours),
                    f"sheet, {opens}",
                    translate("rules", "at {celsius:g} °C it opens after it closes.").format(
                        celsius=point.celsius
                    ),
                )

    def _check_taught(self, rules: Rulebook) -> None:
        stages = [taught.stage for taught in self.taught]
        rules.require(
            len(set(stages)) == len(stages),
            "taught",
            translate("rules", "each stage can be taught only once."),
        )

    def figures(self, stage: Stage) -> tuple[SheetPoint, ...]:
        """The published points of one stage, as entered."""
        return tuple(point for point in self.sheet if point.stage is stage)

    def law(self, stage: Stage) -> StageLaw | None:
        """The law of a stage, or None when the sheet says nothing about it.

        Where touch tests have taught the stage, it is the law that they made of the sheet's.
        That of cup life holds at the sheet's mass nearest 100 g; `cup_life` knows them all.
        """
        if stage is Stage.CUP_LIFE:
            life = self.cup_life()
            return None if life is None else life.law
        sheet = self.sheet_law(stage)
        taught = self.taught_stage(stage)
        return sheet if sheet is None or taught is None else taught.law(sheet)

    def sheet_law(self, stage: Stage) -> StageLaw | None:
        """The law of a stage of the film as the data sheet has it; None when it has none."""
        points = self.figures(stage)
        return _law_of(stage, tuple(point.figure for point in points)) if points else None

    def taught_stage(self, stage: Stage) -> TaughtStage | None:
        """What touch tests taught of a stage; None when they taught nothing that is used."""
        return next((taught for taught in self.taught if taught.stage is stage), None)

    def cup_life(self) -> CupLife | None:
        """Cup life by mass and temperature; None when the sheet says nothing about it."""
        return cup_life_of(self.sheet, self.law(Stage.WORKING_TIME))


@lru_cache(maxsize=_LAWS)
def _law_of(stage: Stage, figures: tuple[SheetFigure, ...]) -> StageLaw:
    """The law of some figures; the same sheet is asked again and again."""
    return stage_law(stage, figures)


def cup_life_of(points: Sequence[SheetPoint], film: StageLaw | None) -> CupLife | None:
    """Cup life of a sheet's points; None when none of them is a cup life.

    `film` is the law of the working time, which a cup life never outlasts.
    """
    figures = [
        CupFigure(p.celsius, p.mass_g or CUP_SHEET_GRAMS, p.from_hours, p.to_hours)
        for p in points
        if p.stage is Stage.CUP_LIFE
    ]
    return cup_life(figures, film=film) if figures else None
