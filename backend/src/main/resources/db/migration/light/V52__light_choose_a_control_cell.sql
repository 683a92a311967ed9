-- The cell that is read again and again; the latest choice of a day holds, null takes it back.
create table control_cell (
    id         uuid primary key,
    lab_day_id uuid not null references lab_day (id) on delete cascade,
    cell_id    uuid references cell (id) on delete cascade,
    written_by varchar(60) not null,
    chosen_at  timestamptz not null
);
create index control_cell_of_day on control_cell (lab_day_id);
