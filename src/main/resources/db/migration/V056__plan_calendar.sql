-- A lot that nobody needs by a time is to be out so many minutes after it first could be; below 0: whenever it suits.
alter table oven_plan_rules add column patience_min integer default 10080 not null;

-- What calendars of other programs were told of each run: one name for a run as long as it lives, whatever plan it is in.
create table oven_calendar (
    uid varchar(60) not null primary key,
    -- How often it changed since it was first told, and when it did so last.
    sequence integer not null,
    changed_at timestamp with time zone not null,
    cancelled boolean not null,
    -- Where it stands: the last published plan that it is in.
    plan varchar(43) not null references oven_plan (id),
    run integer not null,
    ends_at timestamp with time zone not null
);
create index oven_calendar_ends on oven_calendar (ends_at);

insert into oven_calendar (uid, sequence, changed_at, cancelled, plan, run, ends_at)
select p.id || '-' || cast(s.run as varchar(12)), 0, max(p.published_at), false, p.id, s.run, max(s.out_at)
from oven_plan p join oven_plan_stay s on s.plan = p.id
where p.published_number = (select max(last.published_number) from oven_plan last)
group by p.id, s.run;
