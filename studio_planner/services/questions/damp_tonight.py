"""Whether it is too damp for a pour tonight: now, and at the lowest of the hours after it."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.services.questions.air_ahead import AirAt, air_between, lowest_margin
from studio_planner.services.questions.asking import (
    Answer,
    Kind,
    Parameter,
    Question,
    Sign,
    not_known,
)
from studio_planner.services.questions.sentences import (
    Degrees,
    Moment,
    Sentence,
    Share,
    Step,
    said,
)

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from studio_planner.craft.pieces import Material
    from studio_planner.craft.products import Product
    from studio_planner.services.desk import DeskView

_WHOLE = 100.0


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    options = tuple((place.key, place.name) for place in view.studio.places)
    rest = view.studio.resting_place
    first = rest.key if rest is not None else next((key for key, _ in options), "")
    return (Parameter("place", "Where", Kind.CHOICE, first, options),)


def _answer(view: DeskView, given: Mapping[str, Any]) -> Answer:
    if not view.studio.places:
        return not_known("There is no room in this studio yet; add one on the page Studio.")
    ahead = timedelta(hours=view.studio.settings.dew_hours)
    air = air_between(view.timing, given["place"], slowest(view), view.now, view.now + ahead)
    low = lowest_margin(air)
    if low is None:
        return not_known(
            "Nobody knows: the humidity of this place is not entered. Read it before you pour "
            "and enter it, or an expected one, on the page Studio."
        )
    return _judged(view, air[0], low)


def slowest(view: DeskView) -> Material | None:
    """The material whose surface follows the air most slowly, of all pieces there are."""
    lags = view.studio.settings.surface_lag_hours
    used = {piece.material for piece in view.studio.pieces}
    return max(used, key=lambda material: lags.get(material, 0.0), default=None)


def _judged(view: DeskView, now: AirAt, low: AirAt) -> Answer:
    asked = view.studio.settings.dew_margin_celsius
    lines = [*_margins(now, low, asked), *_humid(view, now)]
    if now.margin is None or now.margin < asked:
        text = "Yes, too damp: do not pour now."
        return Answer(Sign.NO, said(text), (*lines, _drier()), caution=True)
    if low.margin is None or low.margin < asked:
        warm = Degrees((low.dew or 0.0) + asked)
        lines.append(
            said(
                "Keep the air at {warm} or more until {until}, with electric or indirect heat: "
                "a flame without a flue adds water and makes blush worse.",
                warm=warm,
                until=Moment(now.when + timedelta(hours=view.studio.settings.dew_hours)),
            )
        )
        text = "It will be: pour only covered and kept warm."
        return Answer(Sign.CARE, said(text), tuple(lines), caution=True)
    if _over_limit(view, now):
        text = "Yes for some mixes: their sheets ask for drier air."
        return Answer(Sign.NO, said(text), tuple(lines), caution=True)
    return Answer(Sign.YES, said("No, it is dry enough to pour."), tuple(lines), caution=True)


def _margins(now: AirAt, low: AirAt, asked: float) -> list[Sentence]:
    return [
        said(
            "Now the surface is {margin} above the dew point.", margin=Step(now.margin or 0.0)
        ),
        said(
            "At its lowest, {when}, it is {margin} above it, with the air at {celsius}.",
            when=Moment(low.when),
            margin=Step(low.margin or 0.0),
            celsius=Degrees(low.celsius),
        ),
        said("A pour asks for {asked} throughout (ISO 8502-4 practice).", asked=Step(asked)),
    ]


def _humid(view: DeskView, now: AirAt) -> Iterable[Sentence]:
    for product in _over_limit(view, now):
        yield said(
            "{product} asks for a humidity of {limit} or less; it is {now}.",
            product=product.name,
            limit=Share((product.humidity_limit_pct or 0.0) / _WHOLE),
            now=Share((now.humidity or 0.0) / _WHOLE),
        )


def _over_limit(view: DeskView, now: AirAt) -> list[Product]:
    used = {coat.product for piece in view.studio.pieces for coat in piece.stack}
    humidity = now.humidity or 0.0
    return [
        product
        for product in view.studio.products
        if product.key in used
        and product.humidity_limit_pct is not None
        and humidity > product.humidity_limit_pct
    ]


def _drier() -> Sentence:
    return said(
        "Warming lowers the humidity but not the dew point; drying the air is what moves both. "
        "Warm the blanks too, or wait."
    )


QUESTION = Question("damp-tonight", "Is it too damp tonight?", _parameters, _answer)
