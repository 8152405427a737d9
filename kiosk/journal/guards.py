"""Triggers that keep an honest hand from changing the journal; the chain tells of any other."""

from __future__ import annotations

from kiosk.journal.chain import FIRST, RETIRED

_ONLY_APPENDED = f"""
create trigger if not exists journal_only_appended before insert on journal
when new.seq is not (select coalesce(max(seq), 0) + 1 from journal)
  or new.prev is not coalesce((select hash from journal order by seq desc limit 1), '{FIRST}')
begin select raise(abort, 'the journal is append-only: a row follows the last one'); end;
create trigger if not exists journal_never_retired before insert on journal
when (select kind = '{RETIRED}' and kiosk = new.kiosk from journal order by seq desc limit 1)
begin select raise(abort, 'this kiosk is retired: its journal takes no more rows'); end;
create trigger if not exists kiosk_never_replaced before insert on kiosk
when exists (select 1 from kiosk where id = new.id)
begin select raise(abort, 'the journal is append-only'); end;
"""  # noqa: S608 (of our own constants)
_NEVER = """
create trigger if not exists {table}_never_updated before update on {table}
begin select raise(abort, 'the journal is append-only'); end;
create trigger if not exists {table}_never_deleted before delete on {table}
begin select raise(abort, 'the journal is append-only'); end;
"""

# 'insert or replace' deletes without a delete trigger unless recursive_triggers is on; the insert
# triggers stop it everywhere.
GUARDS = (
    "".join(_NEVER.format(table=one) for one in ("journal", "kiosk", "walked")) + _ONLY_APPENDED
)
TRIGGERS = (
    "journal_never_updated", "journal_never_deleted", "journal_only_appended",
    "journal_never_retired", "kiosk_never_updated", "kiosk_never_deleted", "kiosk_never_replaced",
    "walked_never_updated", "walked_never_deleted",
)  # fmt: skip
"""Names of all of them."""
