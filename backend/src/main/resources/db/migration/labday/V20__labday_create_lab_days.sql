-- One name space for every join code, so that a day's code never equals a team's.
create table join_code (
    code varchar(6) primary key
);

create table lab_day (
    id                       uuid primary key,
    version                  bigint not null,
    code                     varchar(6) not null unique references join_code (code),
    title                    varchar(80) not null,
    held_on                  date not null,
    reference_irradiance_wm2 double precision not null check (reference_irradiance_wm2 > 0),
    reference_area_m2        double precision not null check (reference_area_m2 > 0),
    rule                     varchar(40) not null,
    cells_per_team           integer not null check (cells_per_team between 1 and 12),
    teams_create_themselves  boolean not null,
    entry_open               boolean not null,
    created_at               timestamptz not null
);

-- What a day looked like after each change, and who made it.
create table lab_day_edit (
    lab_day_id               uuid not null references lab_day (id) on delete cascade,
    version                  bigint not null,
    title                    varchar(80) not null,
    held_on                  date not null,
    reference_irradiance_wm2 double precision not null,
    reference_area_m2        double precision not null,
    rule                     varchar(40) not null,
    cells_per_team           integer not null,
    teams_create_themselves  boolean not null,
    entry_open               boolean not null,
    written_by               varchar(60) not null,
    written_at               timestamptz not null,
    primary key (lab_day_id, version)
);
