-- What the site allows at most: stricter than the standard or the same, never wider.
alter table board_rules_fact add column harmless_peak_c double precision default 200 not null;
alter table board_rules_fact add column most_above_90_ms bigint default 345600000 not null;
