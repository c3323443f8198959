-- What happened. Entries are only ever added; the columns of item after part_type are a copy of what its entries say.
create table item (
    tag varchar(40) primary key,
    sort_key varchar(80) not null,
    part_type varchar(80) not null,
    parent_tag varchar(40) references item (tag),
    keeper_tag varchar(40) references item (tag),
    received_at timestamp with time zone not null,
    quantity bigint not null,
    whereabouts varchar(12) not null,
    place_code varchar(40),
    board varchar(80),
    board_location varchar(40),
    ended boolean not null,
    changed_at timestamp with time zone not null
);
create index item_parent on item (parent_tag);
create index item_keeper on item (keeper_tag);
create index item_open on item (ended, sort_key, tag);
create index item_place on item (ended, place_code, sort_key);
create index item_part_type on item (part_type);
create index item_board on item (board);

-- payload is the text whose UTF-8 bytes are hashed after the previous hash; the other columns are found in it too.
create table ledger_entry (
    tag varchar(40) not null references item (tag),
    seq integer not null,
    happened_at timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    idempotency_key varchar(120) not null unique,
    act varchar(20) not null,
    corrects integer,
    payload varchar(40000) not null,
    previous_hash varchar(64) not null,
    hash varchar(64) not null,
    primary key (tag, seq)
);
create index ledger_entry_who on ledger_entry (who, recorded_at);
create index ledger_entry_recorded on ledger_entry (recorded_at);

create table tag_counter (
    last_number bigint not null
);
insert into tag_counter (last_number) values (1000);
