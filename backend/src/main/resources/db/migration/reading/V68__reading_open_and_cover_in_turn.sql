-- Light toggles: the covered and the open cell in turn, always the same quantity.
alter table reading drop constraint reading_kind_check;
alter table reading add constraint reading_kind_check check (kind in ('dark', 'light', 'sweep', 'toggles'));

create table reading_toggle (
    reading_id   uuid not null references reading (id) on delete cascade,
    position     integer not null,
    lit          boolean not null,
    quantity     varchar(10) not null check (quantity in ('voltage', 'current')),
    text         varchar(60) not null,
    unit         varchar(20) not null,
    value_si     double precision not null,
    resolution_si double precision not null,
    primary key (reading_id, position)
);
