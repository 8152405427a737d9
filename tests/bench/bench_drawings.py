"""How long a drawing takes in cells, in the sizes that screens use: figures, no verdict."""

from __future__ import annotations

import time
from statistics import mean

from kiosk.pictures.cells import cells
from kiosk.pictures.gallery import PICTURES

SIZES = ((24, 8), (30, 10), (42, 14), (60, 20))


def main() -> None:
    """Draw every picture in every size, and print processor time in ms."""
    for width, height in SIZES:
        taken = {}
        for name, picture in PICTURES.items():
            begun = time.process_time()
            cells(picture, width, height)
            taken[name] = (time.process_time() - begun) * 1000
        worst = max(taken, key=lambda name: taken[name])
        print(
            f"{width} x {height} cells: {len(taken)} pictures, {mean(taken.values()):.1f} ms each,"
            f" the slowest {taken[worst]:.1f} ms ({worst})"
        )


if __name__ == "__main__":
    main()
