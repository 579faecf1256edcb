-- Bars cut together at a saw: made up, and what was really cut of them booked as one deed with one set of strokes.

-- The pieces of these tags, locked in the order of every deed.
create function guard.bars_for_deed(p_tags text[]) returns setof book.piece
language plpgsql volatile as $$
declare
  v_tags text[] := (select array_agg(distinct guard.tag_form(t)) from unnest(p_tags) t);
begin
  if coalesce(cardinality(p_tags), 0) < 2 then
    raise exception using errcode = 'HK026', message = 'bars cut together are two or more', hint = 'name their tags';
  elsif cardinality(v_tags) < cardinality(p_tags) then
    raise exception using errcode = 'HK026', message = 'a bar is named twice', hint = 'expected each tag once';
  end if;
  perform guard.lock_tags(v_tags);
  perform guard.piece_for_deed(t) from unnest(v_tags) t;  -- says which there is not
  return query select * from piece where tag = any (v_tags) order by piece_id;
end $$;

create function guard.new_saw_bundle(p_saw bigint, p_pieces bigint[]) returns bigint
language plpgsql volatile as $$
declare
  v_id bigint;
begin
  insert into saw_bundle (saw_id, made_by) values (p_saw, session_user) returning saw_bundle_id into v_id;
  insert into saw_bundle_bar (saw_bundle_id, piece_id, layout_id)
    select v_id, n, (select layout_id from promise where piece_id = n and state = 'live') from unnest(p_pieces) n;
  return v_id;
end $$;

-- Made up at the saw: {"saw","tags":[...],"plan"?,"heat_read"?,"heats_read"?: {TAG: LAST4}}. Bars on the rack are fetched by it as by pull, the
-- heat read back from each; bars that were fetched to this saw before and not begun are taken as they are. One that may not come, or that
-- does not go with the others, and all stay as they were: answered as {"refused", "words"}, and logged.
create function api.make_up_bundle(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('make_up_bundle', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device);
  v_saw saw;
  e piece;
  v_bars piece[];
  v_no text[];
  v_bundle bigint;
begin
  if v_again is not null then return v_again; end if;
  select * into v_saw from saw where saw_id = guard.saw(p ->> 'saw');
  begin
    v_bars := (select array_agg(x) from guard.bars_for_deed(array(select jsonb_array_elements_text(coalesce(p -> 'tags', '[]')))) x);
  exception when sqlstate 'HK024' then
    return guard.refuse('make_up_bundle', 'HK024', sqlerrm);
  end;
  perform guard.lock_run_out(array(select piece_id from unnest(v_bars)));
  foreach e in array v_bars loop
    if exists (select from cut where piece_id = e.piece_id and not closed) then
      v_no := array['HK043', format('%s has been begun: it is finished by itself', e.tag)];
    elsif e.state <> 'at saw' or e.place_id <> v_saw.place_id then
      v_no := guard.planned_pull_refusal(e, (p ->> 'plan')::bigint, v_saw.saw_id, coalesce((select value from jsonb_each_text(p -> 'heats_read')
        where guard.tag_form(key) = e.tag), p ->> 'heat_read'));
    elsif guard.blocked_words(e.piece_id) is not null then
      v_no := array['HK040', format('%s: %s', e.tag, guard.blocked_words(e.piece_id))];
    end if;
    if v_no is not null then
      return guard.refuse('make_up_bundle', v_no[1], v_no[2]);
    end if;
  end loop;
  v_no := guard.bundle_refusal(v_saw, array(select piece_id from unnest(v_bars)));
  if v_no is not null then
    return guard.refuse('make_up_bundle', v_no[1], v_no[2]);
  end if;
  v_bundle := guard.new_saw_bundle(v_saw.saw_id, array(select piece_id from unnest(v_bars)));
  perform guard.fetch(x, v_saw, null) from unnest(v_bars) x where x.state <> 'at saw';
  update layout set state = 'at saw' where layout_id in (select layout_id from saw_bundle_bar where saw_bundle_id = v_bundle) and state = 'promised';
  return guard.end_deed(jsonb_build_object('bundle', v_bundle, 'saw', v_saw.name, 'bars', cardinality(v_bars), 'tags', (select jsonb_agg(tag order by tag) from unnest(v_bars))));
end $$;

-- What was really cut of bars cut together: {"saw","bars":[{"tag","measured_nm"?,"strokes","left"?,"reason"?}...],"finish","reason"?,"already_cut"?}; every
-- bar as record_cut takes it, so that one may be short, have a reject or another rest. The k-th stroke with a kerf of each bar in this deed is
-- one stroke of the saw. All are booked or none; bars that had not been made up, or may not be cut together, are booked with a conflict.
create function api.record_bundle(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('record_bundle', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device, p ->> 'reason');
  v_saw saw;
  e piece;
  v_bars piece[];
  v_bundle bigint;
  v_after integer;
  v_no text[];
  v_answers jsonb := '[]';
begin
  if v_again is not null then return v_again; end if;
  select * into v_saw from saw where saw_id = guard.saw(p ->> 'saw');
  v_bars := (select array_agg(x) from guard.bars_for_deed(array(select n ->> 'tag' from jsonb_array_elements(coalesce(p -> 'bars', '[]')) n)) x);
  perform guard.lock_lines(guard.lines_named(p));
  perform guard.lock_places(guard.places_named(p));
  select b.saw_bundle_id into v_bundle from unnest(v_bars) x join saw_bundle_bar b using (piece_id) join saw_bundle w using (saw_bundle_id)
    left join promise r on r.piece_id = x.piece_id and r.state = 'live'
    where w.saw_id = v_saw.saw_id and b.layout_id is not distinct from r.layout_id group by 1 having count(*) = cardinality(v_bars) order by 1 desc limit 1;
  if v_bundle is null then
    v_no := guard.bundle_refusal(v_saw, array(select piece_id from unnest(v_bars)));
    v_bundle := guard.new_saw_bundle(v_saw.saw_id, array(select piece_id from unnest(v_bars)));
    if v_no is not null then
      perform guard.raise_conflict('cut together against a rule', v_bars[1].piece_id, format('%s bars were cut together at saw %s: %s', cardinality(v_bars), v_saw.name, v_no[2]));
    end if;
  end if;
  v_after := coalesce((select max(saw_stroke) from stroke where saw_bundle_id = v_bundle), 0);
  foreach e in array v_bars loop
    v_answers := v_answers || guard.do_cut((p - 'bars') || (select n from jsonb_array_elements(p -> 'bars') n where guard.tag_form(n ->> 'tag') = e.tag), p_device, v_bundle, v_after);
  end loop;
  return guard.end_deed(jsonb_build_object('bundle', v_bundle, 'saw', v_saw.name, 'bars', v_answers,
    'strokes', (select count(distinct saw_stroke) from stroke where saw_bundle_id = v_bundle and saw_stroke > v_after),
    'good', (select sum((n ->> 'good')::integer) from jsonb_array_elements(v_answers) n), 'drop_tags', jsonb_path_query_array(v_answers, '$[*].drop_tag ? (@ != null)'),
    'stop', (select string_agg(format('%s: %s', n ->> 'tag', n ->> 'stop'), '; ') from jsonb_array_elements(v_answers) n where n ->> 'stop' is not null)));
end $$;

-- Bars made up or cut together: strokes of the saw, pieces of metal cut off (kerfs), and the area that its band went through.
create view api.saw_bundles as
  select u.saw_bundle_id as bundle, w.name as saw, u.made_by, f.plan_id, b.bars, b.tags, coalesce(s.strokes, 0) as strokes, coalesce(s.cuts, 0) as cuts, coalesce(s.area_um2, 0)::bigint as area_um2
    from book.saw_bundle u join book.saw w using (saw_id)
    join lateral (select count(*) as bars, array_agg(e.tag order by e.tag) as tags, min(n.layout_id) as layout_id
      from book.saw_bundle_bar n join book.piece e using (piece_id) where n.saw_bundle_id = u.saw_bundle_id) b on true
    left join lateral (select count(distinct t.saw_stroke) as strokes, count(*) as cuts, sum(x.area_um2) as area_um2
      from book.stroke t join book.lot l using (lot_id) join book.section x using (section_id) where t.saw_bundle_id = u.saw_bundle_id) s on true
    left join book.layout f using (layout_id);
