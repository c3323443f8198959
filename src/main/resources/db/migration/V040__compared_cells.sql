-- Cells of the standard's tables as an engineer compared them with a copy of it; one comparison, many cells.
create table comparison_fact (
    version integer primary key,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null
);

-- A cell without a value was taken back: from then on the shipped value counts again.
create table compared_cell (
    version integer not null references comparison_fact (version),
    sheet varchar(40) not null,
    row_name varchar(120) not null,
    column_name varchar(120) not null,
    cell_value varchar(40),
    compared_by varchar(80) not null,
    compared_on varchar(10) not null,
    copy_of varchar(120) not null,
    primary key (sheet, row_name, column_name, version)
);
create index compared_cell_version on compared_cell (version);
