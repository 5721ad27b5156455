-- Kits for sale are sought by their own title, which stands in their sheet.
alter table kit_batch add column title text generated always as (sheet ->> 'title') stored;
