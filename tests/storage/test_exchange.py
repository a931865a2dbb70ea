"""The exchange format carries everything, and says everything that is wrong with a text."""

from __future__ import annotations

import json
from contextlib import suppress
from dataclasses import replace
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path

import jsonschema
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from studio_planner.craft.errors import InvalidEntry, StudioFileError
from studio_planner.craft.places import Reading
from studio_planner.craft.plans import Plan
from studio_planner.craft.studio import Studio
from studio_planner.storage import exchange
from studio_planner.storage.exchange import studio_from_json, studio_to_json
from studio_planner.storage.exchange_schema import exchange_schema

PUBLISHED = Path(__file__).parents[2] / "resources" / "schema" / "studio.schema.json"
MINIMAL = {"format": "studio-exchange", "version": 1, "studio": {"name": "Small"}}


def text(**changes: object) -> str:
    return json.dumps(MINIMAL | changes)


def places_of(error: pytest.ExceptionInfo[InvalidEntry]) -> set[str]:
    """The paths of what is told: in brackets after the thing, or alone where they say it."""
    return {rule.field.rpartition("(")[2].removesuffix(")") for rule in error.value.broken}


def test_a_studio_that_uses_everything_comes_back_the_same(full_studio: Studio) -> None:
    assert studio_from_json(studio_to_json(full_studio)) == full_studio


@settings(
    max_examples=60,
    deadline=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)
@given(data=st.data())
def test_any_studio_comes_back_the_same_and_fits_the_schema(
    data: st.DataObject, studios: st.SearchStrategy[Studio]
) -> None:
    studio = data.draw(studios)
    written = studio_to_json(studio)
    assert studio_from_json(written) == studio
    jsonschema.Draft202012Validator(exchange_schema()).validate(json.loads(written))


def test_the_same_studio_is_always_written_the_same(full_studio: Studio) -> None:
    again = studio_from_json(studio_to_json(full_studio))
    assert studio_to_json(again) == studio_to_json(full_studio)


def test_the_published_schema_is_the_one_that_reads(full_studio: Studio) -> None:
    published = json.loads(PUBLISHED.read_text("utf-8"))
    assert published == exchange_schema()
    jsonschema.Draft202012Validator.check_schema(published)
    jsonschema.Draft202012Validator(published).validate(json.loads(studio_to_json(full_studio)))


def test_what_the_reader_refuses_for_its_type_the_schema_refuses_too(
    full_studio: Studio,
) -> None:
    validator = jsonschema.Draft202012Validator(exchange_schema())
    for path, wrong in [
        (("pieces", 0, "count"), "two"),
        (("pieces", 0, "count"), 1.5),
        (("pieces", 0, "shape", "kind"), "star"),
        (("pieces", 0, "footprint_mm"), [1]),
        (("pieces", 0, "material"), "cheese"),
        (("pieces", 0, "stack", 0, "faces"), ["top", "top"]),
        (("pieces", 0, "stack", 0, "sandable"), 1),
        (("settings", "surface_lag_hours"), {"cheese": 1}),
        (("people", 0, "wakes"), "seven"),
        (("more",), 1),
        (("places", 0, "readings", 0, "when"), None),
        (("plan", "unplanned", 0, "reason"), None),
        (("plan", "unplanned", 0, "reason"), {"context": "late"}),
        (("plan", "unplanned", 0, "reason"), {"text": 1}),
        (("plan", "unplanned", 0, "reason"), {"text": "", "more": 1}),
        (("plan", "unplanned", 0, "reason"), {"text": "{a}", "facts": {"a": True}}),
        (("plan", "unplanned", 0, "reason"), {"text": "{a}", "facts": ["a"]}),
    ]:
        document = json.loads(studio_to_json(full_studio))
        holder = document["studio"]
        for step in path[:-1]:
            holder = holder[step]
        holder[path[-1]] = wrong
        assert not validator.is_valid(document), path
        with pytest.raises(InvalidEntry):
            studio_from_json(json.dumps(document))


def test_times_are_written_in_utc_with_z(full_studio: Studio) -> None:
    document = json.loads(studio_to_json(full_studio))
    readings = document["studio"]["places"][0]["readings"]
    assert [r["when"] for r in readings] == [
        "2031-03-04T12:00:00Z",
        "2031-03-04T12:00:00.000001Z",
    ]
    assert document["studio"]["places"][0]["pattern"][1]["at"] == "22:30:15"
    assert document["studio"]["people"][0]["wakes"] == "07:00"


def test_a_time_of_another_zone_is_the_same_instant(full_studio: Studio) -> None:
    east = timezone(timedelta(hours=5, minutes=45))
    reading = Reading(when=datetime(2031, 1, 1, 5, 45, tzinfo=east), celsius=20)
    room = replace(full_studio.places[0], readings=(reading,))
    studio = replace(full_studio, places=(room, *full_studio.places[1:]))
    back = studio_from_json(studio_to_json(studio))
    assert back == studio
    assert back.places[0].readings[0].when == datetime(2031, 1, 1, tzinfo=UTC)


def test_fields_with_a_default_may_be_left_out() -> None:
    assert studio_from_json(text()) == Studio(name="Small")


def test_a_byte_order_mark_does_no_harm() -> None:
    assert studio_from_json("\ufeff" + text()) == Studio(name="Small")


@pytest.mark.parametrize(
    ("wrong", "match"),
    [
        ("", "not JSON: line 1, column 1"),
        ("{", "not JSON: line 1, column 2"),
        ("[]", "holds no studio"),
        ('"x"', "holds no studio"),
        ("{}", '"format" must be'),
        ("[" * 200_000, "nested too deeply"),
        ('{"a":' * 200_000, "nested too deeply"),
        (text(format="other"), '"format" must be'),
        (text(version=2), "newer version"),
        (text(version="1"), "whole number"),
        (text(version=True), "whole number"),
        (text(more=1), "unknown field 'more'"),
        ('{"format": "studio-exchange", "version": 1}', 'no field "studio"'),
        (text(studio={"name": float("nan")}), "NaN"),
        (text(studio={"name": float("inf")}), "Infinity"),
        ('{"format": "studio-exchange", "format": "x"}', "'format' twice"),
        ("1" * 5000, "not JSON"),
    ],
)
def test_what_is_no_studio_is_refused_in_a_sentence(wrong: str, match: str) -> None:
    with pytest.raises(StudioFileError, match=match) as told:
        studio_from_json(wrong)
    assert "\n" not in str(told.value)
    assert len(str(told.value)) < 300


def test_a_text_that_is_too_long_is_refused_before_it_is_read(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(exchange, "LARGEST_BYTES", 2**20)
    with pytest.raises(StudioFileError, match="larger than 1 MiB"):
        studio_from_json(" " * (2**20 + 1))


def test_every_problem_is_told_with_its_place(full_studio: Studio) -> None:
    document = json.loads(studio_to_json(full_studio))
    studio = document["studio"]
    studio["pieces"][3]["stack"][0]["film_mm"] = -1
    studio["pieces"][0]["stack"][1]["colours"][1]["share_pct"] = "much"
    studio["pieces"][1]["shape"] = {"kind": "star"}
    studio["pieces"][2]["material"] = "cheese"
    studio["places"][0]["readings"][1]["when"] = "2031-03-04T12:00:00"
    studio["places"][0]["spots"][0]["depth"] = 3
    studio["orders"][0]["promised"] = "31.12.2031"
    studio["orders"][1]["courier"]["days"] = [1, 1]
    studio["people"][0]["wakes"] = "07:00+01:00"
    studio["settings"]["surface_lag_hours"]["cheese"] = 1
    studio["products"][0]["invented"] = 1
    studio["plan"]["coats"][0].pop("start")
    studio["plan"]["coats"][1]["number"] = 1.5
    studio["plan"]["ready"] = {}
    studio["poured"][0] = 7
    with pytest.raises(InvalidEntry) as told:
        studio_from_json(json.dumps(document))
    assert places_of(told) == {
        "pieces[3].stack[0].film_mm",
        "pieces[0].stack[1].colours[1].share_pct",
        "pieces[1].shape.kind",
        "pieces[2].material",
        "places[0].readings[1].when",
        "places[0].spots[0].depth",
        "orders[0].promised",
        "orders[1].courier.days",
        "people[0].wakes",
        "settings.surface_lag_hours.cheese",
        "products[0].invented",
        "plan.coats[0].start",
        "plan.coats[1].number",
        "plan.ready",
        "poured[0]",
    }


@pytest.mark.parametrize(
    ("value", "shown"),
    [
        ("1e999", "Infinity"),
        ("null", "null"),
        ('"x"', '"x"'),
        ("true", "true"),
        ("[1]", "a list"),
    ],
)
def test_a_number_must_be_a_finite_number(
    full_studio: Studio, value: object, shown: str
) -> None:
    written = studio_to_json(full_studio).replace('"dew_hours": 12.0', f'"dew_hours": {value}')
    with pytest.raises(
        InvalidEntry, match=rf"settings.dew_hours\): {shown}.*is not a number"
    ) as told:
        studio_from_json(written)
    assert places_of(told) == {"settings.dew_hours"}


@pytest.mark.parametrize("value", [10**400, 2**60, -0.5, "1", None, True])
def test_a_count_must_be_a_whole_number_of_a_sane_size(
    full_studio: Studio, value: object
) -> None:
    document = json.loads(studio_to_json(full_studio))
    document["studio"]["pieces"][0]["count"] = value
    with pytest.raises(InvalidEntry) as told:
        studio_from_json(json.dumps(document))
    assert places_of(told) == {"pieces[0].count"}


@pytest.mark.parametrize("when", ["0001-01-01T00:00:00+14:00", "9999-12-31T23:59:59-14:00", ""])
def test_a_time_at_the_end_of_all_time_is_refused(full_studio: Studio, when: str) -> None:
    document = json.loads(studio_to_json(full_studio))
    document["studio"]["plan"]["made"] = when
    with pytest.raises(InvalidEntry, match="time with a zone"):
        studio_from_json(json.dumps(document))


def test_half_a_character_is_refused() -> None:
    with pytest.raises(InvalidEntry, match="name"):
        studio_from_json(text(studio={"name": "\ud83d"}))


def test_a_reference_to_nothing_is_told(full_studio: Studio) -> None:
    document = json.loads(studio_to_json(full_studio))
    document["studio"]["orders"][0]["pieces"] = ["nothing"]
    with pytest.raises(InvalidEntry, match="there is no piece “nothing”"):
        studio_from_json(json.dumps(document))


def test_a_flood_of_problems_is_cut_short() -> None:
    with pytest.raises(InvalidEntry, match="and 4800 problems more") as told:
        studio_from_json(text(studio={"name": "Many", "pieces": [7] * 5000}))
    assert len(told.value.broken) == 201


def test_a_studio_with_a_time_without_a_zone_cannot_be_exported(full_studio: Studio) -> None:
    naive = datetime(2031, 1, 1)  # noqa: DTZ001 - that is the fault
    with pytest.raises(StudioFileError, match="no time zone"):
        studio_to_json(replace(full_studio, plan=Plan(made=naive, start=naive, coats=())))


def test_a_studio_with_half_a_character_cannot_be_exported(full_studio: Studio) -> None:
    with pytest.raises(StudioFileError, match="cannot be exported"):
        studio_to_json(replace(full_studio, name="\ud83d"))


@given(
    st.recursive(
        st.none()
        | st.booleans()
        | st.integers()
        | st.floats(allow_nan=False, allow_infinity=False)
        | st.text(max_size=5),
        lambda inner: (
            st.lists(inner, max_size=3)
            | st.dictionaries(
                st.sampled_from(
                    ["name", "kind", "pieces", "shape", "plan", "coats", "stack", "key"]
                ),
                inner,
                max_size=4,
            )
        ),
        max_leaves=20,
    )
)
def test_nonsense_never_raises_anything_but_a_sentence(nonsense: object) -> None:
    with suppress(InvalidEntry, StudioFileError):
        assert isinstance(studio_from_json(text(studio=nonsense)), Studio)


@pytest.mark.parametrize(
    ("wrong", "sentence"),
    [
        ({"pieces": {"a": 1}}, "pieces: it has to be a list, not a group of fields."),
        ({"pieces": 3}, "pieces: it has to be a list, not 3."),
        ({"settings": [1]}, "settings: it has to be a group of fields, not a list."),
        ({"orders": [{"colour": 1}]}, "there is no such field in an order."),
        ({"pieces": [{"order": 1}]}, "there is no such field in a piece."),
    ],
)
def test_what_has_the_wrong_form_is_told_in_plain_words(
    wrong: dict[str, object], sentence: str
) -> None:
    with pytest.raises(InvalidEntry) as told:
        studio_from_json(text(studio={"name": "Small", **wrong}))
    assert sentence in str(told.value)


def test_a_problem_names_the_thing_first_and_its_path_after(full_studio: Studio) -> None:
    document = json.loads(studio_to_json(full_studio))
    studio = document["studio"]
    person, piece = studio["people"][0]["name"], studio["pieces"][0]
    studio["people"][0]["work"][0]["rule"] = "FREQ=SOMETIMES"
    piece["stack"][0]["film_mm"] = -1
    studio["orders"][0]["courier"]["transit_days"] = 400
    with pytest.raises(InvalidEntry) as told:
        studio_from_json(json.dumps(document))
    said = str(told.value)
    rule, film = "people[0].work[0].rule", "pieces[0].stack[0].film_mm"
    assert f"person {person}, working hours 1, rule ({rule}): “FREQ=SOMETIMES” is not" in said
    assert (
        f"piece {piece['name']}, coat {piece['stack'][0]['key']}, film ({film}): -1 is" in said
    )
    days = "courier, days on the way (orders[0].courier.transit_days): 400 is outside 0 to 60."
    assert f"order {studio['orders'][0]['name']}, {days}" in said


def test_a_rule_between_things_names_them_whatever_they_are_called(
    full_studio: Studio,
) -> None:
    document = json.loads(studio_to_json(full_studio))
    piece = document["studio"]["pieces"][0]
    piece["name"] = "A.b [1]"
    piece["stack"][0]["product"] = "nope"
    with pytest.raises(InvalidEntry) as told:
        studio_from_json(json.dumps(document))
    where = f"piece A.b [1], coat {piece['stack'][0]['key']}, product"
    assert f"{where}: there is no product “nope”." in str(told.value)


def test_a_law_that_cannot_be_made_names_its_stage_once() -> None:
    # Hours that rise with warmth are no cure: t falls with temperature (Arrhenius).
    points = [
        {"stage": "recoat_opens", "celsius": celsius, "from_hours": hours}
        for celsius, hours in ((10, 4), (20, 8))
    ]
    product = {"key": "p", "name": "P", "kind": "one-part primer", "sheet": points}
    with pytest.raises(InvalidEntry) as told:
        studio_from_json(text(studio={"name": "Small", "products": [product]}))
    assert str(told.value).count("recoat_opens") == 1
