-- Who may sign in. An id is never reused: it stands in events.
create table person (
    id varchar(36) primary key,
    sign_in_name varchar(64) not null unique,
    display varchar(80) not null,
    sort_key varchar(80) not null,
    badge_code varchar(64) unique,
    created_at timestamp with time zone not null,
    retired_at timestamp with time zone
);

create table person_role (
    person_id varchar(36) not null references person (id),
    role varchar(20) not null,
    primary key (person_id, role)
);

-- Secrets as Argon2id hashes. Failures are counted before the secret is looked at, so that guessing side by side gains nothing.
create table credential (
    person_id varchar(36) not null references person (id),
    kind varchar(8) not null,
    secret_hash varchar(200) not null,
    failures integer not null,
    locked_until timestamp with time zone,
    primary key (person_id, kind)
);

-- Only a hash of the token is kept: whoever reads this table can't take over a session.
create table sign_in_session (
    token_hash varchar(64) primary key,
    person_id varchar(36) not null references person (id),
    idle_s bigint not null,
    idle_ends_at timestamp with time zone not null,
    ends_at timestamp with time zone not null
);
create index sign_in_session_person on sign_in_session (person_id);

-- The code that the console prints as long as nobody has an account.
create table first_start (
    code_hash varchar(64) primary key
);
