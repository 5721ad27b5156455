-- A review that is stored begins at version 1: 0 is a form that began before there was one.
update review set version = 1 where version = 0;
alter table review alter column version set default 1;
