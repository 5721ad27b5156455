-- Suppliers may count weekdays only, and an offer keeps the prices it had before.
alter table supplier add column weekdays boolean not null default false;
alter table purchase_order add column weekdays boolean not null default false;

create table past_price (
    offer_id bigint not null constraint past_price_offer references offer on delete cascade,
    price numeric not null,
    priced_on date not null,
    until date not null,
    constraint past_price_key primary key (offer_id, until)
);
