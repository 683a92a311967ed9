-- A teacher's reason to put a cell on for a team that is not signed off.
alter table heater_slot add column note varchar(200);
