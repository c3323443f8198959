-- One small row for each item and rating: a copy of what replay says, for lists. Where rate_key is set the item stands
-- in a logged zone, and its life ends when the zone's running sum at that rate reaches end_sum: no row is rewritten when
-- the weather changes. Else ends_ms says when, in milliseconds since 1970. An earlier end of a time after a bake stands
-- in ends_ms in both cases.
create table item_clock (
    tag varchar(40) not null references item (tag),
    rating integer not null,
    counting boolean not null,
    level varchar(4) not null,
    peak_c double precision,
    state varchar(10) not null,
    zone varchar(40),
    follows boolean not null,
    used_share varchar(400) not null,
    total_h numeric(20, 6),
    used_h numeric(20, 6),
    anchor_at timestamp with time zone not null,
    worked_out_at timestamp with time zone not null,
    valid_until timestamp with time zone,
    ends_ms bigint,
    rate_key varchar(16),
    end_sum numeric(60, 30),
    primary key (tag, rating)
);
create index item_clock_ends on item_clock (counting, ends_ms);
create index item_clock_sum on item_clock (zone, rate_key, end_sum);
create index item_clock_anchor on item_clock (zone, anchor_at);
create index item_clock_follows on item_clock (zone, follows);
create index item_clock_valid on item_clock (valid_until);

-- The lives of each cell that a rate stands for.
create table clock_rate (
    rate_key varchar(16) primary key,
    lives varchar(2000) not null
);

-- What counts in a zone where no reading holds: its declared worst case, no milder than its log of the last 90 days.
create table zone_worst (
    zone varchar(40) primary key,
    temperature_c double precision not null,
    rh_percent double precision not null
);

-- When an item's history was in a logged zone; the last stay has no end.
create table item_stay (
    tag varchar(40) not null references item (tag),
    zone varchar(40) not null,
    started_at timestamp with time zone not null,
    ended_at timestamp with time zone
);
create index item_stay_tag on item_stay (tag);
create index item_stay_zone on item_stay (zone, ended_at);
