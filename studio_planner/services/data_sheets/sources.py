"""Where a question about stages takes its figures: from a sheet or from a studio's product."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.craft.errors import InvalidEntry, StudioFileError
from studio_planner.services.data_sheets.stage_times import sheet_product
from studio_planner.services.naming import find_named
from studio_planner.services.studio_files import read_bytes
from studio_planner.storage.data_sheet import read_data_sheet

if TYPE_CHECKING:
    from pathlib import Path

    from studio_planner.craft.products import Product
    from studio_planner.craft.studio import Studio

_LARGEST_BYTES = 4 * 2**20


def product_of_sheet(path: Path, minimum: float | None) -> Product:
    """Take the figures of a CSV sheet as a product with that lowest temperature in °C.

    StudioFileError or InvalidEntry, each naming the file, when they cannot be used.
    """
    data = read_bytes(path, _LARGEST_BYTES)
    try:
        return sheet_product(path.name, read_data_sheet(data), minimum)
    except InvalidEntry as error:
        raise InvalidEntry(str(path), error.broken) from error
    except StudioFileError as error:
        raise StudioFileError(f"{path}: {error}") from error


def product_of_studio(studio: Studio, wanted: str, minimum: float | None) -> Product:
    """Find a studio's product by key or name; a `minimum` in °C stands in for its own.

    Raises UnknownName when there is none of that name, InvalidEntry when its highest
    temperature is under the minimum.
    """
    product = find_named(studio.products, wanted, "product")
    return product if minimum is None else replace(product, minimum_celsius=minimum)
