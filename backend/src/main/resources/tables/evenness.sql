select g.id as grid_id, g.station_id, p.position / g.columns + 1 as grid_row, p.position % g.columns + 1 as grid_column,
       p.value_si as light_si, p.text as light_as_typed, p.unit as light_unit, g.written_by, g.noticed_at, g.accepted_at
from light_grid_place p join light_grid g on g.id = p.grid_id join station s on s.id = g.station_id
where s.lab_day_id = :day order by g.accepted_at, g.id, p.position
