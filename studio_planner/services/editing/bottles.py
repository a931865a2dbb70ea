"""Entering, counting and removing bottles, pots of colour, and the pigments in them."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING, Protocol, TypeVar

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.pigments import Pigment
from studio_planner.craft.products import ProductKind
from studio_planner.craft.stock import Lot, LotCount, LotPart
from studio_planner.craft.tongue import translate
from studio_planner.science.film_limits import Colourant
from studio_planner.services.editing.changes import Change
from studio_planner.services.editing.nouns import free_key, free_name

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Mapping
    from datetime import date, datetime

    from studio_planner.craft.pieces import Coat
    from studio_planner.craft.studio import Studio

_NEW_GRAMS, _NEW_POT_GRAMS = 1000.0, 50.0
"""What a new bottle, and a new pot of colour, holds until the maker says better."""

_FIELDS = ("label", "received", "new_g", "price", "opened", "best_before", "kept_for", "note")


class _Keyed(Protocol):
    @property
    def key(self) -> str: ...


_KeyedT = TypeVar("_KeyedT", bound=_Keyed)


def parts_in_bottles(studio: Studio) -> tuple[tuple[str, LotPart], ...]:
    """What can be in one: both parts of a mix, a primer, a size, a pigment; leaf is in none."""
    found: list[tuple[str, LotPart]] = []
    for product in studio.products:
        if product.kind is ProductKind.TWO_PART:
            found += [(product.key, LotPart.A), (product.key, LotPart.B)]
        elif product.kind is not ProductKind.LEAF:
            found.append((product.key, LotPart.WHOLE))
    found += [(pigment.key, LotPart.COLOURANT) for pigment in studio.pigments]
    return tuple(found)


def new_bottle(studio: Studio, stuff: tuple[str, LotPart], label: str, received: date) -> Lot:
    """A full bottle of a product's part, under a label that is free."""
    product, part = stuff
    label = free_name((one.label for one in studio.lots), label)
    key = free_key((one.key for one in studio.lots), f"{product} {part} {label}")
    return Lot(
        key=key,
        product=product,
        part=part,
        label=label,
        received=received,
        new_g=_NEW_POT_GRAMS if part is LotPart.COLOURANT else _NEW_GRAMS,
    )


def another_bottle(studio: Studio, lot: Lot) -> Lot:
    """One more bottle like it, full and unopened, under a label that is free."""
    label = free_name((one.label for one in studio.lots), lot.label)
    key = free_key((one.key for one in studio.lots), lot.key)
    return replace(lot, key=key, label=label, opened=None, counts=())


def with_bottle(studio: Studio, lot: Lot) -> Studio:
    """Put a bottle in the place of the one with its key, or at the end."""
    return replace(studio, lots=_put(studio.lots, lot))


def without_bottle(studio: Studio, key: str) -> Studio:
    """Take a bottle out; what was weighed from it stays in the log under its number."""
    return replace(studio, lots=tuple(one for one in studio.lots if one.key != key))


def moved_bottle(studio: Studio, key: str, to: int) -> Studio:
    """Move a bottle to another position."""
    return replace(studio, lots=_moved(studio.lots, key, to))


def changed_bottle(lot: Lot, what: str, make: Callable[[Lot], Lot]) -> Change:
    """Change a bottle as it is when the change is made; `what` is the thing changed."""

    def changed(studio: Studio) -> Studio:
        now = next((one for one in studio.lots if one.key == lot.key), None)
        return studio if now is None else with_bottle(studio, make(now))

    return Change(f"{lot.label}, {what}", changed)


def values_of(lot: Lot) -> dict[str, object]:
    """What a form shows of a bottle by its fields' names; product and part together."""
    stuff = (lot.product, lot.part)
    return {"product": stuff} | {name: getattr(lot, name) for name in _FIELDS}


def bottle_with(lot: Lot, values: Mapping[str, object]) -> Lot:
    """The bottle as a form says it; InvalidEntry with every rule that it breaks."""
    product, part = values["product"]  # type: ignore[misc]
    own = {name: value for name, value in values.items() if name != "product"}
    return replace(lot, product=product, part=part, **own)  # type: ignore[has-type, arg-type]


def counted(lot: Lot, at: datetime, left_g: float, words: str = "") -> Lot:
    """The bottle with a count: so many grams were in it at that instant (aware)."""
    count = LotCount(at=at, left_g=left_g, words=words)
    others = (one for one in lot.counts if one.at != at)
    return replace(lot, counts=tuple(sorted((*others, count), key=lambda one: one.at)))


def without_count(lot: Lot, at: datetime) -> Lot:
    """The bottle without its count of that instant."""
    return replace(lot, counts=tuple(one for one in lot.counts if one.at != at))


def added_pigment(name: str) -> Change:
    """Add a pigment, to be filled in."""

    def make(studio: Studio) -> Studio:
        own = free_name((one.name for one in studio.pigments), name)
        key = free_key((one.key for one in studio.pigments), own)
        return with_pigment(studio, Pigment(key=key, name=own, kind=Colourant.PASTE))

    return Change(translate("stock", "Add a pigment"), make)


def copied_pigment(pigment: Pigment) -> Change:
    """Add a copy of a pigment under a free name."""

    def make(studio: Studio) -> Studio:
        name = free_name((one.name for one in studio.pigments), pigment.name)
        key = free_key((one.key for one in studio.pigments), name)
        return with_pigment(studio, replace(pigment, key=key, name=name))

    return Change(translate("stock", "Copy {name}").format(name=pigment.name), make)


def pigment_with(pigment: Pigment, values: Mapping[str, object]) -> Pigment:
    """The pigment as a form says it; InvalidEntry with every rule that it breaks."""
    return replace(pigment, **values)  # type: ignore[arg-type]


def with_pigment(studio: Studio, pigment: Pigment) -> Studio:
    """Put a pigment in the place of the one with its key, or at the end."""
    return replace(studio, pigments=_put(studio.pigments, pigment))


def renamed_in(studio: Studio, old: Pigment, new: Pigment) -> int:
    """How many coats, those of stack patterns too, have a colour that is called after `old`."""
    if old.name == new.name:
        return 0
    stacks = [piece.stack for piece in studio.pieces]
    stacks += [pattern.stack for pattern in studio.patterns]
    return sum(_named_after(old, coat) for stack in stacks for coat in stack)


def with_changed_pigment(studio: Studio, new: Pigment) -> Studio:
    """Put a pigment in its place; colours that have its name get its new one.

    What was weighed stays in the log under the name that it had then.
    """
    old = next((one for one in studio.pigments if one.key == new.key), None)
    studio = with_pigment(studio, new)
    if old is None or not renamed_in(studio, old, new):
        return studio

    def stack(coats: tuple[Coat, ...]) -> tuple[Coat, ...]:
        return tuple(_renamed(coat, old, new) for coat in coats)

    return replace(
        studio,
        pieces=tuple(replace(one, stack=stack(one.stack)) for one in studio.pieces),
        patterns=tuple(replace(one, stack=stack(one.stack)) for one in studio.patterns),
    )


def _named_after(pigment: Pigment, coat: Coat) -> bool:
    return any(_has_name(pigment, colour.colourant) for colour in coat.colours)


def _has_name(pigment: Pigment, words: str) -> bool:
    return words.strip().casefold() == pigment.name.casefold()


def _renamed(coat: Coat, old: Pigment, new: Pigment) -> Coat:
    if not _named_after(old, coat):
        return coat
    return replace(
        coat,
        colours=tuple(
            replace(colour, colourant=new.name) if _has_name(old, colour.colourant) else colour
            for colour in coat.colours
        ),
    )


def removed_pigment(pigment: Pigment) -> Change:
    """Take a pigment out; colours keep its name. InvalidEntry while bottles hold it."""

    def make(studio: Studio) -> Studio:
        stuff = (pigment.key, LotPart.COLOURANT)
        labels = [lot.label for lot in studio.lots if (lot.product, lot.part) == stuff]
        if labels:
            said = translate(
                "stock",
                "bottles of it are entered ({labels}); remove them under Bottles first.",
            ).format(labels=", ".join(labels))
            raise InvalidEntry(pigment.name, [BrokenRule("pigment", said)])
        rest = tuple(one for one in studio.pigments if one.key != pigment.key)
        return replace(studio, pigments=rest)

    return Change(translate("pigments", "Remove {name}").format(name=pigment.name), make)


def moved_pigment(studio: Studio, key: str, to: int) -> Studio:
    """Move a pigment to another position."""
    return replace(studio, pigments=_moved(studio.pigments, key, to))


def coats_with(studio: Studio, pigment: Pigment) -> tuple[str, ...]:
    """The names of the pieces that have a colour of a pigment."""
    return tuple(
        piece.name
        for piece in studio.pieces
        if any(
            pigment.called(colour.colourant) for coat in piece.stack for colour in coat.colours
        )
    )


def _put(things: tuple[_KeyedT, ...], thing: _KeyedT) -> tuple[_KeyedT, ...]:
    if any(one.key == thing.key for one in things):
        return tuple(thing if one.key == thing.key else one for one in things)
    return (*things, thing)


def _moved(things: Iterable[_KeyedT], key: str, to: int) -> tuple[_KeyedT, ...]:
    listed = list(things)
    moving = next(one for one in listed if one.key == key)
    rest = [one for one in listed if one.key != key]
    rest.insert(to, moving)
    return tuple(rest)
