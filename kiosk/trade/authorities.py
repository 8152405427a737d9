"""What each authority demands of frozen-dessert samples, as typed records."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from typing import Any, ClassVar, TypeVar

from kiosk.trade.keyed import Keyed
from kiosk.trade.sampling_plan import SamplingPlan

Record = TypeVar("Record")

_STRICT: dict[str, Any] = {"extra": "forbid", "coerce_numbers_to_str": True}


_SAYS = {
    "several-limits": "{title} has {count} limits for {test} in {product}: keep one",
    "no-limit": "{title} has no limit for {test} in {product}; it has {known}",
    "other-unit": "{title} sets its limit per {limit_per}, and this result is per {per}",
    "no-authority": "no authority is called '{name}'; known are {known}",
    "no-plan": "no sampling plan is called '{name}'; known are {known}",
}


class NoSuchLimit(Keyed, LookupError):
    """An authority or its limit is not in the table; the message says what is."""

    says = _SAYS


class Analysis(StrEnum):
    """What the laboratory looked for."""

    TOTAL_COUNT = "total count"
    COLIFORM = "coliform"
    ENTEROBACTERIACEAE = "enterobacteriaceae"
    LISTERIA = "listeria monocytogenes"
    SALMONELLA = "salmonella"
    YEAST = "yeast"
    MOLD = "mold"


class Product(StrEnum):
    """What was sampled."""

    PLAIN = "plain"
    BULKY = "bulky"
    """With chocolate, fruit, nuts or other bulky flavors."""
    SHERBET = "sherbet"
    FROZEN_YOGURT = "frozen yogurt"
    MIX = "mix"
    MILK = "milk"


class Enforcing(StrEnum):
    """How results over the limit lead to notice and action."""

    LAST_FIVE = "last five"
    """Notice at 2 of the last 4, action at 3 of the last 5."""
    LOG_AVERAGE = "log average"
    """Action when the logarithmic average of the last four exceeds the limit."""
    EACH = "each"
    """At no time: one result over the limit is enough."""
    NOT_STATED = "not stated"


@dataclass(frozen=True, slots=True, kw_only=True)
class MicrobialLimit:
    """The most of one organism in one product."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    test: Analysis
    products: tuple[Product, ...]
    most: Decimal
    per: str = "g"
    """The unit below the line, g or mL."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Authority:
    """One jurisdiction's limits and how it enforces them."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    title: str
    law: str
    enforcing: Enforcing
    limits: tuple[MicrobialLimit, ...]
    source: str
    """Where the values were read or recalled."""
    tag: str
    """READ or MEM, by part where parts differ."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LotPlan:
    """A sampling plan that a law sets for one organism in one product."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    law: str
    test: Analysis
    n: int
    c: int
    m: Decimal
    top: Decimal | None = None
    per: str
    source: str
    tag: str

    @property
    def plan(self) -> SamplingPlan:
        """The plan's numbers alone. Raises NotAPlan when they cannot be."""
        return SamplingPlan(n=self.n, c=self.c, m=self.m, top=self.top)


@dataclass(frozen=True, slots=True, kw_only=True)
class Authorities:
    """The whole table."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    authorities: tuple[Authority, ...]
    lot_plans: tuple[LotPlan, ...] = ()


def authority(table: Authorities, name: str) -> Authority:
    """Return an authority by its id. Raises NoSuchLimit."""
    return _one({one.id: one for one in table.authorities}, name, "no-authority")


def lot_plan(table: Authorities, name: str) -> LotPlan:
    """Return a law's sampling plan by its id. Raises NoSuchLimit."""
    return _one({one.id: one for one in table.lot_plans}, name, "no-plan")


def limit_for(of: Authority, test: Analysis, product: Product) -> MicrobialLimit:
    """Return the limit for a test of a product. Raises NoSuchLimit; no limit is ever guessed."""
    found = [one for one in of.limits if one.test is test and product in one.products]
    if len(found) == 1:
        return found[0]
    if found:
        raise NoSuchLimit(
            "several-limits", title=of.title, count=len(found), test=test, product=product
        )
    known = _listed([f"{one.test} in {', '.join(one.products)}" for one in of.limits])
    raise NoSuchLimit("no-limit", title=of.title, test=test, product=product, known=known)


def _one(records: dict[str, Record], name: str, key: str) -> Record:
    if name not in records:
        raise NoSuchLimit(key, name=name, known=_listed(sorted(records)))
    return records[name]


def _listed(names: Sequence[str]) -> str:
    return "; ".join(names) if names else "none"
