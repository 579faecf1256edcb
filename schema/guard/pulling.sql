-- May this piece go to the saw, and if not, why, who has it, and which other one would do.

-- The strap a piece is under, and what to do; null where it lies loose.
create function guard.strap_words(p book.piece) returns text
language plpgsql stable as $$
begin
  return (select format('it is strapped in bundle %s: open the bundle first', name) from book.bundle where bundle_id = p.bundle_id and strapped);
end $$;

-- Who has a piece that is at a saw or promised, for which orders and since when; null where nobody has.
create function guard.taken_words(p book.piece) returns text
language plpgsql stable as $$
begin
  if p.state <> 'at saw' and not exists (select from promise where piece_id = p.piece_id and state = 'live') then
    return null;
  end if;
  return (select case when p.state = 'at saw' then format('taken by saw %s', coalesce((select string_agg(w.name, '/') from book.saw w where w.place_id = p.place_id), '?'))
      else format('promised%s by %s', ' to plan ' || f.plan_id, r.promised_by) end
    || coalesce(', order ' || (select string_agg(distinct c.order_no, ' and ') from book.cut_line c where c.cut_line_id = r.cut_line_id
      or c.cut_line_id in (select k.cut_line_id from book.layout_cut k where k.layout_id = r.layout_id)), '')
    || coalesce((select format(', %s ago', case when s < 120 then s || ' s' when s < 7200 then s / 60 || ' min' else s / 3600 || ' h' end)
      from (select case when max(h.true_at) is not null then greatest(0, extract(epoch from clock_timestamp() - max(h.true_at))::bigint) end as s from book.happening h
        where h.chain = 'piece' and h.chain_id = p.piece_id and h.tbl = 'piece' and h.sets ->> 'state' = 'at saw' and p.state = 'at saw') t where s is not null), '')
  from (select 1) one left join book.promise r on r.piece_id = p.piece_id and r.state = 'live' left join book.layout f using (layout_id)
  where p.state = 'at saw' or r.promise_id is not null);
end $$;

-- The shortest other piece on the rack that would do for so many pieces of these lines on this saw, in words, or null. Asked of one
-- piece after another, the shortest first: what must be looked up for each is looked up for few.
create function guard.next_best(p_not bigint, p_lines bigint[], p_counts integer[], p_saw bigint) returns text
language plpgsql stable as $$
declare
  v_kerf bigint := (select kerf_nm from saw_band where saw_id = p_saw and fitted_from <= now() order by fitted_from desc limit 1);
  v_lot bigint := (select lot_id from piece where piece_id = p_not);
  v_one_heat boolean;
  v_need bigint;
  g saw_grip;
  e piece;
begin
  select * into g from saw_grip where saw_id = p_saw and not bundled;
  select sum((c.length_nm + c.face_nm + c.aim_nm + v_kerf) * n.k), bool_or(c.one_heat is not null) into v_need, v_one_heat
    from unnest(p_lines, p_counts) n (id, k) join cut_line c on c.cut_line_id = n.id;
  for e in
    select p.* from lot l join lot o using (grade_id, section_id) join piece p on p.lot_id = o.lot_id
      where l.lot_id = v_lot and (not v_one_heat or o.lot_id = v_lot) and p.length_nm > 0 and p.state = 'on rack' and p.piece_id <> p_not and p.place_id is not null
        and not p.frozen and p.quarantine is null
        and p.length_nm - p.doubt_nm - v_need - case when p.ends = 0 and g.trim_nm > 0 then g.trim_nm + v_kerf else 0 end >= g.grip_nm
        and not exists (select from promise r where r.piece_id = p.piece_id and r.state = 'live' and r.expires_at > now())
      order by p.length_nm, p.tag
  loop
    continue when guard.strap_words(e) is not null or guard.blocked_words(e.piece_id) is not null or guard.defect_words(e.lot_id) is not null
      or guard.zone_ahead(e) is not null
      or exists (select from cut_line c where c.cut_line_id = any (p_lines) and (guard.piece_may_not_serve(e, c) is not null or guard.heat_rule_words(c, e.lot_id) is not null));
    return format('take %s at %s (%s mm, %s mm left)', e.tag, (select name from place where place_id = e.place_id), trim_scale(e.length_nm / 1e6::numeric),
      trim_scale((e.length_nm - v_need - case when e.ends = 0 and g.trim_nm > 0 then g.trim_nm + v_kerf else 0 end) / 1e6::numeric));
  end loop;
  return null;
end $$;

-- The heat as read back from the metal, blind: the last four characters at least. It is asked for where p_papers, unless the
-- shop has set heat_read_back to no. The words never say the right one.
create function guard.heat_read_words(p book.piece, p_read text, p_papers boolean) returns text
language plpgsql stable as $$
begin
  return (select case
    when l.identity <> 'heat' then null
    when coalesce(btrim(p_read), '') = '' then case when p_papers and guard.setting('heat_read_back', 'yes') = 'yes'
      then format('%s goes to an order with papers or of one heat: read the last 4 characters of the heat from the metal', p.tag) end
    when length(btrim(p_read)) < least(4, length(l.heat)) then 'read at least the last 4 characters of the heat from the metal'
    when right(l.heat, length(btrim(p_read))) <> btrim(p_read)
      then format('the metal does not read as the heat of %s in the book: put it aside and call quality', p.tag) end
  from book.lot l where l.lot_id = p.lot_id);
end $$;

-- Why this piece may not be pulled to a saw for these lines, as {code, words}; null when it may. p_plan: asked for by plan.
create function guard.pull_refusal(p book.piece, p_plan bigint, p_lines bigint[], p_counts integer[], p_saw bigint, p_read text) returns text[]
language plpgsql stable as $$
declare
  r record;
  v_words text := guard.blocked_words(p.piece_id);
  v_next text;
  v_answer text[];
begin
  select q.promise_id, q.layout_id, q.cut_line_id, q.expires_at, f.plan_id into r
    from promise q left join layout f using (layout_id) where q.piece_id = p.piece_id and q.state = 'live';
  if v_words is not null then
    v_answer := array['HK040', format('%s: %s', p.tag, v_words)];
  elsif p.state = 'at saw' then
    v_answer := array['HK043', format('%s: %s', p.tag, guard.taken_words(p))];
  elsif p.state <> 'on rack' then
    v_answer := array['HK043', format('%s is %s', p.tag, p.state)];
  elsif guard.strap_words(p) is not null and not coalesce((select bundled from plan where plan_id = r.plan_id), false) then
    v_answer := array['HK043', format('%s: %s', p.tag, guard.strap_words(p))];
  elsif guard.at_another_site(p.place_id, (select place_id from saw where saw_id = p_saw)) then
    v_answer := array['HK043', format('%s is at another site than saw %s', p.tag, (select name from saw where saw_id = p_saw))];
  elsif guard.defect_words(p.lot_id) is not null then
    v_answer := array['HK045', format('%s: %s', p.tag, guard.defect_words(p.lot_id))];
  elsif p_plan is null and r.layout_id is not null and r.expires_at > now() then
    v_answer := array['HK042', format('%s: %s', p.tag, guard.taken_words(p))];
  elsif p_plan is not null and r.layout_id is null then
    v_answer := array['HK042', format('%s is not promised to any plan', p.tag)];
  elsif p_plan is not null and r.plan_id <> p_plan then
    v_answer := array['HK042', format('%s is promised to plan %s, not to plan %s', p.tag, r.plan_id, p_plan)];
  elsif p_plan is null and r.cut_line_id is not null and not r.cut_line_id = any (p_lines) then
    v_answer := array['HK042', format('%s: %s', p.tag, guard.taken_words(p))];
  else
    select string_agg(w, '; ' order by c.order_no, c.line_no) into v_words from cut_line c cross join lateral (
      select coalesce(guard.piece_may_not_serve(p, c), case when not guard.heat_agreed(p.piece_id, c.cut_line_id) then guard.heat_rule_words(c, p.lot_id) end) as w) x
      where p_plan is null and c.cut_line_id = any (p_lines);
    if v_words is not null then
      v_answer := array['HK042', format('%s may not serve it: %s', p.tag, v_words)];
    else
      v_words := guard.heat_read_words(p, p_read, exists (select from cut_line where cut_line_id = any (p_lines) and (papers >= '3.1' or one_heat is not null)));
      return case when v_words is not null then array['HK044', v_words] end;
    end if;
  end if;
  v_next := guard.next_best(p.piece_id, p_lines, p_counts, p_saw);
  return array[v_answer[1], v_answer[2] || coalesce('; ' || v_next, '')];
end $$;

-- The lines that these pieces were promised to, locked, where the promise has run out: whether they are open still is asked by one at a time.
create function guard.lock_run_out(p_pieces bigint[]) returns void
language plpgsql volatile as $$
begin
  perform guard.lock_lines(array(select unnest(r.cut_line_id || array(select k.cut_line_id from layout_cut k where k.layout_id = r.layout_id))
    from promise r where r.piece_id = any (p_pieces) and r.state = 'live' and r.expires_at <= now()));
end $$;

-- The same for a piece that is fetched as it was promised, to a plan's layout or a line. p_plan: the plan it must be for, or null.
create function guard.planned_pull_refusal(p book.piece, p_plan bigint, p_saw bigint, p_read text) returns text[]
language plpgsql stable as $$
declare
  r promise;
  v_layout bigint;
  v_lines bigint[];
  v_counts integer[];
begin
  select * into r from promise where piece_id = p.piece_id and state = 'live';
  -- what stops a piece lets its promise go: what was to be cut from it still says what another must do
  v_layout := coalesce(r.layout_id, (select w.layout_id from promise w join layout f on f.layout_id = w.layout_id where w.piece_id = p.piece_id and f.plan_id = p_plan order by w.promise_id desc limit 1));
  select array_agg(cut_line_id), array_agg(n) into v_lines, v_counts
    from (select cut_line_id, sum(count)::integer as n from layout_cut where layout_id = v_layout group by 1
          union all select r.cut_line_id, r.count where r.cut_line_id is not null) k;
  if r.promise_id is null and p.state = 'on rack' and guard.blocked_words(p.piece_id) is null then
    return array['HK042', format('%s is not promised to any plan', p.tag)];
  elsif r.expires_at <= now() and exists (select from unnest(v_lines, v_counts) n (id, k) join cut_line c on c.cut_line_id = n.id
      where k > c.quantity - guard.line_cut(c.cut_line_id) - guard.line_planned(c.cut_line_id)
        or guard.heat_rule_words(c, p.lot_id) is not null and not guard.heat_agreed(p.piece_id, c.cut_line_id)) then
    return array['HK042', format('the promise of %s lapsed at %s, and its order was planned anew since', p.tag, to_char(r.expires_at, 'YYYY-MM-DD HH24:MI'))];
  end if;
  return guard.pull_refusal(p, coalesce(p_plan, (select plan_id from layout where layout_id = r.layout_id)), v_lines, v_counts, p_saw, p_read);
end $$;
