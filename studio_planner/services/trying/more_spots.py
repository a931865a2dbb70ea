"""What if there is one more level spot, as large as one that is there."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Any

from studio_planner.craft.tongue import translate
from studio_planner.services.editing.nouns import free_key, free_name, with_thing
from studio_planner.services.questions.asking import Kind, Parameter
from studio_planner.services.trying.trial import CannotTry, Trial, WhatIf

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.services.desk import DeskView


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    options = tuple((spot.key, spot.name) for spot in view.studio.spots)
    first = next((key for key, _ in options), "")
    return (Parameter("like", "A spot like", Kind.CHOICE, first, options),)


def _tried(view: DeskView, given: Mapping[str, Any]) -> Trial:
    studio = view.studio
    like = next((spot for spot in studio.spots if spot.key == given["like"]), None)
    if like is None:
        raise CannotTry(
            translate(
                "trying", "There is no spot yet that another could be like; add one first."
            )
        )
    place = studio.place_of_spot(like.key)
    name = free_name((spot.name for spot in studio.spots), like.name)
    key = free_key((spot.key for spot in studio.spots), name)
    more = replace(place, spots=(*place.spots, replace(like, key=key, name=name)))
    return Trial(
        words=translate("changes", "Add spot {name}").format(name=name),
        studio=with_thing(studio, more),
    )


WHAT_IF = WhatIf("more-spots", "What if I have one more level spot?", _parameters, _tried)
