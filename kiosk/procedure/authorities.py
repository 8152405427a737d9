"""The authorities' limits for laboratory results, loaded from their data file."""

from __future__ import annotations

from pathlib import Path

from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.load import load_record
from kiosk.shipped import shipped
from kiosk.trade.authorities import Authorities

FILE = Path("laboratory") / "authorities.yaml"
"""Its place under a procedures folder."""


def load_authorities(path: Path | None = None) -> Authorities:
    """Load the shipped table, or a site's own in the same form. Raises FaultyFile."""
    path = shipped("procedures") / FILE if path is None else path
    table = load_record(path, Authorities)
    faults = []
    for field, ids in (
        ("authorities", [one.id for one in table.authorities]),
        ("lot_plans", [one.id for one in table.lot_plans]),
    ):
        for twice in sorted({one for one in ids if ids.count(one) > 1}):
            what = f"the id '{twice}' stands twice"
            faults.append(Fault(str(path), 0, field, what, "give each its own id"))
    if faults:
        raise FaultyFile(faults)
    return table
