-- What the keys in forms are signed with: one for all instances on this database, so that a form outlives a restart.
create table form_secret (
    only_one boolean primary key default true constraint form_secret_only_one check (only_one),
    secret text not null
);

-- Forms that were sent, by the key each carries: a double press saves once. Written in the transaction of what the form changes.
create table sent_form (
    key text primary key,
    digest text not null,
    answer text,
    sent_at timestamptz not null default now()
);
comment on column sent_form.digest is 'of all that was sent, so that the same form with other values is another sending';
comment on column sent_form.answer is 'where the browser was led to; null until then';
create index sent_form_sent_at on sent_form (sent_at);
