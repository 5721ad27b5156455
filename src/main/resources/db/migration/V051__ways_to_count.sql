-- What is counted by area and sold in sheets is counted in sheets, of the size that stands first among its offers, and what one
-- weighs is a sheet's mass. What can't be read is left as it is.
with sold as (
    select o.id as offer_id, o.material_id, o.sheet_length as length, o.sheet_width as width,
        row_number() over (partition by o.material_id order by o.position, o.id) as place,
        split_part(o.sheet_length, ' ', 1)::numeric * l.factor * split_part(o.sheet_width, ' ', 1)::numeric * w.factor as area
    from offer o
        join (values ('mm', 1), ('cm', 10), ('m', 1000), ('in', 25.4), ('ft', 304.8), ('yd', 914.4)) as l (symbol, factor)
            on o.sheet_length ~ ('^[0-9]{1,9}([.][0-9]{1,12})? ' || l.symbol || '$')
        join (values ('mm', 1), ('cm', 10), ('m', 1000), ('in', 25.4), ('ft', 304.8), ('yd', 914.4)) as w (symbol, factor)
            on o.sheet_width ~ ('^[0-9]{1,9}([.][0-9]{1,12})? ' || w.symbol || '$'))
update material m
set unit = 'sheet ' || s.length || ' x ' || s.width,
    unit_mass = case when m.unit_mass is null then null
        else trim_scale(round(split_part(m.unit_mass, ' ', 1)::numeric * s.area / a.factor, 9))::text || ' ' || split_part(m.unit_mass, ' ', 2) end,
    version = m.version + 1
from sold s, (values ('mm2', 1), ('cm2', 100), ('m2', 1000000), ('in2', 645.16), ('ft2', 92903.04), ('yd2', 836127.36)) as a (symbol, factor)
where s.material_id = m.id and s.place = 1 and s.area > 0 and a.symbol = m.unit
    and (m.unit_mass is null or m.unit_mass ~ '^[0-9]{1,9}([.][0-9]{1,12})? [a-z]+$');

with sold as (
    select o.id as offer_id, o.material_id, o.sheet_length as length, o.sheet_width as width,
        row_number() over (partition by o.material_id order by o.position, o.id) as place,
        split_part(o.sheet_length, ' ', 1)::numeric * l.factor * split_part(o.sheet_width, ' ', 1)::numeric * w.factor as area
    from offer o
        join (values ('mm', 1), ('cm', 10), ('m', 1000), ('in', 25.4), ('ft', 304.8), ('yd', 914.4)) as l (symbol, factor)
            on o.sheet_length ~ ('^[0-9]{1,9}([.][0-9]{1,12})? ' || l.symbol || '$')
        join (values ('mm', 1), ('cm', 10), ('m', 1000), ('in', 25.4), ('ft', 304.8), ('yd', 914.4)) as w (symbol, factor)
            on o.sheet_width ~ ('^[0-9]{1,9}([.][0-9]{1,12})? ' || w.symbol || '$'))
update offer o
set holds = trim_scale(round(split_part(o.holds, ' ', 1)::numeric * a.factor / s.area, 9))::text || ' sheets ' || s.length || ' x ' || s.width
from sold s, (values ('mm2', 1), ('cm2', 100), ('m2', 1000000), ('in2', 645.16), ('ft2', 92903.04), ('yd2', 836127.36)) as a (symbol, factor)
where s.offer_id = o.id and s.area > 0 and o.holds ~ ('^[0-9]{1,9}([.][0-9]{1,12})? ' || a.symbol || '$')
    and (split_part(o.holds, ' ', 1)::numeric * a.factor) % s.area = 0;
