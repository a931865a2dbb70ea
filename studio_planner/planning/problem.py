"""The problem that a plan solves: chains of coats, with block lengths and joints worked out."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.amounts import coat_grams
from studio_planner.craft.pieces import Joint
from studio_planner.craft.plans import Unplanned
from studio_planner.craft.products import ProductKind
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from studio_planner.craft.log import Poured
    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio

_GATES = (Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)


@dataclass(frozen=True, slots=True)
class Task:
    """One coat of a chain: seconds of hands, and what it must wait for.

    `below` and `rests_on` are positions in the chain; `sheet_opens` and `sheet_closes` are the
    stages of the coat below that make this joint's window (None: no such edge). `has_window` is
    False where the sheet does not say when it closes; then only a scuffed joint is left.
    `stays` marks size whose sheet knows no handle: it keeps its spot until the next coat.
    `pinned` is the start that the maker wants for it [s since 1970 UTC].
    """

    coat: Coat
    product: Product
    block: int
    lead: int
    turned: bool
    below: int | None
    rests_on: tuple[int, ...]
    sheet_opens: Stage | None
    sheet_closes: Stage | None
    has_window: bool
    may_scuff: bool
    may_test: bool
    bare_porous: bool
    stays: bool
    fixed: Poured | None
    pinned: int | None = None

    def pinned_from(self, now: int) -> int | None:
        """When the maker wants it poured; a pin that has passed by `now` binds nobody."""
        return None if self.pinned is None or self.pinned < now else self.pinned

    @property
    def joint(self) -> Joint:
        """The joint as wished; bare where nothing lies below."""
        return Joint.BARE if self.below is None else self.coat.joint


@dataclass(frozen=True, slots=True)
class Chain:
    """A piece, or twins of one order that are coated together, with its tasks in order."""

    pieces: tuple[Piece, ...]
    tasks: tuple[Task, ...]
    order: Order | None
    first: int
    """The position of the first coat that is not poured yet."""

    @property
    def hands(self) -> int:
        """Seconds of hands that are still to be given."""
        return sum(task.block + task.lead for task in self.tasks[self.first :])


def handle_stage(product: Product) -> Stage | None:
    """The stage that ends a product's stay on its spot: handle, or the next later one."""
    return gate_stage(product, Stage.HANDLE)


def cover_stage(product: Product) -> Stage | None:
    """The stage from which a wet face takes no harm from dust."""
    stages = (Stage.COVER, Stage.TACK_FREE, Stage.RECOAT_OPENS)
    return next((stage for stage in stages if product.figures(stage)), None)


def gate_stage(product: Product, wished: Stage) -> Stage | None:
    """The wished gate, or the next later one that the product's sheet has."""
    later = _GATES[_GATES.index(wished) :]
    return next((stage for stage in later if product.figures(stage)), None)


def build_chains(studio: Studio, *, twins: bool) -> tuple[list[Chain], list[Unplanned]]:
    """Make the chains of a studio, and say which pieces cannot be planned as they are.

    With `twins`, pieces of one order whose stacks are alike go through the week together when
    each of their coats fits one mix.
    """
    chains: list[Chain] = []
    unplanned: list[Unplanned] = []
    for group in _groups(studio, twins=twins):
        faults = [fault for piece in group for fault in missing_figures(studio, piece)]
        if faults:
            unplanned += faults
        else:
            chains.append(_chain(studio, group))
    return chains, unplanned


def _groups(studio: Studio, *, twins: bool) -> list[tuple[Piece, ...]]:
    groups: list[list[Piece]] = []
    for piece in studio.pieces:
        home = next((g for g in groups if twins and _joins(studio, g, piece)), None)
        if home is None:
            groups.append([piece])
        else:
            home.append(piece)
    return [tuple(group) for group in groups]


def _joins(studio: Studio, group: list[Piece], piece: Piece) -> bool:
    first = group[0]
    order = studio.order_of(piece.key)
    pinned = {pin.piece for pin in studio.pins}
    return (
        order is not None
        and pinned.isdisjoint({first.key, piece.key})
        and studio.order_of(first.key) is order
        and (piece.stack, piece.material) == (first.stack, first.material)
        and not studio.pours_of(piece.key)
        and not studio.pours_of(first.key)
        and len(group) < len(studio.spots)
        and all(
            sum(coat_mass(studio, p, coat) for p in (*group, piece))
            <= studio.product(coat.product).mix_limit_g
            for coat in piece.stack
        )
    )


def coat_mass(studio: Studio, piece: Piece, coat: Coat) -> float:
    """The mixed mass of a coat in grams."""
    return coat_grams(piece, coat, studio.product(coat.product), studio.settings)


def _chain(studio: Studio, group: tuple[Piece, ...]) -> Chain:
    first = group[0]
    pours = {pour.coat: pour for pour in studio.pours_of(first.key)}
    tasks = tuple(
        _task(studio, group, index, pours.get(coat.key))
        for index, coat in enumerate(first.stack)
    )
    return Chain(group, tasks, studio.order_of(first.key), len(pours))


def _task(studio: Studio, group: tuple[Piece, ...], index: int, fixed: Poured | None) -> Task:
    piece = group[0]
    coat = piece.stack[index]
    product = studio.product(coat.product)
    count = sum(p.count for p in group)
    below = piece.below(index)
    opens, closes = _window_stages(studio, piece, index)
    lower = None if below is None else piece.stack[below]
    return Task(
        coat=coat,
        product=product,
        block=_block_seconds(studio, group, coat) if fixed is None else _length(fixed),
        lead=studio.settings.turn_minutes * count * 60 if piece.turned_before(index) else 0,
        turned=piece.turned_before(index),
        below=below,
        rests_on=piece.rests_on(index),
        sheet_opens=opens,
        sheet_closes=closes,
        has_window=not _window_unknown(studio, piece, index),
        may_scuff=_may_scuff(studio, piece, index),
        may_test=_may_test(coat, lower),
        bare_porous=below is None and piece.material.porous,
        stays=handle_stage(product) is None and product.kind is not ProductKind.LEAF,
        fixed=fixed,
        pinned=_pinned(studio, piece, coat),
    )


def _pinned(studio: Studio, piece: Piece, coat: Coat) -> int | None:
    pin = studio.pinned(piece.key, coat.key)
    return None if pin is None else round(pin.start.timestamp())


def _may_test(coat: Coat, lower: Coat | None) -> bool:
    return (
        lower is not None
        and coat.joint is not Joint.WET_IN_WET
        and (lower.sandable or lower.test_first)
    )


def _length(pour: Poured) -> int:
    return round((pour.end - pour.start).total_seconds())


def _block_seconds(studio: Studio, group: tuple[Piece, ...], coat: Coat) -> int:
    product = studio.product(coat.product)
    grams = sum(coat_mass(studio, piece, coat) for piece in group)
    mixes = max(1, math.ceil(grams / product.mix_limit_g))
    minutes = coat.setup_minutes * mixes + sum(coat.piece_minutes * p.count for p in group)
    return minutes * 60


def _window_stages(
    studio: Studio, piece: Piece, index: int
) -> tuple[Stage | None, Stage | None]:
    below = piece.below(index)
    if below is None:
        return None, None
    product = studio.product(piece.stack[below].product)
    if piece.stack[index].joint is Joint.WET_IN_WET:
        return None, Stage.WORKING_TIME
    opens = Stage.RECOAT_OPENS
    if piece.stack[index].joint is Joint.ON_DRY and not product.figures(opens):
        opens = Stage.TACK_FREE
    closes = Stage.RECOAT_CLOSES if product.figures(Stage.RECOAT_CLOSES) else None
    if _leaf_says_nothing(piece.stack[index], product):
        return None, closes
    return opens, closes


def _leaf_says_nothing(coat: Coat, below: Product) -> bool:
    """Leaf has no film: where its sheet is silent, a coat meant for dry may follow at once."""
    silent = not below.figures(Stage.RECOAT_OPENS) and not below.figures(Stage.TACK_FREE)
    return coat.joint is Joint.ON_DRY and below.kind is ProductKind.LEAF and silent


def _may_scuff(studio: Studio, piece: Piece, index: int) -> bool:
    below = piece.below(index)
    if below is None or piece.stack[index].joint is Joint.WET_IN_WET:
        return False
    lower = piece.stack[below]
    return lower.sandable and bool(studio.product(lower.product).figures(Stage.SANDABLE))


def missing_figures(studio: Studio, piece: Piece) -> list[Unplanned]:
    """Sheet figures without which a piece cannot be planned, one sentence each."""
    poured = len(studio.pours_of(piece.key))
    needs: list[tuple[str, str]] = []
    for index, coat in enumerate(piece.stack):
        product = studio.product(coat.product)
        needs += [
            (coat.key, _sentence(piece, coat, product.name, stage))
            for stage in _lacking(piece, coat, product)
        ]
        below = piece.below(index)
        if index >= poured and below is not None:
            needs += _joint_needs(studio, piece, index, below)
    gate_fault = _gate_fault(studio, piece)
    rows = [*needs, *gate_fault]
    return [Unplanned(piece=piece.key, coat=coat, reason=words) for coat, words in rows]


def _lacking(piece: Piece, coat: Coat, product: Product) -> list[Stage]:
    stages = []
    if coat.taped:
        stages += [Stage.TAPE_OPENS, Stage.TAPE_CLOSES]
    if coat.trimmed:
        stages += [Stage.TRIM_OPENS, Stage.TRIM_CLOSES]
    lacking = [stage for stage in stages if not product.figures(stage)]
    if not _may_be_silent(piece, coat, product) and handle_stage(product) is None:
        lacking.append(Stage.HANDLE)
    return lacking


def _may_be_silent(piece: Piece, coat: Coat, product: Product) -> bool:
    """Size under another coat, and leaf, have no handle of their own."""
    if product.kind is ProductKind.LEAF:
        return True
    return product.kind is ProductKind.SIZE and _under_another(piece, coat)


def _under_another(piece: Piece, coat: Coat) -> bool:
    return any(later.touches(coat) for later in piece.stack[piece.position(coat.key) + 1 :])


def _joint_needs(studio: Studio, piece: Piece, index: int, below: int) -> list[tuple[str, str]]:
    coat, lower = piece.stack[index], piece.stack[below]
    product = studio.product(lower.product)
    opens, _ = _window_stages(studio, piece, index)
    if opens is not None and not product.figures(opens):
        return [(lower.key, _sentence(piece, lower, product.name, opens))]
    if coat.joint is Joint.WET_IN_WET and not product.figures(Stage.WORKING_TIME):
        return [(lower.key, _sentence(piece, lower, product.name, Stage.WORKING_TIME))]
    if _window_unknown(studio, piece, index) and not _may_scuff(studio, piece, index):
        return [(lower.key, _sentence(piece, lower, product.name, Stage.RECOAT_CLOSES))]
    return []


def _window_unknown(studio: Studio, piece: Piece, index: int) -> bool:
    """Tell whether a two-part mix below does not say when its window closes."""
    below = piece.below(index)
    if below is None or piece.stack[index].joint is not Joint.IN_WINDOW:
        return False
    product = studio.product(piece.stack[below].product)
    return product.kind is ProductKind.TWO_PART and not product.figures(Stage.RECOAT_CLOSES)


def _gate_fault(studio: Studio, piece: Piece) -> list[tuple[str, str]]:
    order = studio.order_of(piece.key)
    if order is None:
        return []
    faults = []
    for coat in gate_coats(studio, piece, order.gate.stage):
        product = studio.product(coat.product)
        if gate_stage(product, order.gate.stage) is None:
            faults.append((coat.key, _sentence(piece, coat, product.name, order.gate.stage)))
    return faults


def gate_coats(studio: Studio, piece: Piece, stage: Stage) -> list[Coat]:
    """The coats that hold a gate closed.

    All but size and leaf under other coats whose sheets know neither the gate nor a later one.
    """
    return [coat for coat in piece.stack if not _skipped(studio, piece, coat, stage)]


def _skipped(studio: Studio, piece: Piece, coat: Coat, stage: Stage) -> bool:
    product = studio.product(coat.product)
    return (
        product.kind in {ProductKind.LEAF, ProductKind.SIZE}
        and gate_stage(product, stage) is None
        and _under_another(piece, coat)
    )


def _sentence(piece: Piece, coat: Coat, product: str, stage: Stage) -> str:
    words = stage.value.replace("_", " ")
    return (
        f"{piece.name}, {piece.coat_name(coat.key)}: the data sheet of {product} has no figure "
        f"for {words}; add one from the sheet."
    )
