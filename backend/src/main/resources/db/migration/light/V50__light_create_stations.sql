create table station (
    id                    uuid primary key,
    lab_day_id            uuid not null references lab_day (id) on delete cascade,
    name                  varchar(24) not null,
    name_key              text not null,
    lamp                  varchar(40) not null,
    instrument            varchar(40) not null,
    distance_text         varchar(60),
    distance_unit         varchar(20),
    distance_value_si     double precision,
    distance_resolution_si double precision,
    angle_text            varchar(60),
    angle_unit            varchar(20),
    angle_value_si        double precision,
    angle_resolution_si   double precision,
    written_by            varchar(60) not null,
    created_at            timestamptz not null,
    unique (lab_day_id, name_key)
);

create table light_reading (
    id                   uuid primary key,
    station_id           uuid not null references station (id) on delete cascade,
    lux                  boolean not null,
    reading_text         varchar(60) not null,
    reading_unit         varchar(20) not null,
    reading_value_si     double precision not null check (reading_value_si >= 0),
    reading_resolution_si double precision not null check (reading_resolution_si >= 0),
    replaces             uuid unique references light_reading (id),
    written_by           varchar(60) not null,
    noticed_at           timestamptz not null,
    accepted_at          timestamptz not null
);
create index light_reading_of_station on light_reading (station_id);
