-- What a teacher has seen and put off, until when. The last word holds.
create table desk_put_off (
    lab_day_id uuid not null references lab_day (id) on delete cascade,
    item       varchar(120) not null,
    until      timestamptz not null,
    written_by varchar(60) not null,
    primary key (lab_day_id, item)
);
