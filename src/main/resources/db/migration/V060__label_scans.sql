-- What labels call a part type, learnt from a person's choice; versioned like every fact.
create table label_name_fact (
    label_number varchar(80) not null,
    version integer not null,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    sort_key varchar(80) not null,
    part_number varchar(80) not null,
    primary key (label_number, version)
);

-- Lots that came in, so that a lot with a lost character is noticed.
create table label_lot (
    label_number varchar(80) not null,
    lot varchar(80) not null,
    recorded_at timestamp with time zone not null,
    primary key (label_number, lot)
);

-- Labels whose level is not the part type's, for the engineer.
create table level_difference (
    tag varchar(40) primary key,
    label_number varchar(80) not null,
    part_number varchar(80) not null,
    label_level varchar(8) not null,
    known_level varchar(8) not null,
    raised boolean not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    settled_at timestamp with time zone,
    settled_by varchar(36)
);

-- Who may be named by a scan that arrives late: given to a page of a signed-in person.
create table scan_pass (
    pass varchar(64) primary key,
    who varchar(36) not null,
    given_at timestamp with time zone not null
);
