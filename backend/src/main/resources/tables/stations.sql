select s.id as station_id, now.name as station, now.lamp, now.instrument, now.distance_m, now.angle_deg,
       now.valid_from, now.reason, now.written_by, now.valid
from station s
join lateral (
    select settings.*, not exists (select from station_correction later
                                   where later.station_id = s.id and later.position > settings.position) as valid
    from (
        select 0 as position, s.name, s.lamp, s.instrument, s.distance_value_si as distance_m, degrees(s.angle_value_si) as angle_deg,
               s.created_at as valid_from, null::varchar as reason, s.written_by
        union all
        select c.position, c.name, c.lamp, c.instrument, c.distance_value_si, degrees(c.angle_value_si), c.written_at, c.reason, c.written_by
        from station_correction c where c.station_id = s.id
    ) settings
) now on true
where s.lab_day_id = :day order by s.created_at, s.id, now.position
