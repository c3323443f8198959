-- Which items may have been used for a board, found without reading every entry; what stands is told by the entries.
create table board_use (
    serial varchar(400) not null,
    tag varchar(40) not null,
    primary key (serial, tag)
);
create index board_use_tag on board_use (tag);

-- Entries of before: "boards":["A","B"] is taken apart at its commas; no serial number holds one.
insert into board_use (serial, tag)
with recursive piece (tag, serial, rest) as (
    select tag,
        cast('' as varchar(40000)),
        cast(substring(payload from position('"boards":["' in payload) + 10) as varchar(40000))
    from ledger_entry
    where act = 'used-up' and position('"boards":["' in payload) > 0
    union all
    select tag,
        cast(substring(rest from 2 for position('"' in substring(rest from 2)) - 1) as varchar(40000)),
        cast(substring(rest from position('"' in substring(rest from 2)) + 3) as varchar(40000))
    from piece
    where rest like '"%'
)
select distinct serial, tag from piece where serial <> '';
