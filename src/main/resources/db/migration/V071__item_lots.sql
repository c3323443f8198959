-- Which items a label may have given a lot number, found without reading every entry; what stands is told by the entries.
create table item_lot (
    lot varchar(400) not null,
    tag varchar(40) not null,
    primary key (lot, tag)
);

-- Entries of before: the receipt's note is taken from its text; a lot number with a quote or a backslash is left out.
insert into item_lot (lot, tag)
select distinct cast(substring(rest from 1 for position('"' in rest) - 1) as varchar(400)), tag
from (
    select tag, cast(substring(payload from position('"lot":"' in payload) + 7 for 500) as varchar(500)) as rest
    from ledger_entry
    where act = 'received' and position('"lot":"' in payload) > 0
) found
where position('"' in rest) between 2 and 401 and position('\' in substring(rest from 1 for position('"' in rest))) = 0;
