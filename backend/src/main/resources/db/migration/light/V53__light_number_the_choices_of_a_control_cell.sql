-- Two choices may carry one instant: a running number per day says which came later.
alter table control_cell add column position integer;

update control_cell set position = numbered.position
from (select id, row_number() over (partition by lab_day_id order by chosen_at, id) as position from control_cell) numbered
where control_cell.id = numbered.id;

alter table control_cell alter column position set not null;
drop index control_cell_of_day;
create unique index control_cell_of_day on control_cell (lab_day_id, position);
