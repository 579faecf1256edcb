-- Metal that leaves, or goes on under another tag; and what a piece may still be used for.

-- A cut that was begun is finished before the piece goes anywhere: what came off it would never be balanced.
create function guard.refuse_open_cut(p book.piece, p_what text) returns void
language plpgsql stable as $$
declare
  v_saw text := (select w.name from cut c join saw w using (saw_id) where c.cut_id = guard.open_cut(p.piece_id));
begin
  if v_saw is not null then
    raise exception using errcode = 'HK043', message = format('%s cannot be %s: a cut of it was begun at saw %s and is open', p.tag, p_what, v_saw),
      hint = 'finish the cut first, and say what is left of it (heatkeep saw cut)';
  end if;
end $$;

-- What a person does first about a piece that is not here.
create function guard.way_back(p book.piece) returns text
language sql immutable
return case p.state
  when 'missing' then 'where it turned up, look at it, read it and measure it: heatkeep piece found-again'
  when 'in transit' then 'it was sent to another site: receive it there first (heatkeep transfer receive)'
  when 'outside' then 'receive it back first: heatkeep outside back'
  else format('`heatkeep piece history %s` says what happened to it', p.tag) end;

-- A piece that somebody has in hand whole: it is here, and no cut of it is open.
create function guard.refuse_away(p book.piece, p_what text) returns void
language plpgsql stable as $$
begin
  if p.length_nm = 0 or p.state in ('in transit', 'outside', 'missing') then
    raise exception using errcode = 'HK043', message = format('%s is %s: it cannot be %s', p.tag, p.state, p_what),
      hint = guard.way_back(p);
  end if;
  perform guard.refuse_open_cut(p, p_what);
end $$;

-- A piece that may be changed by a person's word: it is here, not at a saw, no cut of it is open, it is not being counted and not held.
-- p_for_good: it leaves, as condemned metal may.
create function guard.free_to_change(p book.piece, p_what text, p_for_good boolean default false) returns void
language plpgsql stable as $$
declare
  v_held text := case when p_for_good then guard.evidence_words(p.piece_id) else guard.hold_words(p.piece_id) end;
begin
  if p.state = 'at saw' then
    raise exception using errcode = 'HK043', message = format('%s is %s: it cannot be %s', p.tag, p.state, p_what);
  end if;
  perform guard.refuse_away(p, p_what);
  if p.frozen then
    raise exception using errcode = 'HK040', message = format('%s cannot be %s: its place is being counted', p.tag, p_what),
      hint = 'wait until the count is approved';
  elsif v_held is not null then
    raise exception using errcode = 'HK040', message = format('%s cannot be %s: it is %s', p.tag, p_what, v_held),
      hint = 'quality lifts the hold first, or condemns the metal';
  end if;
end $$;

-- A piece on its way or outside does not arrive: nothing of it came.
create function guard.end_trips(p_piece bigint) returns void
language sql volatile
begin atomic
  update book.transfer set received_nm = 0 where piece_id = p_piece and received_nm is null;
  update book.outside_trip set back_nm = 0 where piece_id = p_piece and back_nm is null;
end;

-- The whole rest of a piece leaves: one entry, and nothing of it is here any more. What is written off in the middle of a cut ends that cut.
create function guard.leave(p book.piece, p_class text, p_state text, p_reason text, p_shipment bigint default null) returns void
language plpgsql volatile as $$
begin
  if p_state <> 'written off' then
    perform guard.refuse_open_cut(p, p_state);
  end if;
  perform guard.drop_promise(p.piece_id, p_reason);
  if p.state in ('in transit', 'outside') then
    perform guard.end_trips(p.piece_id);
  end if;
  insert into metal_out (piece_id, lot_id, owner_id, cut_id, class, length_nm, reason, named, shipment_id)
    values (p.piece_id, p.lot_id, p.owner_id, guard.open_cut(p.piece_id), p_class::out_class, p.length_nm, p_reason, session_user, p_shipment);
  update cut set closed = true, rest_nm = 0 where piece_id = p.piece_id and not closed;
  update piece set length_nm = 0, state = p_state::piece_state, place_id = null, bundle_id = null where piece_id = p.piece_id;
end $$;

-- The same metal from now on under a new tag, in another lot or of another owner; the old tag stays in its history.
create function guard.pass_on(p book.piece, p_lot bigint, p_owner bigint, p_place bigint, p_why text) returns text
language plpgsql volatile as $$
declare
  v_id bigint := nextval('book.piece_piece_id_seq');
  v_tag text := guard.new_tag((select site_id from place where place_id = p_place));
begin
  perform guard.leave(p, 'passed on', 'passed on', format('%s; now %s', p_why, v_tag));
  insert into piece (piece_id, tag, kind, lot_id, owner_id, path, before_id, before_path, receipt_line_id, made_length_nm, length_nm,
      doubt_nm, ends, mark_end, place_id, state, cents_per_tonne, measured_with)
    overriding system value
    values (v_id, v_tag, p.kind, p_lot, p_owner, array[v_id], p.piece_id, coalesce(p.before_path, '{}') || p.path, p.receipt_line_id,
      p.length_nm, p.length_nm, p.doubt_nm, p.ends, p.mark_end, p_place, 'on rack', p.cents_per_tonne, p.measured_with);
  perform guard.hand_on_zones(p.piece_id, v_id, p.made_length_nm - p.length_nm, p.made_length_nm);
  return v_tag;
end $$;

-- What limits a piece's use for this line, in words; null when nothing does.
create function guard.limited_for(p_piece bigint, c book.cut_line) returns text
language plpgsql stable as $$
declare
  v_good_for papers;
begin
  if c.papers > 'none' then
    v_good_for := (select cut_for from guard.metal where piece_id = p_piece);
    if v_good_for < c.papers and not guard.consented(c.cut_line_id, null, null, v_good_for) then
      return 'its use is limited: ' || guard.limit_words(p_piece);
    end if;
  end if;
  return null;
end $$;

-- Why this piece may not serve this line; null when it may.
create function guard.piece_may_not_serve(p book.piece, c book.cut_line) returns text
language plpgsql stable as $$
begin
  return coalesce(guard.may_not_serve(p.lot_id, p.owner_id, c), guard.limited_for(p.piece_id, c));
end $$;

-- Lets a live promise of a piece go; its layout is dropped from the plan. Nothing where there is none.
create function guard.drop_promise(p_piece bigint, p_why text) returns void
language plpgsql volatile as $$
declare
  v_layout bigint;
begin
  update promise set state = 'released', words = words || '; ' || p_why where piece_id = p_piece and state = 'live'
    and not exists (select from piece where piece_id = p_piece and state = 'at saw')
    returning layout_id into v_layout;
  update layout set state = 'dropped' where layout_id = v_layout and state in ('promised', 'at saw');
end $$;

-- The plans that these pieces are promised to, each in words with what to do; null where none: asked before the promises fall.
create function guard.plans_lacking(p_pieces bigint[]) returns jsonb
language plpgsql stable as $$
begin
  return (select jsonb_agg(format('plan %s lacks %s: heatkeep replan %s', plan_id, tags, plan_id) order by plan_id)
  from (select f.plan_id, string_agg(e.tag, ', ' order by e.tag) as tags from book.promise r join book.layout f using (layout_id) join book.piece e on e.piece_id = r.piece_id
    where r.piece_id = any (p_pieces) and r.state = 'live' group by f.plan_id) x);
end $$;
