-- Metal that is not ours: only for its owner, worth nothing in our books, back by signature, ours only in writing.

-- {"tag","note","fate":"returned|scrapped","writing"}: a customer's rest goes back or is scrapped as they wrote or signed.
create function api.return_to_owner(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('return_to_owner', p_request, p);
  e piece;
  v_words text;
  v_fate text;
begin
  if v_again is not null then return v_again; end if;
  v_fate := guard.said(p, 'fate', 'returned or scrapped');
  if v_fate not in ('returned', 'scrapped') then
    raise exception using errcode = 'HK026', message = format('"%s" is no way for a customer''s metal', v_fate), hint = 'returned or scrapped; or it is bought over in writing (heatkeep piece buy-over)';
  end if;
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag'));
  if e.owner_id = 0 then
    raise exception using errcode = 'HK042', message = format('%s is ours', e.tag), hint = 'sell it, send it back to its supplier, or scrap it';
  end if;
  perform guard.free_to_change(e, v_fate, true);
  v_words := format('%s of %s, note %s: %s', v_fate, (select name from party where party_id = e.owner_id), guard.said(p, 'note', 'the note it leaves with'),
    guard.said(p, 'writing', 'the signature or written instruction of its owner'));
  perform guard.leave(e, case v_fate when 'returned' then 'returned' else 'scrap' end, v_fate, v_words);
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'words', v_words));
end $$;

-- {"tag","writing","cents_per_tonne"}: the owner sells it to us in writing; it goes on as ours, under a new tag.
create function api.buy_over(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('buy_over', p_request, p || jsonb_build_object('reason', 'bought over: ' || coalesce(p ->> 'writing', '')));
  e piece;
  v_words text;
  v_tag text;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag'));
  if e.owner_id = 0 then
    raise exception using errcode = 'HK042', message = format('%s is ours already', e.tag);
  end if;
  perform guard.free_to_change(e, 'bought over');
  v_words := format('bought over from %s: %s', (select name from party where party_id = e.owner_id), guard.said(p, 'writing', 'what the owner wrote'));
  v_tag := guard.pass_on(e, e.lot_id, 0, e.place_id, v_words);
  update piece set cents_per_tonne = (guard.said(p, 'cents_per_tonne', 'what is paid'))::bigint where tag = v_tag;
  return guard.end_deed(jsonb_build_object('tag', v_tag, 'was', e.tag));
end $$;

-- The worth in cents of so much of a piece: what it cost, else today's price; nothing where it is not ours.
create function guard.worth_cents(p_piece bigint, p_nm bigint) returns bigint
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select case when p.owner_id <> 0 then 0 else coalesce(round(guard.mass_g(p_nm, x.area_um2, g.density_kg_m3)::numeric / 1000000
    * coalesce(p.cents_per_tonne, guard.price_now(l.grade_id, l.section_id, false))), 0) end::bigint
  from book.piece p join book.lot l using (lot_id) join book.section x using (section_id) left join book.grade g using (grade_id) where p.piece_id = p_piece);

-- What our metal is worth, by grade and section; customers' metal is in none of it.
create view api.stock_value as
  select g.designation as grade, x.label as section, count(*) as pieces, sum(p.length_nm)::bigint as length_nm,
      sum(guard.mass_g(p.length_nm, x.area_um2, g.density_kg_m3))::bigint as mass_g, sum(guard.worth_cents(p.piece_id, p.length_nm))::bigint as cents
    from book.piece p join book.lot l using (lot_id) join book.section x using (section_id) left join book.grade g using (grade_id)
    where guard.is_here(p.state) and p.owner_id = 0 and p.state <> 'missing' group by g.designation, x.label;

-- What customers have with us, for their report.
create view api.customer_property as
  select o.name as owner, p.tag, r.owner_ref, r.rests_rule, r.chips_rule, g.designation as grade, x.label as section, l.heat, w.name as place,
      p.length_nm, guard.mass_g(p.length_nm, x.area_um2, g.density_kg_m3) as mass_g, p.state::text
    from book.piece p join book.party o on o.party_id = p.owner_id join book.lot l using (lot_id) join book.section x using (section_id)
    left join book.grade g using (grade_id) left join book.place w using (place_id) left join book.receipt_line r using (receipt_line_id)
    where p.owner_id <> 0 and guard.is_here(p.state);
