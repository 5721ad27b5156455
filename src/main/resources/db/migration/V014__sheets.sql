-- Packs of sheets say how large one is, so that rectangles can be cut from it.
alter table offer add column sheet_length text;
alter table offer add column sheet_width text;
alter table offer add constraint offer_sheet_whole check ((sheet_length is null) = (sheet_width is null));
