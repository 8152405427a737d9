"""The kiosk on a tablet, seen from two metres: cells that fill the screen, letters that grow."""

from __future__ import annotations

import pytest

from tests.endtoend.chromium import PROGRAM
from tests.endtoend.test_browser import LAND, PORTRAIT, it, there

pytestmark = [
    pytest.mark.skipif(PROGRAM is None, reason="no Chromium is installed"),
    pytest.mark.asyncio(loop_scope="module"),
]

__all__ = ["it", "there"]

SENTENCE = "Wash your hands."
GROWN = "cells.grid.flat().filter((one) => one.style.grows > 1 && one.text.trim()).length"
"""How many letters are drawn over several cells."""
PICTURE = "canvas.toDataURL()"
ALL_ANEW = "cells.changed = new Set(cells.grid.keys()); painter.paint(cells); canvas.toDataURL()"


@pytest.mark.parametrize("size", [LAND, PORTRAIT], ids=str)
async def test_sixty_to_eighty_columns_fill_a_tablet(it, there, size):
    page = await there.page(*size)
    await it.pair(page)
    await page.place("Window machine")
    await page.calm()
    columns = await page.run("cells.columns")
    assert 60 <= columns <= 88
    assert await page.run("cells.rows") >= 24
    wide = await page.run("canvas.getBoundingClientRect().width / window.innerWidth")
    high = await page.run(
        "(canvas.getBoundingClientRect().height + document.getElementById('bars').offsetHeight)"
        " / window.innerHeight"
    )
    assert 0.97 < wide <= 1
    assert 0.96 < high <= 1


async def test_the_sentence_grows_and_leaves_no_ink_behind(it, there):
    page = await there.page(*LAND)
    await it.pair(page)
    await it.touch(page, "Window machine")
    await it.touch(page, "Ana")
    await page.place(SENTENCE)
    await page.calm()
    # Said as one text to a screen reader, and drawn with the tablet's own letters.
    assert any(line.strip() == SENTENCE for line in await page.lines())
    assert await page.run(GROWN) >= len(SENTENCE.replace(" ", ""))
    high = await page.run(
        "(() => { const y = cells.grid.findIndex((row) => row.some((one) => one.style.grows > 1));"
        " const row = cells.grid[y], x = row.findIndex((one) => one.style.grows > 1);"
        " const grows = row[x].style.grows, { width, height } = painter;"
        " const seen = painter.to.getImageData(x * width, y * height,"
        " 10 * grows * width, grows * height);"
        " const rows = new Set(); seen.data.forEach((one, at) => { if (at % 4 === 0 && one > 128)"
        " rows.add(Math.floor(at / 4 / seen.width)); });"
        " return (Math.max(...rows) - Math.min(...rows)) / height; })()"
    )
    # A capital and a tail together take about eight tenths of a letter's four cells.
    assert 2.6 < high < 4.0

    await it.touch(page, "what can I say")
    await page.place("never mind")
    await page.calm()
    assert SENTENCE not in await page.text()
    assert await page.run(PICTURE) == await page.run(ALL_ANEW)
    await it.touch(page, "never mind")
    await page.place(SENTENCE)
    await page.calm()
    assert await page.run(PICTURE) == await page.run(ALL_ANEW)
    assert page.complaints == []
