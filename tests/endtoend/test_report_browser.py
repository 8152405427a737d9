"""A report in a real browser: it needs no network, fits the screen, and prints whole."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
from pathlib import Path

import pytest

from kiosk.report.as_html import as_html
from kiosk.report.papers import folder_paper
from tests.unit.report_shop import FIRST, LAST, NAME, Page, desk, make

BROWSER = next(filter(None, map(shutil.which, ("chromium", "chromium-browser"))), None)

pytestmark = [
    pytest.mark.skipif(BROWSER is None, reason="no Chromium is installed"),
    pytest.mark.skipif(shutil.which("pdftotext") is None, reason="poppler-utils is not installed"),
]

ASK = """
<script>
document.fonts.ready.then(() => {
  const at = document.documentElement, rows = [...document.querySelectorAll("tbody tr")];
  const told = {
    asked: performance.getEntriesByType("resource").map((one) => one.name),
    wide: at.scrollWidth - at.clientWidth,
    faces: [...document.fonts].map((one) => one.status),
    rows: rows.length,
    grey: rows.filter((one) => one.className == "off").length,
    figures: document.querySelectorAll("figure svg").length,
    unnamed: document.querySelectorAll("svg:not([role=img])").length,
    headless: document.querySelectorAll("table:not(:has(caption)), th:not([scope])").length,
  };
  document.title = JSON.stringify(told);
});
</script>
"""


@pytest.fixture(scope="module")
def page(tmp_path_factory) -> Path:
    folder = tmp_path_factory.mktemp("shop")
    make(folder)
    with desk(folder, "ko") as at:
        text = as_html(folder_paper(FIRST, LAST, at))
    file = folder / "folder.html"
    file.write_text(text, "utf-8")
    return file


def browser(*words: str) -> str:
    return subprocess.run(
        [
            BROWSER, "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage",
            "--host-resolver-rules=MAP * ~NOTFOUND", *words,
        ],
        capture_output=True, check=True, text=True, timeout=120,
    ).stdout  # fmt: skip


def told(page: Path, width: int) -> dict:
    """Let the browser say what it made of the page, in a window of some width."""
    asked = page.with_name("asked.html")
    asked.write_text(page.read_text("utf-8").replace("</body>", f"{ASK}</body>"), "utf-8")
    dom = browser(f"--window-size={width},900", "--virtual-time-budget=5000", "--dump-dom",
                  asked.as_uri())  # fmt: skip
    found = re.search(r"<title>(\{.*?\})</title>", dom)
    return json.loads(found[1])


@pytest.mark.parametrize("width", [500, 1280])
def test_the_page_asks_for_nothing_and_fits_the_window(page, width):
    found = told(page, width)
    assert [one for one in found["asked"] if not one.startswith("data:")] == []
    assert found["wide"] <= 0
    assert found["faces"] == ["loaded"]
    assert found["rows"] == sum(map(len, Page(page.read_text("utf-8")).tables.values()))
    assert found["grey"] > 0
    assert found["figures"] > 3
    assert (found["unnamed"], found["headless"]) == (0, 0)


def test_it_prints_with_names_and_with_whole_rows(page, tmp_path):
    file = tmp_path / "print.pdf"
    browser(f"--print-to-pdf={file}", "--no-pdf-header-footer", page.as_uri())
    text = subprocess.run(
        ["pdftotext", "-bbox-layout", file, "-"], capture_output=True, check=True, text=True
    ).stdout
    pages = text.split("<page ")[1:]
    assert len(pages) > 5
    words = [re.findall(r">([^<>]+)</word>", one) for one in pages]
    assert any(NAME in one for one in words)
    # A row's first words and its journal rows stand on the same page: a reading's second and row.
    lines = Page(page.read_text("utf-8")).tables["readings"]
    for line in lines:
        second, seq = line.cells[0].split()[1], str(line.seqs[0])
        on = [n for n, one in enumerate(words) if second in one]
        assert any(seq in words[n] for n in on), f"row {seq} is broken"
