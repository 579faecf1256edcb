-- The one order in which deeds lock what others may want at the same moment. Who keeps it never waits in a circle, so no two deeds can
-- block each other for good:
--   1 names    one lock of all who bring in sections and lots that are new
--   2 rows     the row a deed is about: bundle, conflict, device, document, hold, purchase_line, receipt, saw, scrap_bin, stock_count
--   3 lots     shared by every deed on their metal; alone by what stops the metal or changes its papers. No piece is born and nothing is
--              promised without its lot
--   4 pieces   with all that is written under them: strokes, promises, metal that left, labels, trips
--   5 plans    that these pieces are promised to, with their layouts
--   6 lines    of cut lists
--   7 places   whose load is limited, by what puts metal there: what lies in them is added up for one after the other
-- Lots are asked for in queues, by the remainder of their number: who asks for one alone is served before those who come later and would
-- share it. A row lock does not do that: a share is given to whoever comes while others share it, and one who stopped a heat waited for
-- minutes. A queue is a view, since a table or view can be locked by those who own it only, and an advisory lock by anybody.
-- On a rung by name and number. A deed locks all it needs of a rung before it goes on; what it has, it may ask for again. The ends of the
-- chains and the rows that a deed makes belong to what it has locked. Locks of rows are "no key update": nobody's foreign key waits for them.
-- Several deeds in one transaction (a plan mended at the saw) may leave it from one to the next: who does that does the whole again where
-- the database gave it up. No other function locks a row. Where the setting heatkeep.lock_order is given, a deed that leaves the order stops (HK014).
create function guard.keep_order(p_rung integer, p_name text, p_ids bigint[], p_alone boolean default true) returns void
language plpgsql volatile as $$
declare
  v_held text[];
  v_key text;
begin
  if current_setting('heatkeep.lock_order', true) is null then
    return;
  end if;
  v_held := string_to_array(coalesce(guard.note('locked'), ''), ',');
  for v_key in select format('%s %s %s', p_rung, p_name, lpad(n::text, 18, '0')) from (select distinct n from unnest(p_ids) n where n is not null order by 1) x loop
    continue when v_key || ' alone' = any (v_held) or not p_alone and v_key || ' shared' = any (v_held);
    if v_key || ' shared' = any (v_held) or v_key collate "C" < (select max(x collate "C") from unnest(v_held) x) then
      raise exception using errcode = 'HK014', message = format('%s locks %s after %s', guard.note('deed'), v_key, (select max(x collate "C") from unnest(v_held) x)),
        hint = 'the order is said in schema/guard/lock_order.sql';
    end if;
    v_held := v_held || (v_key || case when p_alone then ' alone' else ' shared' end);
  end loop;
  perform set_config('heatkeep.locked', array_to_string(v_held, ','), true);
end $$;

create function guard.lock_names() returns void
language plpgsql volatile as $$
begin
  perform guard.keep_order(1, 'names', '{0}');
  lock table book.section in share update exclusive mode;  -- against others who do so only; no person may lock a table of the book
end $$;

create function guard.lock_rows(p_table text, p_ids bigint[]) returns void
language plpgsql volatile as $$
begin
  perform guard.keep_order(2, p_table, p_ids);
  execute format('select from book.%1$I where %2$I = any ($1) order by %2$I for no key update', p_table, p_table || '_id') using p_ids;
end $$;

create function guard.lot_queue(p_lot bigint) returns integer
language sql immutable
return p_lot % 64;

do $$
begin
  for n in 0..63 loop
    execute format('create view guard.lot_queue_%s as select', n);
  end loop;
end $$;

create function guard.lock_queue(p_queue bigint, p_alone boolean) returns void
language plpgsql volatile as $$
begin
  perform guard.keep_order(3, 'lot queue', array[p_queue], p_alone);
  execute format('lock table guard.lot_queue_%s in %s mode', p_queue, case when p_alone then 'exclusive' else 'row share' end);
end $$;

create function guard.lock_lots(p_lots bigint[], p_alone boolean) returns void
language plpgsql volatile as $$
declare
  v_queues bigint[] := array(select distinct guard.lot_queue(n) from unnest(p_lots) n where n is not null order by 1);
  v_queue bigint;
begin
  foreach v_queue in array v_queues loop
    perform guard.lock_queue(v_queue, p_alone);
  end loop;
end $$;

-- Metal went to another lot than those locked for it, while they were waited for: that one would be locked out of order. The deed is given up, as
-- the database gives one up, and is done again as a whole.
create function guard.give_up_for_lots() returns void
language plpgsql volatile as $$
begin
  raise exception using errcode = '40001', message = 'metal of it went to another lot just now: do it again';
end $$;

-- The plans that these pieces are promised to, and p_plans.
create function guard.lock_plans(p_pieces bigint[], p_plans bigint[] default '{}') returns void
language plpgsql volatile as $$
declare
  v_plans bigint[] := p_plans || array(select f.plan_id from promise r join layout f using (layout_id) where r.piece_id = any (p_pieces) and r.state = 'live');
begin
  if cardinality(v_plans) > 0 then
    perform guard.keep_order(5, 'plan', v_plans);
    perform from plan where plan_id = any (v_plans) order by plan_id for no key update;
  end if;
end $$;

-- The pieces with their lots, and the plans they are promised to (p_plans: and these).
create function guard.lock_pieces(p_pieces bigint[], p_alone boolean default false, p_plans bigint[] default '{}') returns void
language plpgsql volatile as $$
declare
  v_lots bigint[] := array(select distinct lot_id from piece where piece_id = any (p_pieces));
  v_gone boolean;
begin
  perform guard.lock_lots(v_lots, p_alone);
  perform guard.keep_order(4, 'piece', p_pieces);
  select bool_or(lot_id <> all (v_lots)) into v_gone from (select lot_id from piece where piece_id = any (p_pieces) order by piece_id for no key update) x;
  if v_gone then
    perform guard.give_up_for_lots();
  end if;
  perform guard.lock_plans(p_pieces, p_plans);
end $$;

-- One piece, with its lot and the plan it is promised to; answers it as it is once it is locked.
create function guard.lock_piece(inout p book.piece)
language plpgsql volatile as $$
declare
  v_lot bigint := p.lot_id;
begin
  perform guard.lock_queue(guard.lot_queue(v_lot), false), guard.keep_order(4, 'piece', array[p.piece_id]);
  select * into p from piece where piece_id = p.piece_id for no key update;
  if p.lot_id <> v_lot then
    perform guard.give_up_for_lots();
  end if;
  perform guard.lock_plans(array[p.piece_id]);
end $$;

-- The lines with those that are asked for of one heat with them: what one of them gets settles the heat of all.
create function guard.lock_lines(p_lines bigint[]) returns void
language plpgsql volatile as $$
declare
  v_lines bigint[] := p_lines;
begin
  if exists (select from cut_line where cut_line_id = any (p_lines) and one_heat is not null) then
    v_lines := v_lines || array(select cut_line_id from cut_line where (cut_list_id, one_heat) in (select cut_list_id, one_heat from cut_line where cut_line_id = any (p_lines)));
  end if;
  perform guard.keep_order(6, 'cut_line', v_lines);
  perform from cut_line where cut_line_id = any (v_lines) order by cut_line_id for no key update;
end $$;

create function guard.lock_places(p_places bigint[]) returns void
language plpgsql volatile as $$
declare
  v_limited bigint[];
begin
  if cardinality(p_places) = 0 then
    return;
  end if;
  v_limited := array(select place_id from place where place_id = any (p_places) and max_mass_g is not null order by place_id);
  if cardinality(v_limited) > 0 then
    perform guard.keep_order(7, 'place', v_limited);
    perform from place where place_id = any (v_limited) order by place_id for no key update;
  end if;
end $$;

-- The places that a body names, wherever: a deed that may put metal in several locks them all before the first.
create function guard.places_named(p jsonb) returns bigint[]
language plpgsql stable as $$
begin
  if not p @? '$.**.place' then
    return '{}';
  end if;
  return array(select place_id from place where name = any (array(select distinct btrim(n #>> '{}') from jsonb_path_query(p, '$.**.place') n)));
end $$;

-- The lines that a body names in its strokes or cuts, wherever; each is looked up by its key, however many lines there are.
create function guard.lines_named(p jsonb) returns bigint[]
language plpgsql stable as $$
begin
  return guard.lines_of(jsonb_path_query_array(p, '$.**.strokes[*]') || jsonb_path_query_array(p, '$.**.cuts[*]'));
end $$;

-- The lines of these strokes or cuts.
create function guard.lines_of(p jsonb) returns bigint[]
language plpgsql stable as $$
begin
  return array(select (select cut_line_id from cut_line where order_no = n ->> 'order' and line_no = n ->> 'line') from jsonb_array_elements(p) n);
end $$;

-- The pieces with these tags, as far as there are such.
create function guard.lock_tags(p_tags text[]) returns void
language plpgsql volatile as $$
begin
  perform guard.lock_pieces(array(select piece_id from piece where tag = any (array(select guard.tag_form(t) from unnest(p_tags) t))));
end $$;

-- A piece and all that comes from it, as far as it is here, with the lots alone: nothing more comes from it until the deed is done.
create function guard.lock_family(p_piece bigint) returns void
language plpgsql volatile as $$
declare
  v_lots bigint[] := array(select distinct lot_id from piece where piece_id = any (p_piece || guard.here_of(p_piece)));
  v_family bigint[];
begin
  perform guard.lock_lots(v_lots, true);
  v_family := p_piece || guard.here_of(p_piece);  -- with what was born while that was waited for
  if exists (select from piece where piece_id = any (v_family) and lot_id <> all (v_lots)) then
    perform guard.give_up_for_lots();
  end if;
  perform guard.lock_pieces(v_family, true);
end $$;
