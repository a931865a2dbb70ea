"""Pigments: what colours a mix, how heavy and how coarse it is, and what it costs."""

from __future__ import annotations

from dataclasses import dataclass

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.tongue import translate
from studio_planner.science.film_limits import Colourant  # noqa: TC001 - the exchange format's


@dataclass(frozen=True, slots=True, kw_only=True)
class Pigment:
    """A colourant: its kind, and where its label tells them density and size of grain.

    `density` is in g/cm³, `diameter_um` the diameter of a grain or the width of a flake in
    micrometres; without them those that are usual for the kind hold. A colour of a coat names
    it by its key or its name. `price_per_100g`, in the studio's currency, counts where no pot
    of it has a price.
    """

    key: str
    name: str
    kind: Colourant
    density: float | None = None
    diameter_um: float | None = None
    price_per_100g: float = 0.0
    note: str = ""

    def __post_init__(self) -> None:
        """Check names and ranges."""
        rules = Rulebook(
            translate("nouns", "pigment {name}").format(name=self.name or self.key)
        )
        rules.named(self.key, "key")
        rules.named(self.name)
        if self.density is not None:
            rules.between(self.density, 0.5, 25.0, "density")
        if self.diameter_um is not None:
            rules.between(self.diameter_um, 0.01, 10_000, "diameter_um")
        rules.between(self.price_per_100g, 0, 100_000, "price_per_100g")
        rules.close()

    def called(self, words: str) -> bool:
        """Whether a colour that says `words` means this pigment, in any case."""
        return words.strip().casefold() in {self.key.casefold(), self.name.casefold()}
