-- A material may be a variant of another. What was chosen by a word only becomes one; what lies on the shelf of its material stays
-- there until it is counted by variant.
alter table material add column variant_of bigint;
alter table material add constraint material_variant_of_fk foreign key (variant_of) references material (id) on delete cascade;
create index material_variant_of_ix on material (variant_of);

insert into material (version, name, unit, hazards, sample, variant_of)
select distinct on (lower(m.name || ', ' || chosen.value)) 0, m.name || ', ' || chosen.value, m.unit, '{}', m.sample, m.id
from craft_class c
    join project p on p.id = c.project_id
    cross join lateral jsonb_path_query(p.sheet, '$.materials[*]', '{}', true) as line
    cross join lateral (
        select kept ->> 'key' as key, btrim(kept ->> 'value') as value
        from jsonb_path_query(c.setup, '$.choices.keyvalue()', '{}', true) as kept
        union
        select kept ->> 'key', btrim(kept ->> 'value')
        from jsonb_path_query(c.setup, '$.students[*].choices.keyvalue()', '{}', true) as kept) as chosen
    join material m on m.name = line ->> 'material'
where line ->> 'choice' is not null
    and not jsonb_path_exists(line, '$.alternatives[0]', '{}', true)
    and chosen.key = m.name and chosen.value <> '' and chosen.value <> m.name
    and not starts_with(chosen.value, m.name || ', ')
    and length(m.name || ', ' || chosen.value) <= 120
    and not exists (select 1 from material other where lower(other.name) = lower(m.name || ', ' || chosen.value))
order by lower(m.name || ', ' || chosen.value);
