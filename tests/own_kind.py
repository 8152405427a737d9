"""A machine kind of a site's own, invented and small: an evening with one hold, and a day check."""

from __future__ import annotations

from pathlib import Path

from kiosk.procedure.own_kinds import OWN

NAME = "counter-pump"

KIND = """\
id: counter-pump
title: {en: Counter machine (invented)}
hoppers: 1
parts:
  door: {name: {en: freezer door}, count: 1}
settings: {}
options: {}
"""

EVENING = """\
id: close-counter-pump
version: 1
title: {en: Evening}
machine_kind: counter-pump
limits: food-code-2022
drafted: []
follow: {en: The machine's manual comes first.}
begins_from: [in service]
during: being taken apart
leaves: apart and drying
phases:
  - id: work
    title: {en: Work}
    steps:
      - id: guards
        say: {en: Check the freezer door. It is fastened.}
        hold:
          phrase: {en: I found everything in place}
          verify: {en: Pull at the door. Nothing moves.}
        establishes: [guards on]
      - id: run
        say: {en: Let the beater run until the barrel is empty.}
        requires: [guards on]
"""

CHECK = """\
id: check-counter-pump
version: 1
title: {en: Day check}
machine_kind: counter-pump
limits: food-code-2022
drafted: []
follow: {en: The machine's manual comes first.}
begins_from: [in service]
during: in service
leaves: in service
phases:
  - id: look
    title: {en: Look}
    steps:
      - id: brushes
        say: {en: Look at the brushes. They hang clean and dry.}
"""

DUE = """\
id: counter-pump
drafted: []
checks: [check-counter-pump]
intervals:
  - id: counter-pump-door
    title: {en: Replace the door}
    machine_kind: counter-pump
    part: door
    days: 365
    notice_days: 30
    source: invented
"""

FILES = {
    f"machines/{NAME}.yaml": KIND,
    f"close-{NAME}.yaml": EVENING,
    f"check-{NAME}.yaml": CHECK,
    f"review/{NAME}.yaml": DUE,
}


def write(folder: Path, file: str, text: str) -> Path:
    """Write a file of the site's own kinds; return its place."""
    place = folder / OWN / file
    place.parent.mkdir(parents=True, exist_ok=True)
    place.write_text(text, encoding="utf-8")
    return place


def own_kind(folder: Path, **changed: tuple[str, str]) -> Path:
    """Write the kind into a data folder, and return the folder.

    `changed` replaces what stands in the file that begins so: `close=("old", "new")`.
    """
    for file, text in FILES.items():
        old, new = changed.get(file.replace("/", "-").partition("-")[0], ("", ""))
        assert old in text
        write(folder, file, text.replace(old, new) if old else text)
    return folder
