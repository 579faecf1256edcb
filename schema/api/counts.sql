-- Counting a place: frozen first, counted blind, the differences in millimetres and money looked at by another person.
-- Nothing is put right before that.

-- {"place"}: from now on nothing is taken from or put in the place, until the count is approved or given up.
create function api.freeze_place(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('freeze_place', p_request, p);
  v_place bigint;
  v_pieces bigint[];
begin
  if v_again is not null then return v_again; end if;
  v_place := guard.place(guard.said(p, 'place', 'the place'));
  if exists (select from stock_count where place_id = v_place and state in ('open', 'counted')) then
    raise exception using errcode = 'HK041', message = format('%s is being counted already', p ->> 'place'),
      hint = '`heatkeep count seen` goes on with it, `heatkeep count give-up` ends it';
  end if;
  insert into stock_count (place_id, state, started_by) values (v_place, 'open', session_user);
  v_pieces := array(select piece_id from piece where place_id = v_place and length_nm > 0);
  perform guard.lock_pieces(v_pieces, true);
  update piece set frozen = true where piece_id = any (v_pieces) and place_id = v_place and length_nm > 0 and state = 'on rack';
  return guard.end_deed(jsonb_build_object('place', p ->> 'place', 'frozen', true));
end $$;

-- The count of a place in this state, locked; refused where there is none.
create function guard.count_of(p_place text, p_states text[]) returns book.stock_count
language plpgsql volatile as $$
declare
  c stock_count;
begin
  perform guard.lock_rows('stock_count', array(select stock_count_id from stock_count where place_id = guard.place(p_place) and state in ('open', 'counted')));
  select * into c from stock_count where place_id = guard.place(p_place) and state = any (p_states);
  if c.stock_count_id is null then
    raise exception using errcode = 'HK043', message = format('no count of %s is %s', p_place, array_to_string(p_states, ' or ')), hint = '`heatkeep count freeze PLACE` begins one, `heatkeep count seen PLACE` tells what is there';
  end if;
  return c;
end $$;

-- What is frozen because this place is counted; and what was frozen in it and has been put apart since.
create function guard.frozen_by(p_place bigint) returns bigint[]
language sql stable
return array(select p.piece_id from book.piece p where p.frozen and (p.place_id = p_place
  or not exists (select from book.stock_count c where c.place_id = p.place_id and c.state in ('open', 'counted'))));

-- {"place","reason"}: the count is given up; nothing is changed by it.
create function api.unfreeze_place(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('unfreeze_place', p_request, p);
  c stock_count;
  v_frozen bigint[];
begin
  if v_again is not null then return v_again; end if;
  c := guard.count_of(guard.said(p, 'place', 'the place'), array['open', 'counted']);
  v_frozen := guard.frozen_by(c.place_id);
  perform guard.lock_pieces(v_frozen);
  update stock_count set state = 'given up', words = guard.said(p, 'reason', 'why the count is given up') where stock_count_id = c.stock_count_id;
  update piece set frozen = false where piece_id = any (v_frozen) and frozen;
  return guard.end_deed(jsonb_build_object('place', p ->> 'place', 'frozen', false));
end $$;

-- {"place","seen":[{"tag","length_nm"?} | {"section":{},"length_nm","marks"}],"measured_with"?,"done":bool}: what is there, whatever the
-- book says. With "done" the counting ends and the differences are worked out.
create function api.count_seen(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('count_seen', p_request, p);
  c stock_count;
  e piece;
  n jsonb;
begin
  if v_again is not null then return v_again; end if;
  c := guard.count_of(guard.said(p, 'place', 'the place'), array['open']);
  for n in select * from jsonb_array_elements(coalesce(p -> 'seen', '[]')) loop
    if n ? 'tag' then
      e := guard.piece_of(n ->> 'tag');
      if exists (select from count_line where stock_count_id = c.stock_count_id and piece_id = e.piece_id) then
        raise exception using errcode = 'HK041', message = format('%s was counted already', e.tag);
      end if;
      perform guard.check_measured(e, (n ->> 'length_nm')::bigint);
      insert into count_line (stock_count_id, piece_id, length_nm, doubt_nm, book_nm, book_place_id) values (c.stock_count_id, e.piece_id, (n ->> 'length_nm')::bigint,
        guard.doubt_nm((n ->> 'doubt_nm')::bigint, p ->> 'measured_with'), e.length_nm, e.place_id);
    else
      insert into count_line (stock_count_id, section_id, length_nm, doubt_nm, marks) values (c.stock_count_id, guard.section(n -> 'section'),
        guard.said(n, 'length_nm', 'the measured length')::bigint, guard.doubt_nm((n ->> 'doubt_nm')::bigint, p ->> 'measured_with'), coalesce(n ->> 'marks', 'none'));
    end if;
  end loop;
  if coalesce((p ->> 'done')::boolean, false) then
    update stock_count set state = 'counted', counted_by = session_user,
      missing_nm = (select coalesce(sum(length_nm), 0) from guard.count_differences(c.stock_count_id) where what = 'not found'),
      difference_nm = (select coalesce(sum(difference_nm), 0) from guard.count_differences(c.stock_count_id)),
      difference_cents = (select coalesce(sum(cents), 0) from guard.count_differences(c.stock_count_id)) where stock_count_id = c.stock_count_id;
  end if;
  return guard.end_deed(jsonb_build_object('place', p ->> 'place', 'lines', (select count(*) from count_line where stock_count_id = c.stock_count_id)));
end $$;

-- Counted pieces with what the book said of each when it was counted, and whether it has been cut, measured or moved since.
create view guard.counted as
  select n.stock_count_id, n.piece_id, e.tag, n.length_nm as counted_nm, n.doubt_nm, coalesce(n.book_nm, e.length_nm) as book_nm,
      case when n.book_nm is null then e.place_id else n.book_place_id end as book_place_id,
      n.book_nm is not null and (n.book_nm, n.book_place_id) is distinct from (e.length_nm, e.place_id) as changed_since
    from book.count_line n join book.piece e using (piece_id);

-- Where the count and the book differ. difference_nm: counted less book; cents: what that is worth.
create function guard.count_differences(p_count bigint) returns table (piece_id bigint, what text, tag text, length_nm bigint, counted_nm bigint,
  difference_nm bigint, cents bigint, doubt_nm bigint)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  select p.piece_id, 'not found', p.tag, p.length_nm, 0::bigint, -p.length_nm, -guard.worth_cents(p.piece_id, p.length_nm), null::bigint
    from book.stock_count c join book.piece p on p.place_id = c.place_id and p.frozen and p.length_nm > 0
    where c.stock_count_id = p_count and not exists (select from book.count_line n where n.stock_count_id = p_count and n.piece_id = p.piece_id)
  union all
  select n.piece_id, case when n.book_place_id is distinct from c.place_id then 'not here in the book' else 'other length' end, n.tag, n.book_nm, n.counted_nm,
      coalesce(n.counted_nm, n.book_nm) - n.book_nm, sign(coalesce(n.counted_nm, n.book_nm) - n.book_nm)::bigint
        * guard.worth_cents(n.piece_id, abs(coalesce(n.counted_nm, n.book_nm) - n.book_nm)), n.doubt_nm
    from book.stock_count c join guard.counted n using (stock_count_id)
    where c.stock_count_id = p_count and (n.book_place_id is distinct from c.place_id or n.counted_nm <> n.book_nm)
  union all
  select null, 'without a tag', x.label || ', marks: ' || n.marks, 0, n.length_nm, n.length_nm, 0, n.doubt_nm
    from book.count_line n join book.section x using (section_id) where n.stock_count_id = p_count;
end;

-- {"place","words"}: another person than the counter; above setting count_limit_cents it is the owner's. Only now what was
-- not found is missing, lengths are what was measured, and metal without a tag is unknown metal in quarantine. What was counted otherwise than
-- the book had it and has been cut, measured or moved since is left as it is ("left"): a person looks at it.
create function api.approve_count(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('approve_count', p_request, p || jsonb_build_object('reason', coalesce(p ->> 'words', '')));
  c stock_count;
  d record;
  n count_line;
  e piece;
  v_limit bigint := guard.setting('count_limit_cents', '10000')::numeric;
  v_found jsonb := '[]';
  v_missing jsonb := '[]';
  v_left jsonb := '[]';
  v_frozen bigint[];
begin
  if v_again is not null then return v_again; end if;
  c := guard.count_of(guard.said(p, 'place', 'the place'), array['counted']);
  if c.counted_by = session_user then
    raise exception using errcode = 'HK043', message = format('%s was counted by you: another person approves it', p ->> 'place');
  elsif (select coalesce(sum(abs(cents)), 0) from guard.count_differences(c.stock_count_id)) > v_limit and not pg_has_role(session_user, 'heatkeep_owner', 'member') then
    raise exception using errcode = 'HK043', message = format('the differences of %s are worth more than %s: the owner approves them', p ->> 'place',
      to_char(v_limit / 100.0, 'FM999999990.00')), hint = 'the limit is the setting count_limit_cents of the shop';
  end if;
  v_frozen := guard.frozen_by(c.place_id);
  perform guard.lock_pieces(v_frozen || array(select piece_id from guard.count_differences(c.stock_count_id) where piece_id is not null));
  for d in select * from guard.count_differences(c.stock_count_id) where piece_id is not null loop
    perform guard.said(p, 'words', 'what the differences come from, or what was looked for');
    select * into e from piece where piece_id = d.piece_id;
    if d.what = 'not found' then
      perform guard.drop_promise(e.piece_id, 'not found when ' || (p ->> 'place') || ' was counted');
      update piece set state = 'missing', place_id = null, bundle_id = null, frozen = false where piece_id = e.piece_id;
      v_missing := v_missing || to_jsonb(e.tag);
    elsif exists (select from guard.counted where stock_count_id = c.stock_count_id and piece_id = e.piece_id and changed_since) then
      perform guard.raise_conflict('changed since it was counted', e.piece_id, format('%s was counted in %s with %s mm; it has been cut, measured or moved since: look at it and measure it', e.tag,
        p ->> 'place', trim_scale(coalesce(d.counted_nm, d.length_nm) / 1e6::numeric)));
      v_left := v_left || to_jsonb(e.tag);
    elsif e.length_nm > 0 and guard.at_another_site(e.place_id, c.place_id) then
      perform guard.raise_conflict('counted at another site', e.piece_id, format('%s was counted in %s; in the book it lies at another site, in %s, and was not sent', e.tag,
        p ->> 'place', (select name from place where place_id = e.place_id)));
      v_left := v_left || to_jsonb(e.tag);
    elsif e.length_nm > 0 and e.state in ('on rack', 'missing') then
      if d.counted_nm is not null then
        perform guard.set_measured(e, d.counted_nm, d.doubt_nm, null, format('counted in %s: %s', p ->> 'place', p ->> 'words'));
      end if;
      update piece set place_id = c.place_id, state = 'on rack' where piece_id = e.piece_id;
    else
      perform guard.raise_conflict('counted though it is not here', e.piece_id, format('%s was counted in %s; in the book it is %s', e.tag, p ->> 'place', e.state));
    end if;
  end loop;
  update piece set frozen = false where piece_id = any (v_frozen) and frozen;
  for n in select * from count_line where stock_count_id = c.stock_count_id and section_id is not null loop
    e := guard.book_found(n.section_id, n.length_nm, n.doubt_nm, n.marks, c.place_id);
    v_found := v_found || jsonb_build_object('tag', e.tag, 'length_nm', n.length_nm, 'hint', guard.found_hint(n.section_id, n.length_nm));
  end loop;
  update stock_count set state = 'approved', approved_by = session_user, words = p ->> 'words' where stock_count_id = c.stock_count_id;
  return guard.end_deed(jsonb_build_object('place', p ->> 'place', 'missing', v_missing, 'found', v_found, 'left', v_left, 'difference_nm', c.difference_nm, 'cents', c.difference_cents));
end $$;

-- While a count is open nobody sees what the book expects of it.
create view api.counts as
  select c.stock_count_id as count_id, w.name as place, c.state, c.started_by, c.counted_by, c.approved_by, c.words,
      (select count(*) from book.count_line n where n.stock_count_id = c.stock_count_id and n.piece_id is not null) as tags,
      (select coalesce(sum(coalesce(n.counted_nm, n.book_nm)), 0)::bigint from guard.counted n
        where n.stock_count_id = c.stock_count_id and c.state <> 'open') as counted_nm,
      c.missing_nm, c.difference_nm, c.difference_cents
    from book.stock_count c join book.place w using (place_id);
create view api.count_differences as
  select c.stock_count_id as count_id, w.name as place, d.what, d.tag, d.length_nm, d.counted_nm, d.difference_nm, d.cents
    from book.stock_count c join book.place w using (place_id) cross join lateral guard.count_differences(c.stock_count_id) d where c.state = 'counted';
