"""What a field is called by the maker, where a rule is told away from its form."""

from __future__ import annotations

from typing import Final

from studio_planner.craft.tongue import marked, translate

WORDS: Final = {
    "a": marked("fields", "part A"),
    "a_grams": marked("fields", "grams of A"),
    "area_cm2": marked("fields", "area"),
    "at": marked("fields", "time"),
    "b": marked("fields", "part B"),
    "b_grams": marked("fields", "grams of B"),
    "band_celsius": marked("fields", "band of temperature"),
    "band_left": marked("fields", "band"),
    "batch": marked("fields", "batch"),
    "blank_price": marked("fields", "price of the blank"),
    "body_mm": marked("fields", "thickness of the body"),
    "celsius": marked("fields", "temperature"),
    "clearance_mm": marked("fields", "clearance"),
    "coat": marked("fields", "coat"),
    "coats": marked("fields", "coats"),
    "colourant_pct": marked("fields", "share of colourant"),
    "colours": marked("fields", "colours"),
    "corrects": marked("fields", "entry that is corrected"),
    "count": marked("fields", "number"),
    "counts": marked("fields", "counts"),
    "cover_mm": marked("fields", "cover"),
    "cup_limit_g": marked("fields", "most in one cup"),
    "currency": marked("fields", "currency"),
    "cut_off": marked("fields", "last hand-over"),
    "day": marked("fields", "day"),
    "days": marked("fields", "days"),
    "density": marked("fields", "density"),
    "density_a": marked("fields", "density of A"),
    "density_b": marked("fields", "density of B"),
    "depth_limit_mm": marked("fields", "deepest coat"),
    "diameter_um": marked("fields", "size of grain"),
    "end": marked("fields", "end"),
    "faces": marked("fields", "faces"),
    "fees_pct": marked("fields", "fees"),
    "film_mm": marked("fields", "film"),
    "first": marked("fields", "first day"),
    "footprint_mm": marked("fields", "footprint"),
    "from_hours": marked("fields", "earliest"),
    "grams": marked("fields", "grams"),
    "heat_loss_w_per_k": marked("fields", "heat loss"),
    "humidity_limit_pct": marked("fields", "most humidity"),
    "humidity_pct": marked("fields", "humidity"),
    "joint": marked("fields", "joint"),
    "kept_for": marked("fields", "kept for an order"),
    "key": marked("fields", "key"),
    "kind": marked("fields", "kind"),
    "label": marked("fields", "number on the label"),
    "lead_days": marked("fields", "days to deliver"),
    "leaf_mm": marked("fields", "side of a leaf"),
    "leaf_price": marked("fields", "price of a leaf"),
    "leaf_waste_pct": marked("fields", "waste of leaf"),
    "left_g": marked("fields", "what is left"),
    "likely_hours": marked("fields", "likely time"),
    "margin_pct": marked("fields", "margin"),
    "mass_g": marked("fields", "mass of the test"),
    "maximum_celsius": marked("fields", "highest temperature"),
    "minimum_celsius": marked("fields", "lowest temperature"),
    "mix_limit_g": marked("fields", "most in one mix"),
    "mixes": marked("fields", "mixes"),
    "moved_minutes": marked("fields", "how far it moved"),
    "name": marked("fields", "name"),
    "new_g": marked("fields", "what was in it when new"),
    "number": marked("fields", "number"),
    "opened": marked("fields", "opened"),
    "opened_days": marked("fields", "days after opening"),
    "opens": marked("fields", "opens"),
    "order": marked("fields", "order"),
    "overhead_pct": marked("fields", "overheads"),
    "packing_minutes": marked("fields", "minutes of packing"),
    "part": marked("fields", "part"),
    "pattern": marked("fields", "week"),
    "perimeter_mm": marked("fields", "length around"),
    "photos": marked("fields", "photos"),
    "piece": marked("fields", "piece"),
    "piece_minutes": marked("fields", "minutes for each piece"),
    "pieces": marked("fields", "pieces"),
    "pour_at_minute": marked("fields", "minute of pouring"),
    "pours": marked("fields", "pours"),
    "price": marked("fields", "price"),
    "price_per_100g": marked("fields", "price of 100 g"),
    "product": marked("fields", "product"),
    "ratio": marked("fields", "ratio"),
    "read_band_celsius": marked("fields", "band of the readings"),
    "readings": marked("fields", "readings"),
    "readings_hours": marked("fields", "hours without readings"),
    "reserve_g": marked("fields", "reserve"),
    "rim_mm": marked("fields", "rim"),
    "round_to": marked("fields", "rounding"),
    "rule": marked("fields", "rule"),
    "rush_wage_pct": marked("fields", "rush wage"),
    "scrap_pct": marked("fields", "scrap"),
    "setup_minutes": marked("fields", "minutes of setting up"),
    "share_pct": marked("fields", "share of the mix"),
    "sheet_factor": marked("fields", "against the sheet"),
    "sleeps": marked("fields", "goes to sleep"),
    "spells": marked("fields", "temperatures for a time"),
    "spot": marked("fields", "spot"),
    "stack": marked("fields", "stack"),
    "stage": marked("fields", "stage"),
    "start": marked("fields", "start"),
    "taken": marked("fields", "taken"),
    "taught": marked("fields", "what touch tests taught"),
    "tests": marked("fields", "touch tests"),
    "to_hours": marked("fields", "latest"),
    "transit_days": marked("fields", "days on the way"),
    "uid": marked("fields", "key"),
    "viscosity_mpas": marked("fields", "viscosity"),
    "wakes": marked("fields", "gets up"),
    "week_starts": marked("fields", "first day of the week"),
    "weight": marked("fields", "weight"),
    "when": marked("fields", "time"),
    "zone": marked("fields", "time zone"),
}
"""What stands at the end of a rule's place, as it is written in the code."""

_NOUNS: Final = {
    "lot ": marked("fields", "bottle {name}"),
    "piece ": marked("fields", "piece {name}"),
    "coat ": marked("fields", "coat {name}"),
    "order ": marked("fields", "order {name}"),
    "stack pattern ": marked("fields", "stack pattern {name}"),
    "pin of ": marked("fields", "pin of {name}"),
    "pour of ": marked("fields", "pour of {name}"),
    "pours of ": marked("fields", "pours of {name}"),
    "entry ": marked("fields", "entry {name}"),
    "mix ": marked("fields", "mix {name}"),
}
"""What may stand before it, such as "piece Moon tray, coat flood, film_mm"."""


def field_words(field: str) -> str:
    """The place of a broken rule, in the maker's words.

    The place in a file that is read (a row and its column, a path) stays as it is: there the
    maker looks for it.

    Examples
    --------
    >>> field_words("lot WK-41, kept_for"), field_words("pieces[2].stack[0].film_mm")
    ('bottle WK-41, kept for an order', 'pieces[2].stack[0].film_mm')
    """
    *before, last = field.split(", ")
    if before and not field.startswith((*_NOUNS, "log, ", "sheet, ", "stack, ")):
        return field
    known = WORDS.get(last)
    end = _noun_words(last) if known is None else translate("fields", known)
    return ", ".join([*map(_noun_words, before), end])


def _noun_words(part: str) -> str:
    for noun, words in _NOUNS.items():
        if part.startswith(noun):
            return translate("fields", words).format(name=part.removeprefix(noun))
    return part
