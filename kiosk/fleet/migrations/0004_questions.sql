-- What the head office asks: who is late, which machines stand under notice, which holds take
-- longest, which kiosks were heard of. Whoever asks sees the rows that are his to see.
set local role fleet_owner;

-- What a kiosk tells of its shop. When something is due is reckoned there, where the opening hours
-- and the time zone are known, some days ahead.
create table fleet.machine (
    shop text not null,
    id text not null,
    kiosk text not null references fleet.kiosk,
    name text not null,
    kind text not null,
    primary key (shop, id)
);
create table fleet.due (
    kiosk text not null references fleet.kiosk,
    id text not null,
    shop text not null,
    duty text not null,
    machine text not null,
    day date not null,
    claim_at timestamptz not null,
    from_at timestamptz not null,
    until_at timestamptz not null,
    procedures text[] not null,
    primary key (kiosk, id)
);
create index on fleet.due (until_at);
comment on column fleet.due.claim_at is 'a session begun from here on counts for it, until that of the next one';

create function fleet.tell(of text, about jsonb) returns void
    language plpgsql security definer set search_path = fleet, pg_temp as $$
declare
    k fleet.kiosk := fleet.mine(of);
begin
    update fleet.kiosk
    set site = about ->> 'site', time_zone = about ->> 'time_zone',
        practice = (about ->> 'practice')::boolean
    where id = of;

    delete from fleet.machine where kiosk = of;
    insert into fleet.machine
    select k.shop, m ->> 'id', of, m ->> 'name', m ->> 'kind'
    from jsonb_array_elements(about -> 'machines') m
    on conflict (shop, id) do update
    set kiosk = excluded.kiosk, name = excluded.name, kind = excluded.kind;

    delete from fleet.due where kiosk = of and from_at > now();
    insert into fleet.due
    select of, d ->> 'id', k.shop, d ->> 'duty', d ->> 'machine', (d ->> 'day')::date,
           to_timestamp((d ->> 'claim_utc')::float8), to_timestamp((d ->> 'from_utc')::float8),
           to_timestamp((d ->> 'until_utc')::float8),
           array(select jsonb_array_elements_text(d -> 'procedures'))
    from jsonb_array_elements(about -> 'dues') d
    on conflict (kiosk, id) do update
    set claim_at = excluded.claim_at, from_at = excluded.from_at, until_at = excluded.until_at,
        procedures = excluded.procedures;
end $$;

-- What became of each due whose time ended in the day before `at`, and was not kept. A shop that has
-- not been heard of since is said to be just that: nobody knows whether it is late.
create function fleet.late_at(at timestamptz) returns table (
    shop text, name text, kiosk text, practice boolean, machine text, duty text, day date,
    until_at timestamptz, stand text, session text, done_at timestamptz
) language sql stable set search_path = fleet, pg_temp as $$
    with due as (
        select d.*, lead(d.claim_at, 1, 'infinity') over (
            partition by d.kiosk, d.machine, d.procedures order by d.from_at, d.id) as claim_ends
        from fleet.due d where d.until_at > late_at.at - interval '8 days'
    )
    select d.shop, s.name, d.kiosk, k.practice, d.machine, d.duty, d.day, d.until_at,
           case
               when done.session is not null then 'done late'
               when k.whole_until is null or k.whole_until < d.until_at then 'not heard of since'
               when begun.session is not null then 'begun, not finished'
               else 'missed'
           end,
           coalesce(done.session, begun.session, ''), done.last_at
    from due d
    join fleet.kiosk k on k.id = d.kiosk
    join fleet.shop s on s.id = d.shop
    left join lateral (
        select w.session, w.last_at from fleet.session w
        where w.shop = d.shop and w.machine = d.machine and w.procedure = any (d.procedures)
          and w.practice = k.practice and w.ended = 'complete'
          and w.begun_at >= d.claim_at and w.begun_at < d.claim_ends
        order by w.begun_at, w.session limit 1
    ) done on true
    left join lateral (
        select w.session from fleet.session w
        where w.shop = d.shop and w.machine = d.machine and w.procedure = any (d.procedures)
          and w.practice = k.practice and w.begun_at >= d.claim_at and w.begun_at < d.claim_ends
        order by w.begun_at desc, w.session desc limit 1
    ) begun on true
    left join lateral (
        select w.ended, w.last_at from fleet.session w
        where w.shop = d.shop and w.machine = d.machine and w.practice = k.practice
          and w.begun_at <= d.until_at
        order by w.begun_at desc, w.session desc limit 1
    ) before on true
    where d.until_at < late_at.at and d.until_at >= late_at.at - interval '1 day'
      and k.retired_seq is null
      and not exists (select from fleet.kiosk heir where heir.follows = k.id)
      and (done.session is null or done.last_at > d.until_at)
      and (done.session is not null or before.ended is null
           or not (before.ended = 'out of service' and before.last_at <= d.until_at))
    order by d.until_at, d.shop, d.machine, d.duty
$$;

create view fleet.late_tonight with (security_invoker = true) as
    select * from fleet.late_at(now());

-- The authorities' limits, where a test of a product has one and no more.
create table fleet.lab_limit (
    authority text not null,
    enforcing text not null,
    analysis text not null,
    product text not null,
    per text not null,
    most numeric not null,
    primary key (authority, analysis, product)
);

-- Whether a result as its report has it lies above a limit; null when it cannot tell: `< 100` does
-- not against 10, `> 5` does not, `spreaders` never does.
create function fleet.exceeds(amount text, most numeric) returns boolean language sql immutable as $$
    select case m[1]
        when '<' then case when replace(m[2], ',', '')::numeric <= most then false end
        when '>' then case when replace(m[2], ',', '')::numeric >= most then true end
        else replace(m[2], ',', '')::numeric > most
    end
    from regexp_match(lower(btrim(amount)),
        '^(<|>|est\.?|~)?\s*((?:[0-9]{1,3}(?:,[0-9]{3})+|[0-9]+)(?:\.[0-9]+)?)$') m
$$;

-- Where each barrel stands. Notice: 2 of the last 4 sample days are over the limit; action: 3 of the
-- last 5 (READ: Tex. Admin. Code 25-217.45(c)). Of one day the worst counts. Where an authority
-- goes by the logarithmic average, or none was named for the shop, it is not judged here.
create view fleet.standing with (security_invoker = true) as
    with of_day as (
        select r.shop, r.machine, r.barrel, r.analysis, r.practice, r.day, l.enforcing,
               case when bool_or(e.over) then true
                    when bool_and(e.over is not null) then false end as over
        from fleet.result r
        join fleet.shop s on s.id = r.shop
        join fleet.lab_limit l on l.authority = s.authority and l.analysis = r.analysis
                              and l.product = r.product and l.per = r.per
        cross join lateral (select fleet.exceeds(r.amount, l.most) as over) e
        where r.struck_seq is null
        group by r.shop, r.machine, r.barrel, r.analysis, r.practice, r.day, l.enforcing
    ), numbered as (
        select *, row_number() over (
            partition by shop, machine, barrel, analysis, practice order by day desc) as back
        from of_day
    ), counted as (
        select shop, machine, barrel, analysis, practice, enforcing, max(day) as last_day,
               bool_or(over) filter (where back = 1) as last_over,
               count(*) filter (where over and back <= 4) as over_of_four,
               count(*) filter (where over and back <= 5) as over_of_five,
               count(*) filter (where over is not false and back <= 4) as worst_of_four,
               count(*) filter (where over is not false and back <= 5) as worst_of_five
        from numbered group by shop, machine, barrel, analysis, practice, enforcing
    )
    select shop, machine, barrel, analysis, practice, last_day, over_of_four, over_of_five,
           case
               when enforcing = 'log average' then 'not judged'
               when enforcing = 'each' then
                   case when last_over then 'action' when last_over is null then 'unknown'
                        else 'clear' end
               when over_of_five >= 3 then 'action'
               when over_of_four >= 2 then 'notice'
               when worst_of_five >= 3 or worst_of_four >= 2 then 'unknown'
               else 'clear'
           end as state
    from counted;

create view fleet.under_notice with (security_invoker = true) as
    select * from fleet.standing where state in ('notice', 'action');

-- How long safety holds take, longest first.
create function fleet.holds_since(since timestamptz) returns table (
    practice boolean, procedure text, step text, strength text, times bigint, shops bigint,
    median_s numeric, ninth_of_ten_s numeric, longest_s numeric
) language sql stable set search_path = fleet, pg_temp as $$
    select s.practice, s.procedure, h.step, h.strength, count(*), count(distinct h.shop),
           round(percentile_cont(0.5) within group (order by h.seconds)::numeric, 1),
           round(percentile_cont(0.9) within group (order by h.seconds)::numeric, 1),
           round(max(h.seconds), 1)
    from fleet.hold_time h join fleet.session s using (shop, session)
    where h.at >= since
    group by s.practice, s.procedure, h.step, h.strength
    order by 7 desc, 2, 3
$$;

create view fleet.longest_holds with (security_invoker = true) as
    select * from fleet.holds_since(now() - interval '30 days');

-- Each kiosk, its journal's head, and how much about it is still to be looked at.
create view fleet.heard with (security_invoker = true) as
    select k.shop, k.id as kiosk, k.site, k.practice, k.head_seq, k.head_hash, k.last_heard,
           k.whole_until, k.follows, k.retired_seq,
           (select count(*) from fleet.trouble t where t.kiosk = k.id and t.settled_at is null)
               as troubles
    from fleet.kiosk k;

-- Someone has looked at a trouble. It stays, and what was done about it stands beside it.
create function fleet.settle(trouble bigint, by_whom text, with_remark text) returns boolean
    language plpgsql security definer set search_path = fleet, pg_temp as $$
begin
    update fleet.trouble set settled_by = by_whom, settled_at = now(), remark = with_remark
    where id = settle.trouble and settled_at is null;
    return found;
end $$;

do $$
declare
    name text;
begin
    foreach name in array array['machine', 'due', 'session', 'hold_time', 'result'] loop
        execute format('alter table fleet.%I enable row level security', name);
        execute format('create policy own on fleet.%I for select to fleet_shop '
                       'using (shop = (select fleet.my_shop()))', name);
        execute format('create policy everything on fleet.%I for select to fleet_reader '
                       'using (true)', name);
    end loop;
end $$;

grant select on fleet.machine, fleet.due, fleet.session, fleet.hold_time, fleet.result,
    fleet.lab_limit, fleet.late_tonight, fleet.standing, fleet.under_notice, fleet.longest_holds,
    fleet.heard to fleet_shop, fleet_reader;
revoke execute on function fleet.tell(text, jsonb), fleet.settle(bigint, text, text) from public;
grant execute on function fleet.tell(text, jsonb) to fleet_shop;
grant execute on function fleet.settle(bigint, text, text) to fleet_reader;
grant execute on function fleet.late_at(timestamptz), fleet.holds_since(timestamptz),
    fleet.exceeds(text, numeric), fleet.fact(text) to fleet_shop, fleet_reader;
