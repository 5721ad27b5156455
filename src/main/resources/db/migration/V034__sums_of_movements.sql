-- What lies on the shelf is read from the index alone, also of a material with thousands of movements.
create index stock_movement_sums on stock_movement (material_id) include (kind, amount);
