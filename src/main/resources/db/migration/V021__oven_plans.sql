-- Plans of the ovens, beside the ledger. A draft may still change; a published plan never does.
create table oven_plan (
    id varchar(43) not null primary key,
    based_on varchar(43) references oven_plan (id),
    made_at timestamp with time zone not null,
    who varchar(36) not null,
    published_at timestamp with time zone,
    published_by varchar(36),
    -- SEARCHING, DONE, BROKEN_OFF, NO_LIBRARY, NOT_FOR_OPENED_DOORS
    search varchar(24) not null,
    late_min bigint not null,
    oven_min bigint not null,
    runs bigint not null,
    bound_late_min bigint,
    bound_oven_min bigint,
    bound_runs bigint
);

create table oven_plan_stay (
    plan varchar(43) not null references oven_plan (id),
    run integer not null,
    oven varchar(40) not null,
    temp_c double precision not null,
    pinned boolean not null,
    tag varchar(40) not null,
    in_at timestamp with time zone not null,
    out_at timestamp with time zone not null,
    primary key (plan, tag)
);

-- What a draft supposes; kept with the plan when it is published.
create table oven_plan_change (
    plan varchar(43) not null references oven_plan (id),
    number integer not null,
    -- NEED, CLOSE, RUSH, MOVE
    kind varchar(8) not null,
    name varchar(40) not null,
    oven varchar(40),
    from_at timestamp with time zone,
    to_at timestamp with time zone,
    positions integer,
    temp_c double precision,
    bake_min integer,
    primary key (plan, number)
);

-- When an oven is out of service.
create table oven_outage (
    id varchar(43) not null primary key,
    oven varchar(40) not null,
    from_at timestamp with time zone not null,
    to_at timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    ended_at timestamp with time zone,
    ended_by varchar(36)
);

-- The site's choices for plans; lines are only added, the newest one counts.
create table oven_plan_rules (
    recorded_at timestamp with time zone not null primary key,
    who varchar(36) not null,
    -- Minutes of the day; both 0: doors are opened at any time.
    opens_min integer not null,
    closes_min integer not null,
    weekends boolean not null,
    fence_min integer not null,
    move_price_min integer not null,
    cool_down_min integer not null,
    turnaround_min integer not null,
    change_min integer not null,
    -- Below 0: no run is opened for lots that leave early or join late.
    door_min integer not null
);
