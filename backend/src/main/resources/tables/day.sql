select id as lab_day_id, title, held_on, rule, reference_irradiance_wm2 as reference_irradiance_w_m2,
       reference_area_m2 * 1e4 as reference_area_cm2, cells_per_team, entry_open, results_final, keep_until, created_at
from lab_day where id = :day
