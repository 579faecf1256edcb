-- A piece reserved for a line without a plan, let go again, and promises whose time is over.

-- {"tag","order","line","count","until"?}: until the end of the next shift where no time is given.
create function api.reserve(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('reserve', p_request, p);
  e piece;
  c cut_line;
  v_words text;
  v_until timestamptz := coalesce((p ->> 'until')::timestamptz, guard.promise_until(now()));
  v_count integer := coalesce((p ->> 'count')::integer, 0);
  v_open bigint;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(p ->> 'tag');
  perform guard.lock_lines(array[guard.line_for_cut(p ->> 'order', p ->> 'line')]);
  c := guard.line_named(p ->> 'order', p ->> 'line');
  if v_until <= now() then
    raise exception using errcode = 'HK026', message = 'a promise that ends in the past holds nothing', hint = 'give a time to come, or none: the end of the next shift';
  end if;
  perform guard.lapse_promises_of(array[e.piece_id]);
  v_words := coalesce(guard.taken_words(e), case when e.state <> 'on rack' then 'it is ' || e.state end);
  if v_words is not null then
    raise exception using errcode = 'HK409', message = format('%s cannot be reserved: %s', e.tag, v_words),
      hint = coalesce((select guard.next_best(e.piece_id, array[c.cut_line_id], array[v_count], min(saw_id)) from saw), 'look at the rack again');
  end if;
  v_words := coalesce(guard.piece_may_not_serve(e, c), guard.heat_rule_words(c, e.lot_id), guard.consent_over(e.piece_id, c.cut_line_id, v_count));
  v_open := c.quantity - guard.line_cut(c.cut_line_id) - guard.line_planned(c.cut_line_id);
  if v_words is not null then
    raise exception using errcode = 'HK042', message = format('%s may not serve order %s line %s: %s', e.tag, c.order_no, c.line_no, v_words);
  elsif v_count < 1 or v_count > v_open then
    raise exception using errcode = 'HK042', message = format('order %s line %s has %s pieces open, not %s', c.order_no, c.line_no, v_open, v_count),
      hint = 'reserve for pieces that are open';
  elsif v_count * (c.length_nm + c.face_nm + c.aim_nm) > e.length_nm - e.doubt_nm then
    raise exception using errcode = 'HK034', message = format('%s holds %s mm for sure; %s pieces need more', e.tag,
      trim_scale((e.length_nm - e.doubt_nm) / 1e6::numeric), v_count);
  end if;
  insert into promise (piece_id, cut_line_id, count, words, promised_by, expires_at)
    values (e.piece_id, c.cut_line_id, v_count, 'order ' || c.order_no, session_user, v_until);
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'order', c.order_no, 'line', c.line_no, 'count', v_count, 'until', v_until));
end $$;

-- Lets one piece go, whatever it was promised to, unless it is at a saw.
create function api.unreserve(p_request uuid, p_tag text, p_reason text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('unreserve', p_request, jsonb_build_array(p_tag, p_reason), null, null, p_reason);
  e piece;
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(p_tag);
  v_words := guard.taken_words(e);
  if coalesce(btrim(p_reason), '') = '' then
    raise exception using errcode = 'HK026', message = 'letting a promise go says why';
  elsif v_words is null then
    raise exception using errcode = 'HK043', message = format('%s is not promised to anybody', e.tag);
  elsif e.state = 'at saw' then
    raise exception using errcode = 'HK043', message = format('%s is not let go: %s', e.tag, v_words), hint = 'the saw books what it has cut, or puts it back';
  end if;
  perform guard.drop_promise(e.piece_id, p_reason);
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'was', v_words));
end $$;

-- Frees every promise whose time is over; metal at a saw stays.
create function api.lapse_promises(p_request uuid) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('lapse_promises', p_request, 'null');
begin
  if v_again is not null then return v_again; end if;
  return guard.end_deed(jsonb_build_object('lapsed', guard.lapse_promises()));
end $$;

create view api.promises as
  select r.promise_id, e.tag, r.state::text, f.plan_id, c.order_no, c.line_no, r.count, r.words, r.promised_by, r.expires_at
    from book.promise r join book.piece e using (piece_id) left join book.layout f using (layout_id) left join book.cut_line c using (cut_line_id);
