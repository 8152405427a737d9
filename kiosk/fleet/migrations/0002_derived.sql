-- What is made of the journal, so that questions are answered fast. All of it may be deleted and is
-- made again by fleet.rebuild().
set local role fleet_owner;

create table fleet.session (
    shop text not null,
    session text not null,
    kiosk text not null,
    first_seq bigint not null,
    last_seq bigint not null,
    machine text not null,
    procedure text not null,
    version int not null,
    worker text not null,
    practice boolean not null,
    begun_at timestamptz not null,
    last_at timestamptz not null,
    ended text not null default 'open',
    primary key (session, shop)
);
create index on fleet.session (shop, machine, begun_at);

create table fleet.hold_time (
    kiosk text not null,
    seq bigint not null,
    shop text not null,
    session text not null,
    step text not null,
    strength text not null,
    entered_seq bigint not null,
    seconds numeric not null,
    at timestamptz not null,
    primary key (kiosk, seq)
);
create index on fleet.hold_time (at);
comment on table fleet.hold_time is
    'a safety hold from its step''s entry to its confirmation, by the monotonic clock of one boot, without a pause between';

create table fleet.result (
    shop text not null,
    result text not null,
    kiosk text not null,
    seq bigint not null,
    machine text not null,
    barrel text not null,
    day date not null,
    product text not null,
    analysis text not null,
    amount text not null,
    per text not null,
    practice boolean not null,
    struck_seq bigint,
    primary key (result, shop)
);

-- The journal's JSON as jsonb. JSON may escape what PostgreSQL's text cannot hold (a NUL, half a
-- surrogate pair); here, and here alone, the replacement character stands for it.
create function fleet.fact(body text) returns jsonb language sql immutable as $$
    select regexp_replace(body, '\\u(0000|d[89a-f][0-9a-f]{2})', '\\ufffd', 'gi')::jsonb -> 'fact'
$$;

-- Derives from the rows from_seq to to_seq of a kiosk's journal; again with the same result.
create function fleet.derive(of text, from_seq bigint, to_seq bigint) returns void
    language plpgsql set search_path = fleet, pg_temp as $$
declare
    of_shop text := (select k.shop from fleet.kiosk k where k.id = of);
begin
    insert into fleet.session
    select of_shop, j.session, of, j.seq, j.seq, f ->> 'machine', f ->> 'procedure',
           (f ->> 'version')::int, f ->> 'worker', (f ->> 'practice')::boolean,
           j.utc::timestamptz, j.utc::timestamptz
    from fleet.journal j, fleet.fact(j.body) f
    where j.kiosk = of and j.seq between from_seq and to_seq and j.kind = 'SessionStarted'
    on conflict do nothing;

    -- Materialized, so that the batch is read once whatever is known of the tables' sizes.
    with n as materialized (
        select j.session, max(j.seq) as seq, max(j.utc)::timestamptz as at,
               max(case
                   when j.kind = 'SessionCompleted' then 'complete'
                   when j.kind = 'SessionAborted' and (fleet.fact(j.body) ->> 'out_of_service')::boolean
                       then 'out of service'
                   when j.kind = 'SessionAborted' then 'ended early'
               end) as ended
        from fleet.journal j
        where j.kiosk = of and j.seq between from_seq and to_seq
        group by j.session
    )
    update fleet.session s
    set last_seq = greatest(s.last_seq, n.seq), last_at = greatest(s.last_at, n.at),
        ended = coalesce(n.ended, s.ended)
    from n
    where s.session = n.session and s.shop = of_shop;

    -- The entry is looked for backwards along the key: a session's rows lie close together.
    with c as materialized (
        select j.seq, j.session, j.mono_us, j.boot, j.utc, f ->> 'step' as step,
               f ->> 'strength' as strength
        from fleet.journal j, fleet.fact(j.body) f
        where j.kiosk = of and j.seq between from_seq and to_seq and j.kind = 'StepConfirmed'
          and f ->> 'strength' in ('phrase', 'second person')
    )
    insert into fleet.hold_time
    select of, c.seq, of_shop, c.session, c.step, c.strength, e.seq,
           (c.mono_us - e.mono_us) / 1e6, c.utc::timestamptz
    from c
    join fleet.session s on s.session = c.session and s.shop = of_shop and s.kiosk = of
    cross join lateral (
        select seq, kind, mono_us, boot from fleet.journal
        where kiosk = of and seq < c.seq and seq > s.first_seq and session = c.session
          and (kind = 'SessionHeld' or
               kind = 'StepEntered' and fleet.fact(body) ->> 'step' = c.step)
        order by seq desc limit 1
    ) e
    where e.kind = 'StepEntered' and e.boot = c.boot
    on conflict do nothing;

    insert into fleet.result
    select of_shop, f ->> 'result', of, j.seq, f ->> 'machine', f ->> 'barrel',
           (f ->> 'day')::date, f ->> 'product', f ->> 'analysis', f ->> 'amount', f ->> 'per',
           (f ->> 'practice')::boolean
    from fleet.journal j, fleet.fact(j.body) f
    where j.kiosk = of and j.seq between from_seq and to_seq and j.kind = 'ResultEntered'
    on conflict do nothing;

    with n as materialized (
        select fleet.fact(j.body) ->> 'result' as result, j.seq
        from fleet.journal j
        where j.kiosk = of and j.seq between from_seq and to_seq and j.kind = 'ResultStruck'
    )
    update fleet.result r
    set struck_seq = n.seq
    from n
    where r.result = n.result and r.shop = of_shop and r.struck_seq is null;

    update fleet.kiosk k
    set retired_seq = j.seq
    from fleet.journal j
    where k.id = of and j.kiosk = of and j.seq between from_seq and to_seq
      and j.kind = 'KioskRetired';
end $$;

-- Makes all of it again. A kiosk that follows another comes after it.
create function fleet.rebuild() returns void
    language plpgsql set search_path = fleet, pg_temp as $$
declare
    k record;
begin
    truncate fleet.session, fleet.hold_time, fleet.result;
    for k in select id, begins_after, head_seq from fleet.kiosk order by begins_after, id loop
        perform fleet.derive(k.id, k.begins_after + 1, k.head_seq);
    end loop;
end $$;
