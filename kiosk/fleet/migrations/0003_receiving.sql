-- How rows are received. A kiosk says where its journal stands, copies the rows that follow into
-- pg_temp.arriving, and calls fleet.take, which verifies the chain before anything is kept.
set local role fleet_owner;

-- The hash of a row, as the kiosk reckons it: each covered field as text, followed by a line feed.
create function fleet.row_hash(
    prev text, seq bigint, kiosk text, session text, kind text, utc text, mono_us bigint, boot text,
    body text
) returns text language sql immutable as $$
    select encode(sha256(convert_to(
        prev || E'\n' || seq::text || E'\n' || kiosk || E'\n' || session || E'\n' || kind || E'\n'
        || utc || E'\n' || mono_us::text || E'\n' || boot || E'\n' || body || E'\n', 'UTF8')), 'hex')
$$;

create function fleet.note(of text, kind text, seq bigint, hash text, what text) returns void
    language sql set search_path = fleet, pg_temp as $$
    insert into fleet.trouble as t (kiosk, kind, seq, hash, what)
    values (of, note.kind, note.seq, note.hash, note.what)
    on conflict (kiosk, kind, seq, hash)
    do update set last_seen = now(), times = t.times + 1, what = excluded.what
$$;

-- A shop's own kiosk, locked until the transaction ends, so that two senders take turns.
create function fleet.mine(of text) returns fleet.kiosk
    language plpgsql set search_path = fleet, pg_temp as $$
declare
    found_kiosk fleet.kiosk;
begin
    select * into found_kiosk from fleet.kiosk where id = of and shop = fleet.my_shop() for update;
    if found_kiosk.id is null then
        raise exception 'the kiosk % is not of the shop of %', of, session_user
            using errcode = 'insufficient_privilege';
    end if;
    return found_kiosk;
end $$;

-- Where the head office stands with a kiosk. One that was never heard of is of the shop that says
-- its id first.
create function fleet.hello(of text)
    returns table (head_seq bigint, head_hash text, said_at timestamptz)
    language plpgsql security definer set search_path = fleet, pg_temp as $$
#variable_conflict use_column
begin
    if fleet.my_shop() is null then
        raise exception '% ships for no shop', session_user using errcode = 'insufficient_privilege';
    end if;
    insert into fleet.kiosk (id, shop) values (of, fleet.my_shop()) on conflict do nothing;
    perform fleet.mine(of);
    update fleet.kiosk set last_heard = now() where id = of;
    create temporary table if not exists arriving (like fleet.journal) on commit delete rows;
    execute format('grant insert on pg_temp.arriving to %I', session_user);
    return query select k.head_seq, k.head_hash, now() from fleet.kiosk k where k.id = of;
end $$;

-- True when this very row is here, in the journal or in a branch. Each hash covers all before it, so
-- that a row is known only when all rows before it are.
create function fleet.knows(of text, at bigint, with_hash text) returns boolean
    language sql stable security definer set search_path = fleet, pg_temp as $$
    select exists (select from fleet.kiosk where id = of and shop = fleet.my_shop())
       and (exists (select from fleet.journal where kiosk = of and seq = at and hash = with_hash)
         or exists (select from fleet.branch where kiosk = of and seq = at and hash = with_hash))
$$;

-- A kiosk whose journal ends before the last row that came from it: an old backup, or one cut short.
create function fleet.behind(of text, at bigint, with_hash text) returns void
    language plpgsql security definer set search_path = fleet, pg_temp as $$
declare
    k fleet.kiosk := fleet.mine(of);
begin
    if at < k.head_seq then
        perform fleet.note(of, 'old backup', at, with_hash, format(
            'its journal ends at row %s, and rows up to %s have come from it before: an old backup '
            'was put back, or the journal was cut short', at, k.head_seq));
    end if;
end $$;

-- All that the kiosk had on its disk when it said hello has come.
create function fleet.whole(of text, since timestamptz) returns void
    language plpgsql security definer set search_path = fleet, pg_temp as $$
begin
    perform fleet.mine(of);
    update fleet.kiosk set whole_until = greatest(whole_until, least(since, now())) where id = of;
end $$;

-- Where the first row of a continued journal hangs on: the last row that it took over. Returns false
-- when that row is not here.
create function fleet.hang_on(of text, at bigint, before text, body text) returns boolean
    language plpgsql set search_path = fleet, pg_temp as $$
declare
    old fleet.kiosk;
begin
    select k.* into old from fleet.kiosk k
    join fleet.kiosk new on new.id = of and new.shop = k.shop
    where k.id = fleet.fact(body) ->> 'kiosk'
      and exists (select from fleet.journal j
                  where j.kiosk = k.id and j.seq = at - 1 and j.hash = before);
    if old.id is null then
        return false;
    end if;
    update fleet.kiosk
    set follows = old.id, begins_after = at - 1, head_seq = at - 1, head_hash = before
    where id = of;
    if old.head_seq >= at then
        perform fleet.note(of, 'left behind', at, '', format(
            'it continues kiosk %s from row %s, and that one had sent rows up to %s: what lies '
            'between stands in the old journal alone', old.id, at - 1, old.head_seq));
    end if;
    return true;
end $$;

-- Takes the rows of one kiosk out of pg_temp.arriving. Rows that are here already are left alone;
-- rows that part from the journal go into fleet.branch. `trouble` is empty when every row is here
-- now, else it says why the rows from `bad_seq` on were not taken.
create function fleet.take(
    of text, out taken bigint, out known bigint, out aside bigint, out bad_seq bigint,
    out trouble text
) language plpgsql security definer set search_path = fleet, pg_temp as $$
declare
    k fleet.kiosk := fleet.mine(of);
    head record;
    arrived bigint;
    parted bigint;
begin
    taken := 0; known := 0; aside := 0; trouble := '';
    -- Nobody but hello() can make a table that fleet_owner owns: no other will be read.
    if not exists (select from pg_class where oid = to_regclass('pg_temp.arriving')
                   and relowner = 'fleet_owner'::regrole and relkind = 'r') then
        raise exception 'say hello first';
    end if;

    select count(*),
           min(a.seq) filter (where not sound or a.seq <> coalesce(seq_before + 1, a.seq)
                              or a.prev <> coalesce(hash_before, a.prev))
    into arrived, bad_seq
    from (
        select r.seq, r.prev, lag(r.seq) over w as seq_before, lag(r.hash) over w as hash_before,
               r.hash = fleet.row_hash(r.prev, r.seq, r.kiosk, r.session, r.kind, r.utc, r.mono_us,
                                       r.boot, r.body) as sound
        from pg_temp.arriving r where r.kiosk = of window w as (order by r.seq)
    ) a;
    if bad_seq is not null then
        trouble := format('row %s was altered, or does not follow the row before it', bad_seq);
        perform fleet.note(of, 'altered', bad_seq, '', trouble);
    end if;
    select r.seq, r.prev, r.kind, r.body into head
    from pg_temp.arriving r where r.kiosk = of and r.seq < coalesce(bad_seq, 9e18)
    order by r.seq limit 1;
    if head.seq is null then
        return;
    end if;

    if k.head_seq = 0 and head.seq > 1 and head.kind = 'KioskMoved'
       and fleet.hang_on(of, head.seq, head.prev, head.body) then
        k := fleet.mine(of);
    end if;

    -- Does the row before the first one stand in the journal?
    if (head.seq = 1 and head.prev = repeat('0', 64))
       or (head.seq = k.head_seq + 1 and head.prev = k.head_hash)
       or exists (select from fleet.journal j
                  where j.kiosk = of and j.seq = head.seq - 1 and j.hash = head.prev) then
        select count(*) into known
        from pg_temp.arriving r join fleet.journal j using (kiosk, seq, hash)
        where r.kiosk = of and r.seq <= k.head_seq and r.seq < coalesce(bad_seq, 9e18);
        parted := head.seq + known;
        if parted <= k.head_seq and parted < coalesce(bad_seq, head.seq + arrived) then
            perform fleet.note(
                of, 'fork', parted, (select r.hash from pg_temp.arriving r
                                     where r.kiosk = of and r.seq = parted),
                format('a second row %s came, with another hash: two journals go by this id', parted));
            aside := fleet.set_aside(of, parted, bad_seq);
            return;
        end if;
        insert into fleet.journal (kiosk, seq, session, kind, utc, mono_us, boot, body, prev, hash)
        select r.kiosk, r.seq, r.session, r.kind, r.utc, r.mono_us, r.boot, r.body, r.prev, r.hash
        from pg_temp.arriving r
        where r.kiosk = of and r.seq > k.head_seq and r.seq < coalesce(bad_seq, 9e18)
        order by r.seq;
        get diagnostics taken = row_count;
        if taken > 0 then
            update fleet.kiosk set head_seq = k.head_seq + taken,
                head_hash = (select j.hash from fleet.journal j
                             where j.kiosk = of and j.seq = k.head_seq + taken)
            where id = of;
            perform fleet.understand(of, k.head_seq + 1, k.head_seq + taken);
            perform fleet.spoke_again(k, taken);
        end if;
    elsif exists (select from fleet.branch b
                  where b.kiosk = of and b.seq = head.seq - 1 and b.hash = head.prev) then
        aside := fleet.set_aside(of, head.seq, bad_seq);
    else
        bad_seq := head.seq;
        trouble := format('what comes before row %s is not here: the journal here ends at row %s',
                          head.seq, k.head_seq);
        perform fleet.note(of, 'gap', head.seq, head.prev, trouble);
    end if;
end $$;

create function fleet.set_aside(of text, from_seq bigint, to_seq bigint) returns bigint
    language plpgsql set search_path = fleet, pg_temp as $$
declare
    moved bigint;
begin
    insert into fleet.branch (kiosk, seq, session, kind, utc, mono_us, boot, body, prev, hash)
    select r.kiosk, r.seq, r.session, r.kind, r.utc, r.mono_us, r.boot, r.body, r.prev, r.hash
    from pg_temp.arriving r
    where r.kiosk = of and r.seq >= from_seq and r.seq < coalesce(to_seq, 9e18)
    on conflict do nothing;
    get diagnostics moved = row_count;
    return moved;
end $$;

-- What cannot be understood is kept all the same: the journal takes every row that is sound.
create function fleet.understand(of text, from_seq bigint, to_seq bigint) returns void
    language plpgsql set search_path = fleet, pg_temp as $$
begin
    perform fleet.derive(of, from_seq, to_seq);
exception when data_exception or not_null_violation then
    perform fleet.note(of, 'not understood', from_seq, '', format(
        'rows %s to %s are kept, and count in no view: %s', from_seq, to_seq, sqlerrm));
end $$;

-- A kiosk that was retired, or that another one follows, has no more to say.
create function fleet.spoke_again(k fleet.kiosk, rows bigint) returns void
    language plpgsql set search_path = fleet, pg_temp as $$
declare
    heir text := (select id from fleet.kiosk where follows = k.id order by id limit 1);
begin
    if k.retired_seq is not null or heir is not null then
        perform fleet.note(k.id, 'two devices', k.head_seq + 1, '', format(
            '%s rows came after it was %s', rows,
            case when heir is null then 'retired' else 'continued as ' || heir end));
    end if;
end $$;

-- Checks a kiosk's whole journal again, as it lies here: null, or the first row that is wrong.
create function fleet.first_bad_row(of text) returns bigint
    language plpgsql stable set search_path = fleet, pg_temp as $$
declare
    k fleet.kiosk := (select k from fleet.kiosk k where k.id = of);
    begins_with text := coalesce(
        (select j.hash from fleet.journal j where j.kiosk = k.follows and j.seq = k.begins_after),
        repeat('0', 64));
begin
    return (
        select min(a.seq) from (
            select j.seq,
                   j.hash = fleet.row_hash(j.prev, j.seq, j.kiosk, j.session, j.kind, j.utc,
                                           j.mono_us, j.boot, j.body)
                   and j.seq = lag(j.seq, 1, k.begins_after) over w + 1
                   and j.prev = lag(j.hash, 1, begins_with) over w as good
            from fleet.journal j where j.kiosk = of window w as (order by j.seq)
        ) a where not a.good);
end $$;

revoke execute on all functions in schema fleet from public;
grant execute on function fleet.my_shop(), fleet.first_bad_row(text),
    fleet.row_hash(text, bigint, text, text, text, text, bigint, text, text)
    to fleet_shop, fleet_reader;
grant execute on function fleet.hello(text), fleet.knows(text, bigint, text),
    fleet.behind(text, bigint, text), fleet.whole(text, timestamptz), fleet.take(text)
    to fleet_shop;
