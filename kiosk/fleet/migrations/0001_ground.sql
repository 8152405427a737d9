-- Roles, the tables that hold what kiosks have sent, and who may see which rows.
--
-- Roles belong to the whole server, so that they may be there already. Nobody logs in as
-- fleet_owner; each shop has a login of its own in fleet_shop; people of the head office are in
-- fleet_reader.
do $$
declare
    wanted text;
begin
    foreach wanted in array array['fleet_owner', 'fleet_shop', 'fleet_reader'] loop
        if not exists (select from pg_roles where rolname = wanted) then
            begin
                execute format('create role %I nologin', wanted);
            exception when duplicate_object then null;
            end;
        end if;
    end loop;
end $$;
grant fleet_owner to current_user;

create schema fleet authorization fleet_owner;
set local role fleet_owner;

create table fleet.migration (
    number int primary key,
    name text not null,
    sha256 text not null,
    at timestamptz not null default now()
);

create table fleet.shop (
    id text primary key check (id ~ '^[a-z0-9][a-z0-9_-]{0,39}$'),
    role name not null unique,
    name text not null,
    authority text not null default '',
    admitted_at timestamptz not null default now()
);
comment on column fleet.shop.role is 'the login that ships for this shop';
comment on column fleet.shop.authority is 'whose limits its laboratory results are judged by; none is taken unless it is said';

create table fleet.kiosk (
    id text primary key,
    shop text not null references fleet.shop,
    head_seq bigint not null default 0,
    head_hash text not null default repeat('0', 64),
    follows text references fleet.kiosk,
    begins_after bigint not null default 0,
    retired_seq bigint,
    site text not null default '',
    time_zone text not null default '',
    practice boolean not null default false,
    first_heard timestamptz not null default now(),
    last_heard timestamptz not null default now(),
    whole_until timestamptz
);
comment on column fleet.kiosk.head_seq is 'last row of its journal that is here; all before it are here too';
comment on column fleet.kiosk.follows is 'the kiosk whose journal this one continues, from the row after begins_after';
comment on column fleet.kiosk.whole_until is 'all that it had on its disk at this time is here';
create index on fleet.kiosk (shop);

-- The journal, as hashed. It is parted by kiosk and not by time: PostgreSQL keeps a key unique only
-- when the key holds the columns that part the table, and what must be unique is (kiosk, seq). With
-- the time in the key, one row could come twice with two times, which is the very fork to be found.
-- Nothing is ever dropped from it by age, which is what parting by time is good for.
create table fleet.journal (
    kiosk text not null,
    seq bigint not null check (seq > 0),
    session text not null,
    kind text not null,
    utc text not null,
    mono_us bigint not null,
    boot text not null,
    body text not null,
    prev text not null,
    hash text not null,
    primary key (kiosk, seq)
) partition by hash (kiosk);

-- Rows of a journal that parted from what is in fleet.journal: another row under the same seq, and
-- what follows it. They are kept for people to look at, and count nowhere.
create table fleet.branch (
    like fleet.journal,
    arrived_at timestamptz not null default now(),
    primary key (kiosk, seq, hash)
);

create function fleet.refuse_change() returns trigger language plpgsql as $$
begin
    raise exception 'the journal is append-only';
end $$;

create trigger journal_append_only before update or delete on fleet.journal
    for each row execute function fleet.refuse_change();
create trigger journal_never_emptied before truncate on fleet.journal
    for each statement execute function fleet.refuse_change();
create trigger branch_append_only before update or delete on fleet.branch
    for each row execute function fleet.refuse_change();
create trigger branch_never_emptied before truncate on fleet.branch
    for each statement execute function fleet.refuse_change();

do $$
begin
    for n in 0..31 loop
        execute format(
            'create table fleet.journal_%s partition of fleet.journal '
            'for values with (modulus 32, remainder %s)', to_char(n, 'FM00'), n);
        execute format(
            'create trigger journal_never_emptied before truncate on fleet.journal_%s '
            'for each statement execute function fleet.refuse_change()', to_char(n, 'FM00'));
    end loop;
end $$;

-- What people must look at. The same finding is kept once, with how often it came.
create table fleet.trouble (
    id bigint generated always as identity primary key,
    kiosk text not null references fleet.kiosk,
    kind text not null,
    seq bigint not null,
    hash text not null default '',
    what text not null,
    first_seen timestamptz not null default now(),
    last_seen timestamptz not null default now(),
    times int not null default 1,
    settled_by text,
    settled_at timestamptz,
    remark text,
    unique (kiosk, kind, seq, hash)
);

-- The shop of the login that is at work; null for everybody else.
create function fleet.my_shop() returns text
    language sql stable security definer set search_path = fleet, pg_temp
    as $$ select id from fleet.shop where role = session_user $$;

grant usage on schema fleet to fleet_shop, fleet_reader;
grant select on fleet.shop, fleet.kiosk, fleet.journal, fleet.branch, fleet.trouble
    to fleet_shop, fleet_reader;

-- A shop reads its own rows. It writes none by itself: what it sends goes through fleet.take, which
-- asks the same.
alter table fleet.shop enable row level security;
alter table fleet.kiosk enable row level security;
alter table fleet.journal enable row level security;
alter table fleet.branch enable row level security;
alter table fleet.trouble enable row level security;
create policy own on fleet.shop for select to fleet_shop using (id = (select fleet.my_shop()));
create policy own on fleet.kiosk for select to fleet_shop using (shop = (select fleet.my_shop()));
create policy own on fleet.journal for select to fleet_shop
    using (kiosk in (select id from fleet.kiosk where shop = (select fleet.my_shop())));
create policy own on fleet.branch for select to fleet_shop
    using (kiosk in (select id from fleet.kiosk where shop = (select fleet.my_shop())));
create policy own on fleet.trouble for select to fleet_shop
    using (kiosk in (select id from fleet.kiosk where shop = (select fleet.my_shop())));
create policy everything on fleet.shop for select to fleet_reader using (true);
create policy everything on fleet.kiosk for select to fleet_reader using (true);
create policy everything on fleet.journal for select to fleet_reader using (true);
create policy everything on fleet.branch for select to fleet_reader using (true);
create policy everything on fleet.trouble for select to fleet_reader using (true);
