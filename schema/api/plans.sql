-- Plans: what may be planned with, and promising it in one deed.

-- Metal a plan can be about: in the shop, not gone; with what stops it and who has it.
create view guard.plannable as
  select p.piece_id, p.state::text, coalesce(p.blocked, (select guard.zone_ahead(e) from book.piece e where e.piece_id = p.piece_id
        and exists (select from book.defect_zone z where z.piece_id = p.piece_id)), p.defect) as blocked, h.layout_id,
      p.tag, p.version, p.kind::text, g.designation as grade, x.label as section, p.condition, m.name as mill, p.heat,
      p.identity::text, p.good_for::text as papers, p.cut_for::text, p.risk, o.name as owner, p.length_nm, p.doubt_nm, p.ends, w.name as place, w.walk,
      n.keep_nm, greatest(x.dim1_nm, x.dim2_nm) as widest_nm, x.area_um2, g.density_kg_m3,
      n.cents_per_tonne, n.scrap_cents_per_tonne, n.mm2_per_min
    from guard.metal p join book.grade g using (grade_id) join book.section x using (section_id)
    join guard.group_now n using (grade_id, section_id) left join book.party m on m.party_id = p.mill_id join book.party o on o.party_id = p.owner_id left join book.place w using (place_id)
    left join book.promise h on h.piece_id = p.piece_id and h.state = 'live' and (h.expires_at > now() or p.state = 'at saw')
    where guard.is_here(p.state);

-- Pieces that a new plan may take now: on the rack, not blocked, not promised.
create view api.candidates as
  select tag, version, kind, grade, section, condition, mill, heat, identity, papers, cut_for, risk, owner, length_nm, doubt_nm, ends, place, walk,
      keep_nm, widest_nm, area_um2, density_kg_m3, cents_per_tonne, scrap_cents_per_tonne, mm2_per_min
    from guard.plannable b where state = 'on rack' and layout_id is null and blocked is null
      and not exists (select from book.promise r where r.piece_id = b.piece_id and r.state = 'live' and r.expires_at > now());

-- Why a layout may not be promised; null when it may. The piece is locked by the caller.
create function guard.layout_words(p book.piece, n jsonb, p_saw book.saw, p_kerf bigint, p_trim bigint, p_grip bigint) returns text
language plpgsql stable as $$
declare
  v_cuts bigint[];
  v_words text;
  v_section section;
  v_keep bigint;
  v_left bigint := (n ->> 'left_nm')::bigint;
  v_fate text := n ->> 'left';
begin
  if (n ->> 'length_nm')::bigint <> p.length_nm then
    return 'its length is another than the plan says';
  elsif guard.zone_ahead(p) is not null then
    return 'nothing is planned across ' || guard.zone_ahead(p) || '; crop it first';
  elsif exists (select from jsonb_array_elements(n -> 'cuts') k where (k ->> 'count')::bigint not between 1 and 100000) then
    return 'the pieces of a cut are counted from 1 on; more than 100000 are no plan';
  end if;
  select array_agg((k.v ->> 'length_nm')::bigint order by k.seq) into v_cuts
    from jsonb_array_elements(n -> 'cuts') with ordinality k (v, seq), generate_series(1, (k.v ->> 'count')::integer);
  v_words := guard.layout_fits(p.length_nm, p.doubt_nm, p.ends, p_trim, p_kerf, p_grip, v_cuts,
    (n ->> 'trim_nm')::bigint, (n ->> 'kerf_nm')::bigint, v_left);
  if v_words is not null then
    return v_words;
  end if;
  select string_agg(coalesce(case when c.cut_line_id is null then format('there is no order %s line %s', k ->> 'order', k ->> 'line') end,
      guard.piece_may_not_serve(p, c),
      guard.consent_over(p.piece_id, c.cut_line_id, (k ->> 'count')::bigint),
      case when (k ->> 'length_nm')::bigint <> c.length_nm + c.face_nm + c.aim_nm then 'another length than ordered' end), '; ') into v_words
    from jsonb_array_elements(n -> 'cuts') k left join cut_line c on c.order_no = k ->> 'order' and c.line_no = k ->> 'line';
  if v_words is not null then
    return v_words;
  end if;
  select s.* into v_section from lot join section s using (section_id) where lot_id = p.lot_id;
  v_words := guard.too_large_words(p_saw, v_section);
  if v_words is not null then
    return v_words;
  end if;
  select guard.keep_nm(grade_id, section_id) into v_keep from lot where lot_id = p.lot_id;
  if v_fate is distinct from (case when v_left = 0 then 'none' when v_left >= v_keep or p.owner_id <> 0 then 'drop' else 'scrap' end) then
    return format('what is left (%s mm) is not %s', trim_scale(v_left / 1e6::numeric), v_fate);
  end if;
  return null;
end $$;

-- The pieces, lots and lines of a plan's layouts, locked; promises of them that ran out lapse.
-- Answers the pieces that may not be promised and why; null when all may. `p_released` are pieces at a saw that may.
create function guard.take_pieces(p_layouts jsonb, p_released bigint[]) returns jsonb
language plpgsql volatile as $$
declare
  v_tags text[] := (select array_agg(x ->> 'tag') from jsonb_array_elements(p_layouts) x);
begin
  perform guard.lock_pieces(array(select piece_id from piece where tag = any (v_tags)));
  perform guard.lock_lines(guard.lines_named(p_layouts));
  perform guard.lapse_promises_of(array(select piece_id from piece where tag = any (v_tags)));
  return (select jsonb_agg(jsonb_build_object('tag', x ->> 'tag', 'why', y.why))
    from jsonb_array_elements(p_layouts) x left join piece e on e.tag = x ->> 'tag'
    cross join lateral (select coalesce(
      case when not (e.state = 'at saw' and e.piece_id = any (p_released)) then guard.taken_words(e) end, guard.blocked_words(e.piece_id), case when e.piece_id is null then 'no such tag'
        when e.state <> 'on rack' and not (e.state = 'at saw' and e.piece_id = any (p_released)) then 'it is ' || e.state
        when (e.version, e.length_nm) is distinct from ((x ->> 'version')::integer, (x ->> 'length_nm')::bigint) then 'it was changed since the plan was made' end) as why) y
    where y.why is not null);
end $$;

-- Refuses a saw that is not as the plan {"saw","bundled","kerf_nm","trim_nm","grip_nm"} takes it; answers its number.
create function guard.saw_as_planned(p jsonb) returns bigint
language plpgsql stable as $$
declare
  v_saw saw;
begin
  select * into v_saw from saw where saw_id = guard.saw(p ->> 'saw');
  if not exists (select from api.saws w where w.saw = v_saw.name and w.kerf_nm = (p ->> 'kerf_nm')::bigint and w.trim_nm = (p ->> 'trim_nm')::bigint
      and case when (p ->> 'bundled')::boolean then w.grip_bundled_nm else w.grip_nm end = (p ->> 'grip_nm')::bigint) then
    raise exception using errcode = 'HK409', message = format('kerf, trim or grip of saw %s have changed', v_saw.name), hint = 'plan again';
  end if;
  return v_saw.saw_id;
end $$;

-- Adds layouts with their promises to a plan: every one is checked; the pieces are locked by the caller. Answers how many.
create function guard.add_layouts(p_plan bigint, p jsonb) returns integer
language plpgsql volatile as $$
declare
  v_plan plan;
  v_saw saw;
  v_layout bigint;
  v_over text;
  v_words text;
  v_piece piece;
  n jsonb;
  v_no integer := (select coalesce(max(layout_no), 0) from layout where plan_id = p_plan);
  v_first integer := v_no;
begin
  select * into v_plan from plan where plan_id = p_plan;
  select * into v_saw from saw where saw_id = v_plan.saw_id;
  select string_agg(format('order %s line %s: %s more than are open', c.order_no, c.line_no, k.count - open.n), '; ') into v_over
    from (select y ->> 'order' as order_no, y ->> 'line' as line_no, sum((y ->> 'count')::integer) as count
            from jsonb_path_query(p, '$.layouts[*].cuts[*]') y group by 1, 2) k
    join cut_line c using (order_no, line_no)
    cross join lateral (select c.quantity - guard.line_cut(c.cut_line_id) - guard.line_planned(c.cut_line_id) as n) open
    where k.count > open.n;
  if v_over is not null then
    raise exception using errcode = 'HK409', message = v_over, hint = 'another plan or cut came first: plan again';
  end if;
  for n in select * from jsonb_array_elements(p -> 'layouts') loop
    v_no := v_no + 1;
    select * into v_piece from piece where tag = n ->> 'tag';
    v_words := guard.layout_words(v_piece, n, v_saw, v_plan.kerf_nm, v_plan.trim_nm, v_plan.grip_nm);
    if v_words is not null then
      raise exception using errcode = 'HK042', message = format('layout %s on %s: %s', v_no, v_piece.tag, v_words);
    end if;
    insert into layout (plan_id, layout_no, piece_id, place_id, state, length_nm, trim_nm, kerf_nm, left_nm, left_fate, otherwise)
      values (p_plan, v_no, v_piece.piece_id, v_piece.place_id, (case when v_piece.state = 'at saw' then 'at saw' else 'promised' end)::layout_state,
        v_piece.length_nm, (n ->> 'trim_nm')::bigint, (n ->> 'kerf_nm')::bigint,
        (n ->> 'left_nm')::bigint, (n ->> 'left')::left_fate, n ->> 'otherwise') returning layout_id into v_layout;
    insert into layout_cut (layout_id, seq, cut_line_id, count, length_nm)
      select v_layout, k.seq, c.cut_line_id, (k.v ->> 'count')::integer, (k.v ->> 'length_nm')::bigint
        from jsonb_array_elements(n -> 'cuts') with ordinality k (v, seq)
        join cut_line c on c.order_no = k.v ->> 'order' and c.line_no = k.v ->> 'line';
    insert into promise (piece_id, layout_id, words, promised_by, expires_at)
      values (v_piece.piece_id, v_layout, 'plan ' || p_plan, session_user,
        guard.promise_until(now()));
  end loop;
  perform guard.require_heats_asked(p_plan);
  insert into plan_short (plan_id, cut_line_id, missing, why)
    select p_plan, c.cut_line_id, (s ->> 'missing')::integer, s ->> 'why'
      from jsonb_array_elements(p -> 'shorts') s join cut_line c on c.order_no = s ->> 'order' and c.line_no = s ->> 'line'
    on conflict (plan_id, cut_line_id) do update set missing = excluded.missing, why = excluded.why;
  return v_no - v_first;
end $$;

-- Promises every piece of a plan, or none: {"aim","saw","bundled","kerf_nm","trim_nm","grip_nm","status","ended_by","proof",
-- "value","bound","layouts":[{"tag","version","length_nm","trim_nm","kerf_nm","left_nm","left","otherwise"?,"cuts":[{"order",
-- "line","count","length_nm"}]}],"shorts":[{"order","line","missing","why"}],"reason"?}; the reason says why it is not as the search
-- would have it. Where pieces were taken or changed meanwhile the answer is {"taken": [...]} with who has them, nothing is promised, and the planner plans again.
create function api.commit_plan(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('commit_plan', p_request, p);
  v_saw bigint;
  v_plan bigint;
  v_taken jsonb;
  v_count integer;
begin
  if v_again is not null then return v_again; end if;
  v_saw := guard.saw_as_planned(p);
  v_taken := guard.take_pieces(p -> 'layouts', '{}');
  if v_taken is not null then
    insert into refusal (who, deed, code, words) values (session_user, 'commit_plan', 'HK409', v_taken::text);
    return guard.end_deed(jsonb_build_object('taken', v_taken));
  end if;
  insert into plan (aim, saw_id, bundled, kerf_nm, trim_nm, grip_nm, status, ended_by, proof, value, bound, made_by)
    values (p ->> 'aim', v_saw, (p ->> 'bundled')::boolean, (p ->> 'kerf_nm')::bigint, (p ->> 'trim_nm')::bigint,
      (p ->> 'grip_nm')::bigint, p ->> 'status', p ->> 'ended_by', p ->> 'proof', p -> 'value', p -> 'bound', session_user)
    returning plan_id into v_plan;
  v_count := guard.add_layouts(v_plan, p);
  if v_count = 0 then
    update plan set state = 'done' where plan_id = v_plan;
  end if;
  return guard.end_deed(jsonb_build_object('plan', v_plan, 'layouts', v_count));
end $$;

-- Lets go what the plan still promises. What is at a saw or done stays: the plan is live until what is at a saw (named in the answer) is cut.
create function api.cancel_plan(p_request uuid, p_plan bigint, p_reason text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('cancel_plan', p_request, jsonb_build_array(p_plan, p_reason), null, null, p_reason);
  v_count integer := 0;
  v_state plan_state;
begin
  if v_again is not null then return v_again; end if;
  -- a piece that is being pulled just now is waited for, and kept
  perform guard.lock_pieces(array(select piece_id from layout where plan_id = p_plan and state = 'promised'), false, array[p_plan]);
  select state into v_state from plan where plan_id = p_plan;
  if v_state is distinct from 'live' then
    raise exception using errcode = 'HK027', message = case when v_state is null then format('there is no plan %s', p_plan) else format('plan %s is %s', p_plan, v_state) end,
      hint = '`heatkeep plan list` names them';
  end if;
  update promise r set state = 'released' from layout f
    where f.layout_id = r.layout_id and f.plan_id = p_plan and f.state = 'promised' and r.state = 'live';
  get diagnostics v_count = row_count;
  update layout set state = 'dropped' where plan_id = p_plan and state = 'promised';
  if not exists (select from layout where plan_id = p_plan and state = 'at saw') then
    update plan set state = 'cancelled' where plan_id = p_plan;
  end if;
  return guard.end_deed(jsonb_build_object('plan', p_plan, 'released', v_count,
    'at_saw', (select coalesce(jsonb_agg(e.tag order by e.tag), '[]') from layout f join piece e using (piece_id) where f.plan_id = p_plan and f.state = 'at saw')));
end $$;

-- A plan that lacks pieces is live while they are here to be planned anew; once all of its metal is gone it is done.
create view api.plans as
  select p.plan_id, case when p.state = 'live' and not exists (select from book.layout f join book.piece e using (piece_id) where f.plan_id = p.plan_id
        and (f.state in ('promised', 'at saw') or f.state = 'dropped' and e.length_nm > 0)) then 'done' else p.state::text end as state, p.aim, w.name as saw, p.bundled, p.kerf_nm, p.trim_nm, p.grip_nm, p.status, p.ended_by, p.proof,
      p.value, p.bound, p.made_by, (select h.at from book.happening h where h.chain = 'plan' and h.chain_id = p.plan_id and h.seq = 1) as made_at,
      (select min(c.due) from book.layout f join book.layout_cut k using (layout_id) join book.cut_line c using (cut_line_id)
        where f.plan_id = p.plan_id) as due
    from book.plan p join book.saw w using (saw_id);

-- One row a layout, in walking order by walk, place, tag; bars: cut together with it. The pick list and saw sheet read these three.
create view api.plan_layouts as
  select f.plan_id, f.layout_no, f.state::text, w.name as place, coalesce(w.walk, 0) as walk, e.tag, e.kind::text, x.label as section,
      g.designation as grade, l.condition, m.name as mill, l.heat, l.papers::text, o.name as owner, e.mark_end::text, f.otherwise,
      f.length_nm, e.doubt_nm, e.ends, guard.mass_g(f.length_nm, x.area_um2, g.density_kg_m3) as mass_g, f.trim_nm, f.kerf_nm, f.left_nm,
      f.left_fate::text, guard.mass_g(f.left_nm, x.area_um2, g.density_kg_m3) as left_mass_g, coalesce(b.bars, 1) as bars, b.bundle_no, coalesce(b.made_up, false) as made_up, x.area_um2, t.mm2_per_min,
      case when f.state = 'at saw' then 'STOP AFTER THIS CUT: ' || guard.blocked_words(e.piece_id) end as stop, (select n.risk from guard.lot_words n where n.lot_id = l.lot_id) as risk,
      -- what is in the vice of a piece of which something was cut already
      case when f.state = 'at saw' and exists (select from book.cut u join book.stroke s using (cut_id) where u.piece_id = e.piece_id and not u.closed) then e.length_nm end as begun_nm
    from book.layout f join book.plan q using (plan_id) join book.piece e using (piece_id) join book.lot l using (lot_id) join book.section x using (section_id)
    left join book.grade g using (grade_id) left join book.party m on m.party_id = l.mill_id join book.party o on o.party_id = e.owner_id
    left join book.place w on w.place_id = case f.state when 'promised' then e.place_id else f.place_id end
    left join guard.layout_bundle b on b.plan_id = f.plan_id and b.layout_id = f.layout_id left join lateral guard.rate(q.saw_id, g.family) t on true;
create view api.plan_cuts as
  select f.plan_id, f.layout_no, k.seq, c.order_no, c.line_no, u.name as customer, k.count, k.length_nm as set_nm, c.length_nm as nominal_nm,
      c.face_nm, c.tolerance_minus_nm, c.tolerance_plus_nm, c.one_heat, c.max_heats,
      -- of the line, in the cut that is open
      (select count(*) from book.cut u join book.stroke s using (cut_id) where u.layout_id = f.layout_id and not u.closed and s.cut_line_id = k.cut_line_id and s.class = 'good')::integer as done
    from book.layout f join book.layout_cut k using (layout_id) join book.cut_line c using (cut_line_id)
    left join book.party u on u.party_id = c.customer_id;
-- What a plan left short and is short still.
create view api.plan_shorts as
  select s.plan_id, c.order_no, c.line_no, x.label as section, g.designation as grade, least(s.missing, c.open)::integer as missing, c.length_nm, s.why
    from book.plan_short s join guard.line_now c using (cut_line_id) join book.section x using (section_id) join book.grade g using (grade_id)
    where c.open > 0;
