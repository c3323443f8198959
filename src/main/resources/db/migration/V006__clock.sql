-- One small row for each item and rating: a copy of what replay says, for lists.
create table item_clock (
    tag varchar(40) not null references item (tag),
    rating integer not null,
    counting boolean not null,
    level varchar(4) not null,
    peak_c double precision,
    state varchar(10) not null,
    zone varchar(40),
    used_share varchar(400) not null,
    total_h numeric(20, 6),
    used_h numeric(20, 6),
    worked_out_at timestamp with time zone not null,
    ends_at timestamp with time zone,
    primary key (tag, rating)
);
create index item_clock_ends on item_clock (counting, ends_at);
create index item_clock_zone on item_clock (zone);
