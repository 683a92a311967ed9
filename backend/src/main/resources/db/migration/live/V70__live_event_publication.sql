-- The event log: what a feature announced and a later feature has not yet finished hearing.
-- Columns as the library's schema for PostgreSQL states them (Spring Modulith 2.1, event publication registry).
create table event_publication (
    id                     uuid                     not null primary key,
    listener_id            text                     not null,
    event_type             text                     not null,
    serialized_event       text                     not null,
    publication_date       timestamp with time zone not null,
    completion_date        timestamp with time zone,
    status                 text,
    completion_attempts    int,
    last_resubmission_date timestamp with time zone
);

create index event_publication_serialized_event on event_publication using hash (serialized_event);
create index event_publication_completion_date on event_publication (completion_date);
