-- A correction of a station's settings may change its name as well.
alter table station_correction add column name varchar(24);
update station_correction correction set name = station.name from station where station.id = correction.station_id;
alter table station_correction alter column name set not null;

-- A name that a correction took away is free again, so that the first names no longer tell which are taken.
alter table station drop column name_key;
