create table receipt (
    id uuid primary key,
    fingerprint text not null,
    at timestamptz not null
);
