-- Which codes the site's labels carry, and the printer's dots that a Code 128 is made of.
alter table house_customs_fact add column label_code varchar(12) default 'MATRIX' not null;
