-- The lowest and highest values of each hour (UTC), for curves of many days. Worked out from the readings.
create table reading_hour (
    zone varchar(40) not null,
    hour_number bigint not null,
    first_at timestamp with time zone not null,
    last_at timestamp with time zone not null,
    lowest_c double precision not null,
    highest_c double precision not null,
    driest_percent double precision not null,
    wettest_percent double precision not null,
    primary key (zone, hour_number)
);
