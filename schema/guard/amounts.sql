-- Amounts that can be. What is beyond cannot be metal in a shop, and one such row would make every sum over it fail:
-- no piece over 1 km, ordered, counted or booked, no more than a million of a line, no section over 3 m across, no price over 10 000 000 000.00 a tonne.
create function guard.amount_can_be() returns trigger
language plpgsql as $$
declare
  v_words text;
begin
  if tg_table_name = 'piece' then
    v_words := case when new.made_length_nm > 1000000000000 then 'a piece is at most 1 km long'
      when new.doubt_nm > 1000000000000 then 'no length is in doubt by more than 1 km'
      when new.cents_per_tonne not between 0 and 1000000000000 then 'a price is 0 or more, and at most 10 000 000 000.00 a tonne' end;
  elsif tg_table_name = 'count_line' then
    v_words := case when greatest(new.length_nm, new.doubt_nm) > 1000000000000 then 'a counted piece is at most 1 km long, and no more in doubt' end;
  elsif tg_table_name = 'cut_line' then
    v_words := case when greatest(new.length_nm, new.face_nm, abs(new.aim_nm), new.tolerance_minus_nm, new.tolerance_plus_nm) > 1000000000000 then 'nothing longer than 1 km is ordered'
      when new.quantity > 1000000 then 'no more than 1 000 000 pieces of a line are ordered' end;
  elsif tg_table_name = 'purchase_line' then
    v_words := case when new.length_nm > 1000000000000 then 'nothing longer than 1 km is bought'
      when new.quantity > 1000000 then 'no more than 1 000 000 bars of a line are bought' end;
  elsif tg_table_name = 'section' then
    v_words := case when greatest(new.dim1_nm, new.dim2_nm) > 3000000000 then 'a section is at most 3 m across' end;
  else
    v_words := case when new.cents_per_tonne > 1000000000000 then 'a price is at most 10 000 000 000.00 a tonne' end;
  end if;
  if v_words is not null then
    raise exception using errcode = 'HK026', message = v_words, hint = 'lengths are whole nanometres, money is in cents: was a unit mistaken?';
  end if;
  return new;
end $$;

create trigger amounts before insert on book.piece for each row execute function guard.amount_can_be();
create trigger amounts_changed before update of doubt_nm, cents_per_tonne on book.piece for each row execute function guard.amount_can_be();
create trigger amounts before insert on book.section for each row execute function guard.amount_can_be();
create trigger amounts before insert on book.price for each row execute function guard.amount_can_be();
create trigger amounts before insert on book.count_line for each row execute function guard.amount_can_be();
create trigger amounts before insert or update on book.cut_line for each row execute function guard.amount_can_be();
create trigger amounts before insert or update on book.purchase_line for each row execute function guard.amount_can_be();
