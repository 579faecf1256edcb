-- Whole pieces that leave, and what comes back: sold as they are, returned to the supplier or the owner, bought over,
-- written off, returned by a customer.

-- {"tags":[...],"order","customer","note","papers"?,"papers_sent"?:bool}: our own metal, not blocked, with papers no
-- stronger than it has.
create function api.sell(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('sell', p_request, p);
  v_papers papers := coalesce(nullif(p ->> 'papers', ''), 'none')::papers;
  v_customer bigint;
  v_note text;
  v_shipment bigint;
  v_words text;
  e piece;
  t text;
  v_done jsonb := '[]';
begin
  if v_again is not null then return v_again; end if;
  v_note := guard.said(p, 'note', 'the number of the delivery note');
  v_customer := guard.party(guard.said(p, 'customer', 'who buys it'));
  perform guard.said(p, 'order', 'the customer''s order');
  if exists (select from shipment where note = v_note) then
    raise exception using errcode = 'HK041', message = format('delivery note %s has left before', v_note), hint = 'give this one a note of its own';
  elsif v_papers <> 'none' and (p ->> 'papers_sent')::boolean is not true then
    raise exception using errcode = 'HK026', message = format('it is sold with %s: say that the document goes with it', v_papers), hint = 'papers_sent: true';
  elsif jsonb_array_length(coalesce(p -> 'tags', '[]')) = 0 then
    raise exception using errcode = 'HK026', message = 'say what is sold: tags is empty';
  end if;
  perform guard.lock_tags(array(select jsonb_array_elements_text(p -> 'tags')));
  insert into shipment (note, customer_id, shipped_at, shipped_by)
    values (v_note, v_customer, coalesce((p ->> 'true_at')::timestamptz, now()), session_user) returning shipment_id into v_shipment;
  for t in select * from jsonb_array_elements_text(p -> 'tags') order by 1 loop
    e := guard.piece_for_deed(t);
    perform guard.free_to_change(e, 'sold');
    v_words := coalesce(guard.blocked_words(e.piece_id), (select risk from guard.lot_words where lot_id = e.lot_id));
    if v_words is not null then
      raise exception using errcode = 'HK040', message = format('%s cannot be sold: %s', e.tag, v_words), hint = 'quality releases it first';
    elsif e.owner_id <> 0 then
      raise exception using errcode = 'HK042', message = format('%s belongs to %s', e.tag, (select name from party where party_id = e.owner_id)),
        hint = 'send it back to its owner (heatkeep return owner), or buy it over in writing (heatkeep piece buy-over)';
    elsif guard.papers_of(e.piece_id) < v_papers then
      raise exception using errcode = 'HK042', message = format('%s has %s, not %s', e.tag, guard.papers_of(e.piece_id), v_papers), hint = 'sell it as what it is';
    end if;
    perform guard.leave(e, 'sold', 'shipped', format('sold to %s, order %s', p ->> 'customer', p ->> 'order'), v_shipment);
    v_done := v_done || (select jsonb_build_object('tag', e.tag, 'length_nm', e.length_nm, 'mass_g', guard.mass_g(e.length_nm, s.area_um2, g.density_kg_m3), 'heat', l.heat)
      from lot l join section s using (section_id) left join grade g using (grade_id) where l.lot_id = e.lot_id);
  end loop;
  return guard.end_deed(jsonb_build_object('note', v_note, 'sold', v_done));
end $$;

-- {"tag","note","claim","reason"}: back to whom it came from, with a claim; the documents stay here.
create function api.return_to_supplier(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('return_to_supplier', p_request, p);
  e piece;
  v_held text;
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag'));
  v_words := format('returned to %s, note %s, claim %s: %s', coalesce((select s.name from receipt_line join receipt r using (receipt_id)
      left join party s on s.party_id = r.supplier_id where receipt_line_id = e.receipt_line_id), 'its supplier'), guard.said(p, 'note', 'the return note'),
    guard.said(p, 'claim', 'the number of the claim'), guard.said(p, 'reason', 'why'));
  v_held := guard.evidence_words(e.piece_id);
  if e.owner_id <> 0 then
    raise exception using errcode = 'HK042', message = format('%s belongs to %s: it goes back to its owner', e.tag, (select name from party where party_id = e.owner_id)),
      hint = 'it goes back to its owner: heatkeep return owner';
  elsif v_held is not null then
    raise exception using errcode = 'HK040', message = format('%s stays here as evidence: %s', e.tag, v_held), hint = 'quality lifts the hold or condemns the metal';
  elsif guard.hold_words(e.piece_id) is null then
    perform guard.free_to_change(e, 'returned');
  elsif e.length_nm = 0 or e.state = 'at saw' or e.frozen then
    raise exception using errcode = 'HK043', message = format('%s is %s: it cannot be returned', e.tag, e.state), hint = format('`heatkeep piece history %s` says what happened to it', e.tag);
  end if;
  perform guard.leave(e, 'returned', 'returned', v_words);
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'words', v_words, 'length_nm', e.length_nm, 'mass_g', guard.lot_mass_g(e.lot_id, e.length_nm)));
end $$;

-- {"tag","reason"}: lost or stolen, by the owner of the shop; the millimetres stay unexplained.
create function api.write_off(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('write_off', p_request, p);
  e piece;
  v_why text;
begin
  if v_again is not null then return v_again; end if;
  v_why := guard.said(p, 'reason', 'what is known of it');
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag'));
  if e.state not in ('missing', 'in transit', 'outside') or e.length_nm = 0 then
    raise exception using errcode = 'HK043', message = format('%s is %s: only what is missing is written off', e.tag, e.state), hint = 'a count finds it missing first';
  end if;
  perform guard.leave(e, 'unexplained', 'written off', v_why);
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'unexplained_nm', e.length_nm));
end $$;

-- {"customer","note","reason","identity","held_by","tag","length_nm","place"}: a piece sold as it was comes back; or
-- {...,"order","line","count"}: cut pieces do. Either waits for quality: it left our control.
create function api.customer_return(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('customer_return', p_request, p);
  v_customer bigint;
  v_words text;
  v_what text;
  v_ids bigint[];
  v_pieces bigint[];
  e piece;
  o metal_out;
begin
  if v_again is not null then return v_again; end if;
  v_customer := guard.party(guard.said(p, 'customer', 'who returns it'));
  v_words := format('returned by %s, note %s: %s', p ->> 'customer', guard.said(p, 'note', 'the return note'), guard.said(p, 'reason', 'why it comes back'));
  perform guard.said(p, 'identity', 'what shows that it is this metal'), guard.said(p, 'held_by', 'who had it meanwhile');
  if p ? 'tag' then
    e := guard.piece_for_deed(p ->> 'tag');
    select m.* into o from metal_out m join shipment s using (shipment_id) where m.piece_id = e.piece_id and m.class = 'sold' and s.customer_id = v_customer
      and not exists (select from metal_out r where r.reverses_id = m.metal_out_id);
    if e.state <> 'shipped' or o.metal_out_id is null then
      raise exception using errcode = 'HK043', message = format('%s was not sold to %s: it is %s', e.tag, p ->> 'customer', e.state);
    end if;
    v_what := e.tag;
    perform guard.said(p, 'length_nm', 'the length as measured now');
    insert into metal_out (piece_id, lot_id, owner_id, class, length_nm, reason, named, reverses_id)
      values (e.piece_id, e.lot_id, e.owner_id, 'sold', -o.length_nm, v_words, session_user, o.metal_out_id);
    update piece set length_nm = o.length_nm, state = 'on rack', quarantine = v_words, place_id = guard.place(guard.said(p, 'place', 'where it is put, apart'))
      where piece_id = e.piece_id returning * into e;
    perform guard.measure(e, p, v_words);
  else
    v_what := format('order %s line %s', guard.said(p, 'order', 'the order, or a tag'), guard.said(p, 'line', 'the line'));
    v_pieces := array(select s.piece_id from stroke s join shipment_line sl using (shipment_line_id) join shipment h using (shipment_id)
      where s.cut_line_id = guard.line_for_cut(p ->> 'order', p ->> 'line') and h.customer_id = v_customer);
    perform guard.lock_pieces(v_pieces);
    select array_agg(stroke_id) into v_ids from (select s.stroke_id from stroke s join shipment_line sl using (shipment_line_id) join shipment h using (shipment_id)
      where s.cut_line_id = guard.line_for_cut(p ->> 'order', p ->> 'line') and h.customer_id = v_customer and s.piece_id = any (v_pieces)
      order by s.stroke_id desc limit (guard.said(p, 'count', 'how many pieces'))::integer) x;
    if coalesce(cardinality(v_ids), 0) < (p ->> 'count')::integer or (p ->> 'count')::integer < 1 then
      raise exception using errcode = 'HK034', message = format('%s: %s pieces were shipped to %s, %s are said to come back', v_what,
        coalesce(cardinality(v_ids), 0), p ->> 'customer', p ->> 'count');
    end if;
    update stroke set shipment_line_id = null, held = true where stroke_id = any (v_ids);
    perform guard.raise_conflict('returned by a customer', n.piece_id, format('%s of %s, cut from %s of heat %s: %s',
        case n.count when 1 then '1 piece' else n.count || ' pieces' end, v_what, (select tag from piece where piece_id = n.piece_id), guard.heat_word(n.lot_id), v_words))
      from (select piece_id, lot_id, count(*) from stroke where stroke_id = any (v_ids) group by piece_id, lot_id order by piece_id) n;
  end if;
  insert into customer_return (customer_id, note, what, reason, identity, held_by, stroke_ids)
    values (v_customer, p ->> 'note', v_what, p ->> 'reason', p ->> 'identity', p ->> 'held_by', v_ids);
  return guard.end_deed(jsonb_build_object('what', v_what, 'words', v_words));
end $$;

create view api.customer_returns as
  select c.name as customer, r.note, r.what, r.reason, r.identity, r.held_by, cardinality(r.stroke_ids) as pieces
    from book.customer_return r join book.party c on c.party_id = r.customer_id;
