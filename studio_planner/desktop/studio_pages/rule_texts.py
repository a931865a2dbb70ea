"""The rules of thumb in words: what each is called, and what it does."""

from __future__ import annotations

from dataclasses import dataclass

from studio_planner.craft.kind_words import kind_word
from studio_planner.craft.pieces import Material
from studio_planner.craft.tongue import capital
from studio_planner.desktop.quantities import Quantity
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.studio_words import MOVED


@dataclass(frozen=True, slots=True)
class ThumbRule:
    """One figure of the settings by its name there, with its words and its kind of number."""

    name: str
    title: str
    sentence: str
    quantity: Quantity


@dataclass(frozen=True, slots=True)
class RuleGroup:
    """Rules about one thing."""

    title: str
    rules: tuple[ThumbRule, ...]


def rule_groups() -> tuple[RuleGroup, ...]:
    """All rules that are one figure, in the order in which they are shown."""
    return (
        RuleGroup(translate("rules", "Air and dust"), _air()),
        RuleGroup(translate("rules", "Hands and promises"), _hands()),
        RuleGroup(translate("rules", "Films"), _films()),
        RuleGroup(translate("rules", "Weighing"), _weighing()),
        RuleGroup(translate("rules", "What does not stay on the piece"), _losses()),
        RuleGroup(translate("rules", "Heating"), _heating()),
    )


def material_name(material: Material) -> str:
    """A material as a maker writes it."""
    return "MDF" if material is Material.MDF else capital(kind_word(material))


def _air() -> tuple[ThumbRule, ...]:
    return (
        ThumbRule(
            "dew_margin_celsius",
            translate("rules", "Margin above the dew point"),
            translate("rules", "A surface must be at least so much warmer than the dew point."),
            Quantity.DEGREES,
        ),
        ThumbRule(
            "dew_hours",
            translate("rules", "Margin kept for"),
            translate("rules", "So long after a pour that margin is still held."),
            Quantity.HOURS,
        ),
        ThumbRule(
            "steady_celsius",
            translate("rules", "Steady room"),
            translate(
                "rules",
                "The room may warm by so much while bare porous work is coated; more drives "
                "air out of the pores and blows bubbles.",
            ),
            Quantity.DEGREES,
        ),
        ThumbRule(
            "settle_minutes",
            translate("rules", "Dust settles"),
            translate("rules", "So long after sanding nothing is poured."),
            Quantity.MINUTES,
        ),
    )


def _hands() -> tuple[ThumbRule, ...]:
    return (
        ThumbRule(
            "spare_hours",
            translate("rules", "Spare before a promise"),
            translate(
                "rules",
                "The plan tries to be ready so long before each promise: one recoat cycle, in "
                "case a coat goes wrong.",
            ),
            Quantity.HOURS,
        ),
        ThumbRule(
            "turn_minutes",
            translate("rules", "Turning a piece"),
            translate("rules", "So long somebody's hands are needed to turn a piece over."),
            Quantity.MINUTES,
        ),
        ThumbRule(
            "sand_minutes",
            translate("rules", "Washing and sanding"),
            translate(
                "rules", "So long it takes to wash and scuff one piece for its next coat."
            ),
            Quantity.MINUTES,
        ),
        ThumbRule(
            "tape_minutes",
            translate("rules", "Pulling tape, trimming drips"),
            translate("rules", "So long it takes for one piece, by whoever is awake."),
            Quantity.MINUTES,
        ),
        ThumbRule(
            MOVED,
            translate("rules", "A window that moved"),
            translate(
                "rules",
                "Where a window opens or closes by so much otherwise than planned, it is said.",
            ),
            Quantity.MINUTES,
        ),
    )


def _films() -> tuple[ThumbRule, ...]:
    return (
        ThumbRule(
            "film_warn_mm",
            translate("rules", "Film that may run off"),
            translate("rules", "Without a rim, a thicker film is warned about."),
            Quantity.FILM,
        ),
        ThumbRule(
            "film_refuse_mm",
            translate("rules", "Film that runs off"),
            translate("rules", "Without a rim, a thicker film is refused."),
            Quantity.FILM,
        ),
        ThumbRule(
            "edge_film_mm",
            translate("rules", "Film on an edge"),
            translate("rules", "An upright edge holds no more than this."),
            Quantity.FILM,
        ),
        ThumbRule(
            "wall_film_mm",
            translate("rules", "Film on a rim's inside"),
            translate("rules", "So much stays on the inner wall of a rim."),
            Quantity.FILM,
        ),
    )


def _weighing() -> tuple[ThumbRule, ...]:
    return (
        ThumbRule(
            "scale_step_g",
            translate("rules", "Step of the scale"),
            translate("rules", "The smallest difference that your scale shows."),
            Quantity.MASS,
        ),
        ThumbRule(
            "ratio_tolerance_pct",
            translate("rules", "Ratio may be off by"),
            translate(
                "rules",
                "How far A to B may be off. With the scale's step it decides the smallest mix "
                "that can be weighed.",
            ),
            Quantity.PER_CENT,
        ),
    )


def _losses() -> tuple[ThumbRule, ...]:
    return (
        ThumbRule(
            "drip_loss_pct",
            translate("rules", "Dripping off"),
            translate("rules", "Of a film that runs over the edge, so much is lost."),
            Quantity.PER_CENT,
        ),
        ThumbRule(
            "rim_drip_loss_pct",
            translate("rules", "Dripping off inside a rim"),
            translate("rules", "Of a film that a rim holds, so much is lost."),
            Quantity.PER_CENT,
        ),
        ThumbRule(
            "cup_loss_g",
            translate("rules", "Left in a cup"),
            translate("rules", "So much stays in every cup and on its stick."),
            Quantity.MASS,
        ),
        ThumbRule(
            "absorption_face_pct",
            translate("rules", "Drunk by bare wood"),
            translate(
                "rules",
                "A bare face of MDF, timber or plywood drinks so much, in per cent of a thin "
                "first coat.",
            ),
            Quantity.PER_CENT,
        ),
        ThumbRule(
            "reserve_pct",
            translate("rules", "Reserve"),
            translate("rules", "So much more is mixed than a coat should take."),
            Quantity.PER_CENT,
        ),
    )


def _heating() -> tuple[ThumbRule, ...]:
    return (
        ThumbRule(
            "tariff_per_kwh",
            translate("rules", "Price of heating, each kWh"),
            translate("rules", "In the studio's currency; 0 where nobody asks."),
            Quantity.PLAIN,
        ),
    )
