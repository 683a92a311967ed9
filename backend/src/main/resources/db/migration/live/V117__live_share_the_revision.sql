-- A count that all who change a day would write to in turn is kept in shares: see docs/decisions/0043.
drop table live_revision;

create unlogged table live_revision (
    lab_day_id uuid not null,
    share      smallint not null,
    revision   bigint not null,
    primary key (lab_day_id, share)
);
