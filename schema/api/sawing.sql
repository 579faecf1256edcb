-- At the saw: pull by scanned tag, and book what was really cut, stroke by stroke.

-- Fetches a promised piece to the saw. Refusals are answered as {"refused", "words"} and logged, not raised.
create function api.pull(p_request uuid, p_tag text, p_saw text, p_plan bigint default null, p_true_at timestamptz default null,
                         p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('pull', p_request, jsonb_build_array(p_tag, p_saw, p_plan, p_true_at), p_true_at, p_device);
  v_saw saw;
  p piece;
  f layout;
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  select * into v_saw from saw where saw_id = guard.saw(p_saw);
  begin
    p := guard.piece_for_deed(p_tag);
  exception when sqlstate 'HK024' then
    return guard.refuse('pull', 'HK024', sqlerrm);
  end;
  perform from lot where lot_id = p.lot_id for share;
  v_words := guard.blocked_words(p.piece_id);
  if v_words is not null then
    return guard.refuse('pull', 'HK040', format('%s: %s', p.tag, v_words));
  end if;
  select l.* into f from promise r join layout l using (layout_id) where r.piece_id = p.piece_id and r.state = 'live';
  if p.state <> 'on rack' then
    return guard.refuse('pull', 'HK043', format('%s is %s', p.tag, p.state));
  elsif f.layout_id is null then
    return guard.refuse('pull', 'HK042', format('%s is not promised to any plan', p.tag));
  elsif f.plan_id <> p_plan then
    return guard.refuse('pull', 'HK042', format('%s is promised to plan %s, not to plan %s', p.tag, f.plan_id, p_plan));
  end if;
  update piece set state = 'at saw', place_id = v_saw.place_id where piece_id = p.piece_id;
  update layout set state = 'at saw' where layout_id = f.layout_id;
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'plan', f.plan_id, 'layout', f.layout_no));
end $$;

create function guard.line_for_cut(p_order text, p_line text) returns bigint
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_id bigint;
begin
  select cut_line_id into v_id from cut_line where order_no = p_order and line_no = p_line;
  if v_id is null then
    raise exception using errcode = 'HK027', message = format('there is no order %s line %s', p_order, p_line);
  end if;
  return v_id;
end $$;

-- Books n strokes of one kind; answers the metal they took. A good piece must lie in its line's tolerance.
create function guard.book_strokes(p book.piece, p_cut bigint, n jsonb) returns bigint
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_line bigint := case when n ->> 'line' is not null then guard.line_for_cut(n ->> 'order', n ->> 'line') end;
  v_class stroke_class := n ->> 'class';
  v_length bigint := (n ->> 'length_nm')::bigint;
  v_kerf bigint := (n ->> 'kerf_nm')::bigint;
  v_count integer := coalesce((n ->> 'count')::integer, 1);
  v_seq integer := (select coalesce(max(seq), 0) from stroke where cut_id = p_cut);
  c cut_line;
  v_words text;
begin
  if v_count < 1 then
    raise exception using errcode = 'HK026', message = format('%s strokes cannot be booked; expected 1 or more', v_count);
  end if;
  if v_class = 'good' then
    select * into c from cut_line where cut_line_id = v_line for update;
    if v_length not between c.length_nm + c.face_nm - c.tolerance_minus_nm and c.length_nm + c.face_nm + c.tolerance_plus_nm then
      raise exception using errcode = 'HK042', message = format('%s mm is outside the tolerance of order %s line %s',
        trim_scale(v_length / 1e6::numeric), c.order_no, c.line_no), hint = 'book it as a reject, with the fault';
    end if;
    v_words := guard.may_not_serve(p.lot_id, p.owner_id, v_line);
    if v_words is not null then
      perform guard.raise_conflict('cut from the wrong metal', p.piece_id, format('order %s line %s from %s: %s', c.order_no, c.line_no, p.tag, v_words));
    end if;
    if guard.line_cut(v_line) + v_count > c.quantity then
      perform guard.raise_conflict('more cut than ordered', p.piece_id, format('order %s line %s: %s ordered, %s cut',
        c.order_no, c.line_no, c.quantity, guard.line_cut(v_line) + v_count));
    end if;
  end if;
  insert into stroke (cut_id, piece_id, lot_id, owner_id, seq, class, length_nm, kerf_nm, cut_line_id, fault)
    select p_cut, p.piece_id, p.lot_id, p.owner_id, v_seq + i, v_class, v_length, v_kerf, v_line, n ->> 'fault'
      from generate_series(1, v_count) i;
  return (v_length + v_kerf) * v_count;
end $$;

-- The rest of a finished cut: a drop with its own tag, scrap, or nothing. Answers the drop's tag or null.
create function guard.book_rest(p book.piece, p_cut bigint, p_rest bigint, p_left jsonb, p_reason text, p_device text) returns text
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_fate text := coalesce(p_left ->> 'fate', 'none');
  v_measured bigint := coalesce((p_left ->> 'length_nm')::bigint, p_rest);
  v_slack bigint := p.doubt_nm + guard.setting('rest_slack_nm', '2000000')::bigint;
  v_id bigint;
  v_tag text;
  v_place bigint;
begin
  if v_fate = 'drop' or (v_fate = 'scrap' and p_rest > 0) then
    if v_measured <= 0 or v_measured > p_rest + v_slack then
      raise exception using errcode = 'HK034', message = format('the rest of %s cannot measure %s mm: by the cuts it is %s mm',
        p.tag, trim_scale(v_measured / 1e6::numeric), trim_scale(p_rest / 1e6::numeric)), hint = 'measure again, or correct what was cut';
    elsif abs(p_rest - v_measured) > v_slack and coalesce(btrim(p_reason), '') = '' then
      raise exception using errcode = 'HK026', message = format('%s mm are missing from the rest of %s: say why',
        trim_scale((p_rest - v_measured) / 1e6::numeric), p.tag);
    end if;
  end if;
  if v_fate = 'drop' then
    if p_left ->> 'place' is null then
      raise exception using errcode = 'HK026', message = format('say where the drop of %s is put', p.tag);
    end if;
    v_place := guard.place(p_left ->> 'place');
    v_tag := case when p_left ->> 'tag' is not null then guard.offline_tag(p_left ->> 'tag', p_device)
             else guard.new_tag((select site_id from place where place_id = v_place)) end;
    v_id := nextval(pg_get_serial_sequence('book.piece', 'piece_id'));
    insert into piece (piece_id, tag, kind, lot_id, owner_id, parent_id, parent_made_length_nm, from_cut_id, path, receipt_line_id,
        made_length_nm, length_nm, doubt_nm, ends, mark_end, place_id, state, cents_per_tonne)
      overriding system value
      values (v_id, v_tag, 'drop', p.lot_id, p.owner_id, p.piece_id, p.made_length_nm, p_cut, p.path || v_id, p.receipt_line_id,
        v_measured, v_measured, coalesce((p_left ->> 'doubt_nm')::bigint, guard.setting('tape_doubt_nm', '1000000')::bigint),
        greatest(1, p.ends), (case when p.mark_end in ('last', 'both') then 'last' when p.mark_end = 'unknown' then 'unknown' else 'none' end)::mark_end,
        v_place, 'on rack', p.cents_per_tonne);
  elsif v_fate = 'scrap' and p_rest > 0 then
    insert into metal_out (piece_id, lot_id, owner_id, cut_id, class, length_nm, reason)
      values (p.piece_id, p.lot_id, p.owner_id, p_cut, 'scrap', v_measured, p_left ->> 'bin');
  elsif p_rest <> 0 then
    raise exception using errcode = 'HK026', message = format('%s mm are left of %s: say whether they are a drop or scrap',
      trim_scale(p_rest / 1e6::numeric), p.tag);
  else
    v_measured := 0;
  end if;
  if v_measured <> p_rest then
    insert into metal_out (piece_id, lot_id, owner_id, cut_id, class, length_nm, reason, named)
      values (p.piece_id, p.lot_id, p.owner_id, p_cut, 'unexplained', p_rest - v_measured,
        coalesce(nullif(btrim(p_reason), ''), 'rest measured against arithmetic'), session_user);
  end if;
  return v_tag;
end $$;

-- What was really cut from a piece: {"tag","saw","measured_nm"?,"strokes":[{"class","order"?,"line"?,"count","length_nm","kerf_nm",
-- "fault"?}],"finish","left":{"fate","length_nm"?,"doubt_nm"?,"place"?,"tag"?,"bin"?},"reason"?}. May be called stroke by stroke;
-- "finish" closes the cut. Facts are recorded even where a rule was broken (the answer then says "stop" and why).
create function api.record_cut(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('record_cut', p_request, p || jsonb_build_object('true_at', p_true_at), p_true_at, p_device, p ->> 'reason');
  e piece;
  v_cut cut;
  v_layout layout;
  v_used bigint := 0;
  v_tag text;
  v_stop text;
  v_plan bigint;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(p ->> 'tag');
  perform from lot where lot_id = e.lot_id for share;
  if e.length_nm = 0 then
    raise exception using errcode = 'HK043', message = format('%s is %s: nothing of it is left to cut', e.tag, e.state);
  end if;
  select f.* into v_layout from promise r join layout f using (layout_id) where r.piece_id = e.piece_id and r.state = 'live';
  v_stop := guard.blocked_words(e.piece_id);
  select * into v_cut from cut where piece_id = e.piece_id and not closed;
  if v_cut.cut_id is null then
    insert into cut (piece_id, lot_id, owner_id, layout_id, saw_id, length_in_nm)
      values (e.piece_id, e.lot_id, e.owner_id, v_layout.layout_id, guard.saw(p ->> 'saw'), e.length_nm) returning * into v_cut;
    if v_layout.state = 'promised' then
      update layout set state = 'at saw' where layout_id = v_layout.layout_id;
    end if;
  end if;
  if p ->> 'measured_nm' is not null then
    perform guard.set_measured(e, (p ->> 'measured_nm')::bigint, null, v_cut.cut_id, coalesce(p ->> 'reason', 'measured at the saw'));
    select * into e from piece where piece_id = e.piece_id;
  end if;
  select coalesce(sum(guard.book_strokes(e, v_cut.cut_id, n)), 0) into v_used from jsonb_array_elements(coalesce(p -> 'strokes', '[]')) n;
  if v_used > e.length_nm then
    raise exception using errcode = 'HK034', message = format('%s holds %s mm; %s mm cannot have been cut from it', e.tag,
      trim_scale(e.length_nm / 1e6::numeric), trim_scale(v_used / 1e6::numeric)), hint = 'measure the piece and say what it measured';
  end if;
  if not coalesce((p ->> 'finish')::boolean, false) then
    if v_used = e.length_nm then
      raise exception using errcode = 'HK026', message = format('nothing is left of %s: finish the cut', e.tag);
    end if;
    update piece set length_nm = e.length_nm - v_used,
      state = case when v_stop is null then 'at saw'::piece_state else state end where piece_id = e.piece_id;
    return guard.end_deed(jsonb_build_object('tag', e.tag, 'cut_id', v_cut.cut_id, 'length_nm', e.length_nm - v_used, 'stop', v_stop));
  end if;
  if p -> 'left' ->> 'fate' = 'same piece' then
    if exists (select from stroke where cut_id = v_cut.cut_id and class <> 'trim') then
      raise exception using errcode = 'HK026', message = format('pieces were cut from %s: the rest gets a tag of its own', e.tag);
    end if;
    update piece set length_nm = e.length_nm - v_used, state = 'on rack', place_id = guard.place(p -> 'left' ->> 'place'),
      ends = greatest(ends, 1) where piece_id = e.piece_id;
    update cut set closed = true, rest_nm = e.length_nm - v_used where cut_id = v_cut.cut_id;
  else
    v_tag := guard.book_rest(e, v_cut.cut_id, e.length_nm - v_used, p -> 'left', p ->> 'reason', p_device);
    update piece set length_nm = 0, state = 'cut up', place_id = null where piece_id = e.piece_id;
    update cut set closed = true, rest_nm = 0 where cut_id = v_cut.cut_id;
  end if;
  update promise set state = 'kept' where piece_id = e.piece_id and state = 'live';
  update layout set state = 'done' where layout_id = v_layout.layout_id returning plan_id into v_plan;
  update plan set state = 'done' where plan_id = v_plan
    and not exists (select from layout where plan_id = v_plan and state in ('promised', 'at saw'));
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'cut_id', v_cut.cut_id, 'drop_tag', v_tag, 'stop', v_stop,
    'good', (select count(*) from stroke where cut_id = v_cut.cut_id and class = 'good')));
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
