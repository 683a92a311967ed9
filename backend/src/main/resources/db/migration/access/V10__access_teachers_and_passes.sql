create table teacher (
    id uuid primary key,
    name text not null,
    name_folded text not null unique,
    password_hash text not null,
    created_at timestamptz not null
);

-- Who holds a browser's pass. Only the token's SHA-256 is kept, so that a copy of this table opens nothing.
create table pass (
    token_hash text primary key,
    teacher_id uuid references teacher (id) on delete cascade,
    team_id uuid,
    lab_day_id uuid,
    issued_at timestamptz not null,
    expires_at timestamptz not null,
    check (num_nonnulls(teacher_id, team_id) = 1 and (team_id is null) = (lab_day_id is null))
);

create index pass_by_expiry on pass (expires_at);
