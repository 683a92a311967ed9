select s.id as sheet_id, s.cell_id, not exists (select from build_sheet later where later.replaces = s.id) as valid,
       v.parameter, v.text as value, v.unit, v.words, s.replaces, s.written_by, s.noticed_at, s.accepted_at
from build_sheet_value v
join build_sheet s on s.id = v.sheet_id
join cell c on c.id = s.cell_id
where c.lab_day_id = :day order by c.accepted_at, c.id, s.accepted_at, s.id, v.parameter
