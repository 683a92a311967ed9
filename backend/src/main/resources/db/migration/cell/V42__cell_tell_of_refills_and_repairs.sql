-- What was done to a finished cell, which stays the same cell.
create table cell_event (
    id          uuid primary key,
    cell_id     uuid not null references cell (id) on delete cascade,
    kind        varchar(10) not null check (kind in ('refill', 'repair')),
    note        varchar(200),
    written_by  varchar(60) not null,
    noticed_at  timestamptz not null,
    accepted_at timestamptz not null
);
create index cell_event_of_cell on cell_event (cell_id);
