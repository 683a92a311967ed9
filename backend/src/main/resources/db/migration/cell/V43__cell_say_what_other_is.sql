-- What stands behind a level that names nothing, such as 'other', in the team's own words.
alter table build_sheet_value add column words varchar(60);
