-- What is known. A fact is never edited: each change is one more version, valid from a moment on.
create table part_type_fact (
    part_number varchar(80) not null,
    version integer not null,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    sort_key varchar(80) not null,
    maker varchar(80) not null,
    description varchar(200) not null,
    document varchar(200) not null,
    revision varchar(40) not null,
    ratings varchar(200) not null,
    body_kind varchar(20) not null,
    thickness_mm numeric(12, 6),
    length_mm numeric(12, 6),
    width_mm numeric(12, 6),
    stacked_die boolean,
    blocking_planes boolean,
    lead_free boolean,
    floor_life_ms bigint,
    derating varchar(8000) not null,
    shelf_months integer,
    bakes varchar(8000) not null,
    table_too boolean not null,
    use_within_ms bigint,
    max_bakes integer,
    max_reflow_passes integer not null,
    max_bake_c double precision,
    carrier_kind varchar(8) not null,
    carrier_c double precision,
    prior_baked_ms bigint not null,
    prior_bakes integer not null,
    prior_passes integer not null,
    primary key (part_number, version)
);

-- Zones, cabinets and ovens; code is what the printed label says.
create table place_fact (
    code varchar(40) not null,
    version integer not null,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    sort_key varchar(80) not null,
    kind varchar(8) not null,
    name varchar(80) not null,
    logged boolean not null,
    worst_temp_c double precision,
    worst_rh_percent double precision,
    open_temp_c double precision,
    open_rh_percent double precision,
    class_rh_percent double precision,
    positions integer,
    lowest_c double precision,
    highest_c double precision,
    holds_rh_percent double precision,
    heat_up_ms bigint,
    primary key (code, version)
);

create table carrier_fact (
    name varchar(80) not null,
    version integer not null,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    sort_key varchar(80) not null,
    carrier_kind varchar(8) not null,
    carrier_c double precision,
    primary key (name, version)
);

create table site_rules_fact (
    version integer primary key,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    use_drier_than_60 boolean not null,
    max_reading_gap_ms bigint not null,
    excursion_ms bigint not null,
    worst_temp_c double precision,
    worst_rh_percent double precision
);
