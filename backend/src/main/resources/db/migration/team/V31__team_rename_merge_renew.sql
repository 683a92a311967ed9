-- The team that this one was joined to; it is listed no more and its code opens the other.
alter table team add column merged_into uuid references team (id) on delete cascade;

-- What a team was before each change, and who made it.
create table team_edit (
    id          bigint generated always as identity primary key,
    team_id     uuid not null references team (id) on delete cascade,
    name        varchar(24) not null,
    code        varchar(6) not null,
    merged_into uuid,
    written_by  varchar(60) not null,
    written_at  timestamptz not null
);
create index team_edit_of_team on team_edit (team_id);
