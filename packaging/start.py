"""Make the program's own environment, then run the program or its tests.

    python3 packaging/start.py [arguments of studio-planner]
    python3 packaging/start.py test [arguments of pytest]

Nothing has to be installed but Python 3.11 or newer. This file alone must be readable by
every older Python, so that it can say what is missing.
"""

import sys

if sys.version_info < (3, 11):
    sys.stderr.write(
        "Python 3.11 or newer is needed and this is Python %d.%d: install a newer one, then run"
        " python3.11 packaging/start.py (on Windows: py -3.11 packaging\\start.py).\n"
        % sys.version_info[:2]
    )
    sys.exit(2)

from bootstrap.session import main

if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
