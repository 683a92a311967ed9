select cell_id, written_by, chosen_at from control_cell where lab_day_id = :day order by position
