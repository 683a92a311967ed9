-- Readings over the places where cells lie; the latest grid of a station counts, earlier ones stay.
create table light_grid (
    id          uuid primary key,
    station_id  uuid not null references station (id) on delete cascade,
    columns     integer not null check (columns between 1 and 25),
    written_by  varchar(60) not null,
    noticed_at  timestamptz not null,
    accepted_at timestamptz not null
);
create index light_grid_of_station on light_grid (station_id);

create table light_grid_place (
    grid_id       uuid not null references light_grid (id) on delete cascade,
    position      integer not null,
    text          varchar(60) not null,
    unit          varchar(20) not null,
    value_si      double precision not null check (value_si > 0),
    resolution_si double precision not null check (resolution_si >= 0),
    primary key (grid_id, position)
);
