-- What a site chooses that decides no answer: sizes of labels and sheets, and whether the wall display is shown.
create table house_customs_fact (
    version integer primary key,
    valid_from timestamp with time zone not null,
    recorded_at timestamp with time zone not null,
    who varchar(36) not null,
    item_label varchar(12) not null,
    bag_label varchar(12) not null,
    sheet varchar(12) not null,
    wall_shown boolean not null
);
