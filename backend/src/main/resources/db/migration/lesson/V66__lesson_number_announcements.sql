-- Two announcements may carry one instant: a running number per day says which was made later.
alter table announcement add column position integer;

update announcement set position = numbered.position
from (select id, row_number() over (partition by lab_day_id order by made_at, id) as position from announcement) numbered
where announcement.id = numbered.id;

alter table announcement alter column position set not null;
drop index announcement_of_lab_day;
create unique index announcement_of_lab_day on announcement (lab_day_id, position);
