-- How many of these cut pieces are of which heat, where they are of several and not all of those are listed; else null.
create function guard.mixed_heats_words(p_strokes bigint[], p_listed jsonb) returns text
language sql stable
return (select case when count(*) > 1 and not bool_and(p_listed ? heat) then string_agg(format('%s of %s', n, heat), ' and ' order by heat) end
  from (select coalesce(l.heat, 'no heat') as heat, l.mill_id, count(*) as n from book.stroke s join book.lot l using (lot_id)
    where s.stroke_id = any (p_strokes) group by 1, 2) h);

-- What stands against cut pieces going to their customer, and against a package of their papers: one line an order line, piece
-- they were cut from and reason (guard.reasons_against).
create view api.stands_against as
  select q.order_no, q.line_no, q.customer, q.tag, q.mill, q.heat, q.pieces, q.shipped, w.words
    from (select c.order_no, c.line_no, c.cut_line_id, u.name as customer, e.tag, s.piece_id, s.lot_id, s.owner_id, m.name as mill, l.heat, count(*) as pieces,
          case when s.held then guard.stopped_words(s.stroke_id) end as stopped, s.shipment_line_id is not null as shipped
        from book.cut_line c join book.stroke s using (cut_line_id) join book.piece e using (piece_id) join book.lot l on l.lot_id = s.lot_id
        left join book.party m on m.party_id = l.mill_id left join book.party u on u.party_id = c.customer_id
        where s.class = 'good' group by 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 13) q
    cross join lateral guard.reasons_against(q.piece_id, q.lot_id, q.owner_id, q.cut_line_id, q.stopped) w;

-- Cut pieces that leave for a customer. {"note","customer","lines":[{"order","line","count","heats"?:[...]}]}: all or
-- nothing; what something stands against (guard.reasons_against), or is more than the line asks for, stays here, in words. Pieces of
-- several heats leave together only where the heats are named.
create function api.ship(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('ship', p_request, p, (p ->> 'true_at')::timestamptz, p ->> 'device');
  v_shipment bigint;
  v_customer bigint;
  v_line bigint;
  v_shipment_line bigint;
  v_ids bigint[];
  v_pieces bigint[];
  v_words text;
  v_rank integer;
  v_left bigint;
  v_asked integer;
  n jsonb;
  v_done jsonb := '[]';
begin
  if v_again is not null then return v_again; end if;
  v_customer := guard.party(p ->> 'customer');
  if coalesce(btrim(p ->> 'note'), '') = '' then
    raise exception using errcode = 'HK026', message = 'a shipment needs the number of its delivery note';
  elsif exists (select from shipment where note = p ->> 'note') then
    raise exception using errcode = 'HK041', message = format('delivery note %s has left before', p ->> 'note'),
      hint = 'give this shipment a note of its own';
  end if;
  v_pieces := array(select unnest(guard.pieces_of_line(c.cut_line_id)) from jsonb_array_elements(p -> 'lines') x
    join cut_line c on c.order_no = x ->> 'order' and c.line_no = x ->> 'line');
  perform guard.lock_pieces(v_pieces);
  perform guard.lock_lines(array(select cut_line_id from jsonb_array_elements(p -> 'lines') x join cut_line on order_no = x ->> 'order' and line_no = x ->> 'line'));
  insert into shipment (note, customer_id, shipped_at, shipped_by)
    values (p ->> 'note', v_customer, coalesce((p ->> 'true_at')::timestamptz, now()), session_user) returning shipment_id into v_shipment;
  for n in select * from jsonb_array_elements(p -> 'lines') loop
    v_line := guard.line_for_cut(n ->> 'order', n ->> 'line');
    if coalesce((n ->> 'count')::integer, 0) < 1 then
      raise exception using errcode = 'HK026', message = format('say how many pieces of order %s line %s leave; expected 1 or more',
        n ->> 'order', n ->> 'line');
    elsif exists (select from cut_line where cut_line_id = v_line and customer_id <> v_customer) then
      raise exception using errcode = 'HK042', message = format('order %s line %s is not of %s', n ->> 'order', n ->> 'line', p ->> 'customer');
    end if;
    select array_agg(stroke_id) into v_ids from (select stroke_id from stroke
      where cut_line_id = v_line and piece_id = any (v_pieces) and class = 'good' and shipment_line_id is null
        and (not n ? 'heats' or exists (select from lot l where l.lot_id = stroke.lot_id and n -> 'heats' ? l.heat))
      order by stroke_id limit (n ->> 'count')::integer) s;
    if coalesce(cardinality(v_ids), 0) < (n ->> 'count')::integer then
      raise exception using errcode = 'HK034', message = format('order %s line %s: %s pieces are on site, %s were to be shipped',
        n ->> 'order', n ->> 'line', coalesce(cardinality(v_ids), 0), n ->> 'count');
    end if;
    v_asked := (select quantity from cut_line where cut_line_id = v_line);
    v_left := (select count(*) from stroke where cut_line_id = v_line and class = 'good' and shipment_line_id is not null);
    if v_left + cardinality(v_ids) > v_asked then
      raise exception using errcode = 'HK042', message = format('order %s line %s asks for %s pieces; %s have left, and %s more would be too many',
          n ->> 'order', n ->> 'line', v_asked, v_left, cardinality(v_ids)),
        hint = 'what is over becomes stock (heatkeep saw to-stock), or the order is changed first (heatkeep saw change)';
    end if;
    v_words := guard.mixed_heats_words(v_ids, coalesce(n -> 'heats', '[]'));
    if v_words is not null then
      raise exception using errcode = 'HK042', message = format('order %s line %s: the pieces are of several heats, %s', n ->> 'order', n ->> 'line', v_words),
        hint = 'list every heat that leaves on the line, or ship fewer pieces, of one heat';
    end if;
    select string_agg(words, '; '), min(rank) into v_words, v_rank from guard.against_leaving(v_ids);
    if v_words is not null then
      raise exception using errcode = case when v_rank < 5 then 'HK040' else 'HK042' end, message = 'not shipped: ' || v_words,
        hint = 'ship what may serve; for the rest the customer agrees in writing, or other metal is cut';
    end if;
    insert into shipment_line (shipment_id, cut_line_id) values (v_shipment, v_line) returning shipment_line_id into v_shipment_line;
    update stroke set shipment_line_id = v_shipment_line where stroke_id = any (v_ids);
    select string_agg(distinct w, '; ') into v_words from (select guard.consent_over(piece_id, v_line, 0, true) as w from (select distinct piece_id from stroke where stroke_id = any (v_ids)) s) x;
    if v_words is not null then
      raise exception using errcode = 'HK042', message = format('order %s line %s: %s', n ->> 'order', n ->> 'line', v_words),
        hint = 'ship no more of it than was agreed; for the rest the customer agrees in writing, or other metal is cut';
    end if;
    v_done := v_done || (select jsonb_agg(jsonb_build_object('order', n ->> 'order', 'line', n ->> 'line', 'mill', m.name, 'heat', l.heat, 'count', q.c))
      from (select lot_id, count(*) c from stroke where stroke_id = any (v_ids) group by 1) q join lot l using (lot_id)
      left join party m on m.party_id = l.mill_id);
  end loop;
  return guard.end_deed(jsonb_build_object('note', p ->> 'note', 'lines', v_done));
end $$;
