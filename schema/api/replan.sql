-- A plan mended at the saw: what went wrong is booked by its own deed, the rest of the plan is kept or planned anew.

-- Metal that a live plan still counts on, and how it stands now. `cutting`: something of it is off already. offset 0: layout by layout, not
-- with all metal there is.
create view api.plan_metal as
  select f.plan_id, f.layout_no, f.state::text as layout_state, b.state, b.blocked,
      exists (select from book.cut c where c.layout_id = f.layout_id and not c.closed and (exists (select from book.stroke s where s.cut_id = c.cut_id and s.not_cut is null)
        or exists (select from book.piece e where e.parent_id = c.piece_id and e.from_cut_id = c.cut_id))) as cutting,
      b.tag, b.version, b.kind, b.grade, b.section, b.condition, b.mill, b.heat, b.identity, b.papers, b.cut_for, b.risk, b.owner, b.length_nm, b.doubt_nm,
      b.ends, b.place, b.walk, b.keep_nm, b.widest_nm, b.area_um2, b.density_kg_m3, b.cents_per_tonne, b.scrap_cents_per_tonne, b.mm2_per_min
    from book.layout f cross join lateral (select * from guard.plannable where piece_id = f.piece_id offset 0) b where f.state in ('promised', 'at saw');

-- A piece is not where the book says. Its promise falls; it waits to be found again or written off, like one that a count missed.
create function api.report_missing(p_request uuid, p_tag text, p_reason text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('report_missing', p_request, jsonb_build_array(p_tag, p_reason), null, null, p_reason);
  p piece;
begin
  if v_again is not null then return v_again; end if;
  p := guard.piece_for_deed(p_tag);
  if coalesce(btrim(p_reason), '') = '' then
    raise exception using errcode = 'HK026', message = 'say where it was looked for';
  elsif p.frozen then
    raise exception using errcode = 'HK040', message = format('%s lies where it is counted: the count says whether it is missing', p.tag);
  elsif p.state <> 'on rack' then
    raise exception using errcode = 'HK043', message = format('%s is %s: only a piece on the rack can be missing from it', p.tag, p.state);
  end if;
  perform guard.drop_promise(p.piece_id, 'missing');
  update piece set state = 'missing', place_id = null, bundle_id = null where piece_id = p.piece_id;
  return guard.end_deed(jsonb_build_object('tag', p.tag));
end $$;

-- A piece at a saw measures otherwise than written: the difference is named unexplained, with the cause and who measured.
create function api.measure_at_saw(p_request uuid, p_tag text, p_length_nm bigint, p_cause text, p_measured_with text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('measure_at_saw', p_request, jsonb_build_array(p_tag, p_length_nm, p_cause, p_measured_with), null, null, p_cause);
  p piece;
begin
  if v_again is not null then return v_again; end if;
  p := guard.piece_for_deed(p_tag);
  if p.state <> 'at saw' then
    raise exception using errcode = 'HK043', message = format('%s is %s, not at a saw', p.tag, p.state), hint = 'away from the saw a length is corrected, with the reason';
  elsif coalesce(btrim(p_cause), '') = '' then
    raise exception using errcode = 'HK026', message = 'a corrected length names its cause';
  end if;
  perform guard.set_measured(p, p_length_nm, null, null, p_cause, p_measured_with);
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'difference_nm', p_length_nm - p.length_nm));
end $$;

-- Lets some layouts of a plan go and promises others in their place, all or nothing: {"plan","reason","drop":[layout_no],
-- "saw","bundled","kerf_nm","trim_nm","grip_nm","status","ended_by","proof","value","bound","layouts":[...],"shorts":[...]} with
-- layouts and shorts as commit_plan takes them. A layout that is let go at a saw may be cut another way at once. Where pieces were
-- taken or changed meanwhile the answer is {"taken": [...]}, the plan stands as it was, and the planner plans again.
create function api.replan(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('replan', p_request, p, null, null, p ->> 'reason');
  v_plan bigint := (p ->> 'plan')::bigint;
  v_drop integer[] := (select coalesce(array_agg(d::integer), '{}') from jsonb_array_elements_text(p -> 'drop') d);
  v_state plan_state;
  v_saw bigint;
  v_pieces bigint[];
  v_taken jsonb;
  v_added integer;
begin
  if v_again is not null then return v_again; end if;
  v_saw := guard.saw_as_planned(p);
  perform guard.lock_pieces(array(select piece_id from layout where plan_id = v_plan and layout_no = any (v_drop)
    union select piece_id from piece where tag in (select x ->> 'tag' from jsonb_array_elements(p -> 'layouts') x)), false, array[v_plan]);
  select state into v_state from plan where plan_id = v_plan;
  if v_state is null or v_state = 'cancelled' then
    raise exception using errcode = 'HK027', message = coalesce(format('plan %s is %s', v_plan, v_state), format('there is no plan %s', v_plan)), hint = '`heatkeep plan list` names them';
  elsif exists (select from plan where plan_id = v_plan and (saw_id, kerf_nm, trim_nm, grip_nm)
      is distinct from (v_saw, (p ->> 'kerf_nm')::bigint, (p ->> 'trim_nm')::bigint, (p ->> 'grip_nm')::bigint)) then
    raise exception using errcode = 'HK042', message = format('plan %s was made for another saw, kerf, trim or grip', v_plan),
      hint = 'cancel what is not at the saw and plan again';
  elsif exists (select from layout f join cut c using (layout_id)
      where f.plan_id = v_plan and f.layout_no = any (v_drop) and not c.closed and guard.cut_has_taken(c.cut_id)) then
    raise exception using errcode = 'HK043', message = 'a piece that is to be planned anew is being cut', hint = 'finish it first';
  end if;
  begin
    with gone as (
      update layout f set state = 'dropped' where plan_id = v_plan and layout_no = any (v_drop) and state in ('promised', 'at saw') returning *)
    select coalesce(array_agg(piece_id), '{}') into v_pieces from gone;
    update promise set state = 'released', words = words || '; planned anew' where piece_id = any (v_pieces) and state = 'live';
    v_taken := guard.take_pieces(p -> 'layouts', v_pieces);
    if v_taken is not null then
      raise exception using errcode = 'HK409';  -- what was let go is promised again
    end if;
  exception when sqlstate 'HK409' then
    null;
  end;
  if v_taken is not null then
    insert into refusal (who, deed, code, words) values (session_user, 'replan', 'HK409', v_taken::text);
    return guard.end_deed(jsonb_build_object('taken', v_taken));
  end if;
  v_added := guard.add_layouts(v_plan, p);
  update plan set status = p ->> 'status', ended_by = p ->> 'ended_by', proof = p ->> 'proof', value = p -> 'value', bound = p -> 'bound',
      state = (case when exists (select from layout where plan_id = v_plan and state in ('promised', 'at saw')) then 'live' else 'done' end)::plan_state
    where plan_id = v_plan;
  return guard.end_deed(jsonb_build_object('plan', v_plan, 'let_go', cardinality(v_pieces), 'layouts', v_added));
end $$;
