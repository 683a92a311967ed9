-- Final results: nothing that they depend on changes until a teacher takes that back with a reason.
alter table lab_day
    add column results_final boolean not null default false,
    add check (not (entry_open and results_final));
alter table lab_day_edit
    add column results_final boolean not null default false,
    add column reason varchar(120);
