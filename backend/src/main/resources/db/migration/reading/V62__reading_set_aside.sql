-- A reading is set aside or taken back; the latest row of a reading holds, the earlier ones tell its story.
create table reading_set_aside (
    id         uuid primary key,
    position   bigint generated always as identity,
    reading_id uuid not null references reading (id) on delete cascade,
    -- null when it was taken back
    reason     varchar(120),
    teacher    varchar(80) not null,
    written_by varchar(60) not null,
    written_at timestamptz not null
);
create index reading_set_aside_of_reading on reading_set_aside (reading_id, position);
