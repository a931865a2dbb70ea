"""A stage's law t(T): the hours a stage takes at a steady temperature, from a data sheet.

Between published figures ln(hours) is a straight line over 1/T (Arrhenius, [1]_), through
every figure. A printed range (4-6 h) has its middle as the likely time and is itself the
width there when it is wider than the default band: the late edge then is the long end, the
early edge the short end. Away from the figures the width grows with the distance in 1/T, as
an uncertain activation energy would make it, and no edge is ever allowed to lengthen with
warmth.

References
----------
.. [1] S. Arrhenius, Z. phys. Chem. 4 (1889) 226-248. The default energy of 45 kJ/mol is the
   one that fits the solvent-free and high-solids tables in ``resources/published`` best.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from studio_planner.science.curves import (
    COLDEST_CELSIUS,
    WARMEST_CELSIUS,
    Curve,
    capped_from_cold,
    capped_from_warm,
    sum_of,
)
from studio_planner.science.figures import (
    LawError,
    LawSettings,
    SheetFigure,
    accepted_figures,
)
from studio_planner.science.law_shape import likely_curve, width_curve
from studio_planner.science.stages import Basis, Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Sequence

__all__ = ["LawError", "LawSettings", "SheetFigure", "StageLaw", "stage_law"]

_SAME_CELSIUS = 0.005


@dataclass(frozen=True, slots=True)
class StageLaw:
    """The hours a stage takes at a steady temperature, with its early and late edge.

    Always: early <= likely <= late; none of the three lengthens with warmth at a room band
    of zero; a published figure is returned exactly. Range: -90 to 200 °C.
    `rises_with_warmth` marks a sheet whose printed ranges overlap so that one end rises with
    warmth: it is read so that the safe edge stays as printed. `tests` is how many touch tests
    the law rests on; 0 is the data sheet alone.

    Examples
    --------
    >>> law = stage_law(Stage.RECOAT_OPENS, [SheetFigure(15, 8), SheetFigure(25, 4)])
    >>> law.hours(15), round(law.hours(20), 2), law.basis(20)
    (8.0, 5.62, <Basis.BETWEEN: 'between'>)
    >>> round(law.hours(15, Edge.LATE), 2), round(law.hours(15, Edge.LATE, room_band=2), 2)
    (8.8, 9.51)
    """

    stage: Stage
    figures: tuple[SheetFigure, ...]
    settings: LawSettings
    rises_with_warmth: bool
    likely: Curve
    early: Curve
    late: Curve
    tests: int = 0
    _exact: dict[float, float] = field(default_factory=dict, repr=False, compare=False)

    def hours(self, celsius: float, edge: Edge = Edge.LIKELY, room_band: float = 0.0) -> float:
        """Return the hours the stage takes at a steady temperature.

        Parameters
        ----------
        celsius
            Temperature of the film [°C], between -90 and 200.
        edge
            Early, likely or late; early and late hold the law's scatter.
        room_band
            How far the room may be from `celsius` either way at 90 % [°C]; it joins the
            law's scatter in quadrature on ln(hours). With a band an edge may shorten with
            cold by up to 2 % within the band's reach of a figure, nowhere else.

        Raises
        ------
        LawError
            If the temperature is outside -90 to 200 °C or the band is negative.
        """
        if edge is Edge.LIKELY and celsius in self._exact:
            return self._exact[celsius]
        colder, warmer = celsius - room_band, celsius + room_band
        if not COLDEST_CELSIUS <= colder <= warmer <= WARMEST_CELSIUS:
            raise _out_of_range(celsius, room_band)
        return math.exp(self._log_hours(celsius, edge, room_band))

    def _log_hours(self, celsius: float, edge: Edge, room_band: float) -> float:
        likely = self.likely.at(celsius)
        if edge is Edge.LIKELY:
            return likely
        if edge is Edge.LATE:
            law, room = self.late.at(celsius), self.likely.at(celsius - room_band)
            return likely + math.hypot(law - likely, room - likely)
        law, room = self.early.at(celsius), self.likely.at(celsius + room_band)
        return likely - math.hypot(law - likely, room - likely)

    def basis(self, celsius: float) -> Basis:
        """Return how well the figures support the hours at a temperature [°C]."""
        if any(abs(f.celsius - celsius) <= _SAME_CELSIUS for f in self.figures):
            return Basis.TAUGHT if self.tests else Basis.PUBLISHED
        if len(self.figures) == 1:
            return Basis.ASSUMED
        if not self.figures[0].celsius < celsius < self.figures[-1].celsius:
            return Basis.OUTSIDE
        return Basis.TAUGHT if self.tests else Basis.BETWEEN

    def kinks(self, edge: Edge | None = None) -> tuple[float, ...]:
        """Return the temperatures [°C] where the slope changes, rising.

        With an edge, those which matter for that edge; without, those of all three.
        """
        curves = {
            Edge.LIKELY: (self.likely,),
            Edge.EARLY: (self.likely, self.early),
            Edge.LATE: (self.likely, self.late),
            None: (self.likely, self.early, self.late),
        }[edge]
        return tuple(sorted({knot for curve in curves for knot in curve.knots}))


_DEFAULT_SETTINGS = LawSettings()


def stage_law(
    stage: Stage,
    figures: Sequence[SheetFigure],
    *,
    settings: LawSettings = _DEFAULT_SETTINGS,
) -> StageLaw:
    """Return the law of a stage from the figures of its data sheet.

    Colder than the coldest and warmer than the warmest figure the law continues on the side
    that is safe for the stage: a *not before* stage by the steeper slope in the cold and the
    shallower in the warmth, a *not after* stage the other way about. A stage that closes a
    window stays in the cold at its coldest figure. The late cure slows threefold per 10 °C
    below 20 °C or its coldest figure, whichever is lower, or by its own slope if steeper.

    Parameters
    ----------
    stage
        The stage the figures are of.
    figures
        One or more figures, in any order; one alone gives an assumed slope.
    settings
        Assumed slopes and bands.

    Raises
    ------
    LawError
        If there is no figure, hours are not positive, a range is upside down, two figures
        are at one temperature, or the hours rise with warmth. Figures are never reordered
        in value.

    Examples
    --------
    >>> one = stage_law(Stage.RECOAT_CLOSES, [SheetFigure(23, 12)])
    >>> one.hours(13), round(one.hours(33), 2), one.basis(33)
    (12.0, 6.61, <Basis.ASSUMED: 'assumed'>)
    >>> late = stage_law(Stage.FULL_CURE, [SheetFigure(20, 168)])
    >>> round(late.hours(10) / late.hours(20), 3)
    3.0
    """
    rising, accepted = accepted_figures(stage, figures)
    likely = likely_curve(stage, accepted, settings)
    late = sum_of(
        likely, width_curve([f.width_up(settings) for f in accepted], accepted, settings)
    )
    early = sum_of(
        likely,
        width_curve([f.width_down(settings) for f in accepted], accepted, settings),
        -1.0,
    )
    return StageLaw(
        stage=stage,
        figures=accepted,
        settings=settings,
        rises_with_warmth=rising,
        likely=likely,
        early=capped_from_warm(early),
        late=capped_from_cold(late),
        _exact={f.celsius: f.middle_hours for f in accepted},
    )


def _out_of_range(celsius: float, room_band: float) -> LawError:
    if room_band < 0:
        return LawError(f"A room band of {room_band} °C is negative; give zero or more.")
    return LawError(
        f"{celsius} °C is outside the {COLDEST_CELSIUS:.0f} to {WARMEST_CELSIUS:.0f} °C that "
        "a law covers; check the temperature and its unit."
    )
