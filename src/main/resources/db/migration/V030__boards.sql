-- Boards. What is known is versioned like every fact; what happened to a board stands in a chain like an item's.
create table board_type_fact (
    number varchar(80) not null,
    version integer not null,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    sort_key varchar(80) not null,
    description varchar(400) not null,
    bears_c double precision,
    bake_c double precision,
    bake_ms bigint,
    coated boolean,
    kept_on varchar(8000) not null,
    spots varchar(500000) not null,
    primary key (number, version)
);

create table board_fact (
    serial varchar(40) not null,
    version integer not null,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    sort_key varchar(80) not null,
    board_type varchar(80) not null,
    from_field boolean not null,
    primary key (serial, version)
);

create table heat_profile_fact (
    id varchar(40) not null,
    version integer not null,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    sort_key varchar(80) not null,
    board_type varchar(80) not null,
    location varchar(40) not null,
    kind varchar(12) not null,
    tool varchar(400) not null,
    part_c double precision,
    neighbours varchar(100000) not null,
    elsewhere_c double precision,
    length_ms bigint not null,
    measured_on date not null,
    measured_by varchar(400) not null,
    primary key (id, version)
);

-- How long a heat profile is trusted, and a board after its bake.
create table board_rules_fact (
    id varchar(8) not null,
    version integer not null,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    sort_key varchar(80) not null,
    profile_months integer not null,
    use_within_ms bigint,
    primary key (id, version)
);

-- payload is the text whose UTF-8 bytes are hashed after the previous hash; the other columns are found in it too.
create table board_entry (
    serial varchar(40) not null,
    seq integer not null,
    happened_at timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    idempotency_key varchar(120) not null unique,
    kind varchar(20) not null,
    payload varchar(500000) not null,
    previous_hash varchar(64) not null,
    hash varchar(64) not null,
    primary key (serial, seq)
);
create index board_entry_kind on board_entry (kind, recorded_at);
