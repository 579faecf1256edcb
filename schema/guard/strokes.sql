-- Booking what was really cut: strokes, the rest, and the whole of a cut.
create function guard.line_named(p_order text, p_line text) returns book.cut_line
language plpgsql stable as $$
declare
  c cut_line;
begin
  select * into c from cut_line where order_no = p_order and line_no = p_line;
  if c.cut_line_id is null then
    raise exception using errcode = 'HK027', message = format('there is no order %s line %s', p_order, p_line), hint = '`heatkeep cutlist list` names the open ones';
  end if;
  return c;
end $$;

create function guard.line_for_cut(p_order text, p_line text) returns bigint
language plpgsql stable as $$
begin
  return (guard.line_named(p_order, p_line)).cut_line_id;
end $$;

-- What speaks against good pieces of this line out of p: each is recorded, and a conflict for a person.
-- p_cut: how many of the line are cut already.
create function guard.conflicts_of_good(p book.piece, c book.cut_line, p_count integer, p_cut bigint) returns void
language plpgsql volatile as $$
declare
  v_words text := coalesce(guard.piece_may_not_serve(p, c), guard.consent_over(p.piece_id, c.cut_line_id, p_count));
  v_heat text := guard.heat_rule_words(c, p.lot_id, false);
begin
  if v_words is not null then
    perform guard.raise_conflict('cut from the wrong metal', p.piece_id, format('order %s line %s from %s: %s', c.order_no, c.line_no, p.tag, v_words));
  end if;
  if v_heat is not null and not guard.heat_agreed(p.piece_id, c.cut_line_id) then
    perform guard.raise_conflict('cut from another heat', p.piece_id, format('%s: %s', p.tag, v_heat));
  end if;
  if p_cut + p_count > c.quantity then
    perform guard.raise_conflict('more cut than ordered', p.piece_id, format('order %s line %s: %s ordered, %s cut',
      c.order_no, c.line_no, c.quantity, p_cut + p_count));
  end if;
end $$;

-- Books n strokes of one kind: adds them to p_strokes, which the whole cut then puts in together, and answers the metal they took. A good piece must lie in its line's tolerance. Class "stock" makes
-- pieces with tags of their own ("place", and "tags" where a device gave them out): an over-cut, a cut without a list, a split. With
-- p_bundle they are cut together with other bars': the saw's strokes after number p_after, in order.
create function guard.book_strokes(p book.piece, p_cut book.cut, n jsonb, p_used bigint, p_device text, p_bundle bigint, p_after integer,
    inout p_strokes book.stroke[], out took bigint)
language plpgsql volatile as $$
declare
  v_stock boolean := n ->> 'class' = 'stock';
  v_class stroke_class := case when n ->> 'class' = 'stock' then 'trim' else n ->> 'class' end;
  v_length bigint := (n ->> 'length_nm')::bigint;
  v_kerf bigint := (n ->> 'kerf_nm')::bigint;
  v_count integer := coalesce((n ->> 'count')::integer, 1);
  v_seq integer := (select coalesce(max(seq), 0) from stroke where cut_id = p_cut.cut_id) + cardinality(p_strokes);
  v_bundle bigint := case when v_kerf > 0 then p_bundle end;
  v_before integer;  -- of its bundle
  v_recut bigint := (n ->> 'recut_of')::bigint;
  v_from bigint := p.made_length_nm - p.length_nm + p_used;
  v_step numeric := v_length::numeric + v_kerf;
  v_sawn boolean := p.ends >= 1 or p_used > 0 or v_seq > 0;
  v_good bigint;  -- of the line, so far
  v_words text;
  c cut_line := case when n ->> 'line' is not null then guard.line_named(n ->> 'order', n ->> 'line') end;
begin
  if v_count < 1 then
    raise exception using errcode = 'HK026', message = format('%s strokes cannot be booked; expected 1 or more', v_count);
  elsif p_used + v_step * v_count > p.length_nm then
    raise exception using errcode = 'HK034', message = format('%s holds %s mm; %s mm cannot have been cut from it', p.tag, trim_scale(p.length_nm / 1e6::numeric),
      trim_scale(least(p_used + v_step * v_count, 9e18) / 1e6::numeric)), hint = 'measure the piece and say what it measured';
  elsif v_count > 100000 then
    raise exception using errcode = 'HK026', message = format('%s strokes are not booked in one go; expected 100000 or less', v_count);
  elsif v_class = 'test slice' and coalesce(btrim(n ->> 'lab'), '') = '' then
    raise exception using errcode = 'HK026', message = 'a test slice names where it went: the laboratory''s reference';
  elsif v_stock and coalesce(v_length, 0) <= 0 then
    raise exception using errcode = 'HK026', message = 'a piece for stock has a length';
  end if;
  if v_class = 'good' then
    if v_length not between c.length_nm + c.face_nm - c.tolerance_minus_nm and c.length_nm + c.face_nm + c.tolerance_plus_nm then
      raise exception using errcode = 'HK042', message = format('%s mm is outside the tolerance of order %s line %s',
        trim_scale(v_length / 1e6::numeric), c.order_no, c.line_no), hint = 'book it as a reject, with the fault';
    end if;
    v_good := guard.line_cut(c.cut_line_id);
    if p_strokes <> '{}' then
      v_good := v_good + (select count(*) from unnest(p_strokes) where cut_line_id = c.cut_line_id and class = 'good');
    end if;
    perform guard.conflicts_of_good(p, c, v_count, v_good);
    v_words := guard.zone_ahead(p, p_used, p_used + (v_step * v_count)::bigint);
    if v_words is not null then
      perform guard.raise_conflict('good piece across a defect', p.piece_id, format('order %s line %s from %s: %s', c.order_no, c.line_no, p.tag, v_words));
    end if;
  end if;
  if v_recut is not null then
    if not exists (select from stroke where stroke_id = v_recut and class = 'reject' and cut_line_id = c.cut_line_id) then
      raise exception using errcode = 'HK026', message = format('reject %s is no reject of order %s line %s', v_recut, n ->> 'order', n ->> 'line');
    end if;
  end if;
  if v_bundle is not null then
    v_before := (select greatest(p_after, max(saw_stroke)) from (select saw_stroke from stroke where saw_bundle_id = v_bundle and piece_id = p.piece_id
      union all select saw_stroke from unnest(p_strokes)) b);
  end if;
  if v_stock then
    perform guard.new_child(p, p_cut.cut_id, (v_from + (i - 1) * v_step)::bigint, (v_from + (i - 1) * v_step)::bigint + v_length, v_length, (n ->> 'doubt_nm')::bigint,
      case when v_sawn or i > 1 then 2 else 1 end,
      (case when n ->> 'mark' is not null then n ->> 'mark' else 'unknown' end)::mark_end, n ->> 'place', n -> 'tags' ->> (i - 1), p_device)
      from generate_series(1, v_count) i;
    v_length := 0;
  end if;
  if v_length + v_kerf > 0 or not v_stock then
    p_strokes := p_strokes || array(select row(null, p_cut.cut_id, p.piece_id, p.lot_id, p.owner_id, v_seq + i, v_class, v_length, v_kerf, c.cut_line_id, n ->> 'fault', false, null, null,
        n ->> 'lab', null, case when i = 1 then v_recut end, v_bundle, case when v_bundle is not null then v_before + i end,
        v_from + (i - 1) * v_step, null)::stroke from generate_series(1, v_count) i);
  end if;
  took := v_step * v_count;
end $$;

-- The rest of a finished cut: a drop with its own tag, scrap, or nothing. Answers the drop's number or null.
create function guard.book_rest(p book.piece, p_cut bigint, p_rest bigint, p_left jsonb, p_reason text, p_device text) returns bigint
language plpgsql volatile as $$
declare
  v_fate text := coalesce(p_left ->> 'fate', 'none');
  v_measured bigint := coalesce((p_left ->> 'length_nm')::bigint, p_rest);
  v_slack bigint := p.doubt_nm + guard.setting('rest_slack_nm', '2000000')::bigint;
  v_id bigint;
begin
  if v_fate = 'drop' or (v_fate = 'scrap' and p_rest > 0) then
    if v_measured <= 0 or v_measured > p_rest + v_slack then
      raise exception using errcode = 'HK034', message = format('the rest of %s cannot measure %s mm: by the cuts it is %s mm',
        p.tag, trim_scale(v_measured / 1e6::numeric), trim_scale(p_rest / 1e6::numeric)),
        hint = 'measure again; where a piece was booked that was not cut, take it back first: heatkeep saw take-back';
    elsif abs(p_rest - v_measured) > v_slack and coalesce(btrim(p_reason), '') = '' then
      raise exception using errcode = 'HK026', message = format('%s mm are missing from the rest of %s: say why',
        trim_scale((p_rest - v_measured) / 1e6::numeric), p.tag);
    end if;
  end if;
  if v_fate = 'drop' then
    if p_left ? 'heat' then
      perform guard.check_heat_on_label(p, p_left ->> 'heat');
    end if;
    v_id := guard.new_child(p, p_cut, p.made_length_nm - p_rest, p.made_length_nm, v_measured,
      case when p_left ? 'measured_with' then guard.doubt_nm((p_left ->> 'doubt_nm')::bigint, p_left ->> 'measured_with') else (p_left ->> 'doubt_nm')::bigint end,
      coalesce((p_left ->> 'ends')::integer, greatest(1, p.ends)),
      (case when p.mark_end in ('last', 'both') then 'last' when p.mark_end = 'unknown' then 'unknown' else 'none' end)::mark_end,
      p_left ->> 'place', p_left ->> 'tag', p_device);
    if p_left ? 'measured_with' then
      update piece set measured_with = guard.device(p_left ->> 'measured_with') where piece_id = v_id;
    end if;
  elsif v_fate = 'scrap' and p_rest > 0 then
    if p.owner_id <> 0 and coalesce(btrim(p_reason), '') = '' then
      raise exception using errcode = 'HK026', message = format('%s belongs to %s: name their written instruction to scrap the rest',
        p.tag, (select name from party where party_id = p.owner_id)), hint = 'or keep it as a drop of theirs';
    end if;
    insert into metal_out (piece_id, lot_id, owner_id, cut_id, class, length_nm, reason, scrap_bin_id)
      values (p.piece_id, p.lot_id, p.owner_id, p_cut, 'scrap', v_measured, p_left ->> 'bin', guard.bin_for(p_left ->> 'bin', p.lot_id));
  elsif p_rest <> 0 then
    raise exception using errcode = 'HK026', message = format('%s mm are left of %s: say whether they are a drop or scrap',
      trim_scale(p_rest / 1e6::numeric), p.tag);
  else
    v_measured := 0;
  end if;
  if v_measured <> p_rest then
    insert into metal_out (piece_id, lot_id, owner_id, cut_id, class, length_nm, reason, named)
      values (p.piece_id, p.lot_id, p.owner_id, p_cut, 'unexplained', p_rest - v_measured,
        coalesce(nullif(btrim(p_reason), ''), 'rest measured against arithmetic'), session_user);
  end if;
  return v_id;
end $$;

-- Pieces of a layout that were not cut, line by line; a reason is needed for those that are not explained by rejects.
create function guard.explain_open(p_layout bigint, p_cut bigint, p_tag text, p_reason text) returns void
language plpgsql volatile as $$
declare
  v_words text;
  v_missing bigint;
  v_spare bigint := (select count(*) from stroke where cut_id = p_cut and class = 'reject' and cut_line_id is null);
  v_reason text := nullif(btrim(p_reason), '');
  n record;
begin
  for n in select k.cut_line_id, sum(k.count) - (select count(*) from stroke s where s.cut_id = p_cut and s.cut_line_id = k.cut_line_id and s.class = 'good') as missing,
      (select count(*) from stroke s where s.cut_id = p_cut and s.cut_line_id = k.cut_line_id and s.class = 'reject') as rejects
    from layout_cut k where k.layout_id = p_layout group by k.cut_line_id order by k.cut_line_id loop
    continue when n.missing <= 0;
    v_missing := greatest(0, n.missing - n.rejects - v_spare);
    v_spare := v_spare - least(v_spare, greatest(0, n.missing - n.rejects));
    if v_missing > 0 and v_reason is null then
      v_words := concat_ws('; ', v_words, (select format('%s of order %s line %s', v_missing, order_no, line_no) from cut_line where cut_line_id = n.cut_line_id));
      continue;
    end if;
    insert into open_piece (layout_id, cut_line_id, missing, why, said_by)
      values (p_layout, n.cut_line_id, n.missing, coalesce(v_reason, 'rejected'), session_user);
  end loop;
  if v_words is not null then
    raise exception using errcode = 'HK026', message = format('not cut from %s though planned: %s; say why', p_tag, v_words),
      hint = 'give the reason with the cut; the pieces are open again for the planner';
  end if;
end $$;
