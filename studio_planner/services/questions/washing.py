"""Whether blush is likely on a film, so that it is washed before the next coat."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.log_legs import legs_from
from studio_planner.craft.products import ProductKind
from studio_planner.services.questions.air_ahead import AirAt, air_along, lowest_margin
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
    not_known,
)
from studio_planner.services.questions.lying import begun, coat_words, open_films
from studio_planner.services.questions.sentences import (
    Degrees,
    Lasting,
    Moment,
    Sentence,
    Step,
    said,
)

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Ribbon


def _films(view: DeskView) -> dict[str, Ribbon]:
    keys = dict.fromkeys(one.lane.piece.key for one in begun(view))
    films = (film for key in keys for film in open_films(view, key))
    mixes = (one for one in films if one.product.kind is ProductKind.TWO_PART)
    return {f"{one.planned.piece}/{one.planned.coat}": one for one in mixes}


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    options = tuple((key, coat_words(one)) for key, one in _films(view).items())
    first = next((key for key, _ in options), "")
    return (Parameter("film", "Which film", Kind.CHOICE, first, options),)


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    film = _films(view).get(given["film"])
    if film is None:
        return not_known("No two-part film lies open now: there is nothing to wash.")
    hours = view.studio.settings.dew_hours
    end = film.planned.end + timedelta(hours=hours)
    legs = legs_from(film.lane.legs, film.start)
    air = air_along(view.timing, legs, film.lane.piece.material, end)
    low = lowest_margin(air)
    lines = [*_colds(film, air), *_how()]
    if low is None:
        text = "Wash it to be sure: the humidity after the pour is not known."
        return Answer(Sign.CARE, said(text), tuple(lines), caution=True)
    return _judged(view, low, _measured(low, hours), lines)


def _measured(low: AirAt, hours: float) -> Sentence:
    return said(
        "In the {hours} after its pour the surface came as near as {margin} to the dew point, "
        "at {when}.",
        hours=Lasting(hours),
        margin=Step(low.margin or 0.0),
        when=Moment(low.when),
    )


def _judged(view: DeskView, low: AirAt, measured: Sentence, lines: list[Sentence]) -> Answer:
    asked = view.studio.settings.dew_margin_celsius
    why = (measured, *lines)
    margin = low.margin or 0.0
    if margin <= 0.0:
        text = "Wash it: dew settled on it, and blush is all but sure."
        return Answer(Sign.NO, said(text), why, caution=True)
    if margin < asked:
        text = "Wash it: blush is likely where the margin is under {asked}."
        return Answer(Sign.NO, said(text, asked=Step(asked)), why, caution=True)
    text = "No need to wash, if a wet finger does not feel greasy on it."
    return Answer(Sign.YES, said(text), (measured, *lines[:-1]), caution=True)


def _colds(film: Ribbon, air: tuple[AirAt, ...]) -> list[Sentence]:
    least = film.product.minimum_celsius
    low = min((one.celsius for one in air), default=None)
    if least is None or low is None or low >= least:
        return []
    text = (
        "The air went down to {low}, under the {least} of {product}: cold makes blush likelier."
    )
    return [said(text, low=Degrees(low), least=Degrees(least), product=film.product.name)]


def _how() -> list[Sentence]:
    # Blush is soluble in water, and solvent leaves it: a paint maker's page on amine blush.
    return [
        said("Wash with clean water and a pad, then dry with a clean towel; solvent smears it.")
    ]


QUESTION = Question(
    "washing", "Do I need to wash this before the next coat?", _parameters, _answer
)
