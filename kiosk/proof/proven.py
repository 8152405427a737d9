"""Which plans this kiosk has proven already, kept by digest in the data folder."""

from __future__ import annotations

import hashlib
from functools import cache
from importlib import resources
from pathlib import Path

from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.plan import Plan
from kiosk.proof.prove import prove


@cache
def rules_digest() -> str:
    """Return the SHA-256 of the engine's own text: a proof is worth nothing under other rules."""
    digest = hashlib.sha256()
    for package in ("kiosk.engine", "kiosk.proof"):
        for file in sorted(resources.files(package).iterdir(), key=lambda one: one.name):
            if file.name.endswith(".py"):
                digest.update(file.read_bytes())
    return digest.hexdigest()


def require_proof(plan: Plan, folder: Path) -> None:
    """Prove a plan, or find that it was proven before; raises FaultyFile when it does not hold.

    Takes about a second the first time. A folder that cannot be written is no reason to refuse:
    the plan is proven again the next time.
    """
    known = folder / f"{plan.digest}-{rules_digest()[:16]}"
    if known.exists():
        return
    found = prove(plan)
    if isinstance(found, list):
        raise FaultyFile(found)
    try:
        folder.mkdir(parents=True, exist_ok=True)
        known.touch()
    except OSError:
        return
