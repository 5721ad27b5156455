-- How many kits of each size of a batch are packed already.
alter table kit_batch add column packed jsonb not null default '{}';
