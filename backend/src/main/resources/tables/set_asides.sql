select a.reading_id, null::uuid as light_reading_id, a.reason as set_aside_reason, a.written_by, a.written_at
from reading_set_aside a join reading r on r.id = a.reading_id
where r.lab_day_id = :day
union all
select null, a.reading_id, a.reason, a.written_by, a.written_at
from light_set_aside a join light_reading l on l.id = a.reading_id join station s on s.id = l.station_id
where s.lab_day_id = :day
order by written_at, reading_id, light_reading_id
