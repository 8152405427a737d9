"""The parts of a report on one session."""

from __future__ import annotations

from collections.abc import Iterator

from kiosk.procedure.plan import Plan
from kiosk.report import answers
from kiosk.report.desk import Desk
from kiosk.report.of_findings import deviations, readings, traced
from kiosk.report.of_remarks import remark_told, remarks_of
from kiosk.report.paper import Blanks, Block, Cell, Heading, Notice, Row, Seqs, Sheet, Table
from kiosk.report.rows import RawRow, stays
from kiosk.report.signing import signed_cell, signings
from kiosk.review.ledger_lines import Line
from kiosk.review.record import Asked, Left, SessionRecord, StepRecord


def whole(session: str, desk: Desk, *, level: int = 2) -> Iterator[Block]:
    """Yield all of one session. Raises KeyError when there is none."""
    line, record = desk.ledger.line(session), desk.ledger.record(session)
    rows = desk.rows.of_session(session)
    if record.practice:
        yield Notice(desk.say("practice"), strong=True)
    yield _facts(line, record, desk, rows)
    if record.unsafe:
        left = ", ".join(_condition(one, desk) for one in record.unsafe)
        yield Notice(desk.say("left-unsafe", what=left), strong=True)
    if not record.text_known:
        yield Notice(desk.say("text-unknown"))
    found = traced(desk.ledger.deviations(session, desk.now_utc), desk)
    yield Heading(desk.say("deviations"), level)
    yield deviations(found, desk, one=session)
    taken = desk.ledger.readings(
        practice=record.practice, machine=record.machine, from_utc=record.begun_utc,
        until_utc=record.last_utc + 1,
    )  # fmt: skip
    yield Heading(desk.say("readings"), level)
    yield readings([one for one in taken if one.session == session], desk, one=session)
    yield Heading(desk.say("steps"), level)
    yield _steps(record, desk, rows)
    yield Heading(desk.say("beside"), level)
    yield _beside(record, desk)
    yield Heading(desk.say("signing"), level)
    yield signings(desk.ledger.signed(session), desk, session)
    labels = ("sign-name", "sign-signature", "sign-date")
    yield Blanks(tuple(desk.say(name) for name in labels))


def _condition(name: str, desk: Desk) -> str:
    found = desk.library.common.conditions.get(name)
    return name if found is None else desk.text(found.name, name)


def _facts(line: Line, record: SessionRecord, desk: Desk, rows: tuple[RawRow, ...]) -> Sheet:
    begun, last = (rows[0].seq,), (rows[-1].seq,)
    length = desk.say("minutes", minutes=f"{line.length_s / 60:.1f}")
    usual = desk.say("usual-none")
    if line.usual_s is not None:
        usual = desk.say("usual", minutes=f"{line.usual_s / 60:.1f}", count=line.usual_of)
    version = desk.say("version", version=str(record.version), digest=record.digest)
    title = desk.text(record.title, record.procedure)
    machine = f"{desk.machine(record.machine)} ({record.machine})"
    ended = desk.say("ended", how=record.ended.replace(" ", "-"))
    return Sheet(
        (
            (desk.say("session"), Cell(record.session)),
            (desk.say("shop"), Cell(desk.site.name)),
            (desk.say("machine"), Cell(machine, begun)),
            (desk.say("procedure"), Cell(f"{title} ({record.procedure})", begun)),
            (desk.say("text"), Cell(version, begun)),
            (desk.say("workers"), Cell(desk.people(record.workers), _people(rows))),
            (desk.say("begun"), Cell(desk.second(record.begun_utc), begun, "begun")),
            (desk.say("last-event"), Cell(desk.second(record.last_utc), last, "last")),
            (desk.say("how-ended"), Cell(ended, last)),
            (desk.say("length"), Cell(length, begun + last, "minutes")),
            (desk.say("usual-length"), Cell(usual)),
            (desk.say("confirmed-steps"), _count(rows, "StepConfirmed", "confirmed")),
            (desk.say("signed"), signed_cell(line, desk)),
        )
    )  # fmt: skip


def _people(rows: tuple[RawRow, ...]) -> Seqs:
    return tuple(row.seq for row in rows if row.kind in ("SessionStarted", "HandedOver"))


def _count(rows: tuple[RawRow, ...], kind: str, key: str) -> Cell:
    found = tuple(row.seq for row in rows if row.kind == kind)
    return Cell(str(len(found)), found, key)


def _steps(record: SessionRecord, desk: Desk, rows: tuple[RawRow, ...]) -> Table:
    plan = desk.plan_of(record.session)
    found = [
        _step(stay, plan, desk, seqs) for stay, seqs in zip(record.steps, stays(rows), strict=True)
    ]
    return desk.table(
        id=f"steps-{record.session}", caption=desk.say("steps-caption"),
        columns={"time": 13, "step": 35, "answer": 20, "how": 31, "who": 14},
        rows=found, empty=desk.say("steps-none"),
    )  # fmt: skip


def _sentence(stay: StepRecord, plan: Plan | None, desk: Desk) -> str:
    """Return a step's sentence for the reader, and as it was asked where that was another one."""
    known = plan is not None and stay.step in plan.index
    said = stay.step
    if plan is not None and known:
        said = desk.text(plan.step(stay.step).say, stay.step)
    hold = f"{desk.words.say('safety-hold')}. " if stay.kind is Asked.HOLD else ""
    asked = f"\n“{stay.asked}”" if stay.asked not in ("", said) else ""
    return f"{hold}{said}{asked}"


def _step(stay: StepRecord, plan: Plan | None, desk: Desk, seqs: Seqs) -> Row:
    limit = ""
    if stay.limit and stay.needed_s is None:
        limit = f"\n{answers.limit(stay.limit, stay.unit, desk)}"
    cells = (
        Cell(desk.clock(stay.left_utc)),
        Cell(_sentence(stay, plan, desk)),
        Cell(f"{answers.answer(stay, desk)}{limit}"),
        Cell(answers.how(stay, desk)),
        Cell(desk.person(stay.worker)),
    )
    return Row(cells, seqs, off=stay.left is not Left.CONFIRMED or stay.kept_limit is False)


def _beside(record: SessionRecord, desk: Desk) -> Table:
    """Return what happened beside the steps, in order of time."""
    found = [*_breaks(record, desk), *_problems(record, desk)]
    for one in record.changes:
        what = f"{desk.person(one.before)} → {desk.person(one.after)}"
        found.append((one.at_utc, "hand-over", what, one.step))
    for back in record.back_steps:
        found.append((back.at_utc, "back", f"{back.step} → {back.to}", back.step))
    for worked in record.worked_out:
        what = f"{worked.calculator}: {worked.answers} → {worked.finding}"
        found.append((worked.at_utc, "worked-out", what, worked.step))
    followed = [(*one, desk.rows.at(record.session, one[0])) for one in found]
    for spoken in remarks_of(record.session, desk):
        told = remark_told(spoken, desk)
        followed.append((spoken.at_utc, "spoken-remark", told, spoken.step, (spoken.seq,)))
    rows = (
        Row((Cell(desk.clock(at)), Cell(desk.say(kind)), Cell(what), Cell(step)), seqs)
        for at, kind, what, step, seqs in sorted(followed, key=lambda one: one[0])
    )
    return desk.table(
        id=f"beside-{record.session}", caption=desk.say("beside-caption"),
        columns={"time": 13, "what": 18, "told": 60, "at-step": 20},
        rows=rows, empty=desk.say("none"),
    )  # fmt: skip


_Happened = tuple[float, str, str, str]
"""When, what kind, what is told of it, at which step."""


def _breaks(record: SessionRecord, desk: Desk) -> Iterator[_Happened]:
    for one in record.breaks:
        until = "–" if one.until_utc is None else desk.clock(one.until_utc)
        what = desk.say("break", because=one.because.replace(" ", "-"), until=until)
        yield one.at_utc, "stood-still", what, one.step


def _problems(record: SessionRecord, desk: Desk) -> Iterator[_Happened]:
    for one in record.problems:
        became = desk.say("became", became=one.became.replace(" ", "-"))
        name = desk.text(one.name, desk.say("no-reason"))
        yield one.at_utc, "problem", f"{name}: {became}", one.step
