"""What the log, the mixes and the pours of a studio must say of each other."""

from __future__ import annotations

from typing import TYPE_CHECKING, Protocol

from studio_planner.craft.log import EntryKind, GoneKind
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping

    from studio_planner.craft.errors import Rulebook
    from studio_planner.craft.log import Gone, LogEntry, Poured
    from studio_planner.craft.mixes import WeighedMix
    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Piece
    from studio_planner.craft.products import Product

_NOT_SPOILED = {EntryKind.PACKED, EntryKind.SHIPPED}
"""What is never done with a piece that is spoiled."""

Known = dict[GoneKind, set[str]]
"""The keys that the log may speak of, by kind: what is there and what is gone."""


class Remembers(Protocol):
    """What of a studio remembers things that are gone."""

    @property
    def gone(self) -> tuple[Gone, ...]:
        """What was taken out and is spoken of."""
        ...


class Logged(Remembers, Protocol):
    """What of a studio is looked at."""

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """Its pieces."""
        ...

    @property
    def orders(self) -> tuple[Order, ...]:
        """Its orders."""
        ...

    @property
    def products(self) -> tuple[Product, ...]:
        """Its products."""
        ...

    @property
    def poured(self) -> tuple[Poured, ...]:
        """What is on the pieces."""
        ...

    @property
    def log(self) -> tuple[LogEntry, ...]:
        """All that was written down."""
        ...

    @property
    def mixes(self) -> tuple[WeighedMix, ...]:
        """All that was weighed."""
        ...

    @property
    def standing(self) -> tuple[LogEntry, ...]:
        """What the log says as it stands."""
        ...

    @property
    def standing_mixes(self) -> tuple[WeighedMix, ...]:
        """The mixes as they stand."""
        ...


def check_log(studio: Logged, rules: Rulebook) -> None:
    """Note every rule that log, mixes, pours and what is gone break together."""
    known = _check_gone(studio, rules)
    _check_entries(studio.log, known, rules)
    _check_mixes(studio, known, rules)
    batches = {mix.batch for mix in studio.mixes}
    for pour in studio.poured:
        rules.require(
            pour.batch is None or pour.batch in batches,
            f"pour of {pour.piece}, {pour.coat}",
            translate("rules", "no mix {batch} was weighed.").format(batch=pour.batch),
        )
    _check_spoiled(studio.standing, rules)


def _check_gone(studio: Logged, rules: Rulebook) -> Known:
    known: Known = {
        GoneKind.PIECE: {piece.key for piece in studio.pieces},
        GoneKind.ORDER: {order.key for order in studio.orders},
        GoneKind.PRODUCT: {product.key for product in studio.products},
    }
    for gone in studio.gone:
        rules.require(
            gone.key not in known[gone.kind],
            f"{gone.kind}, key",
            translate(
                "rules", "the log speaks of another “{key}”, which is gone; use another key."
            ).format(key=gone.key),
        )
        known[gone.kind].add(gone.key)
    return known


def _check_entries(log: Iterable[LogEntry], known: Known, rules: Rulebook) -> None:
    earlier: dict[int, LogEntry] = {}
    last = 0
    for entry in log:
        where = f"log, entry {entry.number}"
        rules.require(
            entry.number > last,
            where,
            translate("rules", "entries must be in the order of their numbers."),
        )
        last = max(last, entry.number)
        _check_correction(entry, earlier, rules)
        rules.require(
            not entry.piece or entry.piece in known[GoneKind.PIECE],
            where,
            translate("rules", "there is no piece “{key}”.").format(key=entry.piece),
        )
        rules.require(
            not entry.order or entry.order in known[GoneKind.ORDER],
            where,
            translate("rules", "there is no order “{order}”.").format(order=entry.order),
        )
        earlier[entry.number] = entry


def _check_correction(entry: LogEntry, earlier: dict[int, LogEntry], rules: Rulebook) -> None:
    if entry.corrects is None:
        return
    # What is corrected is taken out, so that nothing is corrected twice.
    old = earlier.pop(entry.corrects, None)
    where = f"log, entry {entry.number}"
    rules.require(
        old is not None and old.kind is not EntryKind.WITHDRAWN,
        where,
        translate("rules", "entry {number} does not stand, so it can't be corrected.").format(
            number=entry.corrects
        ),
    )
    rules.require(
        old is None or entry.kind in {old.kind, EntryKind.WITHDRAWN},
        where,
        translate("rules", "entry {number} tells of something else.").format(
            number=entry.corrects
        ),
    )


def _check_mixes(studio: Logged, known: Known, rules: Rulebook) -> None:
    weighings = {one.number: one for one in studio.log if one.kind is EntryKind.WEIGHED}
    written: set[int] = set()
    for mix in studio.mixes:
        where = f"mix {mix.batch}"
        _check_entry_of(mix, weighings, written, rules)
        rules.require(
            mix.product in known[GoneKind.PRODUCT],
            where,
            translate("rules", "there is no product “{product}”.").format(product=mix.product),
        )
        for one in mix.coats:
            rules.require(
                one.piece in known[GoneKind.PIECE],
                where,
                translate("rules", "there is no piece “{key}”.").format(key=one.piece),
            )
    batches = [mix.batch for mix in studio.standing_mixes]
    rules.require(
        len(set(batches)) == len(batches),
        "mixes",
        translate("rules", "each mix needs a batch number of its own."),
    )


def _check_entry_of(
    mix: WeighedMix, weighings: Mapping[int, LogEntry], written: set[int], rules: Rulebook
) -> None:
    entry = weighings.get(mix.entry)
    rules.require(
        entry is not None and entry.batch == mix.batch and mix.entry not in written,
        f"mix {mix.batch}",
        translate("rules", "the log has no entry {number} that wrote it down.").format(
            number=mix.entry
        ),
    )
    written.add(mix.entry)


def _check_spoiled(standing: Iterable[LogEntry], rules: Rulebook) -> None:
    spoiled: set[str] = set()
    for entry in standing:
        if entry.kind is EntryKind.SPOILED:
            spoiled.add(entry.piece)
        elif entry.kind is EntryKind.STRIPPED:
            spoiled.discard(entry.piece)
        rules.require(
            entry.kind not in _NOT_SPOILED or entry.piece not in spoiled,
            f"log, entry {entry.number}",
            translate(
                "rules",
                "piece “{key}” was spoiled; strip it or correct that before it is packed.",
            ).format(key=entry.piece),
        )


def gone_of(studio: Remembers, kind: GoneKind, key: str) -> Gone | None:
    """What is remembered of a thing that is gone; None when nothing is."""
    return next((one for one in studio.gone if (one.kind, one.key) == (kind, key)), None)
