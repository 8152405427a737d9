"""Laboratory results: read from a row, entered, struck when wrong."""

from __future__ import annotations

import re
import secrets
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from kiosk.journal.codec import UnknownEvent
from kiosk.journal.shop_facts import ResultEntered, ResultStruck, ShopEvent
from kiosk.languages.words import notice
from kiosk.procedure.load import Library
from kiosk.procedure.site import Site
from kiosk.trade.authorities import Analysis, Product
from kiosk.trade.rounding import Amount, NotAResult, read_amount

COLUMNS = ("machine", "barrel", "day", "product", "analysis", "amount", "laboratory")
"""Columns that a file must have, in any order. `day` is the local day of the sample, as 2026-11-25;
`amount` has its qualifier, as `1200`, `< 10`, `> 1100`, `est. 900`, `spreaders`."""

OPTIONAL = {"per": "g", "sample": ""}
"""Columns that a file may have, with what stands for an empty cell. `per` is g or mL; `sample` is
the laboratory's own number, which tells two samples of one day apart."""

_PER = ("g", "mL")
_EARLIEST = date(2000, 1, 1)
_LONGEST = 120
_TWO_READINGS = re.compile(r"(?<![0-9,.])[0-9]{1,3}\.[0-9]{3}(?![0-9])|,(?![0-9]{3}(?![0-9]))")
"""A point that may group thousands, or a comma that does not."""


class NoSuchResult(LookupError):
    """No result in force has this id; the message says how to find one."""


@dataclass(frozen=True, slots=True)
class Sample:
    """What a laboratory found in one sample."""

    machine: str
    barrel: str
    day: date
    product: Product
    analysis: Analysis
    amount: Amount
    per: str
    laboratory: str
    sample: str

    @property
    def key(self) -> tuple[str, str, date, Product, Analysis, str, str]:
        """What tells one result from another, its amount left out."""
        return (
            self.machine, self.barrel, self.day, self.product, self.analysis, self.laboratory,
            self.sample,
        )  # fmt: skip

    def __str__(self) -> str:
        return (
            f"{self.day} {self.machine} {self.barrel}, {self.product}, {self.analysis}: "
            f"{self.amount} per {self.per}"
        )


@dataclass(frozen=True, slots=True)
class Entered:
    """A result in the journal that has not been struck."""

    id: str
    of: Sample
    by: str
    utc: float
    """When it was entered, POSIX seconds."""


def heads(hoppers: int) -> tuple[str, ...]:
    """Return the names of a machine's heads: each is sampled by itself, the twist too."""
    if hoppers == 1:
        return ("single",)
    if hoppers == 2:
        return ("left", "right", "twist")
    return tuple(str(number) for number in range(1, hoppers + 1))


def heads_of(site: Site, library: Library) -> dict[str, tuple[str, ...]]:
    """Return the heads of each machine of a site; one of an unknown kind has a single one."""
    kinds = library.kinds
    return {
        one.id: heads(kinds[one.kind].hoppers if one.kind in kinds else 1) for one in site.machines
    }


def read_row(
    cells: Mapping[str, str], machines: Mapping[str, Sequence[str]], today: date
) -> Sample | list[tuple[str, str, str]]:
    """Read one result from its cells, or return (field, what is wrong, mend) for each fault.

    `machines` has the names of each machine's heads.
    """
    faults: list[tuple[str, str, str]] = []
    got = {name: " ".join(cells.get(name, "").split()) for name in (*COLUMNS, *OPTIONAL)}
    got |= {name: got[name] or usual for name, usual in OPTIONAL.items()}
    for name, text in got.items():
        if len(text) > _LONGEST:
            faults.append((name, f"is longer than {_LONGEST} characters", "shorten it"))
        if not text.isprintable():
            what = f"{text[:_LONGEST]!r} holds what cannot be printed"
            faults.append((name, what, "write it anew"))
    if got["machine"] not in machines:
        known = ", ".join(machines)
        faults.append(("machine", f"'{got['machine']}' is no machine here", f"use one of: {known}"))
    elif got["barrel"] not in (named := machines[got["machine"]]):
        what = f"{got['machine']} has no head '{got['barrel']}'"
        faults.append(("barrel", what, f"use one of: {', '.join(named)}"))
    day = _day(got["day"], today, faults)
    product = _one_of(Product, "product", got["product"], faults)
    analysis = _one_of(Analysis, "analysis", got["analysis"], faults)
    amount = _amount(got["amount"], faults)
    if got["per"] not in _PER:
        faults.append(("per", f"'{got['per']}' is no unit of a count", f"use {' or '.join(_PER)}"))
    if not got["laboratory"]:
        faults.append(("laboratory", "is empty", "write the laboratory's name"))
    if faults or day is None or product is None or analysis is None or amount is None:
        return faults
    return Sample(
        got["machine"], got["barrel"], day, Product(product), Analysis(analysis), amount,
        got["per"], got["laboratory"], got["sample"],
    )  # fmt: skip


def entry(sample: Sample, by: str, *, practice: bool, result: str = "") -> ResultEntered:
    """Return the fact that enters a result, under an id of its own."""
    return ResultEntered(
        result or f"{sample.day}-{sample.machine}-{secrets.token_hex(4)}",
        sample.machine, sample.barrel, sample.day.isoformat(), sample.product, sample.analysis,
        str(sample.amount), sample.per, sample.laboratory, sample.sample, by, practice,
    )  # fmt: skip


FACTS = (ResultEntered, ResultStruck)
"""What `results` reads of the shop's facts."""


def results(events: Iterable[ShopEvent], *, practice: bool) -> tuple[Entered, ...]:
    """Return the results in force, by day of sample, those of practice or those of real work.

    Raises UnknownEvent for an entry that this version cannot read.
    """
    found: dict[str, Entered] = {}
    for event in events:
        match event.fact:
            case ResultEntered() as fact if fact.practice == practice:
                sample = _sample(fact)
                found[fact.result] = Entered(fact.result, sample, fact.entered_by, event.at.utc)
            case ResultStruck(result=struck):
                found.pop(struck, None)
            case _:
                pass
    return tuple(sorted(found.values(), key=lambda one: (one.of.day, one.of.machine, one.id)))


def strike(entered: Iterable[Entered], result: str, because: str, by: str) -> ResultStruck:
    """Return the fact that strikes a result. Raises NoSuchResult."""
    if result not in {one.id for one in entered}:
        raise NoSuchResult(f"No result is called '{result}'. 'kiosk lab list' names them.")
    return ResultStruck(result, because, by)


def _sample(fact: ResultEntered) -> Sample:
    try:
        return Sample(
            fact.machine, fact.barrel, date.fromisoformat(fact.day), Product(fact.product),
            Analysis(fact.analysis), read_amount(fact.amount), fact.per, fact.laboratory,
            fact.sample,
        )  # fmt: skip
    except ValueError as error:
        why = str(error)
        raise UnknownEvent(notice("result-unreadable", result=fact.result, reason=why)) from error


def _day(text: str, today: date, faults: list[tuple[str, str, str]]) -> date | None:
    try:
        day = date.fromisoformat(text)
    except ValueError:
        faults.append(("day", f"'{text}' is no day", "write it as 2026-11-25"))
        return None
    if not _EARLIEST <= day <= today:
        faults.append(("day", f"{day} is not between {_EARLIEST} and {today}", "look at the year"))
        return None
    return day


def _one_of(
    words: type[StrEnum], field: str, text: str, faults: list[tuple[str, str, str]]
) -> StrEnum | None:
    try:
        return words(text.lower())
    except ValueError:
        mend = f"use one of: {', '.join(words)}"
        faults.append((field, f"'{text}' is not known here", mend))
        return None


def _amount(text: str, faults: list[tuple[str, str, str]]) -> Amount | None:
    if _TWO_READINGS.search(text):
        mend = "write it without marks for thousands, as 1200 or 1.2"
        faults.append(("amount", f"'{text}' can be read as two different numbers", mend))
        return None
    try:
        return read_amount(text)
    except NotAResult as error:
        faults.append(("amount", str(error), "write it so"))
        return None
