"""Photos that are kept with a piece, so that what it looked like last time can be seen."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.pieces import Photo
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.nouns import with_thing

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.studio import Studio

LONGEST_SIDE = 1600
"""Pixels that the longer side of a kept picture has at most."""


def with_photo(studio: Studio, piece: str, key: str, taken: datetime, words: str) -> Studio:
    """Keep one more photo with a piece; InvalidEntry when it is kept there already."""
    own = studio.piece(piece)
    if any(photo.key == key for photo in own.photos):
        said = translate("stacks", "this photo is kept with it already.")
        rule = BrokenRule("photos", said)
        raise InvalidEntry(translate("nouns", "piece {name}").format(name=own.name), [rule])
    photo = Photo(key=key, taken=taken, words=words)
    return with_thing(studio, replace(own, photos=(*own.photos, photo)))


def with_words(studio: Studio, piece: str, key: str, words: str) -> Studio:
    """Give a photo other words."""
    own = studio.piece(piece)
    photos = tuple(replace(one, words=words) if one.key == key else one for one in own.photos)
    return with_thing(studio, replace(own, photos=photos))


def without_photo(studio: Studio, piece: str, key: str) -> Studio:
    """Take a photo from a piece; the picture stays in the file, so that this can be undone."""
    own = studio.piece(piece)
    photos = tuple(one for one in own.photos if one.key != key)
    return with_thing(studio, replace(own, photos=photos))
