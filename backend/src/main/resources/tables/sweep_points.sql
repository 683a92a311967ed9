select p.reading_id, p.position + 1 as row, p.load_value_si as load_ohm, p.voltage_value_si as voltage_v,
       p.voltage_resolution_si as voltage_resolution_v, p.current_value_si as current_a,
       p.current_resolution_si as current_resolution_a
from reading_point p join reading r on r.id = p.reading_id
where r.lab_day_id = :day order by r.accepted_at, r.id, p.position
