"""What made a colour last time; grams are worked out beside each."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from studio_planner.craft.log import EntryKind, LogEntry
from studio_planner.craft.mixes import MixedFor, WeighedColour, WeighedMix
from studio_planner.craft.pieces import Colour, Photo
from studio_planner.craft.settings import MassUnit, Settings, Units
from studio_planner.services.desk import DeskView
from studio_planner.services.questions.asking import Sign
from studio_planner.services.questions.that_colour import QUESTION
from tests.desktop import scenes
from tests.services.questions.steady import lines, steady_studio, verdict

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

SEA = Colour(name="sea", share_pct=60, colourant="alcohol_ink", colourant_pct=1.5)
FOAM = Colour(name="foam", share_pct=40)
WHEN = datetime(2026, 12, 1, 18, 0, tzinfo=UTC)


def coloured(**changes: object) -> Studio:
    studio = steady_studio()
    tide = replace(studio.piece("c").coat("tide"), colours=(SEA, FOAM))
    coasters = studio.piece("c")
    stack = tuple(tide if one.key == "tide" else one for one in coasters.stack)
    pieces = tuple(
        replace(one, stack=stack) if one.key == "c" else one for one in studio.pieces
    )
    bare = Settings(reserve_pct=0, drip_loss_pct=0, cup_loss_g=0)
    return replace(studio, pieces=pieces, settings=bare, **changes)  # type: ignore[arg-type]


def asked(studio: Studio, **given: str) -> tuple[Sign, str, list[str]]:
    answer = QUESTION.asked(DeskView(studio, scenes.NOW), given)
    return answer.sign, verdict(answer), lines(answer)


def test_a_recipe_is_named_and_scaled_to_another_coat() -> None:
    # 400 x 200 mm of 0.8 mm at 1.10 g/cm³ are 70.4 g; 1.5 % of them 1.1 g.
    sign, words, said = asked(coloured(), colour="c/tide/1", coat="h1/tide")
    assert sign is Sign.YES
    assert words == "sea is 1.5 % of alcohol ink in Slow flood (invented)."
    assert said[0] == (
        "For Harbour board 1, colour pour: 1.1 g of alcohol ink into 70.4 g of mix, the cups' "
        "loss included."
    )
    assert said[1].startswith("No photo of Slate coasters is kept")


def test_a_coat_with_a_colour_of_that_name_takes_only_its_part() -> None:
    # Six coasters of 78.54 cm² and 0.8 mm: 41.5 g, 60 % of them 24.9 g.
    _, _, said = asked(coloured(), colour="c/tide/1", coat="c/tide")
    assert "0.4 g of alcohol ink into 24.9 g of mix" in said[0]


def test_ounces_are_said_where_the_studio_weighs_in_them() -> None:
    units = Units(mass=MassUnit.OUNCE)
    _, _, said = asked(coloured(units=units), colour="c/tide/1", coat="h1/tide")
    assert "0.037 oz of alcohol ink into 2.483 oz of mix" in said[0]


def test_a_clear_colour_has_nothing_in_it() -> None:
    assert asked(coloured(), colour="c/tide/2")[1] == (
        "foam is Slow flood (invented) with nothing in it."
    )


def test_what_was_really_weighed_is_said_and_comes_first() -> None:
    entry = LogEntry(number=1, kind=EntryKind.WEIGHED, at=WHEN, written=WHEN, batch=7)
    mix = WeighedMix(
        entry=1, batch=7, product="slow", at=WHEN, a_grams=100.0, b_grams=50.0,
        colourants=(WeighedColour(name="ink", grams=3.0),),
        coats=(MixedFor(piece="c", coat="tide"),),
    )  # fmt: skip
    studio = coloured(log=(entry,), mixes=(mix,))
    _, _, said = asked(studio, coat="h1/tide")
    assert (
        said[1] == "Really weighed into mix 7 at Tue 19:00: 3.0 g of ink, 2 % of all its mix."
    )
    (first, *_), _ = (one.options for one in QUESTION.parameters(DeskView(studio, scenes.NOW)))
    assert first[0] == "c/tide/1"


def test_photos_are_pointed_at() -> None:
    studio = coloured()
    photo = Photo(key="p", taken=WHEN)
    pieces = tuple(
        replace(one, photos=(photo,)) if one.key == "c" else one for one in studio.pieces
    )
    _, _, said = asked(replace(studio, pieces=pieces), colour="c/tide/1")
    assert said[-1] == "How it came out: the photos of Slate coasters on the page Pieces."


def test_without_a_colour_it_says_where_one_is_entered() -> None:
    sign, words, _ = asked(steady_studio())
    assert sign is Sign.OPEN
    assert words.startswith("No coat has a colour yet")
