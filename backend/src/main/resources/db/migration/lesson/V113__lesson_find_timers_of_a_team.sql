-- What goes with a team or a cell is found without reading every timer.
create index class_timer_of_team on class_timer (team_id);
create index class_timer_of_cell on class_timer (cell_id);
