create table cell (
    id            uuid primary key,
    team_id       uuid not null references team (id) on delete cascade,
    lab_day_id    uuid not null references lab_day (id) on delete cascade,
    label         varchar(12) not null,
    label_key     text not null,
    written_by    varchar(60) not null,
    noticed_at    timestamptz not null,
    accepted_at   timestamptz not null,
    unique (lab_day_id, label_key)
);
create index cell_of_team on cell (team_id);

-- Recipe and area; a correction is a new sheet that names the one it replaces.
create table build_sheet (
    id                       uuid primary key,
    cell_id                  uuid not null references cell (id) on delete cascade,
    replaces                 uuid unique references build_sheet (id),
    area_text                varchar(60),
    area_unit                varchar(20),
    area_m2                  double precision check (area_m2 > 0),
    area_uncertainty_m2      double precision check (area_uncertainty_m2 >= 0),
    written_by               varchar(60) not null,
    noticed_at               timestamptz not null,
    accepted_at              timestamptz not null
);
create index build_sheet_of_cell on build_sheet (cell_id);
create unique index build_sheet_first on build_sheet (cell_id) where replaces is null;

create table build_sheet_value (
    sheet_id  uuid not null references build_sheet (id) on delete cascade,
    parameter varchar(40) not null,
    text      varchar(60) not null,
    unit      varchar(20),
    value_si  double precision,
    primary key (sheet_id, parameter)
);

create table stage_outcome (
    id          uuid primary key,
    cell_id     uuid not null references cell (id) on delete cascade,
    stage       varchar(40) not null,
    passed      boolean not null,
    failure     varchar(40),
    note        varchar(200),
    replaces    uuid unique references stage_outcome (id),
    written_by  varchar(60) not null,
    noticed_at  timestamptz not null,
    accepted_at timestamptz not null,
    check (passed = (failure is null))
);
create index stage_outcome_of_cell on stage_outcome (cell_id);
