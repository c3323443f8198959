-- A stock-take that was kept: what the ledger expected at a place, and what was scanned there.
create table stock_take (
    id varchar(36) primary key,
    place_code varchar(40) not null,
    place_name varchar(400) not null,
    taken_at timestamp with time zone not null,
    who varchar(36) not null
);

create index stock_take_newest on stock_take (taken_at);

create table stock_take_line (
    take_id varchar(36) not null references stock_take (id),
    seq integer not null,
    code varchar(400) not null,
    standing varchar(12) not null,
    part_type varchar(80) not null,
    ledger_place varchar(40) not null,
    primary key (take_id, seq)
);
