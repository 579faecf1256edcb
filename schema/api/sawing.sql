-- At the saw: pull by scanned tag, and book what was really cut, stroke by stroke.

-- What a pull does once nothing speaks against it: measured anew where that was said, then at the saw.
create function guard.fetch(p book.piece, p_saw book.saw, p_measured bigint) returns void
language plpgsql volatile as $$
begin
  if p_measured is not null and p_measured <> p.length_nm then
    perform guard.set_measured(p, p_measured, 0, null, 'measured when it was pulled');
  end if;
  update piece set state = 'at saw', place_id = p_saw.place_id where piece_id = p.piece_id;
end $$;

-- Fetches a promised piece to the saw: by the plan's layout, or, without a plan, as it was reserved for a line. p_heat_read: the
-- last characters of the heat as read from the metal. p_measured_nm: the start length where it is off. Refusals are answered
-- as {"refused", "words"} with the next-best source, and logged, not raised.
create function api.pull(p_request uuid, p_tag text, p_saw text, p_plan bigint default null, p_true_at timestamptz default null,
                         p_device text default null, p_heat_read text default null, p_measured_nm bigint default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('pull', p_request, jsonb_build_array(p_tag, p_saw, p_plan, guard.utc(p_true_at), p_heat_read, p_measured_nm), p_true_at, p_device);
  v_saw saw;
  p piece;
  f layout;
  v_no text[];
begin
  if v_again is not null then return v_again; end if;
  select * into v_saw from saw where saw_id = guard.saw(p_saw);
  begin
    p := guard.piece_for_deed(p_tag);
  exception when sqlstate 'HK024' then
    return guard.refuse('pull', 'HK024', sqlerrm);
  end;
  perform guard.lock_run_out(array[p.piece_id]);
  select * into f from layout where layout_id = (select layout_id from promise where piece_id = p.piece_id and state = 'live');
  v_no := guard.planned_pull_refusal(p, p_plan, v_saw.saw_id, p_heat_read);
  if v_no is not null then
    return guard.refuse('pull', v_no[1], v_no[2]);
  end if;
  perform guard.fetch(p, v_saw, p_measured_nm);
  update layout set state = 'at saw' where layout_id = f.layout_id;
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'plan', f.plan_id, 'layout', f.layout_no,
    'short_nm', case when p_measured_nm < f.length_nm then f.length_nm - p_measured_nm end));
end $$;

-- Fetches a piece for pieces of a line that no plan has: an urgent order, a piece nearer at hand.
-- {"tag","saw","order","line","count","heat_read"?,"measured_nm"?}. Refusals as with pull.
create function api.pull_for_line(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('pull_for_line', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device);
  v_saw saw;
  e piece;
  c cut_line;
  v_count integer := coalesce((p ->> 'count')::integer, 0);
  v_open bigint;
  v_layout bigint;
  v_no text[];
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  select * into v_saw from saw where saw_id = guard.saw(p ->> 'saw');
  if v_count < 1 then
    raise exception using errcode = 'HK026', message = 'say how many pieces of the line; expected 1 or more';
  end if;
  begin
    e := guard.piece_for_deed(p ->> 'tag');
  exception when sqlstate 'HK024' then
    return guard.refuse('pull_for_line', 'HK024', sqlerrm);
  end;
  perform guard.lock_lines(array[guard.line_for_cut(p ->> 'order', p ->> 'line')]);
  c := guard.line_named(p ->> 'order', p ->> 'line');
  v_no := guard.pull_refusal(e, null, array[c.cut_line_id], array[v_count], v_saw.saw_id, p ->> 'heat_read');
  if v_no is not null then
    return guard.refuse('pull_for_line', v_no[1], v_no[2]);
  end if;
  v_open := c.quantity - guard.line_cut(c.cut_line_id) - guard.line_planned(c.cut_line_id)
    + coalesce((select sum(count) from promise where piece_id = e.piece_id and state = 'live' and cut_line_id = c.cut_line_id), 0);
  if c.cancelled or v_count > v_open then
    return guard.refuse('pull_for_line', 'HK042', format('order %s line %s has %s pieces open, not %s', c.order_no, c.line_no,
      case when c.cancelled then 0 else greatest(0, v_open) end, v_count));
  end if;
  v_words := guard.consent_over(e.piece_id, c.cut_line_id, v_count);
  if v_words is not null then
    return guard.refuse('pull_for_line', 'HK042', format('%s may not serve it: %s', e.tag, v_words));
  end if;
  update promise set state = case when layout_id is null then 'kept'::promise_state else 'lapsed' end where piece_id = e.piece_id and state = 'live'
    returning layout_id into v_layout;
  update layout set state = 'dropped' where layout_id = v_layout and state = 'promised';
  perform guard.fetch(e, v_saw, (p ->> 'measured_nm')::bigint);
  insert into promise (piece_id, cut_line_id, count, words, promised_by, expires_at)
    values (e.piece_id, c.cut_line_id, v_count, 'order ' || c.order_no, session_user, guard.promise_until(now()));
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'order', c.order_no, 'line', c.line_no, 'count', v_count));
end $$;

-- What was really cut from a piece: {"tag","saw","measured_nm"?,"measured_with"?,"strokes":[{"class","order"?,"line"?,"count","length_nm","kerf_nm",
-- "fault"?,"lab"?,"recut_of"?,"place"?,"mark"?,"tags"?}],"finish","left":{"fate","length_nm"?,"doubt_nm"?,"measured_with"?,"ends"?,"place"?,"heat"?,"tag"?,"bin"?},
-- "reason"?,"already_cut"?}. Classes: trim, good, reject, crop, test slice, and stock (a piece with a tag of its own). May be called
-- stroke by stroke; "finish" closes the cut, and explains what was planned and not cut. Facts are recorded even where a rule
-- was broken (the answer then says "stop" and why). Its forty queries are planned once a session: planned anew they cost a third of the cut.
create function api.record_cut(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp set plan_cache_mode = force_generic_plan as $$
declare
  v_again jsonb := guard.begin_deed('record_cut', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device, p ->> 'reason');
begin
  if v_again is not null then return v_again; end if;
  return guard.end_deed(guard.do_cut(p, p_device));
end $$;

-- One long piece into several for storage: {"tag","saw","kerf_nm","parts":[{"length_nm","place","heat","mark"?}...],"reason"?}. The last
-- part is what is left, as measured. No part without the heat marked on it, as it is written there.
create function api.split_piece(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('split_piece', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device, p ->> 'reason');
  e piece;
  v_parts integer := coalesce(jsonb_array_length(p -> 'parts'), 0);
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(p ->> 'tag');
  v_words := coalesce(guard.blocked_words(e.piece_id), guard.taken_words(e), guard.strap_words(e));
  if v_parts < 2 then
    raise exception using errcode = 'HK026', message = 'a split has two parts or more';
  elsif v_words is not null then
    raise exception using errcode = 'HK040', message = format('%s is not split: %s', e.tag, v_words);
  end if;
  perform guard.refuse_away(e, 'split');
  perform guard.check_heat_on_label(e, n ->> 'heat') from jsonb_array_elements(p -> 'parts') n;
  return guard.end_deed(guard.do_cut(jsonb_build_object('tag', e.tag, 'saw', p -> 'saw', 'finish', true, 'reason', p -> 'reason',
    'strokes', (select jsonb_agg(n || jsonb_build_object('class', 'stock', 'kerf_nm', p -> 'kerf_nm', 'count', 1, 'mark', coalesce(n ->> 'mark', 'first')) order by i)
      from jsonb_array_elements(p -> 'parts') with ordinality x (n, i) where i < v_parts),
    'left', (p -> 'parts' -> (v_parts - 1)) || '{"fate": "drop"}'), p_device));
end $$;

-- A slice for the laboratory off a piece in the rack: {"tag","saw","length_nm","kerf_nm","lab","place","rest_nm"?,"reason"?}. The rest gets a tag of its own.
create function api.take_test_slice(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('take_test_slice', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device, p ->> 'reason');
  e piece;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(p ->> 'tag');
  if guard.taken_words(e) is not null then
    raise exception using errcode = 'HK043', message = format('no slice is taken from %s: %s', e.tag, guard.taken_words(e)),
      hint = 'the saw takes it with the cut (class "test slice"), or the planner lets the piece go first';
  end if;
  perform guard.refuse_away(e, 'sliced for the laboratory');
  return guard.end_deed(guard.do_cut(jsonb_build_object('tag', e.tag, 'saw', p -> 'saw', 'finish', true, 'reason', p -> 'reason',
    'strokes', jsonb_build_array(jsonb_build_object('class', 'test slice', 'length_nm', p -> 'length_nm', 'kerf_nm', p -> 'kerf_nm', 'lab', p -> 'lab')),
    'left', jsonb_strip_nulls(jsonb_build_object('fate', 'drop', 'place', p -> 'place', 'length_nm', p -> 'rest_nm'))), p_device));
end $$;

-- A block of tag numbers for a device that will be off the network. The device is made where it is new.
create function api.take_tag_block(p_request uuid, p_device text, p_site text, p_size integer) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('take_tag_block', p_request, jsonb_build_array(p_device, p_site, p_size), null, p_device);
  v_site site;
  v_device bigint;
  v_first bigint;
begin
  if v_again is not null then return v_again; end if;
  select * into v_site from site where name = p_site;
  if v_site.site_id is null or p_size not between 1 and 10000 then
    raise exception using errcode = 'HK026', message = 'a block needs a known site and a size from 1 to 10000';
  end if;
  lock table tag_block in exclusive mode;
  insert into device (name, site_id) values (p_device, v_site.site_id) on conflict (name) do nothing;
  select device_id into v_device from device where name = p_device and site_id = v_site.site_id;
  if v_device is null then
    raise exception using errcode = 'HK026', message = format('device "%s" belongs to another site than %s', p_device, p_site);
  end if;
  select coalesce(max(last_no), 0) + 1 into v_first from tag_block;
  insert into tag_block (device_id, first_no, last_no) values (v_device, v_first, v_first + p_size - 1);
  return guard.end_deed(jsonb_build_object('letter', v_site.offline_letter, 'first', v_first, 'last', v_first + p_size - 1));
end $$;
