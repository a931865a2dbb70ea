"""A whole studio as JSON text and back, for taking it elsewhere or reading it with other tools.

The format is described by resources/schema/studio.schema.json (JSON Schema 2020-12).
"""

from __future__ import annotations

import json
from dataclasses import replace
from typing import Any, NoReturn, cast

from studio_planner.craft.errors import InvalidEntry, StudioFileError
from studio_planner.craft.studio import Studio
from studio_planner.storage.exchange_places import named_place
from studio_planner.storage.forms import noun_of
from studio_planner.storage.tree import plain_of, value_of

FORMAT = "studio-exchange"
"""What the field "format" says."""

VERSION = 1
"""The newest version of the format, which is the one that is written."""

LARGEST_BYTES = 256 * 2**20
"""Longer texts are refused; a year of readings every minute is a fifth of it."""


def studio_to_json(studio: Studio) -> str:
    """The whole studio, readings and kept plan too, as JSON with keys always in one order."""
    try:
        whole = plain_of(noun_of(Studio), studio)
        document = {"format": FORMAT, "version": VERSION, "studio": whole}
        text = json.dumps(document, indent=2, ensure_ascii=False, allow_nan=False)
        text.encode()  # half a character pair cannot be written
    except ValueError as error:
        raise StudioFileError(f"The studio cannot be exported: {error}.") from error
    return text + "\n"


def studio_from_json(text: str) -> Studio:
    """Read what `studio_to_json` wrote; fields that have a default may be left out.

    StudioFileError when it is not such a text at all or from a newer version; InvalidEntry with
    every problem when what is in it cannot be used, each with the thing that it is about and
    its place in the text: piece Moon tray, coat flood, film (pieces[3].stack[1].film_mm).
    """
    document = _parsed(text)
    _require_format(document)
    try:
        return cast("Studio", value_of(noun_of(Studio), document["studio"]))
    except InvalidEntry as error:
        found = [
            replace(rule, field=named_place(document["studio"], rule.field))
            for rule in error.broken
        ]
        raise InvalidEntry("the exchange file", found) from error


def _parsed(text: str) -> dict[str, Any]:
    if len(text) > LARGEST_BYTES:
        raise StudioFileError(f"The exchange file is larger than {LARGEST_BYTES >> 20} MiB.")
    try:
        document = json.loads(
            text.removeprefix("\ufeff"),
            parse_constant=_refuse_constant,
            object_pairs_hook=_without_repeats,
        )
    except json.JSONDecodeError as error:
        raise StudioFileError(
            f"The exchange file is not JSON: line {error.lineno}, column {error.colno}: "
            f"{error.msg}."
        ) from error
    except RecursionError as error:
        raise StudioFileError(
            "The exchange file is nested too deeply to be a studio."
        ) from error
    except ValueError as error:
        raise StudioFileError(f"The exchange file is not JSON: {str(error)[:200]}.") from error
    if not isinstance(document, dict):
        raise StudioFileError("The exchange file holds no studio; export one to see its form.")
    return document


def _refuse_constant(name: str) -> NoReturn:
    raise StudioFileError(f"The exchange file has {name} in it, which is not a number in JSON.")


def _without_repeats(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    found = dict(pairs)
    if len(found) != len(pairs):
        names = [name for name, _ in pairs]
        twice = next(name for name in names if names.count(name) > 1)
        raise StudioFileError(
            f"The exchange file has the field {ascii(twice)[:60]} twice in one group."
        )
    return found


def _require_format(document: dict[str, Any]) -> None:
    if document.get("format") != FORMAT:
        raise StudioFileError(
            f'The exchange file is not a studio: its field "format" must be "{FORMAT}".'
        )
    version = document.get("version")
    if not isinstance(version, int) or isinstance(version, bool) or version < 1:
        raise StudioFileError('The exchange file needs a whole number in its field "version".')
    if version > VERSION:
        raise StudioFileError(
            f"The exchange file has format version {version}, made by a newer version of this "
            f"program; this one reads up to {VERSION}."
        )
    unknown = sorted(set(document) - {"format", "version", "studio"})
    if unknown:
        raise StudioFileError(
            f"The exchange file has an unknown field {ascii(unknown[0])[:60]}."
        )
    if "studio" not in document:
        raise StudioFileError('The exchange file has no field "studio".')
