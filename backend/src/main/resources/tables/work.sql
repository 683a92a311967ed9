select e.id as event_id, e.cell_id, e.kind, e.note, e.written_by, e.noticed_at, e.accepted_at
from cell_event e join cell c on c.id = e.cell_id
where c.lab_day_id = :day order by e.accepted_at, e.id
