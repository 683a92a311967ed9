select l.id as light_reading_id, l.station_id,
       not exists (select from light_reading later where later.replaces = l.id) and aside.reason is null as valid,
       case when l.lux then l.reading_value_si end as illuminance_lx,
       case when not l.lux then l.reading_value_si end as irradiance_w_m2,
       l.reading_text as light_as_typed, l.reading_unit as light_unit, l.replaces, aside.reason as set_aside_reason,
       l.written_by, l.noticed_at, l.accepted_at
from light_reading l
join station s on s.id = l.station_id
left join lateral (select reason from light_set_aside a where a.reading_id = l.id order by position desc limit 1) aside on true
where s.lab_day_id = :day order by l.accepted_at, l.id
