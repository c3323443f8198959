-- How often a part may be replaced at one location of a board; two as is common practice.
alter table board_rules_fact add column most_replacements integer default 2 not null;
