"""A TOML file changed in place: what people wrote stays, and the file says what was meant."""

from __future__ import annotations

import tomllib
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kiosk.setup.document import Document
from kiosk.shipped import shipped

DEMO = (shipped("demo") / "site.toml").read_text(encoding="utf-8")
OWN = [line for line in DEMO.splitlines() if line.startswith("#")]


def comments(text: str) -> list[str]:
    return [line for line in text.splitlines() if line.startswith("#")]


def test_a_change_leaves_every_other_line_as_it_is():
    document = Document(DEMO)
    document.put("name", "Other")
    document.put("sanitizer.target", Decimal("150.50"))
    document.change("machines", 1, "name", "New name")
    was, now = DEMO.splitlines(), document.text.splitlines()
    changed = [(old, new) for old, new in zip(was, now, strict=True) if old != new]
    assert [new for _, new in changed] == [
        'name = "Other"', "target = 150.5", 'name = "New name"',
    ]  # fmt: skip


def test_what_is_new_stands_under_its_comment_and_above_the_first_table():
    document = Document(DEMO)
    document.put("closed_days", ("monday",), "Days on which it does not open.")
    above, _, below = document.text.partition("# Days on which it does not open.\n")
    assert below.startswith('closed_days = ["monday"]\n')
    assert "\n[pins]" not in above
    assert below.index("\n[pins]") < below.index("\n[sanitizer]")
    assert set(OWN) <= set(comments(document.text))


def test_a_field_that_a_table_lacks_is_written_before_the_next_tables_comment():
    text = '[sanitizer]\nname = "x"\n\n# The machines.\n[[machines]]\nid = "m1"\n'
    document = Document(text)
    document.put("sanitizer.target", Decimal(100))
    assert document.text == text.replace('name = "x"\n', 'name = "x"\ntarget = 100\n')


def test_a_machine_is_added_after_the_last_one_and_one_is_taken_out_with_its_tables():
    document = Document(DEMO)
    document.add("machines", {"id": "m1", "name": "Third", "kind": "single-pump"})
    assert [one["id"] for one in document.listed("machines")] == ["patio", "counter", "m1"]
    assert document.text.index("Third") < document.text.index("\n[[people]]")
    document.remove("machines", 1)
    assert [one["id"] for one in document.listed("machines")] == ["patio", "m1"]
    assert comments(document.text) == OWN


def test_tables_inside_of_one_that_is_taken_out_go_with_it():
    text = (
        '[[machines]]\nid = "a"\n[machines.options]\nisolation = "lock"\n\n# mine\n'
        '[[machines]]\nid = "b"\n'
    )
    document = Document(text)
    document.remove("machines", 0)
    assert document.text == '\n# mine\n[[machines]]\nid = "b"\n'


def test_lists_and_tables_in_one_line_are_changed_too():
    document = Document('machines = [{id = "a"}]\nsanitizer = {name = "x"}\n')
    document.add("machines", {"id": "b"})
    document.put("sanitizer.target", Decimal(5))
    document.change("machines", 0, "name", "N")
    document.remove("machines", 1)
    assert document.data == {
        "machines": [{"id": "a", "name": "N"}], "sanitizer": {"name": "x", "target": 5},
    }  # fmt: skip


def test_a_bracket_at_the_beginning_of_a_line_of_a_long_list_is_no_table():
    document = Document("a = [\n[1],\n]\n")
    document.put("name", "x", "The name.")
    assert document.text == 'a = [\n[1],\n]\n\n# The name.\nname = "x"\n'


def test_what_is_dropped_is_gone_and_the_rest_stays():
    document = Document(DEMO)
    document.drop("pins")
    document.drop("nothing")
    assert document.get("pins") is None
    assert document.get("sanitizer.target") == 100


texts = st.text(st.characters(exclude_categories=("Cs", "Cc")), max_size=30)


@pytest.mark.parametrize("start", [DEMO, "", "# a comment\n", "x = 1"])
@settings(max_examples=25)
@given(name=texts, days=st.lists(texts, max_size=3), share=st.decimals(0, 1, places=4))
def test_whatever_is_put_in_comes_out_and_comments_stay(start, name, days, share):
    document = Document(start)
    document.put("name", name, "name")
    document.put("closed_days", tuple(days), "days")
    document.put("options.sink", name, "options")
    document.put("sanitizer.available_chlorine", share, "sanitizer")
    document.add("people", {"id": "p9", "name": name}, "people")
    found = tomllib.loads(document.text)
    assert found == document.data
    assert found["name"] == found["options"]["sink"] == found["people"][-1]["name"] == name
    assert found["closed_days"] == days
    assert Decimal(str(found["sanitizer"]["available_chlorine"])) == share
    assert set(comments(start)) <= set(comments(document.text))
