-- Packages that came in, so that a bag that is scanned again is noticed.
create table label_package (
    label_number varchar(80) not null,
    package_number varchar(80) not null,
    tag varchar(40) not null,
    recorded_at timestamp with time zone not null,
    primary key (label_number, package_number)
);
