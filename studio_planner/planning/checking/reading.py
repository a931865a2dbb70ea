"""Reading a plan against its studio: what is sound goes on to the rules, the rest is told."""

from __future__ import annotations

from collections import defaultdict
from datetime import UTC, datetime, timedelta
from itertools import groupby
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import legs_of_pours
from studio_planner.craft.pieces import Joint
from studio_planner.craft.standing import done_steps, sanded_for
from studio_planner.craft.tongue import quoted
from studio_planner.planning.checking.evidence import Clocks, Laid, Lane, Stand
from studio_planner.planning.checking.findings import Finding, Rule
from studio_planner.planning.checking.words import local

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.hands import Person
    from studio_planner.craft.local_time import Span
    from studio_planner.craft.log_legs import SpotLeg
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.plans import Plan, PlannedCoat, PlannedStep
    from studio_planner.craft.studio import Studio

_FIRST_YEAR, _LAST_YEAR = 1971, 2199
_LONGEST_RECORD = timedelta(days=3 * 366)
_AFTER_THE_LAST = timedelta(days=60)
_SOME_DAY = datetime(2001, 1, 1, tzinfo=UTC)


def readable(when: datetime | None) -> bool:
    """Tell whether an instant carries a zone and is in a year that a studio can be in."""
    return (
        when is not None and when.tzinfo is not None and _FIRST_YEAR <= when.year <= _LAST_YEAR
    )


class Reading:
    """A plan read against its studio.

    Attributes
    ----------
    lanes
        For each piece that has coats in the plan: its coats and where it is meanwhile.
    steps
        The steps whose piece, coat and times can be read.
    unsound
        Findings on everything that can't be read and on which no other rule was tried.
    done
        The steps that were written down as done, which no plan has again.
    """

    def __init__(self, studio: Studio, plan: Plan) -> None:
        """Sort out what can be read."""
        self.studio = studio
        self.plan = plan
        self.zone = studio.time_zone
        self.done = done_steps(studio)
        self._sanded = sanded_for(studio)
        self.unsound: list[Finding] = []
        self.start = self._plan_start()
        self._span = self._record()
        self._pieces = {piece.key: piece for piece in studio.pieces}
        self._place_by_spot = {s.key: place for place in studio.places for s in place.spots}
        self._people = {person.key: person for person in studio.people}
        self._awake: dict[str, tuple[Span, ...]] = {}
        self.clocks = Clocks(studio, *self._span)
        self.laid = [laid for coat in plan.coats if (laid := self._lay(coat)) is not None]
        self.lanes = self._lanes()
        self.steps = [step for step in plan.steps if self._step_is_sound(step)]
        self._steps_of_piece: dict[str, list[PlannedStep]] = defaultdict(list)
        for step in self.steps:
            self._steps_of_piece[step.piece].append(step)

    def _plan_start(self) -> datetime:
        if readable(self.plan.start):
            return self.plan.start
        self._tell(Rule.RECORD, None, None, None, "its start is not a time with a zone")
        starts = [coat.start for coat in self.plan.coats if readable(coat.start)]
        return min(starts, default=_SOME_DAY)

    def _record(self) -> tuple[datetime, datetime]:
        """From a day before the first pour to two months after the last thing that is named."""
        begin = min([self.start, *(pour.start for pour in self.studio.poured)])
        named = [order.due(self.zone) for order in self.studio.orders]
        for coat in self.plan.coats:
            named += [coat.start, coat.end]
        for step in self.plan.steps:
            named += [step.start, step.end]
        for row in self.plan.ready:
            named += [when for when in (row.likely, row.safe) if when is not None]
        limit = max(begin, self.start) + _LONGEST_RECORD
        last = max([self.start, *(when for when in named if readable(when) and when < limit)])
        self.last_named = last.timestamp()
        return begin - timedelta(days=1), last + _AFTER_THE_LAST

    def _in_record(self, when: datetime) -> bool:
        first, last = self._span
        return readable(when) and first <= when <= last

    def _tell(
        self,
        rule: Rule,
        piece: Piece | str | None,
        coat: Coat | str | None,
        when: datetime | None,
        sentence: str,
    ) -> None:
        self.unsound.append(self.finding(rule, piece, coat, when, sentence))

    def finding(
        self,
        rule: Rule,
        piece: Piece | str | None,
        coat: Coat | str | None,
        when: datetime | None,
        sentence: str,
    ) -> Finding:
        """Make a finding; its words begin with the piece and the coat."""
        names = [name for name in _names(piece, coat) if name]
        return Finding(
            rule=rule,
            piece=piece if piece is None or isinstance(piece, str) else piece.key,
            coat=coat if coat is None or isinstance(coat, str) else coat.key,
            when=when,
            words=f"{', '.join(names)}: {sentence}." if names else f"{sentence}.",
        )

    def about(self, rule: Rule, laid: Laid, sentence: str) -> Finding:
        """Make a finding about a coat of the plan, at the start of its block."""
        return self.finding(rule, laid.piece, laid.coat, laid.planned.start, sentence)

    def on_step(self, rule: Rule, step: PlannedStep, sentence: str) -> Finding:
        """Make a finding about a step of the plan."""
        piece = self._pieces[step.piece]
        coat = None if step.coat is None else piece.coat(step.coat)
        return self.finding(rule, piece, coat, step.start, sentence)

    def local(self, when: datetime | float | None) -> str:
        """Say an instant as the studio's clock shows it."""
        return local(self.zone, when)

    def said(self, when: datetime | None) -> str:
        """Say what the plan tells of an instant, which may be no usable time at all."""
        usable = when is None or readable(when)
        return self.local(when) if usable else "a time without a zone or outside the record"

    def piece(self, key: str) -> Piece | None:
        """The piece of that key, or None."""
        return self._pieces.get(key)

    def person(self, key: str) -> Person | None:
        """The person of that key, or None."""
        return self._people.get(key)

    def working(self, person: Person) -> tuple[Span, ...]:
        """The UTC spans of the whole record in which somebody can work."""
        return person.working(self.zone, *self._span)

    def awake(self, person: Person) -> tuple[Span, ...]:
        """The UTC spans of the whole record in which somebody is there and awake."""
        if person.key not in self._awake:
            self._awake[person.key] = person.awake(self.zone, *self._span)
        return self._awake[person.key]

    def coats_of(self, piece: str) -> list[Laid]:
        """The coats of a piece that are in the plan and could be read."""
        lane = self.lanes.get(piece)
        return [] if lane is None else lane.laid

    def steps_of(self, piece: str, kind: str, coat: str | None = None) -> list[PlannedStep]:
        """The readable steps of a kind for a piece, and for a coat where one is given."""
        mine = self._steps_of_piece.get(piece, ())
        return [step for step in mine if step.kind == kind and coat in {None, step.coat}]

    def sanded(self, laid: Laid) -> datetime | None:
        """When the joint of a coat that is not poured was scuffed already; None: it was not.

        The sanding was after the pour of the coat below, which can be sanded.
        """
        at = self._sanded.get((laid.piece.key, laid.coat.key))
        below = laid.piece.below(laid.index)
        if at is None or below is None or laid.planned.poured:
            return None
        lower = laid.piece.stack[below]
        on = [p.start for p in self.studio.pours_of(laid.piece.key) if p.coat == lower.key]
        held = laid.coat.joint is not Joint.WET_IN_WET and not laid.leaf
        serves = lower.sandable and held
        return at if serves and on and on[0].timestamp() <= at.timestamp() else None

    def _lay(self, coat: PlannedCoat) -> Laid | None:
        piece = self._pieces.get(coat.piece)
        craft = _coat_of(piece, coat.coat)
        if piece is None or craft is None:
            self._unknown(coat, piece or coat.piece, coat.coat)
            return None
        sound = self._times_are_sound(coat, piece, craft)
        place = self._place_by_spot.get(coat.spot)
        if place is None:
            sentence = f"stands on {quoted(coat.spot)}, but there is no such spot"
            self._tell(Rule.UNKNOWN, piece, craft, coat.start, sentence)
            return None
        return (
            Laid(
                planned=coat,
                piece=piece,
                coat=craft,
                product=self.studio.product(craft.product),
                index=piece.position(craft.key),
                spot=self.studio.spot(coat.spot),
                place=place,
                start=coat.start.timestamp(),
                end=coat.end.timestamp(),
            )
            if sound
            else None
        )

    def _unknown(
        self, thing: PlannedCoat | PlannedStep, piece: Piece | str, coat: str | None
    ) -> None:
        what = "piece"
        if coat is not None and not isinstance(piece, str):
            what = f"coat {quoted(coat)} on it"
        sentence = f"is in the plan, but there is no such {what}"
        self._tell(Rule.UNKNOWN, piece, coat, thing.start, sentence)

    def _times_are_sound(
        self, thing: PlannedCoat | PlannedStep, piece: Piece, coat: Coat | None
    ) -> bool:
        if not (self._in_record(thing.start) and self._in_record(thing.end)):
            self._tell(
                Rule.RECORD, piece, coat, None, "has times without a zone or outside the record"
            )
            return False
        backwards = thing.end < thing.start
        if backwards:
            sentence = f"starts {self.local(thing.start)}, but ends {self.local(thing.end)}"
            self._tell(Rule.BLOCK, piece, coat, thing.start, sentence)
        return not backwards

    def _step_is_sound(self, step: PlannedStep) -> bool:
        piece = self._pieces.get(step.piece)
        coat = None if step.coat is None else _coat_of(piece, step.coat)
        if piece is None or (step.coat is not None and coat is None):
            self._unknown(step, piece or step.piece, step.coat)
            return False
        return self._times_are_sound(step, piece, coat)

    def _lanes(self) -> dict[str, Lane]:
        rest = self.studio.resting_place
        once: dict[tuple[str, int], Laid] = {}
        for laid in sorted(self.laid, key=lambda laid: laid.start):
            once.setdefault((laid.piece.key, laid.index), laid)
        ordered = sorted(once.values(), key=lambda laid: laid.piece.key)
        legs = legs_of_pours(self.studio)
        lanes = {}
        for key, coats in groupby(ordered, key=lambda laid: laid.piece.key):
            mine = list(coats)
            carried = {
                coat.index: self._stands(legs[key, coat.coat.key])
                for coat in mine
                if coat.planned.poured and (key, coat.coat.key) in legs
            }
            home = rest.key if rest else None
            lanes[key] = Lane(self._pieces[key], mine, self.clocks, home, carried)
        return lanes

    def _stands(self, legs: Sequence[SpotLeg]) -> list[Stand]:
        return [
            Stand(self.studio.spot(spot), self._place_by_spot[spot], since.timestamp())
            for spot, since in legs
        ]


def _coat_of(piece: Piece | None, key: str) -> Coat | None:
    return next((coat for coat in piece.stack if coat.key == key), None) if piece else None


def _names(piece: Piece | str | None, coat: Coat | str | None) -> tuple[str, str]:
    first = piece if isinstance(piece, str) else piece.name if piece else ""
    if coat is None or isinstance(coat, str) or piece is None or isinstance(piece, str):
        return first, coat if isinstance(coat, str) else ""
    return first, piece.coat_name(coat.key)
