-- Which heats went into an order, proved from the happenings: every stroke that was ever booked for one of its lines is looked
-- up in the ledger, not in the tables; every chain it stands on is hashed anew; and the tables must say the same.

-- The strokes ever booked for the order, by the happenings: as they were booked last, and whether the table says the same.
create function guard.order_strokes(p_order text) returns table (stroke_id bigint, piece_id bigint, is_of_it boolean, agrees boolean)
language sql stable rows 100
begin atomic
  with lines as (select cut_line_id::text as id from book.cut_line where order_no = p_order),
  -- offset 0: line by line through the index of happenings by line, not by reading the ledger
  ever as (select h.row_id from lines n cross join lateral (select x.row_id from book.happening x where x.sets ->> 'cut_line_id' = n.id and x.tbl = 'stroke' and x.sets ? 'cut_line_id' offset 0) h
    union select s.stroke_id from book.stroke s join book.cut_line c using (cut_line_id) where c.order_no = p_order),
  told as (select e.row_id, h.says from ever e cross join lateral (select jsonb_object_agg(j.key, j.value order by x.happening_id) as says
    from book.happening x, jsonb_each(x.sets) j where x.tbl = 'stroke' and x.row_id = e.row_id) h where h.says is not null)
  select t.row_id, (t.says ->> 'piece_id')::bigint, t.says ->> 'class' = 'good' and t.says ->> 'cut_line_id' in (select id from lines),
      coalesce((select (s.piece_id::text, s.lot_id::text, s.cut_line_id::text, s.class::text, s.cut_id::text)
          is not distinct from (t.says ->> 'piece_id', t.says ->> 'lot_id', t.says ->> 'cut_line_id', t.says ->> 'class', t.says ->> 'cut_id')
        from book.stroke s where s.stroke_id = t.row_id), false)
    from told t
  union all
  select e.row_id, s.piece_id, true, false from ever e join book.stroke s on s.stroke_id = e.row_id where not exists (select from told t where t.row_id = e.row_id);
end;

-- {"order","one_heat":bool,"statement","looked_at","heats":[{"mill","heat","cut_pieces","pieces"}],"before":[...],"wrong":[...],"open"}.
-- one_heat only where all that was cut is of one known heat, nothing it came from was of another, and nothing is wrong.
-- Null where nothing was cut for the order.
create function api.order_heats(p_order text) returns jsonb
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_pieces bigint[];
  v_from bigint[];
  v_each bigint[];  -- one for every cut piece
  v_strokes bigint[];
  v_ends jsonb;
  v_wrong jsonb;
  v_heats jsonb;
  v_before jsonb;
  v_ever bigint;
  v_cut bigint;
  v_cuts bigint;
  v_open bigint;
  v_seen text;
  v_one boolean;
begin
  select array_agg(distinct s.piece_id) filter (where s.is_of_it), array_agg(s.piece_id) filter (where s.is_of_it), array_agg(s.stroke_id), count(*), count(*) filter (where s.is_of_it), coalesce(jsonb_agg(distinct to_jsonb(format('the tables say otherwise of a stroke of %s than the happenings do', coalesce(e.tag, s.piece_id::text)))) filter (where not s.agrees), '[]')
    into v_from, v_each, v_strokes, v_ever, v_cut, v_wrong from guard.order_strokes(p_order) s left join piece e using (piece_id);
  if v_cut = 0 then return null; end if;
  select array_agg(distinct a) into v_pieces from piece e, unnest(e.path || e.before_path) a where e.piece_id = any (v_from);
  v_ends := guard.record_ends(v_pieces, p_order);
  v_wrong := v_wrong || (select coalesce(jsonb_agg(words), '[]') from guard.chain_breaks(v_ends));
  -- a piece's lot by its happenings, beside the table's
  v_wrong := v_wrong || (select coalesce(jsonb_agg(format('the tables say otherwise of %s than the happenings do', e.tag)), '[]') from piece e
    cross join lateral (select (array_agg(h.sets ->> 'lot_id' order by h.happening_id desc) filter (where h.sets ? 'lot_id'))[1] as lot,
        (array_agg(h.sets ->> 'parent_id' order by h.happening_id desc) filter (where h.sets ? 'parent_id'))[1] as parent,
        (array_agg(h.sets ->> 'before_id' order by h.happening_id desc) filter (where h.sets ? 'before_id'))[1] as before
      from happening h where h.tbl = 'piece' and h.row_id = e.piece_id) told
    where e.piece_id = any (v_pieces) and (e.lot_id::text, e.parent_id::text, e.before_id::text) is distinct from (told.lot, told.parent, told.before));
  select jsonb_agg(jsonb_build_object('mill', mill, 'heat', heat, 'identity', identity, 'cut_pieces', n, 'pieces', tags) order by n desc, heat) into v_heats from (
    select m.name as mill, l.heat, l.identity, count(*) as n, jsonb_agg(distinct e.tag) as tags from unnest(v_each) s (piece_id) join piece e using (piece_id)
      join lot l using (lot_id) left join party m on m.party_id = l.mill_id group by m.name, l.heat, l.identity, case when l.heat is null then l.lot_id end) x;
  -- what the same metal was called before it went on under another tag
  select coalesce(jsonb_agg(jsonb_build_object('tag', e.tag, 'mill', m.name, 'heat', l.heat) order by e.tag), '[]') into v_before
    from piece e join lot l using (lot_id) left join party m on m.party_id = l.mill_id
    where e.piece_id = any (v_pieces) and not (e.piece_id = any (v_from)) and (m.name, l.heat) is distinct from (v_heats -> 0 ->> 'mill', v_heats -> 0 ->> 'heat');
  select count(distinct cut_id) into v_cuts from stroke where stroke_id = any (v_strokes);
  v_open := (select coalesce(sum(greatest(c.quantity - guard.line_cut(c.cut_line_id), 0)), 0) from cut_line c where c.order_no = p_order and not c.cancelled);
  v_one := jsonb_array_length(v_heats) = 1 and v_heats -> 0 ->> 'heat' is not null and v_wrong = '[]' and not exists (select from jsonb_array_elements(v_before) b where b ->> 'heat' is not null);
  v_seen := format('Looked at: %s strokes booked for the order at any time, in %s cuts; %s cut pieces now, from %s pieces, which with all they came from are %s; %s happenings in %s chains, each hashed anew%s.',
    v_ever, v_cuts, v_cut, cardinality(v_from), cardinality(v_pieces), (select sum((n -> 2)::bigint) from jsonb_array_elements(v_ends) n), jsonb_array_length(v_ends),
    case when v_wrong = '[]' then ', none broken, and the tables say the same' else '' end);
  return jsonb_build_object('order', p_order, 'one_heat', v_one, 'heats', v_heats, 'before', v_before, 'wrong', v_wrong, 'open', v_open, 'looked_at', v_seen,
    'statement', case when v_wrong <> '[]' then format('Nothing is stated about the heats of order %s: the book was changed behind its back.', p_order)
      when v_one then format('All %s pieces cut for order %s are of heat %s of %s; no other heat went into this order.', v_cut, p_order, v_heats -> 0 ->> 'heat', v_heats -> 0 ->> 'mill')
        || case when v_before <> '[]' then ' Before it was identified, some of the metal had no heat in the book; the tags are listed.' else '' end
      else format('It is not so that one heat alone went into order %s: ', p_order) || (select string_agg(format('%s of %s', h ->> 'cut_pieces', coalesce('heat ' || (h ->> 'heat') || ' of ' || (h ->> 'mill'), 'metal without a heat (' || (h ->> 'identity') || ')')), ', ') from jsonb_array_elements(v_heats) h)
        || coalesce('; and some of it was before: ' || (select string_agg(format('%s of heat %s', b ->> 'tag', b ->> 'heat'), ', ') from jsonb_array_elements(v_before) b where b ->> 'heat' is not null and jsonb_array_length(v_heats) = 1), '') || '.' end
      || case when v_open > 0 then format(' %s pieces are not cut yet.', v_open) else '' end);
end $$;
