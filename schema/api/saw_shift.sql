-- At the saw over a shift: the first piece measured, and what is left in the vice for the next.

-- {"saw","order","line","measured_nm","set_nm"?}: the first piece of a line after setting the stop. Answers whether it is good, and by how
-- much the stop is off.
create function api.first_piece(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('first_piece', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device);
  c cut_line;
  v_set bigint;
  v_measured bigint := (p ->> 'measured_nm')::bigint;
  v_good boolean;
begin
  if v_again is not null then return v_again; end if;
  c := guard.line_named(p ->> 'order', p ->> 'line');
  v_set := coalesce((p ->> 'set_nm')::bigint, c.length_nm + c.face_nm + c.aim_nm);
  if coalesce(v_measured, 0) <= 0 then
    raise exception using errcode = 'HK026', message = 'say what the first piece measures';
  end if;
  v_good := v_measured between c.length_nm + c.face_nm - c.tolerance_minus_nm and c.length_nm + c.face_nm + c.tolerance_plus_nm;
  insert into first_piece (saw_id, cut_line_id, set_nm, measured_nm, good, measured_by)
    values (guard.saw(p ->> 'saw'), c.cut_line_id, v_set, v_measured, v_good, session_user);
  return guard.end_deed(jsonb_build_object('good', v_good, 'off_nm', v_measured - v_set, 'words',
    case when not v_good then format('outside the tolerance: move the stop by %s mm and book the piece as a reject', trim_scale((v_set - v_measured) / 1e6::numeric))
      when v_measured = v_set then 'as set' else format('in tolerance; %s mm off the stop', trim_scale((v_measured - v_set) / 1e6::numeric)) end));
end $$;

-- {"saw","tag"?,"measured_nm"?,"words","open"?: [{"order","line","why"}]}: the shift ends. With a bar in the vice: what was cut of it stays in its
-- open cut; every piece that its layout still wants must be explained, line by line, before the sheet is handed on.
create function api.hand_over(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('hand_over', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device, p ->> 'words');
  v_saw saw;
  e piece;
  v_cut cut;
  v_layout bigint;
  v_open jsonb;
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_rows('saw', array[guard.saw(p ->> 'saw')]);
  select * into v_saw from saw where saw_id = guard.saw(p ->> 'saw');
  if coalesce(btrim(p ->> 'words'), '') = '' then
    raise exception using errcode = 'HK026', message = 'a hand-over says how things stand';
  elsif exists (select from handover where saw_id = v_saw.saw_id and taken_by is null) then
    raise exception using errcode = 'HK043', message = format('saw %s was handed over and nobody has taken it yet', v_saw.name), hint = 'the next shift takes it over first';
  end if;
  select string_agg(tag, ', ' order by tag) into v_words from piece where state = 'at saw' and place_id = v_saw.place_id;
  if p ->> 'tag' is null then
    if v_words is not null then
      raise exception using errcode = 'HK026', message = format('%s is at saw %s: say what is in the vice', v_words, v_saw.name), hint = 'name its tag, or finish it first';
    end if;
  else
    e := guard.piece_for_deed(p ->> 'tag');
    if e.state <> 'at saw' or e.place_id <> v_saw.place_id then
      raise exception using errcode = 'HK043', message = format('%s is not at saw %s; there is %s', e.tag, v_saw.name, coalesce(v_words, 'nothing'));
    end if;
    select * into v_cut from cut where piece_id = e.piece_id and not closed;
    if p ->> 'measured_nm' is not null then
      perform guard.set_measured(e, (p ->> 'measured_nm')::bigint, 0, null, 'measured at the hand-over');
      select * into e from piece where piece_id = e.piece_id;
    end if;
    select layout_id into v_layout from promise where piece_id = e.piece_id and state = 'live';
  end if;
  select jsonb_agg(jsonb_build_object('order', order_no, 'line', line_no, 'count', n, 'why', why)) into v_open
    from (select c.order_no, c.line_no, k.count - (select count(*) from stroke s where s.cut_id = v_cut.cut_id and s.cut_line_id = k.cut_line_id and s.class = 'good') as n,
        (select x ->> 'why' from jsonb_array_elements(coalesce(p -> 'open', '[]')) x where x ->> 'order' = c.order_no and x ->> 'line' = c.line_no) as why
      from (select cut_line_id, sum(count) as count from layout_cut where layout_id = v_layout group by 1
            union all select cut_line_id, count from promise where piece_id = e.piece_id and state = 'live' and cut_line_id is not null) k join cut_line c using (cut_line_id)) q where n > 0;
  select string_agg(format('%s of order %s line %s', x ->> 'count', x ->> 'order', x ->> 'line'), '; ') into v_words
    from jsonb_array_elements(v_open) x where coalesce(btrim(x ->> 'why'), '') = '';
  if v_words is not null then
    raise exception using errcode = 'HK026', message = format('still open on %s: %s; say why', e.tag, v_words), hint = 'the sheet is handed on with every open piece explained';
  end if;
  insert into handover (saw_id, piece_id, length_nm, done, open, words, given_by)
    values (v_saw.saw_id, e.piece_id, e.length_nm, (select coalesce(jsonb_agg(jsonb_build_object('order', order_no, 'line', line_no, 'count', n)), '[]')
      from (select c.order_no, c.line_no, count(*) as n from stroke s join cut_line c using (cut_line_id) where s.cut_id = v_cut.cut_id and s.class = 'good' group by 1, 2) d),
      coalesce(v_open, '[]'), p ->> 'words', session_user);
  return guard.end_deed(jsonb_build_object('saw', v_saw.name, 'tag', e.tag, 'length_nm', e.length_nm, 'open', coalesce(v_open, '[]')));
end $$;

-- The next person takes the saw over as it stands.
create function api.take_over(p_request uuid, p_saw text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('take_over', p_request, jsonb_build_array(p_saw));
  h handover;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_rows('saw', array[guard.saw(p_saw)]);
  update handover set taken_by = session_user where saw_id = guard.saw(p_saw) and taken_by is null returning * into h;
  if h.handover_id is null then
    raise exception using errcode = 'HK043', message = format('saw %s was not handed over', p_saw), hint = '`heatkeep saw handover` hands it over';
  end if;
  return guard.end_deed(jsonb_build_object('saw', p_saw, 'tag', (select tag from piece where piece_id = h.piece_id), 'length_nm', h.length_nm,
    'done', h.done, 'open', h.open, 'words', h.words, 'given_by', h.given_by,
    'stop', case when h.piece_id is not null then guard.blocked_words(h.piece_id) end));
end $$;

create view api.handovers as
  select h.handover_id, w.name as saw, e.tag, h.length_nm, h.done, h.open, h.words, h.given_by, h.taken_by
    from book.handover h join book.saw w using (saw_id) left join book.piece e using (piece_id);
create view api.first_pieces as
  select w.name as saw, c.order_no, c.line_no, f.set_nm, f.measured_nm, f.good, f.measured_by
    from book.first_piece f join book.saw w using (saw_id) join book.cut_line c using (cut_line_id);
