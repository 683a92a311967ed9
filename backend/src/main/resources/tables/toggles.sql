select p.reading_id, p.position + 1 as row, p.lit,
       case p.quantity when 'voltage' then p.value_si end as voltage_v,
       case p.quantity when 'current' then p.value_si end as current_a
from reading_toggle p join reading r on r.id = p.reading_id
where r.lab_day_id = :day order by r.accepted_at, r.id, p.position
