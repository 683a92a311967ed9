-- Every leaderboard asks for the stations of a day.
create index station_of_lab_day on station (lab_day_id);
create index control_cell_of_cell on control_cell (cell_id);
