"""The four reports: a session, a day, a month, and an inspector's folder."""

from __future__ import annotations

from calendar import monthrange
from collections.abc import Iterator
from datetime import date

from kiosk.report import of_days, of_session
from kiosk.report.desk import Desk
from kiosk.report.figures import pictures
from kiosk.report.forecast import forecast
from kiosk.report.gathered import Gathered, gather
from kiosk.report.laboratory import laboratory
from kiosk.report.of_findings import by_rule, deviations, readings, spread
from kiosk.report.paper import Blanks, Block, Heading, Notice, Paper
from kiosk.report.resting import resting
from kiosk.report.tracing import traces


def session_paper(session: str, desk: Desk) -> Paper:
    """Return the report on one session. Raises KeyError when there is none."""
    line = desk.ledger.line(session)
    under = f"{desk.machine(line.machine)} · {desk.moment(line.begun_utc)}"
    title = desk.text(line.title, line.procedure)
    blocks = [*of_session.whole(session, desk), *resting(desk, (line.first_seq, line.last_seq))]
    return _paper(f"session-{session}", title, under, blocks, desk)


def day_paper(day: date, desk: Desk) -> Paper:
    """Return the report on one business day."""
    of = gather(desk.span(day, day), desk)
    blocks = [
        *_first(of, desk),
        *_due(of, desk, all_of_it=True),
        *_sessions(of, desk),
        *_deviations(of, desk),
        *_readings(of, desk, all_of_them=True),
        *_parts(of, desk),
        *_laboratory(of, desk),
        *_last(of, desk),
    ]
    return _paper(f"day-{day}", desk.say("title-day"), day.isoformat(), blocks, desk)


def month_paper(year: int, month: int, desk: Desk) -> Paper:
    """Return the report on a month: its figures, and all that needs eyes."""
    first, last = date(year, month, 1), date(year, month, monthrange(year, month)[1])
    of = gather(desk.span(first, last), desk)
    blocks = [
        *_first(of, desk),
        *pictures(of, desk),
        *_due(of, desk, all_of_it=False),
        *_deviations(of, desk),
        *_readings(of, desk, all_of_them=False),
        *_laboratory(of, desk),
        *traces(of.span, desk),
        *_parts(of, desk),
        *forecast(desk),
        *_people(of, desk),
        *_sessions(of, desk),
        *_last(of, desk),
    ]
    return _paper(f"month-{first:%Y-%m}", desk.say("title-month"), f"{first:%Y-%m}", blocks, desk)


def folder_paper(first: date, last: date, desk: Desk, *, steps: bool = False) -> Paper:
    """Return an inspector's folder of some days; with `steps`, each session in full at its end."""
    of = gather(desk.span(first, last), desk)
    blocks = [
        *_first(of, desk),
        *pictures(of, desk),
        *_due(of, desk, all_of_it=True),
        *_sessions(of, desk),
        *_deviations(of, desk),
        *_readings(of, desk, all_of_them=True),
        *_laboratory(of, desk),
        *traces(of.span, desk),
        *_parts(of, desk),
        *forecast(desk),
        *_people(of, desk),
        Heading(desk.say("procedures")),
        of_days.procedures(of, desk),
        *(_each(of, desk) if steps else ()),
        *_last(of, desk),
    ]
    name = f"folder-{first}-{last}"
    return _paper(name, desk.say("title-folder"), f"{first} – {last}", blocks, desk)


def _paper(name: str, title: str, under: str, blocks: list[Block], desk: Desk) -> Paper:
    if desk.words.language in desk.rules.drafted:
        blocks.insert(0, Notice(desk.say("drafted")))
    last = desk.rows.last()
    head = "" if last is None else desk.words.say("journal-head", hash=last.hash[:16])
    return Paper(
        name=name,
        language=desk.words.language,
        title=title,
        under=f"{desk.site.name} · {under}",
        running=f"{title} · {under} · {head}",
        page_of=desk.words.say("picture-page", page="{page}", pages="{pages}"),
        rows_column=desk.say("column-rows"),
        blocks=tuple(blocks),
    )


# The parts, each under its heading.


def _first(of: Gathered, desk: Desk) -> Iterator[Block]:
    if desk.site.practice:
        yield Notice(desk.say("practice"), strong=True)
    yield of_days.summary(of, desk)
    unread = desk.ledger.unread()
    if unread:
        named = "; ".join(f"{session}: {why}" for session, why in unread)
        yield Notice(desk.say("unread", sessions=named), strong=True)


def _due(of: Gathered, desk: Desk, *, all_of_it: bool) -> Iterator[Block]:
    yield Heading(desk.say("due"))
    yield of_days.due(of, desk, all_of_it=all_of_it)


def _sessions(of: Gathered, desk: Desk) -> Iterator[Block]:
    yield Heading(desk.say("sessions"))
    yield of_days.sessions(of, desk)


def _deviations(of: Gathered, desk: Desk) -> Iterator[Block]:
    yield Heading(desk.say("deviations"))
    yield by_rule(of.deviations, desk)
    yield deviations(of.deviations, desk)


def _readings(of: Gathered, desk: Desk, *, all_of_them: bool) -> Iterator[Block]:
    yield Heading(desk.say("readings"))
    yield spread(of.readings, desk)
    found = [one for one in of.readings if all_of_them or one.kept is False]
    yield readings(found, desk)


def _laboratory(of: Gathered, desk: Desk) -> Iterator[Block]:
    yield Heading(desk.say("laboratory"))
    yield from laboratory(of.span, desk)


def _parts(of: Gathered, desk: Desk) -> Iterator[Block]:
    yield Heading(desk.say("parts"))
    yield of_days.parts(of, desk)


def _people(of: Gathered, desk: Desk) -> Iterator[Block]:
    yield Heading(desk.say("people"))
    yield of_days.people(of, desk)


def _each(of: Gathered, desk: Desk) -> Iterator[Block]:
    for one in of.lines:
        title = f"{desk.machine(one.machine)} · {desk.moment(one.begun_utc)}"
        yield Heading(title, new_page=True)
        yield from of_session.whole(one.session, desk, level=3)


def _last(of: Gathered, desk: Desk) -> Iterator[Block]:
    yield from resting(desk, tuple(x for one in of.lines for x in (one.first_seq, one.last_seq)))
    labels = ("sign-name", "sign-signature", "sign-date")
    yield Blanks(tuple(desk.say(name) for name in labels))
