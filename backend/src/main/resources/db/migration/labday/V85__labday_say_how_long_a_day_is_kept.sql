-- Until when a day is to be kept; its teacher is reminded then, and nothing is deleted by itself.
alter table lab_day add column keep_until date;
alter table lab_day_edit add column keep_until date;
