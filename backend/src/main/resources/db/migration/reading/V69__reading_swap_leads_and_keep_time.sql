-- A covered cell may be read with the leads swapped as well.
alter table reading add column swapped_voltage_text varchar(60);
alter table reading add column swapped_voltage_unit varchar(20);
alter table reading add column swapped_voltage_value_si double precision;
alter table reading add column swapped_voltage_resolution_si double precision;
alter table reading add column swapped_current_text varchar(60);
alter table reading add column swapped_current_unit varchar(20);
alter table reading add column swapped_current_value_si double precision;
alter table reading add column swapped_current_resolution_si double precision;

-- A correction says why, and counts for when, and by whom, the cell was read at the start of its chain.
alter table reading add column reason varchar(120);
alter table reading add column read_by varchar(60);
alter table reading add column read_at timestamptz;

with recursive chain (id, read_by, read_at) as (
    select id, written_by, accepted_at from reading where replaces is null
    union all
    select later.id, chain.read_by, chain.read_at from reading later join chain on later.replaces = chain.id
)
update reading set read_by = chain.read_by, read_at = chain.read_at from chain where chain.id = reading.id;

alter table reading alter column read_by set not null;
alter table reading alter column read_at set not null;
