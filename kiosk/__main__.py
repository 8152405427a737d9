"""`python -m kiosk` is the command `kiosk`."""

from __future__ import annotations

import sys

from kiosk.cli import main

sys.exit(main())
