"""How long each reader of files stands hostile bytes, guided by what they make it do.

Run it with `python -m tests.bench.bench_fuzz [SECONDS] [TARGET ...]`, after `pip install atheris`;
without that library the bytes are spoilt blindly. A traceback, a hang of 20 s or 2 GB of memory is
a fault: its bytes are kept, and named.
"""

from __future__ import annotations

import importlib.util
import random
import re
import subprocess
import sys
import tempfile
import time
from pathlib import Path

GUIDED = importlib.util.find_spec("atheris") is not None
SECONDS = 20
_HANG_S, _MOST_MB, _LONGEST = 20, 2_000, 60_000


def main() -> None:
    """Print for each target how many inputs it read, and how the last of them ended."""
    words = sys.argv[1:]
    if words[:1] == ["--one"]:
        _one(words[1], int(words[2]), Path(words[3]))
        return
    seconds = int(words[0]) if words else SECONDS
    from tests.faults.fuzzing import TARGETS

    kept = Path(tempfile.mkdtemp(prefix="fuzz-"))
    print(f"{seconds} s each, {'guided by atheris' if GUIDED else 'blind: atheris is missing'}")
    for target in TARGETS:
        if words[1:] and target.name not in words[1:]:
            continue
        folder = kept / target.name.replace(" ", "-")
        folder.mkdir()
        command = [sys.executable, "-m", "tests.bench.bench_fuzz", "--one", target.name]
        done = subprocess.run(
            [*command, str(seconds), str(folder)], capture_output=True, text=True, check=False,
            errors="replace",
        )  # fmt: skip
        said = done.stdout + done.stderr
        count = re.findall(r"number_of_executed_units: *(\d+)", said)
        ended = "stood" if done.returncode == 0 else f"FAULT, see {folder}"
        print(f"{target.name:22} {int(count[-1]) if count else 0:>9,} inputs  {ended}", flush=True)
        if done.returncode:
            (folder / "said.txt").write_text(said, encoding="utf-8")


def _one(name: str, seconds: int, folder: Path) -> None:
    if GUIDED:
        _guided(name, seconds, folder)
    else:
        _blind(name, seconds, folder)


def _guided(name: str, seconds: int, folder: Path) -> None:
    import atheris  # type: ignore[import-not-found, unused-ignore]

    with atheris.instrument_imports(
        include=["kiosk", "tests", "wave", "zipfile", "csv", "tomllib"]
    ):
        from tests.faults.fuzzing import TARGETS, TOKENS, read_spoilt
    target = next(one for one in TARGETS if one.name == name)
    home, corpus = folder / "home", folder / "corpus"
    home.mkdir()
    corpus.mkdir()
    for number, seed in enumerate(target.seeds(home)):
        (corpus / f"seed-{number}").write_bytes(seed)
    words = [one for one in TOKENS if 0 < len(one) < 60]
    said = "".join('"' + "".join(f"\\x{x:02x}" for x in one) + '"\n' for one in words)
    (folder / "words").write_text(said, encoding="ascii")
    atheris.Setup(
        [
            name, f"-max_total_time={seconds}", f"-timeout={_HANG_S}", f"-rss_limit_mb={_MOST_MB}",
            f"-max_len={_LONGEST}", f"-dict={folder / 'words'}", f"-artifact_prefix={folder}/",
            "-print_final_stats=1", str(corpus),
        ],
        lambda data: read_spoilt(target, home, data),
    )  # fmt: skip
    atheris.Fuzz()


def _blind(name: str, seconds: int, folder: Path) -> None:
    from tests.faults.fuzzing import OPS, TARGETS, TOKENS, read_spoilt, spoilt

    target = next(one for one in TARGETS if one.name == name)
    seeds, chance, count = target.seeds(folder), random.Random(1), 0
    until = time.monotonic() + seconds
    while time.monotonic() < until:
        edits = [
            (chance.choice(OPS), chance.randrange(1 << 30), chance.randrange(64),
             chance.choice(TOKENS))
            for _ in range(chance.randrange(1, 6))
        ]  # fmt: skip
        data = spoilt(chance.choice(seeds), edits)
        (folder / "last").write_bytes(data)
        read_spoilt(target, folder, data)
        count += 1
    print(f"number_of_executed_units: {count}")


if __name__ == "__main__":
    main()
