-- Sensors that send readings by themselves. Only a hash of the token is kept.
create table sensor_token (
    id varchar(36) primary key,
    name varchar(80) not null,
    sort_key varchar(80) not null,
    token_hash varchar(64) not null unique,
    place_codes varchar(4000) not null,
    made_at timestamp with time zone not null,
    made_by varchar(36) not null,
    revoked_at timestamp with time zone
);

-- When loggers and ovens must be calibrated again: each change is one more version. No date: not known.
create table calibration_fact (
    kind varchar(8) not null,
    name varchar(80) not null,
    version integer not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    due_on date,
    primary key (kind, name, version)
);
