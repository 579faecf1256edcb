-- Bars that a saw cuts together: which a plan means to, and which may be.

-- One row a layout that is not dropped: the bars cut together with it, itself included; the number of its bundle in the plan (null: cut
-- alone), in walking order; whether its strokes stand for all of them, and whether they are made up at the saw. Alike in section, grade, condition, owner, length, trim and
-- stops; of one mill and heat where a line limits its heats; as many as the saw takes. What was made up, or cut together, stays together.
create view guard.layout_bundle as
  with bar as (
    select f.plan_id, f.layout_id, w.bundle_bars, coalesce(v.walk, 0) as walk, v.name as place, e.tag, made.saw_bundle_id as made,
        case when made.saw_bundle_id is not null then 'made up ' || made.saw_bundle_id
          when not q.bundled or f.state = 'done' or exists (select from book.cut c where c.piece_id = f.piece_id and not c.closed) then 'alone ' || f.layout_id
          else jsonb_build_array(l.section_id, l.grade_id, l.condition, e.owner_id, f.length_nm, f.trim_nm, f.kerf_nm, f.left_nm, k.stops,
            case when k.limited then jsonb_build_array(l.mill_id, l.heat) end)::text end as alike
      from book.layout f join book.plan q using (plan_id) join book.saw w using (saw_id) join book.piece e using (piece_id) join book.lot l using (lot_id)
      left join book.place v on v.place_id = f.place_id
      cross join lateral (select jsonb_agg(jsonb_build_array(n.length_nm, n.count) order by n.seq) as stops, bool_or(c.one_heat is not null or c.max_heats > 0) as limited
        from book.layout_cut n join book.cut_line c using (cut_line_id) where n.layout_id = f.layout_id) k
      left join lateral (select b.saw_bundle_id from book.saw_bundle_bar b where b.layout_id = f.layout_id and (f.state <> 'done'
        or exists (select from book.stroke s where s.saw_bundle_id = b.saw_bundle_id and s.piece_id = f.piece_id)) order by 1 desc limit 1) made on true
      where f.state <> 'dropped'),
  share as (select bar.*, case when made is null then (row_number() over (partition by plan_id, alike order by walk, place, tag) - 1) / bundle_bars end as so_many,
      row_number() over (partition by plan_id order by walk, place, tag) as at from bar),
  bundle as (select share.*, count(*) over b as bars, min(at) over b as leader from share window b as (partition by plan_id, alike, so_many))
  select plan_id, layout_id, bars, at = leader as leads, made is not null as made_up,
      case when bars > 1 then dense_rank() over (partition by plan_id, bars > 1 order by leader) end as bundle_no from bundle;

-- " in a bundle of 5 bars" for a piece that was cut together with others; null for the rest.
create function guard.in_bundle_words(p_piece bigint) returns text
language sql stable
return (select format(' in a bundle of %s bars', count(distinct o.piece_id)) from book.stroke o
  where o.saw_bundle_id in (select s.saw_bundle_id from book.stroke s where s.piece_id = p_piece) having count(*) > 0);

-- Why these bars may not be cut together at the saw, as {code, words}; null when they may. Of one length: there is one that each may
-- have, by what its measure leaves in doubt. What stays of a bar is held by the saw's grip for bundles.
create function guard.bundle_refusal(p_saw book.saw, p_pieces bigint[]) returns text[]
language plpgsql stable as $$
declare
  v_grip bigint := (select grip_nm from saw_grip where saw_id = p_saw.saw_id and bundled);
  v_order text := (select min(format('order %s line %s', c.order_no, c.line_no)) from promise r join layout_cut k using (layout_id) join cut_line c on c.cut_line_id = k.cut_line_id
    where r.piece_id = any (p_pieces) and r.state = 'live' and (c.one_heat is not null or c.max_heats > 0));
  v_words text;
  a record;
  b record;
begin
  if cardinality(p_pieces) > p_saw.bundle_bars then
    return array['HK042', format('saw %s takes %s bars at a time, not %s: make up bundles of %s or fewer', p_saw.name, p_saw.bundle_bars, cardinality(p_pieces), p_saw.bundle_bars)];
  end if;
  select format('%s measures %s mm (in doubt by %s) and %s %s mm (by %s)', s.tag, trim_scale(s.length_nm / 1e6::numeric), trim_scale(s.doubt_nm / 1e6::numeric),
      l.tag, trim_scale(l.length_nm / 1e6::numeric), trim_scale(l.doubt_nm / 1e6::numeric)) into v_words
    from (select * from piece where piece_id = any (p_pieces) order by length_nm + doubt_nm limit 1) s
    join (select * from piece where piece_id = any (p_pieces) order by length_nm - doubt_nm desc limit 1) l on s.length_nm + s.doubt_nm < l.length_nm - l.doubt_nm;
  for b in select e.tag, e.owner_id, e.length_nm, e.doubt_nm, x.label as section, l.grade_id, l.condition, m.name as mill, l.heat, r.layout_id, f.left_nm,
        q.bundled and q.saw_id = p_saw.saw_id as planned, jsonb_build_array(f.trim_nm, k.stops) as stops
      from piece e join lot l using (lot_id) join section x using (section_id) left join party m on m.party_id = l.mill_id
      left join promise r on r.piece_id = e.piece_id and r.state = 'live' left join layout f using (layout_id) left join plan q using (plan_id)
      cross join lateral (select jsonb_agg(jsonb_build_array(n.length_nm, n.count) order by n.seq) as stops from layout_cut n where n.layout_id = f.layout_id) k
      where e.piece_id = any (p_pieces) order by e.piece_id loop
    if b.layout_id is null then
      return array['HK042', format('%s is not promised to a plan: bars are cut together by one layout; cut it by itself', b.tag)];
    elsif not b.planned and b.left_nm - b.doubt_nm < v_grip then
      return array['HK042', format('only %s mm are sure to stay of %s, and saw %s holds bundles by %s mm: cut it by itself, or plan again for bundles',
        trim_scale((b.left_nm - b.doubt_nm) / 1e6::numeric), b.tag, p_saw.name, trim_scale(v_grip / 1e6::numeric))];
    end if;
    if a is null then
      a := b;
    elsif (a.section, a.grade_id, a.condition, a.owner_id) is distinct from (b.section, b.grade_id, b.condition, b.owner_id) then
      return array['HK042', format('%s and %s are not of one section, grade, condition and owner: cut them one after the other', a.tag, b.tag)];
    elsif v_order is not null and (a.mill, a.heat) is distinct from (b.mill, b.heat) then
      return array['HK042', format('%s limits its heats: %s is of heat %s, %s of heat %s; make up a bundle of each heat, or cut %s by itself',
        v_order, a.tag, coalesce(a.heat, 'unknown'), b.tag, coalesce(b.heat, 'unknown'), b.tag)];
    elsif a.stops <> b.stops then
      return array['HK042', format('%s is cut otherwise than %s by its layout: cut them one after the other', b.tag, a.tag)];
    end if;
  end loop;
  if v_words is not null then
    return array['HK042', v_words || ': they are not of one length; cut them one after the other'];
  end if;
  return null;
end $$;
