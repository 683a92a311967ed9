-- What goes with a team is found without reading every incident.
create index incident_of_team on incident (team_id);
