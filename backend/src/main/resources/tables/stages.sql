select o.id as outcome_id, o.cell_id, not exists (select from stage_outcome later where later.replaces = o.id) as valid,
       o.stage, o.passed, o.failure, o.note, o.replaces, o.written_by, o.noticed_at, o.accepted_at
from stage_outcome o join cell c on c.id = o.cell_id
where c.lab_day_id = :day order by o.accepted_at, o.id
