-- The list of part types walks along the sort key.
create index part_type_fact_sort on part_type_fact (sort_key, part_number);
