-- What changed, for the browsers of every node; old rows are deleted. The topic holds ids only.
create table live_notice (
    id bigint generated always as identity primary key,
    topic varchar(200) not null,
    told_at timestamp with time zone not null
);

create index live_notice_told_at on live_notice (told_at);
