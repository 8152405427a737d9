"""`kiosk demo --crew`: an invented evening that plays by itself, on the screen or into a film."""

from __future__ import annotations

import argparse
from pathlib import Path

from kiosk.cli.place import Failed, demo_site

_MINUTES = 3.0


def add(demo: argparse.ArgumentParser) -> None:
    """Add what `kiosk demo` can be asked beside the board."""
    demo.add_argument("--crew", action="store_true", help="watch an evening play by itself")
    demo.add_argument(
        "--minutes", type=float, default=_MINUTES, metavar="N",
        help="about how long the evening takes (default: %(default)g; from 15 on every prompt is"
        " heard)",
    )  # fmt: skip
    demo.add_argument(
        "--record", type=Path, metavar="FILE.svg", help="film the evening, unseen, as animated SVG"
    )


def show(parsed: argparse.Namespace) -> int:
    """Play the evening; print what came of it."""
    # Imported here, so that the other commands do not wait for the screens and the ears.
    from kiosk.crew.app import CrewApp
    from kiosk.crew.hand import LostThread
    from kiosk.crew.stage import film, play
    from kiosk.rehearsal.worker import Stuck

    if parsed.minutes < 0:
        raise Failed(f"--minutes is {parsed.minutes:g}; write 0 or more.")
    try:
        if parsed.record:
            if parsed.record.suffix != ".svg":
                raise Failed(
                    f"--record writes SVG: name a file that ends in .svg, not {parsed.record}."
                )
            played, made = film(
                parsed.record, demo_site(), minutes=parsed.minutes, deaf=parsed.deaf
            )
            print(f"{parsed.record}: {len(made)} frames, {made.seconds:.0f} s")
        else:
            played = play(
                demo_site(), minutes=parsed.minutes, silent=parsed.silent, deaf=parsed.deaf,
                show=CrewApp.run,
            )  # fmt: skip
    except (LostThread, Stuck) as error:
        raise Failed(f"The evening stopped: {error}.") from error
    print(played.sentence())
    return 0
