-- A movement of stock names the class or order it was for as long as there is one; what moved stays in the ledger.
update stock_movement m set class_id = null where class_id is not null and not exists (select 1 from craft_class c where c.id = m.class_id);
update stock_movement m set order_id = null where order_id is not null and not exists (select 1 from purchase_order o where o.id = m.order_id);
alter table stock_movement
    add constraint stock_movement_class_fk foreign key (class_id) references craft_class (id) on delete set null,
    add constraint stock_movement_order_fk foreign key (order_id) references purchase_order (id) on delete set null;
create index stock_movement_order_ix on stock_movement (order_id) where order_id is not null;
