-- Spring Modulith's event log: an event and who has yet to hear it, stored with the change it tells of.
create table event_publication (
    id uuid primary key,
    listener_id text not null,
    event_type text not null,
    serialized_event text not null,
    publication_date timestamptz not null,
    completion_date timestamptz,
    status text,
    completion_attempts int not null,
    last_resubmission_date timestamptz
);

create index event_publication_by_event on event_publication using hash (serialized_event);
create index event_publication_by_completion on event_publication (completion_date);
