-- What the tutor wrote about hazards: entries of her own, and changed texts that stand in for those of the library.
create table hazard (
    id text primary key,
    version bigint not null,
    sheet jsonb not null,
    constraint hazard_id_short check (id ~ '^[a-z0-9][a-z0-9-]{0,59}$')
);
