"""Until which day mix may be used, which one to pour next, and what the clock on the wall means."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from decimal import Decimal
from enum import Enum
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from kiosk.trade.keyed import Keyed
from kiosk.trade.temperature_log import Printed, Reading
from kiosk.trade.units import Quantity

_SAYS = {
    "unknown-zone": "'{zone}' is no time zone known here; use a name such as Europe/Berlin, and see"
    " that the time zone data (tzdata) is installed",
    "has-zone": "{local} already bears a time zone; give the time as the wall clock showed it",
    "twice": "{local} came twice that night in {zone}: {first} and {second}; say which",
    "skipped": "{local} never came in {zone}: the clocks went forward; {first} or {second} is meant"
    " by it, so say which",
    "ends-first": "{end} lies before {begin}; swap the two, or mend the wrong one",
    "bad-freeze": "{name}: frozen {frozen} does not follow {before}; mend the dates",
    "still-frozen": "{name}: it was frozen again {frozen} without being thawed; write down when",
    "frozen-unopened": "{name}: it has times in the freezer but no day of opening; write it down",
    "absurd-year": "{day} cannot be a day on which mix is used; mend the year",
    "no-packages": "no mix is on record; write down what is in the cooler",
    "bad-instant": "{at} is no time; give seconds since 1970",
}


class NoDate(Keyed, ValueError):
    """A date or time cannot be judged; the message says what to mend."""

    says = _SAYS


def site_zone(name: str) -> ZoneInfo:
    """Return the time zone of a site by its IANA name. Raises NoDate for an unknown one."""
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError) as error:
        raise NoDate("unknown-zone", zone=name) from error


def instants(local: datetime, zone: ZoneInfo) -> tuple[float, ...]:
    """Return every instant, in seconds since the epoch, at which the wall clock showed `local`.

    None on a spring night that skips it, two on an autumn night that repeats it, else one.
    """
    if local.tzinfo is not None:
        raise NoDate("has-zone", local=local)
    _check_year(local.date())
    plain = local.replace(fold=0)
    found = {
        either.timestamp()
        for either in _both(plain, zone)
        if either.astimezone(UTC).astimezone(zone).replace(tzinfo=None, fold=0) == plain
    }
    return tuple(sorted(found))


def instant(local: datetime, zone: ZoneInfo) -> float:
    """Return the one instant at which the wall clock showed `local`, in seconds since the epoch.

    Raises NoDate, with both readings named, when it came twice or never.
    """
    found = instants(local, zone)
    if len(found) == 1:
        return found[0]
    key = "twice" if found else "skipped"
    readings = sorted(found) or sorted(one.timestamp() for one in _both(local, zone))
    first, second = (_named(at, zone) for at in readings)
    raise NoDate(key, local=f"{local:%Y-%m-%d %H:%M}", zone=zone.key, first=first, second=second)


def day_of(at: float, zone: ZoneInfo) -> date:
    """Return the calendar day in a zone at an instant in seconds since the epoch."""
    try:
        return datetime.fromtimestamp(at, zone).date()
    except (ValueError, OverflowError, OSError) as error:
        raise NoDate("bad-instant", at=at) from error


def start_of(day: date, zone: ZoneInfo) -> float:
    """Return the first instant of a calendar day, in seconds since the epoch.

    Where the clocks skip midnight it is the moment of the change.
    """
    _check_year(day)
    return datetime(day.year, day.month, day.day, tzinfo=zone).timestamp()


def hours_between(begin: datetime, end: datetime, zone: ZoneInfo) -> float:
    """Return the real hours from one wall-clock time to another. Raises NoDate as `instant`."""
    hours = (instant(end, zone) - instant(begin, zone)) / 3600
    if hours < 0:
        raise NoDate("ends-first", begin=begin, end=end)
    return hours


@dataclass(frozen=True, slots=True)
class DateRule:
    """How many days opened mix keeps; the day of opening is day 1."""

    days: int
    limit: Printed
    """The warmest at which it may have been kept."""
    clause: str
    source: str


SEVEN_DAYS = DateRule(
    7, Printed(Decimal(41), Decimal(5)), "3-501.17", "READ Minn. R. 4626.0400; 410 IAC 7-24-191"
)
FOUR_DAYS = DateRule(
    4, Printed(Decimal(45), Decimal(7)), "3-501.17, older option", "READ 410 IAC 7-24-191"
)


def date_rule(warmest: Quantity | None, older_option: bool) -> DateRule | None:
    """Return the rule for mix by the warmest it was kept, in °C or °F; None when none allows it.

    An unknown temperature (None) is allowed by no rule. `older_option` says whether the place
    still has the 4 days at up to 45 °F.
    """
    if warmest is None:
        return None
    Reading(0.0, warmest)
    for rule in (SEVEN_DAYS, FOUR_DAYS) if older_option else (SEVEN_DAYS,):
        if rule.limit.at_most(warmest):
            return rule
    return None


@dataclass(frozen=True, slots=True)
class Freeze:
    """A time in the freezer; both days themselves count as days of use."""

    frozen: date
    thawed: date | None = None
    """None while it is still frozen."""


@dataclass(frozen=True, slots=True)
class Package:
    """One package of mix."""

    name: str
    is_open: bool
    opened: date | None
    """Day of opening; None when unopened or when nobody wrote it down."""
    makers_use_by: date | None
    rule: DateRule | None = SEVEN_DAYS
    """None when it was kept too warm for any rule."""
    freezes: tuple[Freeze, ...] = ()
    """In order."""
    marked: date | None = None
    """The last day written on its label in the shop; the earlier day binds."""

    def __post_init__(self) -> None:
        if self.freezes and self.opened is None:
            raise NoDate("frozen-unopened", name=self.name)
        frozen = [day for one in self.freezes for day in (one.frozen, one.thawed)]
        for day in (self.opened, self.makers_use_by, self.marked, *frozen):
            if day is not None:
                _check_year(day)
        before = self.opened
        for one in self.freezes:
            if before is None:
                raise NoDate("still-frozen", name=self.name, frozen=one.frozen)
            if one.frozen < before or (one.thawed is not None and one.thawed < one.frozen):
                raise NoDate("bad-freeze", name=self.name, frozen=one.frozen, before=before)
            before = one.thawed


class Bar(Enum):
    """Why a package may not be poured."""

    TOO_WARM = "it was kept too warm, or nobody knows how warm"
    UNDATED = "nobody wrote down when it was opened, or until when it keeps"
    WRONGLY_DATED = "its dates cannot be right"
    FROZEN = "it is frozen; thaw it first"
    DAYS_ARE_UP = "it has been open for all its days"
    MAKERS_DATE_PASSED = "the maker's use-by has passed"
    MARK_PASSED = "the last day on its label has passed"


@dataclass(frozen=True, slots=True)
class Standing:
    """How a package stands on one day."""

    package: Package
    days_left: int
    """Days on which it may still be used, today among them; 0 when it may not be used."""
    last_day: date | None
    """None while it is frozen, and where no day can be told."""
    bars: tuple[Bar, ...]

    @property
    def usable(self) -> bool:
        """True when nothing bars it from being poured today."""
        return not self.bars


def standing(package: Package, today: date) -> Standing:
    """Judge a package on a calendar day of the site's zone.

    Opened mix keeps the days of its rule; days wholly in the freezer are not counted, and
    freezing gives none back. Neither the maker's use-by nor an earlier mark may pass. 3-501.17;
    undated, wrongly dated or too old mix goes: 3-501.18. READ WAC 246-215-03527.
    """
    _check_year(today)
    bars = []
    ends: list[date] = []
    frozen = any(_lies_frozen(one, today) for one in package.freezes)
    if package.is_open and package.rule is None:
        bars.append(Bar.TOO_WARM)
    if package.opened is None and (package.is_open or package.makers_use_by is None):
        bars.append(Bar.UNDATED)
    if package.opened is not None and (package.opened > today or not package.is_open):
        bars.append(Bar.WRONGLY_DATED)
    kept = None
    if package.rule is not None and package.opened is not None and package.is_open:
        kept = _last_kept_day(package.opened, package.rule.days, package.freezes, today)
        ends.append(kept)
        if kept < today:
            bars.append(Bar.DAYS_ARE_UP)
        if package.marked is not None and package.marked > kept and not frozen:
            bars.append(Bar.WRONGLY_DATED)
    for end, bar in (
        (package.makers_use_by, Bar.MAKERS_DATE_PASSED),
        (package.marked, Bar.MARK_PASSED),
    ):
        if end is not None:
            ends.append(end)
            if end < today:
                bars.append(bar)
    last = min(ends, default=None)
    spoiled = tuple(dict.fromkeys(bars))
    days_left = 0 if spoiled or last is None else (last - today).days + 1
    if frozen:
        return Standing(package, days_left, None, (*spoiled, Bar.FROZEN))
    return Standing(package, days_left, last, spoiled)


def discard_at(last_day: date, zone: ZoneInfo) -> float:
    """Return the instant at which mix goes: the start of the day after its last one."""
    return start_of(last_day + timedelta(days=1), zone)


@dataclass(frozen=True, slots=True)
class Choice:
    """Which package to pour, which come after it, and which may not be poured."""

    pour: Standing | None
    then: tuple[Standing, ...]
    refused: tuple[Standing, ...]
    """Each says why in `bars`."""


def pour_next(packages: Iterable[Package], today: date) -> Choice:
    """Choose by first expiring, first out; on the same day opened before unopened, then by age."""
    known = list(packages)
    if not known:
        raise NoDate("no-packages")
    judged = [standing(one, today) for one in known]
    fit = sorted((one for one in judged if one.usable), key=_turn)
    refused = sorted((one for one in judged if not one.usable), key=lambda one: one.package.name)
    return Choice(fit[0] if fit else None, tuple(fit[1:]), tuple(refused))


def _turn(one: Standing) -> tuple[date, bool, date, str]:
    package = one.package
    return (
        one.last_day or date.max, not package.is_open, package.opened or date.max, package.name
    )  # fmt: skip


def _lies_frozen(freeze: Freeze, today: date) -> bool:
    if freeze.thawed is None:
        return freeze.frozen <= today
    return freeze.frozen < today < freeze.thawed


def _last_kept_day(opened: date, days: int, freezes: tuple[Freeze, ...], today: date) -> date:
    """Return the last day by the rule; while frozen, what it would be if thawed today."""
    last = opened + timedelta(days=days - 1)
    for one in freezes:
        if one.frozen > last:
            break
        thawed = today if one.thawed is None else min(one.thawed, today)
        last += timedelta(days=max((thawed - one.frozen).days - 1, 0))
    return last


def _check_year(day: date) -> None:
    if not 2000 <= day.year <= 2200:
        raise NoDate("absurd-year", day=day)


def _both(local: datetime, zone: ZoneInfo) -> tuple[datetime, datetime]:
    return local.replace(tzinfo=zone, fold=0), local.replace(tzinfo=zone, fold=1)


def _named(at: float, zone: ZoneInfo) -> str:
    moment = datetime.fromtimestamp(at, zone)
    offset = f"{moment:%z}"
    return f"{moment:%H:%M} {moment.tzname()} (UTC{offset[:3]}:{offset[3:5]})"
