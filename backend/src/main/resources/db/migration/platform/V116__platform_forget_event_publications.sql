-- A change now counts in the transaction that stores it: see docs/decisions/0043.
drop table event_publication;
