-- A cut as it is told: begun, gone on with, or closed.

-- What is odd about cutting this piece now, for a person to look at; the metal is booked all the same.
create function guard.conflicts_of_cut(e book.piece, p_saw bigint, p_layout book.layout, p_lines bigint[]) returns void
language plpgsql volatile as $$
declare
  v_words text;
begin
  if e.state = 'at saw' and e.place_id <> (select place_id from saw where saw_id = p_saw) then
    perform guard.raise_conflict('cut at another saw', e.piece_id, format('%s was cut at saw %s: %s', e.tag,
      (select name from saw where saw_id = p_saw), guard.taken_words(e)));
  elsif e.state = 'on rack' then
    v_words := guard.taken_words(e);
    if v_words is not null and not exists (select from layout_cut k where k.layout_id = p_layout.layout_id and k.cut_line_id = any (p_lines))
       and not exists (select from promise r where r.piece_id = e.piece_id and r.state = 'live' and r.cut_line_id = any (p_lines)) and cardinality(p_lines) > 0 then
      perform guard.raise_conflict('cut though promised', e.piece_id, format('%s was cut for another order: %s', e.tag, v_words));
    end if;
  end if;
  if guard.at_another_site(e.place_id, (select place_id from saw where saw_id = p_saw)) then
    perform guard.raise_conflict('cut at another site', e.piece_id, format('%s was cut at saw %s; in the book it lies at another site, in %s, and was not sent', e.tag,
      (select name from saw where saw_id = p_saw), (select name from place where place_id = e.place_id)));
  end if;
  v_words := (select guard.defect_words(e.lot_id) where not exists (select from defect_report d where d.piece_id = any (e.path)
    and d.lot_id = e.lot_id and d.answer is distinct from 'cut on'));
  if v_words is not null then
    perform guard.raise_conflict('cut before the lead answered', e.piece_id, format('%s was cut: %s', e.tag, v_words));
  end if;
end $$;

-- Metal that the book has elsewhere has been cut here: a person looks whether it is this piece, and what it was away for is over. What was out to be
-- treated is in a condition that nobody wrote down: quality looks at all that comes of it.
create function guard.cut_though_away(e book.piece, p_saw bigint) returns void
language plpgsql volatile as $$
declare
  t outside_trip;
  v_words text;
begin
  select * into t from outside_trip where piece_id = e.piece_id and back_nm is null;
  v_words := case e.state when 'outside' then format('outside at %s for %s, note %s', t.party, t.process, t.note)
    when 'in transit' then (select format('on its way to %s, note %s', s.name, n.note) from transfer n join site s on s.site_id = n.to_site_id where n.piece_id = e.piece_id and n.received_nm is null)
    else e.state::text end;
  perform guard.raise_conflict('cut though it is not here', e.piece_id, format('%s was cut; in the book it is %s', e.tag, v_words));
  update outside_trip set back_nm = e.length_nm, back_tag = e.tag where outside_trip_id = t.outside_trip_id;
  update transfer set received_nm = e.length_nm where piece_id = e.piece_id and received_nm is null;
  update piece set state = 'at saw', place_id = (select place_id from saw where saw_id = p_saw),
    quarantine = case when t.process <> 'test' then 'cut while it was ' || v_words else quarantine end where piece_id = e.piece_id;
end $$;

-- The body of record_cut (schema/api/sawing.sql); answers what it answers. p_bundle, p_after: as of book_strokes.
create function guard.do_cut(p jsonb, p_device text, p_bundle bigint default null, p_after integer default null) returns jsonb
language plpgsql volatile as $$
declare
  e piece;
  v_cut cut;
  v_layout layout;
  v_used bigint := 0;
  v_drop bigint;
  v_stop text;
  v_plan bigint;
  v_finish boolean := coalesce((p ->> 'finish')::boolean, false);
  v_stays boolean := coalesce(p -> 'left' ->> 'fate' = 'same piece', false);
  v_at_once boolean := false;  -- begun and closed by this deed, with nothing left of it
  v_strokes stroke[] := '{}';
  v_told jsonb := coalesce(p -> 'strokes', '[]');
  v_lines bigint[] := array_remove(guard.lines_of(v_told), null);
  v_booked record;
  v_place bigint;
  v_answer jsonb;
begin
  e := guard.piece_for_deed(p ->> 'tag');
  perform guard.lock_lines(v_lines);
  perform guard.lock_places(guard.places_named(p));
  if e.length_nm = 0 then
    raise exception using errcode = 'HK043', message = format('%s is %s: nothing of it is left to cut', e.tag, e.state), hint = guard.way_back(e);
  end if;
  if e.state in ('missing', 'in transit', 'outside') then
    perform guard.cut_though_away(e, coalesce((select saw_id from cut where cut_id = guard.open_cut(e.piece_id)), guard.saw(p ->> 'saw')));
    select * into e from piece where piece_id = e.piece_id;
  end if;
  select f.* into v_layout from promise r join layout f using (layout_id) where r.piece_id = e.piece_id and r.state = 'live';
  v_stop := guard.blocked_words_of(e);
  perform set_config('heatkeep.free', case when v_stop is null then e.piece_id::text else '' end, true);  -- for guard.facts_are_recorded
  select * into v_cut from cut where piece_id = e.piece_id and not closed;
  if v_stop is not null and v_cut.cut_id is not null and v_told @? '$[*] ? (@.class == "good")' and not coalesce((p ->> 'already_cut')::boolean, false) then
    if exists (select from stroke where cut_id = v_cut.cut_id and held and guard.return_of(stroke_id) is null) then
      raise exception using errcode = 'HK040', message = format('STOP: no more is cut from %s: %s', e.tag, v_stop),
        hint = 'put the bar aside; if the piece has been cut already, say so ("already_cut"): it is recorded as held';
    end if;
  end if;
  if v_cut.cut_id is null then
    v_at_once := v_finish and not v_stays;
    insert into cut (piece_id, lot_id, owner_id, layout_id, saw_id, length_in_nm, closed, rest_nm)
      values (e.piece_id, e.lot_id, e.owner_id, v_layout.layout_id, guard.saw(p ->> 'saw'), e.length_nm, v_at_once, case when v_at_once then 0 end) returning * into v_cut;
    perform guard.conflicts_of_cut(e, v_cut.saw_id, v_layout, v_lines);
    if v_layout.state = 'promised' then
      update layout set state = 'at saw' where layout_id = v_layout.layout_id;
    end if;
  elsif v_cut.layout_id is distinct from v_layout.layout_id and not guard.cut_has_taken(v_cut.cut_id) then
    -- planned anew since it was begun
    update cut set layout_id = v_layout.layout_id where cut_id = v_cut.cut_id returning * into v_cut;
    update layout set state = 'at saw' where layout_id = v_layout.layout_id and state = 'promised';
  end if;
  if p ->> 'measured_nm' is not null then
    perform guard.set_measured(e, (p ->> 'measured_nm')::bigint, null, v_cut.cut_id, coalesce(p ->> 'reason', 'measured at the saw'), p ->> 'measured_with');
    select * into e from piece where piece_id = e.piece_id;
  end if;
  for i in 0 .. jsonb_array_length(v_told) - 1 loop
    v_booked := guard.book_strokes(e, v_cut, v_told -> i, v_used, p_device, p_bundle, p_after, v_strokes);
    v_strokes := v_booked.p_strokes;
    v_used := v_used + v_booked.took;
  end loop;
  if v_strokes <> '{}' then
    perform set_config('heatkeep.shortened', case when v_told @? '$[*] ? (@.class == "stock")' then '' else e.piece_id::text end, true);  -- for guard.told_by_strokes
    insert into stroke (cut_id, piece_id, lot_id, owner_id, seq, class, length_nm, kerf_nm, cut_line_id, fault, lab, recut_of_id, saw_bundle_id, saw_stroke, from_nm, saw_band_id)
      select cut_id, piece_id, lot_id, owner_id, seq, class, length_nm, kerf_nm, cut_line_id, fault, lab, recut_of_id, saw_bundle_id, saw_stroke, from_nm,
          (select saw_band_id from saw_band where saw_id = v_cut.saw_id and fitted_from <= coalesce(guard.note('true_at')::timestamptz, now()) order by fitted_from desc limit 1)
        from unnest(v_strokes) order by seq;
  end if;
  if not v_finish then
    if v_used = e.length_nm then
      raise exception using errcode = 'HK026', message = format('nothing is left of %s: finish the cut', e.tag);
    end if;
    v_place := (select place_id from saw where saw_id = v_cut.saw_id);
    if v_stop is null and (e.state <> 'at saw' or e.place_id is distinct from v_place) then
      update piece set length_nm = e.length_nm - v_used, state = 'at saw', place_id = v_place where piece_id = e.piece_id;
    else
      update piece set length_nm = e.length_nm - v_used where piece_id = e.piece_id;
    end if;
  elsif v_stays then
    if exists (select from stroke where cut_id = v_cut.cut_id and class <> 'trim') or exists (select from piece where from_cut_id = v_cut.cut_id) then
      raise exception using errcode = 'HK026', message = format('pieces were cut from %s: the rest gets a tag of its own', e.tag);
    end if;
    update piece set length_nm = e.length_nm - v_used, state = 'on rack', place_id = case when e.place_id = guard.place(p -> 'left' ->> 'place') then e.place_id
        else guard.place_for_child(e.tag, guard.site_of_cut(v_cut.cut_id), p -> 'left' ->> 'place', e.length_nm - v_used, guard.told_later(), e.piece_id) end,
      ends = greatest(ends, 1) where piece_id = e.piece_id;
    update cut set closed = true, rest_nm = e.length_nm - v_used where cut_id = v_cut.cut_id;
  else
    v_drop := guard.book_rest(e, v_cut.cut_id, e.length_nm - v_used, p -> 'left', p ->> 'reason', p_device);
    update piece set length_nm = 0, state = 'cut up', place_id = null where piece_id = e.piece_id;
    update cut set closed = true, rest_nm = 0 where cut_id = v_cut.cut_id and not v_at_once;
  end if;
  if v_finish then
    if v_cut.layout_id is not null then
      perform guard.explain_open(v_cut.layout_id, v_cut.cut_id, e.tag, p ->> 'reason');
    end if;
    update promise set state = 'kept' where piece_id = e.piece_id and state = 'live';
    if v_layout.layout_id is not null then
      update layout set state = 'done' where layout_id = v_layout.layout_id returning plan_id into v_plan;
      update plan set state = 'done' where plan_id = v_plan
        and not exists (select from layout where plan_id = v_plan and state in ('promised', 'at saw'));
    end if;
  end if;
  v_answer := (select jsonb_build_object('tag', e.tag, 'cut_id', v_cut.cut_id, 'stop', case when v_finish then 'STOP: ' else 'STOP AFTER THIS CUT: ' end || v_stop,
    'length_nm', e.length_nm - v_used, 'drop_tag', null, 'label', null, 'scrap_g', null,
    'conflicts', guard.conflicts_raised(e.piece_id),
    'good', count(*) filter (where class = 'good'), 'rejects', coalesce(jsonb_agg(stroke_id order by seq) filter (where class = 'reject'), '[]'),
    'stock_tags', (select coalesce(jsonb_agg(tag order by piece_id), '[]') from piece where from_cut_id = v_cut.cut_id and piece_id is distinct from v_drop))
    from stroke where cut_id = v_cut.cut_id);
  if v_drop is not null then
    v_answer := v_answer || jsonb_build_object('drop_tag', (select tag from piece where piece_id = v_drop), 'label', guard.label(v_drop));
  elsif v_finish then
    v_answer := v_answer || jsonb_build_object('scrap_g', (select sum(guard.lot_mass_g(lot_id, length_nm)) from metal_out where cut_id = v_cut.cut_id and class = 'scrap'));
  end if;
  return v_answer;
end $$;
