-- What a teacher writes to a team under its report. The last word holds; an empty one takes the comment back.
create table team_comment (
    id         uuid primary key,
    position   bigint generated always as identity,
    team_id    uuid not null references team (id) on delete cascade,
    words      varchar(800) not null,
    written_by varchar(60) not null,
    written_at timestamptz not null
);
create index on team_comment (team_id);
