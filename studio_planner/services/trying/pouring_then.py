"""What if a coat is poured at another time: the maker's own time for it is a pin."""

from __future__ import annotations

from dataclasses import replace
from datetime import time, timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.local_time import instant
from studio_planner.craft.pins import Pin
from studio_planner.craft.tongue import translate
from studio_planner.services.questions.asking import Kind, Parameter
from studio_planner.services.questions.lying import coat_words, to_come
from studio_planner.services.trying.trial import CannotTry, Trial, WhatIf

if TYPE_CHECKING:
    from collections.abc import Mapping

    from studio_planner.services.desk import DeskView
    from studio_planner.services.ribbons import Ribbon

_LATER = timedelta(hours=2)


def _coming(view: DeskView) -> dict[str, Ribbon]:
    return {f"{one.planned.piece}/{one.planned.coat}": one for one in to_come(view)}


def _parameters(view: DeskView) -> tuple[Parameter, ...]:
    coming = _coming(view)
    zone = view.studio.time_zone
    options = tuple((key, coat_words(one)) for key, one in coming.items())
    first = next(iter(coming), "")
    start = (coming[first].start if coming else view.now).astimezone(zone) + _LATER
    return (
        Parameter("coat", "Which pour", Kind.CHOICE, first, options),
        Parameter("day", "Poured on", Kind.DATE, start.date()),
        Parameter("at", "At", Kind.TIME, time(start.hour, start.minute)),
    )


def _tried(view: DeskView, given: Mapping[str, Any]) -> Trial:
    film = _coming(view).get(given["coat"])
    if film is None:
        raise CannotTry(
            translate("trying", "No pour is planned that could be moved; plan again first.")
        )
    start = instant(view.studio.time_zone, given["day"], given["at"])
    if start < view.now:
        raise CannotTry(translate("trying", "That time is past; choose one that is to come."))
    piece, coat = film.planned.piece, film.planned.coat
    # What shares its mix shares its hands too: the whole mix moves.
    together = {
        (one.planned.piece, one.planned.coat)
        for one in to_come(view)
        if one.planned.mix == film.planned.mix
    }
    others = (pin for pin in view.studio.pins if (pin.piece, pin.coat) not in together)
    pins = (Pin(piece=p, coat=c, start=start) for p, c in sorted(together))
    return Trial(
        words=translate("changes", "{film}, at another time").format(film=coat_words(film)),
        studio=replace(view.studio, pins=(*others, *pins)),
        coats=frozenset({(piece, coat), *together}),
    )


WHAT_IF = WhatIf("pouring-then", "What if I pour at another time?", _parameters, _tried)
