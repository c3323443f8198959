-- What the zones were like. A zone's readings ascend in time; no two at the same time.
create table reading (
    zone varchar(40) not null,
    read_at timestamp with time zone not null,
    temperature_c double precision not null,
    rh_percent double precision not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    primary key (zone, read_at)
);

-- Day blocks: milliseconds of a UTC day in each cell of the derating grid; 40 is outside it, 41 is time without a
-- reading that holds. A cell without time has no row.
create table day_cell (
    zone varchar(40) not null,
    day_number integer not null,
    cell integer not null,
    ms bigint not null,
    primary key (zone, day_number, cell)
);
