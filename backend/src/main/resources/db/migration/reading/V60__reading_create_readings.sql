create table reading (
    id                    uuid primary key,
    cell_id               uuid not null references cell (id) on delete cascade,
    lab_day_id            uuid not null references lab_day (id) on delete cascade,
    kind                  varchar(10) not null check (kind in ('dark', 'light', 'sweep')),
    station_id            uuid references station (id),
    voltage_text          varchar(60),
    voltage_unit          varchar(20),
    voltage_value_si      double precision,
    voltage_resolution_si double precision,
    current_text          varchar(60),
    current_unit          varchar(20),
    current_value_si      double precision,
    current_resolution_si double precision,
    unusual_confirmed     boolean not null,
    replaces              uuid unique references reading (id),
    written_by            varchar(60) not null,
    noticed_at            timestamptz not null,
    accepted_at           timestamptz not null,
    check (kind = 'dark' or station_id is not null)
);
create index reading_of_cell on reading (cell_id);
create index reading_of_lab_day on reading (lab_day_id);

-- Rows of a load sweep: two of load, voltage and current as typed, the third follows.
create table reading_point (
    reading_id            uuid not null references reading (id) on delete cascade,
    position              integer not null,
    load_text             varchar(60),
    load_unit             varchar(20),
    load_value_si         double precision,
    load_resolution_si    double precision,
    voltage_text          varchar(60),
    voltage_unit          varchar(20),
    voltage_value_si      double precision not null,
    voltage_resolution_si double precision not null,
    current_text          varchar(60),
    current_unit          varchar(20),
    current_value_si      double precision not null,
    current_resolution_si double precision not null,
    primary key (reading_id, position)
);
