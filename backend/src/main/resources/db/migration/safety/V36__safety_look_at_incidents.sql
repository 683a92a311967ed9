-- When a teacher first looked at an incident; until then it waits on the Desk.
alter table incident add column looked_by varchar(60);
alter table incident add column looked_at timestamptz;
alter table incident add check ((looked_by is null) = (looked_at is null));
