-- Strokes that were booked and never made: one too many was confirmed. They stay in the book with nothing in them, and their metal is where it really is.

-- The closed cut whose rest this piece is; null where it is none, or where other pieces of that cut could be the rest as well.
create function guard.cut_with_rest(p book.piece) returns bigint
language sql stable
return (select c.cut_id from book.cut c where c.cut_id = p.from_cut_id and c.closed
  and not exists (select from book.metal_out where cut_id = c.cut_id and class = 'scrap')
  and (select array_agg(q.piece_id) from book.piece q where q.from_cut_id = c.cut_id
    and not exists (select from book.stroke s where s.cut_id = c.cut_id and s.reused_as_id = q.piece_id)) = array[p.piece_id]);

-- Why a stroke that was booked cannot be taken back; null where it can. What is a piece with a tag, has left, or was cut in others' stead was made.
create function guard.was_made_words(s book.stroke) returns text
language sql stable
return (select case
  when s.shipment_line_id is not null then format('a piece of order %s line %s that left the shop', c.order_no, c.line_no)
  when s.length_nm = 0 then 'a piece with a tag of its own, or a cut across only'
  when s.saw_bundle_id is not null then 'of a bundle, cut with other bars'
  when exists (select from book.recut where reject_id = s.stroke_id) then 'a reject that is recut'
  end from (select) one left join book.cut_line c on c.cut_line_id = s.cut_line_id);

-- {"tag","count"?,"reason"}: so many of the strokes booked last of a cut were not made (1). The tag is of what is longer than the book has it: the
-- piece whose cut is open, or the rest of a cut that was closed, while nothing has become of it. Only the last ones, since what follows in a
-- bar lies where it was booked. The pieces are open for their orders again.
create function api.not_cut(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('not_cut', p_request, p);
  v_why text;
  v_count integer := coalesce((p ->> 'count')::integer, 1);
  e piece;
  c cut;
  s stroke;
  v_strokes bigint[] := '{}';
  v_nm bigint := 0;
  v_from bigint;
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  v_why := guard.said(p, 'reason', 'how it came to be booked');
  if v_count < 1 then
    raise exception using errcode = 'HK026', message = format('%s strokes cannot be taken back; expected 1 or more', v_count);
  end if;
  e := guard.piece_of(p ->> 'tag');
  perform guard.lock_pieces(array[e.piece_id, e.parent_id]);
  e := guard.piece_of(p ->> 'tag');
  select * into c from cut where cut_id = coalesce(guard.open_cut(e.piece_id), guard.cut_with_rest(e));
  if c.cut_id is null then
    raise exception using errcode = 'HK043', message = format('no cut of %s is open, and it is not what a cut left', e.tag),
      hint = 'name the bar that is being cut, or the drop that was left of it: what is longer than the book has it';
  end if;
  perform guard.lock_lines(array(select cut_line_id from stroke where cut_id = c.cut_id and cut_line_id is not null));
  v_words := guard.evidence_words(e.piece_id);
  if v_words is not null then
    raise exception using errcode = 'HK040', message = format('nothing of %s is taken back: it is %s', e.tag, v_words), hint = 'quality lifts the hold first';
  end if;
  if c.closed then
    perform guard.free_to_change(e, 'made longer');
    if exists (select from cut where piece_id = e.piece_id) then
      raise exception using errcode = 'HK043', message = format('%s has been cut since: what was booked before it stays', e.tag);
    end if;
  end if;
  for s in select * from stroke where cut_id = c.cut_id and not_cut is null order by seq desc limit v_count loop
    v_words := guard.was_made_words(s);
    if v_words is not null then
      raise exception using errcode = 'HK043', message = format('stroke %s of that cut is %s: it was made', s.seq, v_words),
        hint = 'only what was booked last is taken back';
    end if;
    v_strokes := v_strokes || s.stroke_id;
    v_nm := v_nm + s.length_nm + s.kerf_nm;
    v_from := s.from_nm;
  end loop;
  if cardinality(v_strokes) < v_count then
    raise exception using errcode = 'HK034', message = format('%s strokes of that cut are booked, not %s', cardinality(v_strokes), v_count);
  end if;
  if c.layout_id is not null and c.closed then
    insert into open_piece (layout_id, cut_line_id, missing, why, said_by)
      select c.layout_id, cut_line_id, count(*), v_why, session_user from stroke where stroke_id = any (v_strokes) and class = 'good' group by cut_line_id order by cut_line_id;
  end if;
  update stroke set not_cut = v_why, class = 'trim', length_nm = 0, kerf_nm = 0, cut_line_id = null, fault = null, lab = null, recut_of_id = null, held = false
    where stroke_id = any (v_strokes);
  if c.closed then
    -- the metal lies before what the book had: what is marked on either keeps its place
    update defect_zone set from_nm = from_nm + v_nm, to_nm = to_nm + v_nm where piece_id = e.piece_id;
    update piece set made_length_nm = made_length_nm + v_nm, length_nm = length_nm + v_nm where piece_id = e.piece_id;
    insert into defect_zone (piece_id, from_nm, to_nm, kind)
      select e.piece_id, greatest(0, from_nm - v_from), least(v_nm, to_nm - v_from), kind from defect_zone
        where piece_id = c.piece_id and (v_from is null or to_nm > v_from and from_nm < v_from + v_nm) order by from_nm, defect_zone_id;
    -- one that waits will say it
    insert into label_job (piece_id, kind, why, asked_by) select e.piece_id, 'again', 'it is longer than the label says', session_user
      where not exists (select from label_job where piece_id = e.piece_id and state <> 'printed');
  else
    update piece set length_nm = length_nm + v_nm where piece_id = e.piece_id;
  end if;
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'strokes', v_count, 'length_nm', e.length_nm + v_nm));
end $$;
