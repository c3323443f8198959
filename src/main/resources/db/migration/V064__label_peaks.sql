-- Peaks beside levels: degrees Celsius separated by commas; empty where the label's peak, or its level, does not differ.
alter table level_difference add column label_peak varchar(80) default '' not null;
alter table level_difference add column known_peak varchar(80) default '' not null;
alter table level_difference add column lowered boolean default false not null;
