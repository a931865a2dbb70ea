"""What heat is reckoned with: fixed from the sources named here, never fitted to a peak.

Heats of cure, rates and losses of a product are not on its sheet; only its cup life is. These
are those of a clear amine-cured epoxy at its ratio. Where sources differ, the middle is taken.
"""

from __future__ import annotations

HEAT_J_PER_G = 350.0
"""Heat of the whole cure [J/g of mix].

About 100 kJ per mole of epoxide (from memory), 190 g of resin and 60 to 115 g of amine to each:
330 to 400 J/g; 350 to 450 J/g as quoted for clear systems (from memory).
"""

HEAT_CAPACITY_J_PER_GK = 2.0
"""Heat capacity of the mix [J/(g K)].

EPON 828 has 2.09 liquid (Momentive, HCD-3942), a cured epoxy 1.5 (MakeItFrom data base):
``resources/published/properties.csv``.
"""

ACTIVATION_ENERGY_KJ = 55.0
"""Slope of the rate over temperature [kJ/mol].

55 to 60 for primary amine and epoxide (Thermochim. Acta 447, 2006, 167-177), 44 to 57 for a
cycloaliphatic diamine (Barral et al., J. Appl. Polym. Sci. 56, 1995, 1029-1037).
"""

START_SHARE = 0.1
"""Rate without the help of what has reacted, as a share of that with it [-] (from memory)."""

GEL_CONVERSION = 0.577
"""Share reacted at the gel of a diepoxide with a diamine [-]: 1 / sqrt(3) (Flory, Stockmayer).

The end of the cup life is read as the gel. Where a sheet means an earlier point, the mix is
slower than reckoned: the warning comes early rather than late.
"""

CONDUCTIVITY_W_PER_MK = 0.2
"""Conductivity of the mix [W/(m K)]; published epoxies have 0.14 to 0.2 (properties.csv)."""

AIR_W_PER_M2K = 10.0
"""Loss of a surface in still air, convection and radiation together [W/(m² K)] (textbooks)."""

BENEATH_W_PER_M2K = 5.0
"""Loss of a film through its blank [W/(m² K)].

A board of 18 mm with 0.15 W/(m K) and air beneath it has 4.5, rounded; metal has more.
"""

WARN_CELSIUS = 60.0
"""From here on to warn [°C]: many cured mixes soften at about 60 (common practice)."""

STOP_CELSIUS = 100.0
"""From here on not to pour it so [°C]: cups melt, mixes boil and smoke (common practice)."""
