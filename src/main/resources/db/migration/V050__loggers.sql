-- Files of loggers. A reading says which file it came from, if any.
alter table reading add column file_id varchar(36);

-- What was said once about a logger: each change is one more version. Empty text: not said.
create table logger_fact (
    name varchar(80) not null,
    version integer not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    sort_key varchar(80) not null,
    place_code varchar(40) not null,
    time_zone varchar(60) not null,
    day_order varchar(12) not null,
    unit varchar(12) not null,
    temperature_channel varchar(200) not null,
    humidity_channel varchar(200) not null,
    below_zero varchar(12) not null,
    primary key (name, version)
);

create table logger_file (
    id varchar(36) primary key,
    logger varchar(80) not null,
    place_code varchar(40) not null,
    file_name varchar(200) not null,
    sha256 varchar(64) not null,
    size_bytes bigint not null,
    uploaded_at timestamp with time zone not null,
    who varchar(36) not null
);
create index logger_file_uploaded on logger_file (uploaded_at);

-- The bytes of a file as they came, packed, in pieces.
create table logger_file_piece (
    file_id varchar(36) not null references logger_file (id),
    seq integer not null,
    bytes bytea not null,
    primary key (file_id, seq)
);

-- What happened to a file: begun, done, failed, taken back. Entries are only ever added.
create table logger_file_event (
    file_id varchar(36) not null references logger_file (id),
    seq integer not null,
    what varchar(12) not null,
    happened_at timestamp with time zone not null,
    who varchar(36) not null,
    added bigint not null,
    known bigint not null,
    refused bigint not null,
    first_at timestamp with time zone,
    last_at timestamp with time zone,
    report varchar(8000) not null,
    primary key (file_id, seq)
);

-- How far a running import is.
create table logger_file_progress (
    file_id varchar(36) primary key references logger_file (id),
    samples_done bigint not null,
    samples_all bigint not null
);

-- Readings that were taken back with their file. They count no more, and are not lost.
create table reading_taken_back (
    file_id varchar(36) not null,
    file_seq integer not null,
    zone varchar(40) not null,
    read_at timestamp with time zone not null,
    temperature_c double precision not null,
    rh_percent double precision not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    primary key (file_id, file_seq, zone, read_at)
);
