"""Names for the arrays of a rehearsal; nothing heavy is loaded by reading them."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from typing import TypeAlias

    import numpy as np
    from numpy.typing import NDArray

    Floats: TypeAlias = NDArray[np.float64]
    Flags: TypeAlias = NDArray[np.bool_]
    Whole: TypeAlias = NDArray[np.intp]
