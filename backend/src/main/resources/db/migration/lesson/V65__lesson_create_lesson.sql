create table announcement (
    id            uuid primary key,
    lab_day_id    uuid not null references lab_day (id) on delete cascade,
    words         varchar(200) not null,
    written_by    varchar(60) not null,
    made_at       timestamptz not null,
    goes_at       timestamptz,
    taken_back_at timestamptz
);
create index announcement_of_lab_day on announcement (lab_day_id, made_at);

create table class_timer (
    id         uuid primary key,
    lab_day_id uuid not null references lab_day (id) on delete cascade,
    words      varchar(60) not null,
    team_id    uuid references team (id) on delete cascade,
    cell_id    uuid references cell (id) on delete cascade,
    written_by varchar(60) not null,
    started_at timestamptz not null,
    ends_at    timestamptz not null,
    stopped_at timestamptz
);
create index class_timer_of_lab_day on class_timer (lab_day_id, ends_at);

-- Who extended a timer, so that nothing is changed without a trace.
create table class_timer_extension (
    id         uuid primary key,
    timer_id   uuid not null references class_timer (id) on delete cascade,
    ends_at    timestamptz not null,
    written_by varchar(60) not null,
    written_at timestamptz not null
);
create index class_timer_extension_of_timer on class_timer_extension (timer_id);

create table heater_slot (
    id                   uuid primary key,
    lab_day_id           uuid not null references lab_day (id) on delete cascade,
    cell_id              uuid not null references cell (id) on delete cascade,
    heater               varchar(24) not null,
    heater_key           text not null,
    position             integer not null check (position between 1 and 24),
    target_text          varchar(60) not null,
    target_unit          varchar(20) not null,
    target_value_si      double precision not null,
    target_resolution_si double precision not null check (target_resolution_si >= 0),
    hold_minutes         integer not null check (hold_minutes between 1 and 480),
    in_at                timestamptz not null,
    out_at               timestamptz,
    replaces             uuid unique references heater_slot (id) on delete cascade,
    written_by           varchar(60) not null,
    accepted_at          timestamptz not null
);
create index heater_slot_of_lab_day on heater_slot (lab_day_id);
create index heater_slot_of_cell on heater_slot (cell_id);

-- What each phone last told; no history.
create table phone (
    id            uuid primary key,
    team_id       uuid not null references team (id) on delete cascade,
    waiting       integer not null check (waiting between 0 and 9999),
    refused_codes varchar(1000) not null,
    seen_at       timestamptz not null
);
create index phone_of_team on phone (team_id);
