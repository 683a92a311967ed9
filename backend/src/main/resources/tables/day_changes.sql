select lab_day_id, version, title, held_on, rule, reference_irradiance_wm2 as reference_irradiance_w_m2,
       reference_area_m2 * 1e4 as reference_area_cm2, cells_per_team, entry_open, results_final, keep_until, reason,
       written_by, written_at
from lab_day_edit where lab_day_id = :day order by version
