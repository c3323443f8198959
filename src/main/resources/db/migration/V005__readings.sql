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
