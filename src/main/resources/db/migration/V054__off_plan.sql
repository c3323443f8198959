-- What went into an oven otherwise than the published plan said, and what that was. Lines are only added.
create table oven_off_plan (
    oven varchar(40) not null,
    loaded_at timestamp with time zone not null,
    tag varchar(40) not null,
    plan varchar(43) not null references oven_plan (id),
    -- OTHER_OVEN, OTHER_TEMPERATURE, OTHER_TIME, NOT_PLANNED
    how varchar(20) not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    primary key (oven, loaded_at, tag)
);

-- How much an hour late of a rush lot counts; empty: once.
alter table oven_plan_change add column weight integer;
