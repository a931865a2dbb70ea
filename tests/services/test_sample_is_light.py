from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

from studio_planner.services.sample import FILE_NAME
from studio_planner.services.studio_files import create
from tests.services.small_studios import morning, planned_once

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = """
import json, sys
from datetime import datetime
from pathlib import Path
from studio_planner.services.sample import sample_file
sample_file(Path(sys.argv[1]), datetime.fromisoformat(sys.argv[2]))
print(json.dumps([name for name in sys.modules if name.startswith("studio_planner.planning")]))
"""


def test_a_sample_that_is_there_is_found_without_a_planner(tmp_path: Path) -> None:
    create(tmp_path / FILE_NAME, planned_once())
    now = morning(planned_once())
    os.utime(tmp_path / FILE_NAME, (now.timestamp(), now.timestamp()))
    answer = subprocess.run(  # noqa: S603 - our own words
        [sys.executable, "-c", PROGRAM, str(tmp_path), now.isoformat()],
        check=True,
        env=os.environ | {"PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
    )
    assert json.loads(answer.stdout) == []
