-- Said once for all files of a logger, as its other answers are.
alter table logger_fact add column spreadsheet_days boolean default false not null;
