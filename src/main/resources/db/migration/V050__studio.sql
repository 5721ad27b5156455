-- The studio: who teaches here. There is one, from when something is first written down of it.
create table studio (
    id bigint primary key,
    version bigint not null,
    sheet jsonb not null,
    logo_type text,
    logo bytea,
    constraint studio_only check (id = 1),
    constraint studio_logo_whole check ((logo is null) = (logo_type is null))
);

-- Who orders is known to a supplier by a number, and a pack by another.
alter table supplier add column customer_number text;
alter table offer add column article text;
alter table offer add column link text;
alter table order_line add column article text;
alter table order_line add column link text;
alter table order_line add column pack text;
alter table purchase_order add column deliver_to text;
alter table purchase_order add column customer_number text;
