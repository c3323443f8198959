-- The order in which plans were published: two of one moment have an order too. What counted before counts on.
alter table oven_plan add column published_number bigint;
update oven_plan set published_number = (
    select count(*) from oven_plan other
    where other.published_at < oven_plan.published_at
        or (other.published_at = oven_plan.published_at and other.id >= oven_plan.id))
where published_at is not null;
create unique index oven_plan_published on oven_plan (published_number);
