create table team (
    id         uuid primary key,
    lab_day_id uuid not null references lab_day (id) on delete cascade,
    name       varchar(24) not null,
    -- the name without differences of case and width, so that two teams never look alike
    name_key   text not null,
    mark       integer not null check (mark >= 0),
    code       varchar(6) not null unique references join_code (code),
    written_by varchar(60) not null,
    created_at timestamptz not null,
    unique (lab_day_id, name_key),
    unique (lab_day_id, mark)
);
