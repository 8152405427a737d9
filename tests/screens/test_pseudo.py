"""Every screen in a made language: nothing is left in English, and nothing is cut off."""

from __future__ import annotations

from collections.abc import AsyncIterator, Iterator, Sequence
from dataclasses import replace
from pathlib import Path
from tempfile import TemporaryDirectory
from zoneinfo import available_timezones

import pytest

from kiosk import shop as kiosk_shop
from kiosk.languages.words import languages, words
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.site import Site
from kiosk.rehearsal.counts import LABORATORY
from kiosk.rehearsal.invent import invent
from kiosk.screens.walk_screen import WalkScreen
from tests.screens import pseudo_scenes as scenes
from tests.screens.pseudo import QPS, faults, in_pseudo, resize, spoken_here
from tests.screens.review_scene import DAYS, FIRST, PROCEDURES, SEED, Morning, enter
from tests.screens.review_scene import SHOP as DEMO
from tests.screens.scene import SITE, SMALL, Kiosk, kiosk
from tests.screens.setup_scene import answer_all, setting_up
from tests.screens.test_looks import every_screen
from tests.screens.test_review_pages import every_page

USUAL = (80, 24)
SIZES = ((60, 18), (100, 30), USUAL)
"""Each screen is looked at in these, and left in the last one."""


@pytest.fixture(scope="module", autouse=True)
def made_language(tmp_path_factory) -> Iterator[None]:
    with spoken_here(tmp_path_factory.mktemp("languages")):
        yield


@pytest.fixture(scope="module")
def without_proof() -> Iterator[None]:
    """Walk what is not proven: other words alone make no other procedure."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(kiosk_shop, "require_proof", lambda *_: None)
        yield


def speaking(site: Site) -> Site:
    """The site with a short name, and a crew that speaks the made language alone."""
    crew = tuple(replace(one, language=QPS) for one in site.people)
    return replace(site, name="Stand", people=crew, languages=(QPS, "en"))


def names(site: Site, library: Library) -> list[str]:
    """What has no translation: names, and the sources of limits and rules."""
    limits, table = library.limits[site.limits], load_authorities()
    return [
        site.name, *(one.name for one in (*site.people, *site.machines)),
        *(words(one).say("language-name") for one in languages() if one != QPS),
        *(f"{one.clause}, {limits.edition} ({one.tag})" for one in limits.limits.values()),
        *(text for one in table.authorities for text in (one.law, one.source, one.tag)),
        "common practice, no source",
        "invented",
        LABORATORY,
    ]  # fmt: skip


async def all_faults(
    it: Kiosk,
    screens: AsyncIterator[str],
    data: list[str],
    sizes: Sequence[tuple[int, int]] = SIZES,
) -> str:
    """Look at each screen in several sizes."""
    found = []
    async for name in screens:
        walking = isinstance(it.app.screen, WalkScreen)
        sources = it.walk.sources if walking else ()
        for size in sizes:
            await resize(it, size)
            seen = faults(it, [*data, *sources])
            found += [f"{name} {size}: {one}\n{it.seen()}" for one in seen]
    return "\n".join(found)


@pytest.mark.parametrize(
    ("screens", "site"),
    [
        (every_screen, SITE),
        (scenes.on_the_board, scenes.CREW),
        (scenes.on_a_walk, SITE),
        (scenes.on_a_remark, SITE),
    ],
)
async def test_the_board_and_a_walk(tmp_path, screens, site):
    library, site = in_pseudo(load_library(SMALL)), speaking(site)
    async with kiosk(tmp_path, USUAL, library=library, site=site) as it:
        found = await all_faults(it, screens(it), names(site, library))
    assert not found, found


async def test_the_reckoner(tmp_path, without_proof):
    library, site = in_pseudo(PROCEDURES), speaking(DEMO)
    async with kiosk(tmp_path, SIZES[0], library=library, site=site) as it:
        await it.touch("Patio twin", "Evening breakdown", "Dale Whitcomb")
        found = await all_faults(it, scenes.on_the_reckoner(it), names(site, library), SIZES[:1])
    assert not found, found


@pytest.fixture(scope="module")
def nights(tmp_path_factory, without_proof) -> tuple[Path, Library, Site]:
    """Invented days of a crew that speaks the made language."""
    folder, library, site = tmp_path_factory.mktemp("nights"), in_pseudo(PROCEDURES), speaking(DEMO)
    invent(folder, site, library, FIRST, DAYS, SEED)
    return folder, library, site


async def test_the_review(nights):
    folder, library, site = nights
    async with kiosk(folder, USUAL, Morning(), library, site) as it:
        await enter(it)
        found = await all_faults(it, every_page(it), names(site, library))
    assert not found, found


async def test_the_setup_where_there_is_least_room(without_proof):
    """The page of languages is left out: there each tells of itself in itself."""
    library = in_pseudo(PROCEDURES)
    cities = {one.rpartition("/")[2].replace("_", " ") for one in available_timezones()}
    found: list[str] = []
    with TemporaryDirectory() as folder:
        data = [*names(DEMO, library), *cities, "Jo", "Cl", "Ana", folder]
        async with setting_up(Path(folder), SIZES[0], library=library) as it:

            def seen(name: str) -> None:
                if "language" not in name:
                    found.extend(f"{name}: {one}\n{it.seen()}" for one in faults(it, data))

            await answer_all(it, QPS, seen)
    assert not found, "\n".join(found)


async def test_what_is_left_in_english_and_what_is_cut_is_found(tmp_path):
    library = in_pseudo(load_library(SMALL))
    async with kiosk(tmp_path, USUAL, library=library, site=speaking(SITE)) as it:
        data = names(speaking(SITE), library)
        assert faults(it, data) == []
        target = it.targets()[0]
        target.show(replace(target.face, detail="left as it was"))
        await it.settle()
        assert [one.split(":")[0] for one in faults(it, data)] == [
            "untranslated ['left', 'as', 'it', 'was']"
        ]
        target.show(replace(target.face, label="⟦á" * 200, detail=""))
        await it.settle()
        assert [one.split(":")[0] for one in faults(it, data)] == ["cut"]
