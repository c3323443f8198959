-- Beside the ledger, for planning only. Lines are only added; the newest one counts.
-- When the load that went into an oven at a time came to temperature.
create table oven_mark (
    oven varchar(40) not null,
    loaded_at timestamp with time zone not null,
    at_temperature_at timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    primary key (oven, loaded_at, recorded_at)
);

-- By when an item is needed; empty: by no time in particular.
create table item_need (
    tag varchar(40) not null references item (tag),
    needed_by timestamp with time zone,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    primary key (tag, recorded_at)
);
