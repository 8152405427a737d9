"""How long the check of the shipped procedures takes: `python -m tests.checking.bench_checking`."""

from __future__ import annotations

import tempfile
import time
from collections import Counter
from pathlib import Path

from kiosk.checking.check import subject_of
from kiosk.checking.gather import gather
from kiosk.checking.instruments import open_instruments
from kiosk.checking.phrases import distance, pairs
from kiosk.checking.proving import fit_all, prove_all
from kiosk.checking.rules import RULES
from kiosk.checking.spoken import TEXT_S
from kiosk.shipped import shipped


def main() -> None:
    """Print the seconds of each part, the nearest phrases and the longest texts."""
    begun = time.perf_counter()
    gathered = gather([], shipped("procedures"))
    if gathered.library is None:
        raise SystemExit("the shipped common.yaml cannot be read")
    read = time.perf_counter()
    fitted = {
        one.id: fit_all(gathered.library, one) for one in gathered.library.procedures.values()
    }
    fit = time.perf_counter()
    print(f"read {read - begun:.2f} s, fit {fit - read:.2f} s")
    with tempfile.TemporaryDirectory() as folder, open_instruments(Path(folder)) as real:
        spoken: list[tuple[float, str, str]] = []

        def seconds(language: str, text: str) -> float:
            spoken.append((real.seconds(language, text), language, text))
            return spoken[-1][0]

        subject = subject_of(gathered, fitted, type(real)(real.sounds, seconds, real.unknown))
        others = 0.0
        for rule in RULES.values():
            started = time.perf_counter()
            found = list(rule.find(subject))
            took = time.perf_counter() - started
            if rule.name in ("unknown-word", "too-long-to-say"):
                print(f"{rule.name}: {took:.2f} s, found {len(found)}")
            else:
                others += took
        print(f"all other rules: {others:.2f} s")
        counted = Counter(language for took, language, _ in spoken if took > TEXT_S)
        print(
            f"{len(spoken)} texts spoken; longer than {TEXT_S:g} s, cautions with them: {counted}"
        )
        for took, language, text in sorted(spoken, reverse=True)[:5]:
            print(f"  {took:.1f} s {language}: {text}")
        beside = list(pairs(subject))
        said: dict[str, list[str]] = {}
        for pair in beside:
            said.setdefault(pair.language, []).extend((pair.phrase, pair.other))
        sounds = real.sounds({name: list(dict.fromkeys(all_)) for name, all_ in said.items()})
        for language in said:
            near = min(
                (distance(sounds, p), p.phrase, p.other) for p in beside if p.language == language
            )
            print(f"nearest phrases in {language}: {near[0]:.2f} {near[1]!r} {near[2]!r}")
    started = time.perf_counter()
    for name, of in fitted.items():
        print(prove_all(name, of))
    print(f"proof {time.perf_counter() - started:.1f} s")


if __name__ == "__main__":
    main()
