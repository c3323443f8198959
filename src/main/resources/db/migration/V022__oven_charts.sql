-- A file of a logger (its id as in logger_file, which a later migration makes) that is the chart of what went into an oven at a time.
create table oven_chart (
    file_id varchar(36) not null primary key,
    oven varchar(40) not null,
    loaded_at timestamp with time zone not null
);
create index oven_chart_load on oven_chart (oven, loaded_at);

-- Which chart proves a load, and what was said about it; read again it gives the same. Lines are only added, the newest
-- one counts.
create table oven_proof (
    oven varchar(40) not null,
    loaded_at timestamp with time zone not null,
    number integer not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    file_id varchar(36) not null references oven_chart (file_id),
    -- Whether it proves nothing any more.
    taken_back boolean not null,
    -- Empty text: not said.
    time_zone varchar(60) not null,
    day_order varchar(12) not null,
    unit varchar(12) not null,
    spreadsheet_days boolean not null,
    second_of_both varchar(6) not null,
    -- Names of the channels that are in the load, one a line.
    probes varchar(4000) not null,
    humidity_channel varchar(200) not null,
    primary key (oven, loaded_at, number)
);

-- Runs that ended, by item: how the hours at temperature are known. Lines are only added; the newest of an item counts.
create table oven_run_end (
    oven varchar(40) not null,
    loaded_at timestamp with time zone not null,
    tag varchar(40) not null references item (tag),
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    out_at timestamp with time zone not null,
    set_point_c double precision not null,
    at_temperature_ms bigint not null,
    needed_ms bigint,
    -- The chart that the hours come from; empty: they were told.
    file_id varchar(36) references oven_chart (file_id),
    -- PROVEN, SHORT, TOO_HOT, HUMIDITY_NOT_SHOWN; empty: no chart.
    verdict varchar(20) not null,
    primary key (oven, loaded_at, tag, recorded_at)
);
create index oven_run_end_out on oven_run_end (out_at);
