-- What lies between the runs of an oven, where it has its own; empty: the site's rule counts.
alter table place_fact add column cool_down_ms bigint;
alter table place_fact add column turnaround_ms bigint;
alter table place_fact add column change_ms bigint;

-- How much an hour late counts, against 1 for an item without a word.
alter table item_need add column weight integer default 1 not null;

-- How long the search for a better plan, and for the proof, may go on.
alter table oven_plan_rules add column search_s integer default 20 not null;
