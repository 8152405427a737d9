-- What the kiosk's own review judges more finely than the files before: a day check on a machine
-- that was not in use, and authorities that go by the logarithmic average.
set local role fleet_owner;

-- As before; and a day check is missed only on a day on which its machine was walked and never stood
-- out of service while the check was due. A session of daily work counts for the day whose work it
-- is, any other for the day within whose time for a check it was begun.
create or replace function fleet.late_at(at timestamptz) returns table (
    shop text, name text, kiosk text, practice boolean, machine text, duty text, day date,
    until_at timestamptz, stand text, session text, done_at timestamptz
) language sql stable set search_path = fleet, pg_temp as $$
    with due as (
        select d.*, k.practice, k.whole_until, lead(d.claim_at, 1, 'infinity') over (
            partition by d.kiosk, d.machine, d.procedures order by d.from_at, d.id) as claim_ends
        from fleet.due d join fleet.kiosk k on k.id = d.kiosk
        where d.until_at > late_at.at - interval '8 days' and k.retired_seq is null
          and not exists (select from fleet.kiosk heir where heir.follows = k.id)
    ), late as (
        select d.*, done.session as done, done.last_at as done_at, begun.session as begun
        from due d
        left join lateral (
            select w.session, w.last_at from fleet.session w
            where w.shop = d.shop and w.machine = d.machine and w.procedure = any (d.procedures)
              and w.practice = d.practice and w.ended = 'complete'
              and w.begun_at >= d.claim_at and w.begun_at < d.claim_ends
            order by w.begun_at, w.session limit 1
        ) done on true
        left join lateral (
            select w.session from fleet.session w
            where w.shop = d.shop and w.machine = d.machine and w.procedure = any (d.procedures)
              and w.practice = d.practice
              and w.begun_at >= d.claim_at and w.begun_at < d.claim_ends
            order by w.begun_at desc, w.session desc limit 1
        ) begun on true
        left join lateral (
            select w.ended, w.last_at from fleet.session w
            where w.shop = d.shop and w.machine = d.machine and w.practice = d.practice
              and w.begun_at <= d.until_at
            order by w.begun_at desc, w.session desc limit 1
        ) before on true
        where d.until_at < late_at.at and d.until_at >= late_at.at - interval '1 day'
          and (done.session is null or done.last_at > d.until_at)
          and (done.session is not null or before.ended is null
               or not (before.ended = 'out of service' and before.last_at <= d.until_at))
    ), work as (
        -- All daily work of the days whose check was not made.
        select d.* from due d join late c using (kiosk, machine, day)
        where c.duty = 'check' and c.done is null
    ), walked as materialized (
        select d.kiosk, d.machine, d.day from work d
        where exists (
            select from fleet.session w
            where w.shop = d.shop and w.machine = d.machine and w.practice = d.practice
              and w.procedure = any (d.procedures)
              and w.begun_at >= d.claim_at and w.begun_at < d.claim_ends)
        union
        select d.kiosk, d.machine, d.day from work d
        where d.duty = 'check' and exists (
            select from fleet.session w
            where w.shop = d.shop and w.machine = d.machine and w.practice = d.practice
              and w.begun_at >= d.claim_at and w.begun_at < d.until_at
              and not exists (
                  select from work o
                  where o.kiosk = d.kiosk and o.machine = d.machine
                    and w.procedure = any (o.procedures)))
    ), stood_out as materialized (
        select d.kiosk, d.id from late d
        left join lateral (
            select w.session, w.begun_at from fleet.session w
            where w.shop = d.shop and w.machine = d.machine and w.practice = d.practice
              and w.begun_at <= d.from_at
            order by w.begun_at desc, w.session desc limit 1
        ) standing on true
        where d.duty = 'check' and exists (
            select from fleet.session w
            where w.shop = d.shop and w.machine = d.machine and w.practice = d.practice
              and w.begun_at >= coalesce(standing.begun_at, d.from_at)
              and (w.begun_at > d.from_at or w.session = standing.session)
              and w.begun_at <= d.until_at
              and w.ended = 'out of service' and w.last_at <= d.until_at)
    ), became as (
        select l.*, case
                   when l.done is not null then 'done late'
                   when l.whole_until is null or l.whole_until < l.until_at
                       then 'not heard of since'
                   when stood_out.id is not null then 'out of service'
                   when l.begun is not null then 'begun, not finished'
                   when l.duty = 'check' and walked.day is null then 'not opened'
                   else 'missed'
               end as stand
        from late l
        left join stood_out using (kiosk, id)
        left join walked using (kiosk, machine, day)
    )
    select b.shop, s.name, b.kiosk, b.practice, b.machine, b.duty, b.day, b.until_at, b.stand,
           coalesce(b.done, b.begun, ''), b.done_at
    from became b join fleet.shop s on s.id = b.shop
    where b.stand not in ('out of service', 'not opened')
    order by b.until_at, b.shop, b.machine, b.duty
$$;

-- A result as its report has it: the sign before its number, and the number; none for `spreaders`,
-- and for what is longer than a kiosk takes: it may be more than a number here can hold.
create function fleet.amount(amount text) returns table (sign text, value numeric)
    language sql immutable as $$
    select coalesce(m[1], ''), replace(m[2], ',', '')::numeric
    from regexp_match(
        case when length(amount) <= 120 then lower(btrim(amount)) end,
        '^(<|>|est\.?|~)?\s*((?:[0-9]{1,3}(?:,[0-9]{3})+|[0-9]+)(?:\.[0-9]+)?)$') m
    where m is not null
$$;

create or replace function fleet.exceeds(amount text, most numeric) returns boolean
    language sql immutable as $$
    select case a.sign
        when '<' then case when a.value <= most then false end
        when '>' then case when a.value >= most then true end
        else a.value > most
    end
    from fleet.amount(amount) a
$$;

-- Exact: the scales of the factors are added up.
create aggregate fleet.product (numeric) (sfunc = numeric_mul, stype = numeric, initcond = '1');

-- Where each barrel stands. As before; and where the authority goes by the logarithmic average:
-- action where that of the last four results with a number lies above the strictest limit among the
-- products that were sampled. The product of n results is held against the n-th power of the limit.
-- A less-than result lies between 1 and its bound, a more-than result anywhere above it; counts
-- below 1 are taken as 1.
create or replace view fleet.standing with (security_invoker = true) as
    with judged as (
        select r.shop, r.machine, r.barrel, r.analysis, r.practice, r.day, r.result, l.enforcing,
               fleet.exceeds(r.amount, l.most) as over, a.sign, a.value,
               min(l.most) over (
                   partition by r.shop, r.machine, r.barrel, r.analysis, r.practice
               ) as strictest
        from fleet.result r
        join fleet.shop s on s.id = r.shop
        join fleet.lab_limit l on l.authority = s.authority and l.analysis = r.analysis
                              and l.product = r.product and l.per = r.per
        left join lateral fleet.amount(r.amount) a on true
        where r.struck_seq is null
    ), of_day as (
        select shop, machine, barrel, analysis, practice, day, enforcing,
               case when bool_or(over) then true
                    when bool_and(over is not null) then false end as over
        from judged group by shop, machine, barrel, analysis, practice, day, enforcing
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
    ), with_number as (
        select *, row_number() over (
            partition by shop, machine, barrel, analysis, practice
            order by day desc, result collate "C" desc) as back
        from judged where enforcing = 'log average' and value is not null
    ), average as (
        select shop, machine, barrel, analysis, practice, count(*) as n,
               fleet.product(case when sign = '<' then 1 else greatest(value, 1) end) as low,
               case when not bool_or(sign = '>')
                   then fleet.product(greatest(value, 1)) end as high,
               bool_or(sign = '>') as above,
               fleet.product(strictest) as power
        from with_number where back <= 4 group by shop, machine, barrel, analysis, practice
    )
    select shop, machine, barrel, analysis, practice, last_day, over_of_four, over_of_five,
           case
               when enforcing = 'log average' then
                   case when low > power or above and low = power then 'action'
                        when high <= power then 'clear'
                        else 'unknown' end
               when enforcing = 'each' then
                   case when last_over then 'action' when last_over is null then 'unknown'
                        else 'clear' end
               when over_of_five >= 3 then 'action'
               when over_of_four >= 2 then 'notice'
               when worst_of_five >= 3 or worst_of_four >= 2 then 'unknown'
               else 'clear'
           end as state,
           round(exp(ln(low) / n), 1) as average_least, round(exp(ln(high) / n), 1) as average_most
    from counted left join average using (shop, machine, barrel, analysis, practice);

create or replace view fleet.under_notice with (security_invoker = true) as
    select * from fleet.standing where state in ('notice', 'action');

revoke execute on function fleet.amount(text), fleet.product(numeric) from public;
grant execute on function fleet.amount(text), fleet.product(numeric) to fleet_shop, fleet_reader;
