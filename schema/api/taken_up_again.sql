-- Metal that was cut and is taken up again: rejects and surplus pieces as stock, orders that change, and recuts.

-- The stroke's metal as a piece of its own; its piece is locked by the caller. Measured shorter: the difference is named.
create function guard.take_up(s book.stroke, p_measured bigint, p_place text, p_reason text) returns text
language plpgsql volatile as $$
declare
  e piece;
  v_measured bigint := coalesce(p_measured, s.length_nm);
  v_id bigint;
  v_closed boolean := (select closed from cut where cut_id = s.cut_id);
begin
  select * into e from piece where piece_id = s.piece_id;
  if v_measured <= 0 or v_measured > s.length_nm + guard.setting('rest_slack_nm', '2000000')::bigint then
    raise exception using errcode = 'HK034', message = format('it was cut %s mm long and cannot measure %s mm',
      trim_scale(s.length_nm / 1e6::numeric), trim_scale(v_measured / 1e6::numeric)), hint = 'measure again';
  end if;
  v_id := guard.new_child(e, s.cut_id, s.from_nm, s.from_nm + s.length_nm, v_measured, null, 2, 'unknown', p_place, null, null);
  if v_measured <> s.length_nm then
    insert into metal_out (piece_id, lot_id, owner_id, cut_id, class, length_nm, reason, named)
      values (s.piece_id, s.lot_id, s.owner_id, s.cut_id, 'unexplained', s.length_nm - v_measured, p_reason, session_user);
  end if;
  update stroke set length_nm = 0, reused_as_id = v_id, class = case class when 'good' then 'trim' else class end where stroke_id = s.stroke_id;
  if s.held then
    update piece set quarantine = guard.stopped_words(s.stroke_id) where piece_id = v_id;
  end if;
  return (select tag from piece where piece_id = v_id);
end $$;

-- {"reject","length_nm","place","heat","reason"}: a reject is used as a drop, under a new tag, as measured.
create function api.reuse_reject(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('reuse_reject', p_request, p, null, null, p ->> 'reason');
  s stroke;
  v_tag text;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_pieces(array(select piece_id from stroke where stroke_id = (p ->> 'reject')::bigint));
  select * into s from stroke where stroke_id = (p ->> 'reject')::bigint;
  if s.stroke_id is null or s.class <> 'reject' or s.reused_as_id is not null then
    raise exception using errcode = 'HK043', message = format('%s is no reject that lies here', coalesce(p ->> 'reject', 'nothing')),
      hint = '`heatkeep saw rejects` lists them';
  elsif coalesce(btrim(p ->> 'reason'), '') = '' or p ->> 'length_nm' is null then
    raise exception using errcode = 'HK026', message = 'a reject is used again as it was measured, and why it may be is said';
  end if;
  perform guard.check_heat_on_label((select e from piece e where piece_id = s.piece_id), p ->> 'heat');
  v_tag := guard.take_up(s, (p ->> 'length_nm')::bigint, p ->> 'place', p ->> 'reason');
  return guard.end_deed(jsonb_build_object('tag', v_tag, 'label', guard.label((select piece_id from piece where tag = v_tag))));
end $$;

-- The pieces that good pieces of a line on site were cut from.
create function guard.pieces_of_line(p_line bigint) returns bigint[]
language sql stable
return array(select distinct s.piece_id from book.stroke s where s.cut_line_id = p_line and s.class = 'good' and s.shipment_line_id is null);

-- Good pieces of a line that are on site, cut from these, the last cut first: so many become pieces of stock. Answers their tags.
create function guard.to_stock(p_line bigint, p_pieces bigint[], p_count bigint, p_place text, p_reason text) returns jsonb
language plpgsql volatile as $$
declare
  s stroke;
  v_tags jsonb := '[]';
begin
  for s in select * from stroke where cut_line_id = p_line and piece_id = any (p_pieces) and class = 'good' and shipment_line_id is null order by stroke_id desc limit p_count loop
    v_tags := v_tags || to_jsonb(guard.take_up(s, null, p_place, p_reason));
  end loop;
  if jsonb_array_length(v_tags) < p_count then
    raise exception using errcode = 'HK034', message = format('%s pieces of it are on site, not %s', jsonb_array_length(v_tags), p_count),
      hint = 'what was shipped cannot become stock';
  end if;
  return v_tags;
end $$;

-- Over-cut: {"order","line","count","place","reason"}: surplus pieces get tags of their own and are not shipped silently.
create function api.pieces_to_stock(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('pieces_to_stock', p_request, p, null, null, p ->> 'reason');
  c cut_line;
  v_pieces bigint[];
  v_count integer := coalesce((p ->> 'count')::integer, 0);
begin
  if v_again is not null then return v_again; end if;
  v_pieces := guard.pieces_of_line(guard.line_for_cut(p ->> 'order', p ->> 'line'));
  perform guard.lock_pieces(v_pieces);
  perform guard.lock_lines(array[guard.line_for_cut(p ->> 'order', p ->> 'line')]);
  c := guard.line_named(p ->> 'order', p ->> 'line');
  if v_count < 1 or coalesce(btrim(p ->> 'reason'), '') = '' then
    raise exception using errcode = 'HK026', message = 'say how many pieces become stock, and why';
  end if;
  return guard.end_deed(jsonb_build_object('order', c.order_no, 'line', c.line_no, 'tags', guard.to_stock(c.cut_line_id, v_pieces, v_count, p ->> 'place', p ->> 'reason')));
end $$;

-- {"order","line","quantity","place"?,"reason"}: 0 cancels the line. Pieces done beyond the new quantity become pieces of stock in
-- "place"; layouts and promises that are more than is wanted now are let go; what is at a saw is named, to be stopped.
create function api.change_order(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('change_order', p_request, p, null, null, p ->> 'reason');
  c cut_line;
  v_line bigint := guard.line_for_cut(p ->> 'order', p ->> 'line');
  v_quantity integer := (p ->> 'quantity')::integer;
  v_plans bigint[];
  v_pieces bigint[];
  v_shipped bigint;
  v_done bigint;
  v_tags jsonb := '[]';
  v_freed jsonb := '[]';
  n record;
begin
  if v_again is not null then return v_again; end if;
  if v_quantity is null or v_quantity < 0 or coalesce(btrim(p ->> 'reason'), '') = '' then
    raise exception using errcode = 'HK026', message = 'a change says the new quantity (0: cancelled) and why';
  end if;
  v_plans := array(select distinct f.plan_id from layout_cut k join layout f using (layout_id) where k.cut_line_id = v_line);
  v_pieces := guard.pieces_of_line(v_line) || array(select f.piece_id from layout_cut k join layout f using (layout_id) where k.cut_line_id = v_line and f.state = 'promised'
    union select piece_id from promise where cut_line_id = v_line and state = 'live');
  perform guard.lock_pieces(v_pieces, false, v_plans);
  perform guard.lock_lines(array[v_line]);
  select * into c from cut_line where cut_line_id = v_line;
  if exists (select from promise r left join layout_cut k using (layout_id) where r.state = 'live' and v_line in (r.cut_line_id, k.cut_line_id) and r.piece_id <> all (v_pieces)) then
    raise exception using errcode = 'HK409', message = format('order %s line %s was planned anew just now', c.order_no, c.line_no), hint = 'look at it and change it again';
  end if;
  select count(*), count(shipment_line_id) into v_done, v_shipped from stroke where cut_line_id = c.cut_line_id and class = 'good';
  if v_quantity < v_shipped then
    raise exception using errcode = 'HK043', message = format('%s pieces of order %s line %s have been shipped; it cannot become %s', v_shipped, c.order_no, c.line_no, v_quantity),
      hint = 'pieces come back by a return, not by a change of the order';
  end if;
  if v_done > v_quantity then
    v_tags := guard.to_stock(c.cut_line_id, v_pieces, v_done - v_quantity, p ->> 'place', p ->> 'reason');
  end if;
  -- the latest promises first, until no more is planned than is wanted
  for n in select r.promise_id, r.piece_id from promise r join piece e using (piece_id)
      where r.piece_id = any (v_pieces) and r.state = 'live' and e.state <> 'at saw' and (r.cut_line_id = c.cut_line_id or exists (select from layout_cut k where k.layout_id = r.layout_id and k.cut_line_id = c.cut_line_id))
      order by r.promise_id desc loop
    exit when guard.line_cut(c.cut_line_id) + guard.line_planned(c.cut_line_id) <= v_quantity;
    perform guard.drop_promise(n.piece_id, p ->> 'reason');
    v_freed := v_freed || to_jsonb((select tag from piece where piece_id = n.piece_id));
  end loop;
  update cut_line set cancelled = v_quantity = 0, quantity = case when v_quantity = 0 then quantity else v_quantity end where cut_line_id = c.cut_line_id;
  update plan q set state = 'cancelled' where plan_id = any (v_plans) and state = 'live'
    and not exists (select from layout f where f.plan_id = q.plan_id and f.state in ('promised', 'at saw', 'done'));
  return guard.end_deed(jsonb_build_object('order', c.order_no, 'line', c.line_no, 'quantity', v_quantity, 'stock_tags', v_tags, 'freed', v_freed,
    'at_saw', (select coalesce(jsonb_agg(distinct e.tag), '[]') from promise r join piece e using (piece_id) where r.state = 'live' and e.state = 'at saw'
      and guard.line_cut(c.cut_line_id) + guard.line_planned(c.cut_line_id) > v_quantity
      and (r.cut_line_id = c.cut_line_id or exists (select from layout_cut k where k.layout_id = r.layout_id and k.cut_line_id = c.cut_line_id)))));
end $$;

-- {"reject","tag","agreed"?: {"who","writing"}}: the piece that replaces a reject is to come from this source, which is reserved for it.
-- Another heat for an order of one heat needs somebody's agreement, by name and in writing.
create function api.recut(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('recut', p_request, p);
  s stroke;
  e piece;
  c cut_line;
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(p ->> 'tag');
  select * into s from stroke where stroke_id = (p ->> 'reject')::bigint;
  if s.stroke_id is null or s.class <> 'reject' or s.cut_line_id is null then
    raise exception using errcode = 'HK043', message = format('%s is no reject of an order', coalesce(p ->> 'reject', 'nothing')), hint = '`heatkeep saw rejects` lists them';
  end if;
  perform guard.lock_lines(array[s.cut_line_id]);
  perform guard.lapse_promises_of(array[e.piece_id]);
  if exists (select from recut where reject_id = s.stroke_id) then
    raise exception using errcode = 'HK041', message = format('reject %s has a recut already', s.stroke_id);
  end if;
  select * into c from cut_line where cut_line_id = s.cut_line_id;
  v_words := guard.heat_rule_words(c, e.lot_id);
  if v_words is not null and (coalesce(btrim(p -> 'agreed' ->> 'who'), '') = '' or coalesce(btrim(p -> 'agreed' ->> 'writing'), '') = '') then
    raise exception using errcode = 'HK042', message = format('%s is of another heat: %s', e.tag, v_words),
      hint = coalesce((select guard.next_best(e.piece_id, array[c.cut_line_id], array[1], min(saw_id)) from saw) || ', or ', '') || 'ask the customer, and give the name and the writing';
  end if;
  v_words := coalesce(guard.taken_words(e), case when e.state <> 'on rack' then 'it is ' || e.state end, guard.piece_may_not_serve(e, c), guard.consent_over(e.piece_id, c.cut_line_id, 1));
  if v_words is not null then
    raise exception using errcode = 'HK042', message = format('%s cannot be used: %s', e.tag, v_words);
  elsif c.length_nm + c.face_nm + c.aim_nm > e.length_nm - e.doubt_nm then
    raise exception using errcode = 'HK034', message = format('%s holds %s mm for sure; the piece is longer', e.tag, trim_scale((e.length_nm - e.doubt_nm) / 1e6::numeric));
  end if;
  insert into recut (reject_id, piece_id, cut_line_id, agreed_by, writing, asked_by)
    values (s.stroke_id, e.piece_id, c.cut_line_id, p -> 'agreed' ->> 'who', p -> 'agreed' ->> 'writing', session_user);
  insert into promise (piece_id, cut_line_id, count, words, promised_by, expires_at)
    values (e.piece_id, c.cut_line_id, 1, 'recut for order ' || c.order_no, session_user, guard.promise_until(now()));
  return guard.end_deed(jsonb_build_object('reject', s.stroke_id, 'tag', e.tag, 'order', c.order_no, 'line', c.line_no));
end $$;

create view api.rejects as
  select s.stroke_id as reject, e.tag, c.order_no, c.line_no, s.fault, s.length_nm, q.tag as reused_as, r.recut_id is not null as recut_asked,
      (select g.stroke_id from book.stroke g where g.recut_of_id = s.stroke_id) as recut
    from book.stroke s join book.piece e using (piece_id) left join book.cut_line c on c.cut_line_id = s.cut_line_id
    left join book.piece q on q.piece_id = s.reused_as_id left join book.recut r on r.reject_id = s.stroke_id where s.class = 'reject';
create view api.open_pieces as
  select f.plan_id, f.layout_no, e.tag, c.order_no, c.line_no, o.missing, o.why, o.said_by
    from book.open_piece o join book.layout f using (layout_id) join book.piece e using (piece_id) join book.cut_line c using (cut_line_id);
