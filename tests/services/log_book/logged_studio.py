"""A small studio with a tray, two coasters and an empty log; every figure is invented."""

from __future__ import annotations

from datetime import UTC, date, datetime, time, timedelta
from typing import TYPE_CHECKING, Any

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.pieces import CoatKind
from studio_planner.craft.places import PatternPoint, PlaceKind, Reading
from studio_planner.craft.studio import Studio
from studio_planner.services.log_book.pours import PourTold, poured
from tests.craft.nouns import coat, order, piece, place, resin, spot

if TYPE_CHECKING:
    from studio_planner.services.editing.changes import Change

NOW = datetime(2031, 3, 4, 12, tzinfo=UTC)
HOUR = timedelta(hours=1)


def ago(hours: float) -> datetime:
    return NOW - hours * HOUR


def studio(**facts: Any) -> Studio:  # noqa: ANN401 - anything
    steady = PatternPoint(at=time(0), celsius=20)
    read = tuple(
        Reading(when=ago(h), celsius=20 - h / 10, humidity_pct=50) for h in (90, 40, 1)
    )
    given: dict[str, Any] = {
        "name": "Harbour studio",
        "places": (
            place(steady, spots=(spot("s1"), spot("s2"), spot("s3")), readings=read),
            place(steady, key="box", name="Box", kind=PlaceKind.WARM_BOX, spots=(spot("b1"),)),
        ),
        "products": (resin(), resin(key="clear", name="Clear")),
        "pieces": (
            piece(
                coat("seal", kind=CoatKind.SEAL),
                coat("flood"),
                coat("top", kind=CoatKind.TOP_COAT, product="clear"),
                key="tray",
                name="Tray",
            ),
            piece(key="one", name="Coaster one"),
            piece(key="two", name="Coaster two"),
        ),
        "orders": (
            order(key="ines", name="Ines", pieces=("tray",), promised=date(2031, 4, 1)),
            order(key="fair", name="Fair", pieces=("one", "two"), promised=date(2031, 4, 2)),
        ),
    }
    return Studio(**(given | facts))


def pour(piece: str = "tray", coat: str = "seal", hours: float = 50, **facts: Any) -> PourTold:  # noqa: ANN401 - likewise
    given: dict[str, Any] = {"start": ago(hours), "end": ago(hours - 1), "spot": "s1"} | facts
    return PourTold(piece=piece, coat=coat, **given)


def with_pours(*told: PourTold, of: Studio | None = None) -> Studio:
    whole = studio() if of is None else of
    for one in told:
        whole = poured(whole, [one], NOW).make(whole)
    return whole


def sentences(change: Change, of: Studio) -> dict[str, str]:
    """What is said when a change is refused, by field."""
    try:
        change.make(of)
    except InvalidEntry as error:
        return {rule.field: rule.sentence for rule in error.broken}
    return {}
