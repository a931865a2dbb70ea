"""Two things of one name: kept, for each has its key, but said beside the name."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.services.naming import Named


def same_name_words(thing: Named, things: Iterable[Named]) -> str:
    """What to say where another of the things is called as `thing` is; empty where none is."""
    name = thing.name.casefold()
    if all(one.key == thing.key or one.name.casefold() != name for one in things):
        return ""
    return translate(
        "forms", "Another one has this name, too. A word more tells the two apart everywhere."
    )
