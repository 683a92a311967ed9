select r.id as reading_id, r.cell_id, r.station_id, r.kind,
       not exists (select from reading later where later.replaces = r.id) and aside.reason is null as valid,
       r.voltage_value_si as voltage_v, r.voltage_resolution_si as voltage_resolution_v,
       r.voltage_text as voltage_as_typed, r.voltage_unit,
       r.current_value_si as current_a, r.current_resolution_si as current_resolution_a,
       r.current_text as current_as_typed, r.current_unit,
       r.swapped_voltage_value_si as swapped_voltage_v, r.swapped_current_value_si as swapped_current_a,
       r.replaces, r.reason, aside.reason as set_aside_reason, r.written_by, r.read_by, r.read_at, r.noticed_at, r.accepted_at
from reading r
left join lateral (select reason from reading_set_aside a where a.reading_id = r.id order by position desc limit 1) aside on true
where r.lab_day_id = :day order by r.accepted_at, r.id
