-- Every saved version of a day's plan; the highest number counts.
create table plan_version (
    id         uuid primary key,
    lab_day_id uuid not null references lab_day (id) on delete cascade,
    number     integer not null check (number >= 1),
    content    text not null,
    written_by varchar(60) not null,
    written_at timestamptz not null,
    unique (lab_day_id, number)
);

-- Which planned cell a registered one is; the latest word of a cell counts.
create table planned_cell (
    id          uuid primary key,
    lab_day_id  uuid not null references lab_day (id) on delete cascade,
    cell_id     uuid not null references cell (id) on delete cascade,
    label       varchar(12),
    written_by  varchar(60) not null,
    accepted_at timestamptz not null
);
create index planned_cell_of_lab_day on planned_cell (lab_day_id, accepted_at);
create index planned_cell_of_cell on planned_cell (cell_id);
