select p.station_id, not exists (select from station_spectrum later
                                 where later.station_id = p.station_id and later.position > p.position) as valid,
       p.name as spectrum, p.csv as spectrum_csv, p.written_by, p.written_at
from station_spectrum p join station s on s.id = p.station_id
where s.lab_day_id = :day order by s.created_at, s.id, p.position
