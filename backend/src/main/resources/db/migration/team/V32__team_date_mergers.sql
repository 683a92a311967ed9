-- When a team was joined to another one: what its phones did before was still done by it.
alter table team add column merged_at timestamptz;

update team set merged_at = (select max(written_at) from team_edit where team_edit.team_id = team.id)
where merged_into is not null;

create index team_of_merger on team (merged_into);
