-- Settings of a station that were typed wrong; the latest row holds, the station's own first ones stay.
create table station_correction (
    id                     uuid primary key,
    position               bigint generated always as identity,
    station_id             uuid not null references station (id) on delete cascade,
    lamp                   varchar(40) not null,
    instrument             varchar(40) not null,
    distance_text          varchar(60),
    distance_unit          varchar(20),
    distance_value_si      double precision,
    distance_resolution_si double precision,
    angle_text             varchar(60),
    angle_unit             varchar(20),
    angle_value_si         double precision,
    angle_resolution_si    double precision,
    reason                 varchar(120) not null,
    teacher                varchar(80) not null,
    written_by             varchar(60) not null,
    written_at             timestamptz not null
);
create index station_correction_of_station on station_correction (station_id, position);

-- A light reading is set aside or taken back; the latest row of a reading holds.
create table light_set_aside (
    id         uuid primary key,
    position   bigint generated always as identity,
    reading_id uuid not null references light_reading (id) on delete cascade,
    -- null when it was taken back
    reason     varchar(120),
    teacher    varchar(80) not null,
    written_by varchar(60) not null,
    written_at timestamptz not null
);
create index light_set_aside_of_reading on light_set_aside (reading_id, position);

-- The spectrum of a station's own lamp as it was given; the latest row holds, one without a table takes it back.
create table station_spectrum (
    id         uuid primary key,
    position   bigint generated always as identity,
    station_id uuid not null references station (id) on delete cascade,
    name       varchar(60) not null,
    csv        text check (length(csv) <= 40000),
    teacher    varchar(80) not null,
    written_by varchar(60) not null,
    written_at timestamptz not null
);
create index station_spectrum_of_station on station_spectrum (station_id, position);
