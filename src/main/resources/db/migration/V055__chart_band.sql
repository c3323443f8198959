-- The site's own band for charts, only ever inside the table's; lines are only added, the one with the highest number counts.
create table oven_band_rule (
    number integer not null primary key,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    -- Degrees Celsius above the set-point that every probe must reach.
    least_above_c double precision not null,
    -- Degrees Celsius above the set-point that no probe may pass; empty: the table's.
    most_above_c double precision
);
