-- Where each feed has arrived, for all servers that share this database. Unlogged, since a page heals itself when the
-- numbers begin anew: they cost no wait for the disk, and a database that crashed or was restored begins new epochs.
-- No row refers to its day, so that none travels with a day's archive.
create unlogged table live_feed (
    lab_day_id uuid not null,
    kind       varchar(20) not null,
    epoch      uuid not null,
    seq        bigint not null,
    -- of the state that was told under this number
    print      varchar(64) not null,
    primary key (lab_day_id, kind)
);

create unlogged table live_revision (
    lab_day_id uuid primary key,
    revision   bigint not null
);
