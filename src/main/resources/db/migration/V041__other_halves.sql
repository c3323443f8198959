-- Temperature and humidity of one logger in a file each: which other file a file is read with. Each change is one more
-- entry; the last one of a file counts. No other file: it was parted again.
create table logger_file_half (
    file_id varchar(36) not null,
    seq integer not null,
    other_id varchar(36),
    said_at timestamp with time zone not null,
    who varchar(36) not null,
    primary key (file_id, seq)
);
create index logger_file_half_other on logger_file_half (other_id);
