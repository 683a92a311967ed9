-- Which entries were typed in from paper: by whom and when, and where in which file each of them stood.
create table paper_import (
    id         uuid primary key,
    lab_day_id uuid not null references lab_day (id) on delete cascade,
    written_by varchar(60) not null,
    written_at timestamptz not null
);
create index on paper_import (lab_day_id);

create table paper_entry (
    entry_id   uuid primary key,
    import_id  uuid not null references paper_import (id) on delete cascade,
    of_table   varchar(20) not null,
    file_name  varchar(120) not null,
    file_row   int not null
);
create index on paper_entry (import_id);
