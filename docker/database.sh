#!/bin/sh
# Run once by the database's image, as its administrator, when its files are made: gives Benchful a role that may log in and
# nothing more, and a database that belongs to it.
set -eu
psql --set=ON_ERROR_STOP=1 --username="$POSTGRES_USER" --dbname=postgres --set=password="$BENCHFUL_DATABASE_PASSWORD" <<'SQL'
create role benchful login nosuperuser nocreatedb nocreaterole password :'password';
create database benchful owner benchful;
revoke all on database benchful from public;
SQL
