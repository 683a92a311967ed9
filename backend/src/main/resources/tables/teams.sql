select id as team_id, name as team, merged_into as joined_to, created_at
from team where lab_day_id = :day order by mark
