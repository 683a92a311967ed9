create table sign_off (
    id           uuid primary key,
    team_id      uuid not null references team (id) on delete cascade,
    lab_day_id   uuid not null references lab_day (id) on delete cascade,
    zone         varchar(40) not null,
    -- keys of the points of the briefing that were gone through
    points       varchar(40)[] not null,
    -- why the team may begin although points are open; null for an ordinary sign-off
    reason       varchar(200),
    written_by   varchar(60) not null,
    signed_at    timestamptz not null,
    valid_until  timestamptz not null check (valid_until > signed_at),
    withdrawn_by varchar(60),
    withdrawn_at timestamptz,
    check ((withdrawn_by is null) = (withdrawn_at is null))
);
create index sign_off_of_team on sign_off (team_id, zone);
create index sign_off_of_day on sign_off (lab_day_id);

-- Apart from everything that is measured; no person is named.
create table incident (
    id           uuid primary key,
    lab_day_id   uuid not null references lab_day (id) on delete cascade,
    team_id      uuid references team (id) on delete cascade,
    zone         varchar(40),
    happened     varchar(500) not null,
    done         varchar(500) not null,
    replaces     uuid unique references incident (id),
    written_by   varchar(60) not null,
    noticed_at   timestamptz not null,
    accepted_at  timestamptz not null
);
create index incident_of_day on incident (lab_day_id);
