-- A teacher sees where the sign-in is open and ends it there, without anybody seeing a pass or its hash.
alter table pass
    add column id uuid not null default gen_random_uuid() unique,
    add column browser text not null default '' check (length(browser) <= 60);
