"""Every shipped procedure is proven, for every machine that its kind allows."""

from __future__ import annotations

from pathlib import Path

from kiosk.checking.check import check
from kiosk.procedure.load import load_library
from kiosk.procedure.site import load_site
from kiosk.proof.prove import check_library
from kiosk.shipped import shipped


def test_the_shipped_library_is_proven_for_every_machine():
    library = load_library(shipped("procedures"))
    site = load_site(shipped("demo") / "site.toml")
    report = check_library(library, site)
    assert [str(fault) for fault in report.faults] == []
    assert {one.procedure for one in report.proven} == set(library.procedures)
    named = {name for one in report.proven for name in one.machines}
    assert named.issuperset(machine.name for machine in site.machines)


def test_a_shipped_procedure_without_its_isolation_is_refused(tmp_path: Path):
    """The file as it ships, but the hold that proves the machine dead establishes nothing new."""
    text = (shipped("procedures") / "close-twin-gravity.yaml").read_text("utf-8")
    broken = text.replace("establishes: [proven dead]", "establishes: [power isolated]", 1)
    assert broken != text
    copy = tmp_path / "close-twin-gravity.yaml"
    copy.write_text(broken, "utf-8")
    said: list[str] = []
    assert check([copy], shipped("procedures"), said.append) == 1
    assert any("proven dead" in line and f"{copy}:" in line for line in said)


def test_a_file_that_is_not_there_is_told_and_mended():
    said: list[str] = []
    assert check([Path("nowhere.yaml")], shipped("procedures"), said.append) == 1
    assert any("nowhere.yaml" in line for line in said)
    assert any("To mend" in line for line in said)
