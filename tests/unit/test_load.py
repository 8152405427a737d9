"""Faulty procedure files: each error names file, line, field and the mend."""

from __future__ import annotations

from pathlib import Path

import pytest

from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.load import load_procedure
from kiosk.procedure.yaml_source import read_yaml

GOOD = """\
id: close
version: 1
title: {en: Close}
machine_kind: twin
limits: food-code
drafted: []
follow: {en: The manual comes first.}
begins_from: [in service]
during: being taken apart
leaves: apart and drying
phases:
  - id: ready
    title: {en: Ready}
    steps:
      - id: hands
        say: {en: Wash your hands.}
        establishes: [hands clean]
      - id: isolate
        say: {en: Pull the plug.}
        hold:
          phrase: {en: the power is off}
        establishes: [power isolated]
"""


def load(tmp_path: Path, text: str):
    file = tmp_path / "close.yaml"
    file.write_text(text, encoding="utf-8")
    return load_procedure(file)


def faults(tmp_path: Path, text: str):
    with pytest.raises(FaultyFile) as caught:
        load(tmp_path, text)
    return caught.value.faults


def test_a_good_file_is_read_with_the_line_of_each_step(tmp_path):
    procedure = load(tmp_path, GOOD)
    steps = procedure.phases[0].steps
    assert [(step.id, step.line) for step in steps] == [("hands", 15), ("isolate", 18)]
    assert steps[1].hold is not None


@pytest.mark.parametrize(
    ("before", "after", "line", "field", "what", "mend"),
    [
        ("version: 1\n", "", 1, "version", "'version' is missing", "add 'version:'"),
        ("establishes: [hands", "estabilshes: [hands", 17, "phases[0].steps[0].estabilshes",
         "not known here", "write 'establishes'"),
        ("phrase: {en", "frase: {en", 21, "phases[0].steps[1].hold.frase", "not known", "'phrase'"),
        ("during: being taken apart", "during: in pieces", 9, "during", "'in pieces' is not one",
         "being taken apart"),
        ("establishes: [hands clean]", "establishes: hands clean", 17,
         "phases[0].steps[0].establishes", "must be a list", "write it as"),
        ("version: 1", "version: one", 2, "version", "'one' is not a number", "plain number"),
        ("say: {en: Wash your hands.}", "say: Wash your hands.", 16, "phases[0].steps[0].say",
         "must hold named fields", "indented"),
    ],
)  # fmt: skip
def test_a_fault_names_line_field_and_mend(tmp_path, before, after, line, field, what, mend):
    assert before in GOOD
    found = faults(tmp_path, GOOD.replace(before, after, 1))
    assert any(
        one.line == line and one.field == field and what in one.what and mend in one.mend
        for one in found
    ), found
    assert str(found[0]).startswith(str(tmp_path / "close.yaml"))


def test_all_faults_of_a_file_are_told_at_once(tmp_path):
    text = GOOD.replace("version: 1", "version: x").replace("leaves:", "leafs:")
    assert len(faults(tmp_path, text)) >= 3


def test_the_id_must_be_the_files_stem(tmp_path):
    (found,) = faults(tmp_path, GOOD.replace("id: close", "id: shut", 1))
    assert (found.line, found.field) == (1, "id")
    assert "close" in found.mend


def test_a_key_that_stands_twice_is_a_fault(tmp_path):
    (found,) = faults(tmp_path, GOOD.replace("version: 1\n", "version: 1\nversion: 2\n"))
    assert (found.line, found.what) == (3, "the key 'version' stands twice")


def test_broken_yaml_names_its_line(tmp_path):
    (found,) = faults(tmp_path, GOOD.replace("title: {en: Close}", "title: {en: Close"))
    assert "is not YAML" in found.what
    assert found.line >= 3


@pytest.mark.parametrize("text", ["", "[]", "just words", "id: close"])
def test_a_file_that_is_no_procedure_is_a_plain_error(tmp_path, text):
    assert faults(tmp_path, text)


def test_a_file_that_is_not_utf_8_is_a_plain_error(tmp_path):
    file = tmp_path / "close.yaml"
    file.write_bytes(b"id: \xff\xfe")
    with pytest.raises(FaultyFile, match="UTF-8"):
        load_procedure(file)


def test_answers_stay_words_as_yaml_1_2_has_it(tmp_path):
    """YAML 1.2 core schema, sections 10.2 and 10.3: only true/false are booleans. From memory."""
    file = tmp_path / "x.yaml"
    file.write_text("[yes, no, on, off, y, n, 12:30, 1_000, 0o7, true, 3, 4.50, '3', ~]")
    data = read_yaml(file).data
    assert data[:9] == ["yes", "no", "on", "off", "y", "n", "12:30", "1_000", "0o7"]
    assert data[9:11] == [True, 3]
    assert str(data[11]) == "4.50"
    assert data[12:] == ["3", None]
