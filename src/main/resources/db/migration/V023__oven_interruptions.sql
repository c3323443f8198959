-- When what went into an oven at a time was out of its band: door opened, power cut. Lines are only added.
create table oven_interruption (
    oven varchar(40) not null,
    loaded_at timestamp with time zone not null,
    number integer not null,
    -- DOOR, POWER, OTHER
    kind varchar(8) not null,
    from_at timestamp with time zone not null,
    to_at timestamp with time zone not null,
    -- Whether the load fell back near room temperature.
    cold boolean not null,
    -- The number of a line that did not happen; 0: none, this one did.
    undoes integer not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    primary key (oven, loaded_at, number)
);
