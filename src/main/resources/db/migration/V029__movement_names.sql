-- Movements of stock outlive their class, so they do not name its students: what stands in their notes is the class and a kit.
update stock_movement m
set note = regexp_replace(m.note, '^(Packed|Put back): .*$', '\1: ')
    || coalesce((select coalesce(c.setup ->> 'title', p.name) || ', ' from craft_class c join project p on p.id = c.project_id where c.id = m.class_id), '')
    || 'a kit'
where m.kind in ('PACKED', 'RETURNED', 'RESERVED')
    and m.note ~ '^(Packed|Put back): '
    and m.note !~ '^(Packed|Put back): (bench|reserve|Demonstration|Spare \d+|Student \d+)(/\d+)?$';
