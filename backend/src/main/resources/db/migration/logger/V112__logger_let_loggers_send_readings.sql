-- A small device that may send readings of one team's cells, or of one station's light. The day may be null as far as the
-- column goes, and is never: so these rows go with their day, yet no archive takes them along with what opens a door.
create table logger (
    id           uuid primary key,
    position     bigint generated always as identity,
    lab_day_id   uuid references lab_day (id) on delete cascade,
    team_id      uuid references team (id) on delete cascade,
    station_id   uuid references station (id) on delete cascade,
    name         varchar(40) not null,
    token_hash   varchar(64) not null unique,
    teacher_id   uuid not null,
    teacher_name varchar(80) not null,
    made_at      timestamptz not null,
    last_at      timestamptz,
    revoked_at   timestamptz,
    constraint logger_has_a_day check (lab_day_id is not null),
    constraint logger_speaks_of_one_thing check ((team_id is null) <> (station_id is null))
);
create index on logger (lab_day_id);
create index on logger (team_id);
create index on logger (station_id);
