"""The JSON Schema (2020-12) of the exchange format, made from the same forms that read it."""

from __future__ import annotations

from datetime import date, datetime, time
from typing import Any

from studio_planner.craft.saying import Saying
from studio_planner.craft.studio import Studio
from studio_planner.storage.exchange import FORMAT, VERSION
from studio_planner.storage.forms import (
    Choice,
    Fixed,
    Form,
    Lookup,
    Many,
    Maybe,
    Noun,
    Scalar,
    noun_of,
    words_of,
)
from studio_planner.storage.tree import KIND

Schema = dict[str, Any]

_SCALARS: dict[type, Schema] = {
    str: {"type": "string"},
    bool: {"type": "boolean"},
    int: {"type": "integer"},
    float: {"type": "number"},
    datetime: {"type": "string", "format": "date-time"},
    date: {"type": "string", "format": "date"},
    time: {"type": "string", "pattern": r"^\d{2}:\d{2}(:\d{2}(\.\d{3}(\d{3})?)?)?$"},
}

_REFERENCE: Schema = {"$ref": "#/$defs/saying"}
_FACT: Schema = {"anyOf": [{"type": "number"}, _REFERENCE]}
_SAYING: Schema = {
    "description": (
        "Words as they are, or a text with places {by name} for its facts. A text of a context "
        "of the program's translations is shown in the language of whoever looks."
    ),
    "anyOf": [
        {"type": "string"},
        {
            "type": "object",
            "additionalProperties": False,
            "required": ["text"],
            "properties": {
                "text": {"type": "string"},
                "context": {"type": "string"},
                "facts": {"type": "object", "additionalProperties": _FACT},
            },
        },
    ],
}


def exchange_schema() -> Schema:
    """The schema that is published as resources/schema/studio.schema.json."""
    definitions: Schema = {}
    studio = _schema_of(noun_of(Studio), definitions)
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "title": "A coating studio",
        "description": (
            "Instants are ISO 8601 in UTC, dates and times of day are the studio's own. Units "
            "are in the names: _mm, _cm2, _g, _pct, _hours, _minutes, _celsius. Rules that go "
            "beyond types (ranges, references) are checked on import, each with a sentence."
        ),
        "type": "object",
        "additionalProperties": False,
        "required": ["format", "version", "studio"],
        "properties": {
            "format": {"const": FORMAT},
            "version": {"const": VERSION},
            "studio": studio,
        },
        "$defs": definitions,
    }


def _schema_of(form: Form, definitions: Schema) -> Schema:
    match form:
        case Maybe(form=inner):
            return {"anyOf": [_schema_of(inner, definitions), {"type": "null"}]}
        case Scalar():
            return _schema_of_scalar(form, definitions)
        case Many() | Fixed():
            return _schema_of_list(form, definitions)
        case Lookup(key=key, value=value):
            return {
                "type": "object",
                "propertyNames": _schema_of(key, definitions),
                "additionalProperties": _schema_of(value, definitions),
            }
        case Noun():
            return _reference(form, definitions, {})
        case Choice(options=options):
            kinds = [{KIND: {"const": option.words}} for option in options]
            pairs = zip(options, kinds, strict=True)
            return {"oneOf": [_reference(option, definitions, kind) for option, kind in pairs]}


def _schema_of_list(form: Many | Fixed, definitions: Schema) -> Schema:
    items: Schema = {"type": "array", "items": _schema_of(form.form, definitions)}
    if isinstance(form, Fixed):
        return items | {"minItems": form.count, "maxItems": form.count}
    return items | ({"uniqueItems": True} if form.kind is frozenset else {})


def _schema_of_scalar(form: Scalar, definitions: Schema) -> Schema:
    if form.kind is Saying:
        definitions["saying"] = _SAYING
        return dict(_REFERENCE)
    known = _SCALARS.get(form.kind)
    if known is not None:
        return dict(known)
    return {"enum": list(words_of(form.kind))}


def _reference(noun: Noun, definitions: Schema, leading: Schema) -> Schema:
    name = noun.words.replace(" ", "_")
    if name not in definitions:
        fields = {part.name: _schema_of(part.form, definitions) for part in noun.parts}
        required = [*leading, *(part.name for part in noun.parts if part.required)]
        definitions[name] = {
            "type": "object",
            "additionalProperties": False,
            "required": required,
            "properties": leading | fields,
        }
    return {"$ref": f"#/$defs/{name}"}
