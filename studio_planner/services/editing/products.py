"""Entering, changing and removing products and the figures of their data sheets."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.products import MixRatio, Product, ProductKind, RatioBy, SheetPoint
from studio_planner.craft.tongue import listed, translate
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import (
    copy_of,
    free_name,
    key_for,
    with_thing,
    without_thing,
)

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Mapping, Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.science.stages import Stage
    from studio_planner.services.data_sheets.times import PrintedTime

EVEN_RATIO = MixRatio(a=1, b=1, by=RatioBy.ASSUMED)
"""What a new mix begins with until the maker has read the sheet."""

_MANY = 4
_SAME_CELSIUS = 0.005
_RATIO_FIELDS = ("ratio_a", "ratio_b", "ratio_by")

Cell = tuple["Stage", float, float | None]
"""A place on a sheet: stage, °C, and for cup life the mass in grams it is printed for."""


def new_product(studio: Studio, kind: ProductKind, name: str) -> Product:
    """A product of that kind without figures, under a name that is free."""
    name = free_name((one.name for one in studio.products), name)
    key = key_for(studio, Product, name)
    ratio = EVEN_RATIO if kind is ProductKind.TWO_PART else None
    return Product(key=key, name=name, kind=kind, sheet=(), ratio=ratio)


def added_product(kind: ProductKind, name: str) -> Change:
    """Add a product of that kind, to be filled in."""
    return Change(
        translate("products", "Add a product"),
        lambda now: with_thing(now, new_product(now, kind, name)),
    )


def copied_product(product: Product) -> Change:
    """Add a copy under a free name."""
    words = translate("products", "Copy {name}").format(name=product.name)
    return Change(words, lambda now: with_thing(now, copy_of(now, product)))


def uses_of(studio: Studio, key: str) -> tuple[str, ...]:
    """The names of the pieces and stack patterns that have a coat of a product."""
    stacks = [(piece.name, piece.stack) for piece in studio.pieces]
    stacks += [(pattern.name, pattern.stack) for pattern in studio.patterns]
    return tuple(name for name, stack in stacks if any(coat.product == key for coat in stack))


def removed_product(product: Product) -> Change:
    """Take a product out; InvalidEntry while pieces, patterns or bottles hold it, by name."""

    def make(studio: Studio) -> Studio:
        used = uses_of(studio, product.key)
        if used:
            raise InvalidEntry(product.name, [BrokenRule("product", _used_words(used))])
        labels = [lot.label for lot in studio.lots if lot.product == product.key]
        if labels:
            raise InvalidEntry(product.name, [BrokenRule("product", _bottled_words(labels))])
        return without_thing(studio, Product, product.key)

    return Change(translate("products", "Remove {name}").format(name=product.name), make)


def _bottled_words(labels: Sequence[str]) -> str:
    return translate(
        "products", "bottles of it are entered ({labels}); remove them under Stock first."
    ).format(labels=listed(labels, _MANY))


def _used_words(used: Sequence[str]) -> str:
    return translate(
        "products",
        "it is in the stack of {names}; give those coats another product first.",
    ).format(names=listed(used, _MANY))


def changed_product(product: Product, what: str, make: Callable[[Product], Product]) -> Change:
    """Change a product as it is when the change is made; `what` is the thing changed."""

    def changed(studio: Studio) -> Studio:
        now = next((one for one in studio.products if one.key == product.key), None)
        return studio if now is None else with_thing(studio, make(now))

    return Change(f"{product.name}, {what}", changed)


def values_of(product: Product) -> dict[str, object]:
    """The fields of a product by the names that its form has, its ratio in parts."""
    ratio = product.ratio or EVEN_RATIO
    plain = (
        "name", "kind", "density_a", "density_b", "density", "minimum_celsius",
        "maximum_celsius", "humidity_limit_pct", "depth_limit_mm", "cup_limit_g", "mix_limit_g",
        "viscosity_mpas", "leaf_mm", "leaf_price",
    )  # fmt: skip
    parts = {"ratio_a": ratio.a, "ratio_b": ratio.b, "ratio_by": ratio.by}
    return {name: getattr(product, name) for name in plain} | parts


def product_with(product: Product, values: Mapping[str, object]) -> Product:
    """A product with other fields; one that is not mixed has no ratio and no A and B.

    Those are dropped on purpose: what is in one bottle has none. The largest cup stays for the
    day it is a mix again; nothing asks for it until then. InvalidEntry with every broken rule,
    those of the ratio by their names in `values_of`.
    """
    plain = {name: value for name, value in values.items() if name not in _RATIO_FIELDS}
    if values["kind"] is not ProductKind.TWO_PART:
        plain |= {"ratio": None, "density_a": None, "density_b": None}
        return replace(product, **plain)  # type: ignore[arg-type]
    try:
        ratio = MixRatio(a=values["ratio_a"], b=values["ratio_b"], by=values["ratio_by"])  # type: ignore[arg-type]
    except InvalidEntry as error:
        broken = [BrokenRule(f"ratio_{rule.field}", rule.sentence) for rule in error.broken]
        raise InvalidEntry(error.noun, broken) from error
    return replace(product, ratio=ratio, **plain)  # type: ignore[arg-type]


def figure_at(product: Product, cell: Cell) -> SheetPoint | None:
    """The figure in a place of the sheet."""
    return next((point for point in product.sheet if _lies_in(point, cell)), None)


def with_figure(product: Product, cell: Cell, time: PrintedTime | None) -> Product:
    """Put a printed time in its place on the sheet; None takes out what was there."""
    stage, celsius, grams = cell
    if time is None:
        sheet = tuple(point for point in product.sheet if not _lies_in(point, cell))
        return replace(product, sheet=sheet)
    point = SheetPoint(
        stage=stage,
        celsius=celsius,
        from_hours=time.from_hours,
        to_hours=time.to_hours,
        mass_g=grams,
    )
    return with_figures(product, [point])


def with_figures(product: Product, points: Iterable[SheetPoint]) -> Product:
    """Put figures on the sheet, each instead of the one in its place if there is one."""
    sheet = list(product.sheet)
    for point in points:
        cell = (point.stage, point.celsius, point.mass_g)
        index = next((i for i, old in enumerate(sheet) if _lies_in(old, cell)), len(sheet))
        sheet[index : index + 1] = [point]
    return replace(product, sheet=tuple(sheet))


def with_sheet(
    product: Product, points: Iterable[SheetPoint], ratio: MixRatio | None, name: str = ""
) -> Product:
    """Put figures on the sheet, the ratio that it prints on a mix, and its name if it is given.

    A ratio by volume waits for the densities, see `lacks_densities`; the rest is taken.
    """
    taken = replace(with_figures(product, points), name=name or product.name)
    known = product.ratio
    if ratio is None or known is None or lacks_densities(product, ratio):
        return taken
    if ratio.by is RatioBy.ASSUMED and (ratio.a, ratio.b) == (known.a, known.b):
        return taken  # what it counts may be known already
    return replace(taken, ratio=ratio)


def lacks_densities(product: Product, ratio: MixRatio) -> bool:
    """Whether a ratio cannot be weighed with what is known of a product's A and B."""
    return ratio.by is RatioBy.VOLUME and None in {product.density_a, product.density_b}


def with_temperature(product: Product, celsius: float, wanted: float | None) -> Product:
    """Let all figures of a temperature hold at another one; None takes them out."""
    sheet = []
    for point in product.sheet:
        if abs(point.celsius - celsius) > _SAME_CELSIUS:
            sheet.append(point)
        elif wanted is not None:
            sheet.append(replace(point, celsius=wanted))
    return replace(product, sheet=tuple(sheet))


def _lies_in(point: SheetPoint, cell: Cell) -> bool:
    stage, celsius, grams = cell
    near = abs(point.celsius - celsius) <= _SAME_CELSIUS
    return point.stage is stage and near and point.mass_g == grams
