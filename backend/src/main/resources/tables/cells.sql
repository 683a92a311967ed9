select c.id as cell_id, c.team_id, c.label as cell, s.area_m2 * 1e4 as area_cm2,
       s.area_uncertainty_m2 * 1e4 as area_uncertainty_cm2, s.area_text as area_as_typed, s.area_unit,
       c.written_by, c.noticed_at, c.accepted_at
from cell c
join build_sheet s on s.cell_id = c.id and not exists (select from build_sheet later where later.replaces = s.id)
where c.lab_day_id = :day order by c.accepted_at, c.id
