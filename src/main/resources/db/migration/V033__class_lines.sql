-- What lists of classes show of a setup stands beside it, so that a list reads no setup, and one that can't be read is listed too.
alter table craft_class add column title text generated always as (setup ->> 'title') stored;
alter table craft_class add column headcount text generated always as (setup ->> 'headcount') stored;
alter table craft_class add column level text generated always as (setup ->> 'level') stored;
create index craft_class_end_ix on craft_class (ends_at);
