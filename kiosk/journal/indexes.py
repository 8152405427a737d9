"""What makes a journal of ten years quick to ask: partial indexes, and the queries that use them.

An index is derived from the rows and covered by no hash. A query must word the condition of its
index as the index does, or SQLite will not use it.
"""

from __future__ import annotations

from typing import Final

ENDS: Final = "kind in ('SessionCompleted', 'SessionAborted')"
_MOVES = """kind in
    ('SessionStarted', 'SessionHeld', 'SessionResumed', 'SessionCompleted', 'SessionAborted')"""
_MACHINE = "case when json_valid(body) then json_extract(body, '$.fact.machine') end"
"""Of a session's beginning. A body that was tampered with must not keep the journal closed."""

_WORKER = "case when json_valid(body) then json_extract(body, '$.fact.worker') end"

_REPLACED = """kind = 'StepConfirmed'
    and case when json_valid(body) then json_extract(body, '$.fact.answer') end = 'replaced'"""
"""The inspection of a wearing part that was replaced: no other step is answered so."""

INDEXES: Final = f"""
create index if not exists journal_begun on journal ({_MACHINE}, seq)
    where kind = 'SessionStarted';
create index if not exists journal_begun_by on journal ({_WORKER}, seq)
    where kind = 'SessionStarted';
create index if not exists journal_ended on journal (session) where {ENDS};
create index if not exists journal_moves on journal (seq) where {_MOVES};
create index if not exists journal_replaced on journal (seq) where {_REPLACED};
create index if not exists journal_shop on journal (kind, seq) where session = 'shop';
"""

_EACH_SESSION = """
with recursive each(session) as (
    select min(session) from journal
    union all
    select (select min(session) from journal where session > each.session) from each
    where each.session is not null
)
select session from each where session is not null and session <> 'shop'
"""
"""Leaps in the index from one session to the next, past their rows."""
_OLDEST_FIRST = "order by (select min(seq) from journal where journal.session = each.session)"

SESSIONS: Final = f"{_EACH_SESSION} {_OLDEST_FIRST}"
OPEN_SESSIONS: Final = f"""{_EACH_SESSION}
    and not exists (select 1 from journal where journal.session = each.session and {ENDS})
    {_OLDEST_FIRST}
"""  # noqa: S608 (it holds no values, as the next ones)

WALKED: Final = f"""
select begun.session from journal as begun indexed by journal_begun
where begun.kind = 'SessionStarted' and {_MACHINE} = ?
    and json_extract(begun.body, '$.fact.procedure') = ?
    and json_extract(begun.body, '$.fact.practice') = ?
    and exists (select 1 from journal where journal.session = begun.session
                and {ENDS} and kind = 'SessionCompleted')
order by begun.seq desc limit ?
"""  # noqa: S608

WALKS_DONE: Final = f"""
select count(*) from (
    select 1 from journal as begun indexed by journal_begun_by
    where begun.kind = 'SessionStarted' and {_WORKER} = ?
        and json_extract(begun.body, '$.fact.procedure') = ?
        and json_extract(begun.body, '$.fact.practice') = ?
        and exists (select 1 from journal where journal.session = begun.session
                    and {ENDS} and kind = 'SessionCompleted')
    limit ?
)
"""  # noqa: S608

RECENT: Final = f"""
select seq, session, kind, utc, mono_us, boot, body from journal indexed by journal_begun
where kind = 'SessionStarted' and {_MACHINE} = ? and json_extract(body, '$.fact.practice') = ?
order by seq desc limit ?
"""  # noqa: S608

FIRST_BEGUN: Final = f"""
select kind, utc, mono_us, boot, body from journal indexed by journal_begun
where kind = 'SessionStarted' and {_MACHINE} = ? and json_extract(body, '$.fact.practice') = ?
order by seq limit 1
"""  # noqa: S608

REPLACED: Final = f"""
select session, kind, utc, mono_us, boot, body from journal indexed by journal_replaced
where {_REPLACED} order by seq desc
"""  # noqa: S608

ENDED: Final = f"select 1 from journal where session = ? and {ENDS} limit 1"  # noqa: S608

BEGUN: Final = """
select count(*) from journal indexed by journal_begun
where kind = 'SessionStarted' and seq > ? and seq <= ?
"""

LAST_BEGUN: Final = f"""
select seq from journal where kind = 'SessionStarted' and {_MACHINE} = ?
    and json_extract(body, '$.fact.practice') = ?
order by seq desc limit 1
"""  # noqa: S608
MOVES_SINCE: Final = f"""
select session, kind, utc, mono_us, boot, body from journal as moved
where {_MOVES} and seq >= ? and exists (
    select 1 from journal as begun
    where begun.session = moved.session and begun.kind = 'SessionStarted'
        and json_extract(begun.body, '$.fact.machine') = ?
        and json_extract(begun.body, '$.fact.practice') = ?
)
order by seq
"""  # noqa: S608
