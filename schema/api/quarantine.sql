-- What may not be used, or only for less: quarantine, release with limits, damage, downgrade, identity regained.

-- The piece and all that comes from it, as far as it is here.
create function guard.here_of(p_piece bigint) returns bigint[]
language plpgsql stable as $$
begin
  return (select coalesce(array_agg(n.piece_id order by n.piece_id), '{}') from book.piece n
  where (n.path @> array[p_piece] or n.before_path @> array[p_piece]) and n.length_nm > 0);
end $$;

-- Its promises, and those of all that comes from it, fall; the answer names the plans that lack it.
create function api.quarantine(p_request uuid, p_tag text, p_reason text, p_place text default null, p_true_at timestamptz default null,
                               p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('quarantine', p_request, jsonb_build_array(p_tag, p_reason, p_place, guard.utc(p_true_at)), p_true_at, p_device, p_reason);
  p piece;
  v_to place;
  v_pieces bigint[];
  v_lacking jsonb;
begin
  if v_again is not null then return v_again; end if;
  if coalesce(btrim(p_reason), '') = '' then
    raise exception using errcode = 'HK026', message = 'a quarantine needs a reason';
  end if;
  -- against promises, pulls and cuts of what came from the piece
  p := guard.piece_for_deed(p_tag, true);
  if p_place is not null then
    select * into v_to from place where place_id = guard.place(p_place);
    if v_to.kind <> 'quarantine' then
      raise exception using errcode = 'HK026', message = format('%s is no place for quarantine', v_to.name), hint = 'a place of kind quarantine, apart from the rest';
    end if;
  end if;
  update piece set quarantine = p_reason,
    place_id = case when v_to.place_id is not null and length_nm > 0 and state = 'on rack' then v_to.place_id else place_id end where piece_id = p.piece_id;
  v_pieces := guard.here_of(p.piece_id);
  v_lacking := guard.plans_lacking(v_pieces);
  perform guard.drop_promise(n, 'quarantined: ' || p_reason) from unnest(v_pieces) n;
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'place', v_to.name, 'plans', v_lacking, 'label', format('QUARANTINE %s: %s', p.tag, p_reason)));
end $$;

-- p_not_for: the weakest papers it may no longer serve ("3.1": it may still serve 2.2), with all that comes from it.
create function api.release(p_request uuid, p_tag text, p_evidence text, p_not_for text default null, p_true_at timestamptz default null,
                            p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('release', p_request, jsonb_build_array(p_tag, p_evidence, p_not_for, guard.utc(p_true_at)), p_true_at, p_device, p_evidence);
  p piece;
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  p := guard.piece_for_deed(p_tag, true);
  v_words := guard.quarantine_words(p.piece_id);
  if p.quarantine is null and v_words is not null then
    raise exception using errcode = 'HK043', message = format('%s itself is not in quarantine: %s came before it and is', p.tag,
      (select string_agg(tag, ', ') from piece where piece_id = any (p.path || p.before_path) and quarantine is not null)), hint = 'release that one';
  elsif p.quarantine is null then
    raise exception using errcode = 'HK043', message = format('%s is not in quarantine', p.tag), hint = '`heatkeep hold list` names what else stops metal';
  elsif coalesce(btrim(p_evidence), '') = '' then
    raise exception using errcode = 'HK026', message = 'a release names its evidence';
  elsif guard.setting('two_person_release', 'no') = 'yes' and session_user = (select r.received_by from receipt_line
      join receipt r using (receipt_id) where receipt_line_id = (select receipt_line_id from piece where piece_id = p.path[1])) then
    raise exception using errcode = 'HK043', message = format('%s was received by you: another person releases it', p.tag);
  end if;
  perform guard.limit_papers(p, guard.weaker_than(p_not_for), p_evidence);
  update piece set quarantine = null where piece_id = p.piece_id;
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'limits', guard.limit_words(p.piece_id)));
end $$;

-- The strongest papers below these; null where nothing is asked.
create function guard.weaker_than(p_papers text) returns text
language plpgsql immutable as $$
begin
  if coalesce(p_papers, '') = '' then
    return null;
  elsif p_papers not in ('2.1', '2.2', '3.1', '3.2') then
    raise exception using errcode = 'HK026', message = format('"%s" is no type of inspection document', p_papers), hint = 'expected 2.1, 2.2, 3.1 or 3.2 (EN 10204)';
  end if;
  return case p_papers when '2.1' then 'none' when '2.2' then '2.1' when '3.1' then '2.2' else '3.1' end;
end $$;

-- Only ever downwards.
create function guard.limit_papers(p book.piece, p_most text, p_words text) returns void
language plpgsql volatile as $$
begin
  if p_most is not null then
    update piece set limit_papers = least(limit_papers, p_most::papers),
      limit_words = format('not above %s: %s', least(limit_papers, p_most::papers), p_words) where piece_id = p.piece_id;
    perform guard.drop_promise(n, 'its use was limited') from unnest(guard.here_of(p.piece_id)) n;
  end if;
end $$;

-- {"tag","kind":"bent|corroded|dented|cracked|other","usable":bool,"words","from_nm"?,"to_nm"?}: by anyone who sees it. From and to of the piece as
-- it is now, from the end that is cut first.
create function api.record_damage(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('record_damage', p_request, p);
  e piece;
  v_words text;
  v_lacking jsonb;
begin
  if v_again is not null then return v_again; end if;
  v_words := guard.said(p, 'kind', 'bent, corroded, dented, cracked or other') || ': ' || guard.said(p, 'words', 'what is seen, and where');
  if p ->> 'kind' not in ('bent', 'corroded', 'dented', 'cracked', 'other') or (p ->> 'usable')::boolean is null then
    raise exception using errcode = 'HK026', message = 'say what kind of damage it is, and whether the piece is usable',
      hint = 'kind: bent, corroded, dented, cracked or other; usable: true or false';
  end if;
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag'), not (p ->> 'usable')::boolean);
  insert into piece_note (piece_id, kind, words, more) values (e.piece_id, 'damage', v_words, p - 'words' - 'tag');
  if coalesce(p ->> 'from_nm', p ->> 'to_nm') is not null then
    perform guard.said(p, 'from_nm', 'where the damage begins'), guard.said(p, 'to_nm', 'where it ends');
    perform guard.mark_zone(e, (p ->> 'from_nm')::bigint, (p ->> 'to_nm')::bigint, p ->> 'kind');
  end if;
  if not (p ->> 'usable')::boolean then
    update piece set quarantine = v_words where piece_id = e.piece_id;
    v_lacking := guard.plans_lacking(guard.here_of(e.piece_id));
    perform guard.drop_promise(n, v_words) from unnest(guard.here_of(e.piece_id)) n;
  end if;
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'quarantined', not (p ->> 'usable')::boolean, 'plans', v_lacking));
end $$;

-- {"tag","to":"3.1|2.2|2.1|none|grade only|unknown","reason"}: to weaker papers, or to metal whose heat nobody can vouch
-- for any more (then it goes on under a new tag). Upwards only with evidence: reestablish_identity.
create function api.downgrade(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('downgrade', p_request, p);
  e piece;
  l lot;
  v_to text;
  v_why text;
  v_lot bigint;
  v_tag text;
begin
  if v_again is not null then return v_again; end if;
  v_to := guard.said(p, 'to', '3.1, 2.2, 2.1, none, grade only or unknown');
  v_why := guard.said(p, 'reason', 'why, and for which orders it may still be used');
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag'), true);
  perform guard.free_to_change(e, 'downgraded');
  select * into l from lot where lot_id = e.lot_id;
  if v_to in ('none', '2.1', '2.2', '3.1') then
    if v_to::papers >= guard.papers_of(e.piece_id) then
      raise exception using errcode = 'HK042', message = format('%s is good for %s: to %s is no downgrade', e.tag, guard.papers_of(e.piece_id), v_to),
        hint = 'upwards only by evidence (heatkeep piece identity)';
    end if;
    perform guard.limit_papers(e, v_to, v_why);
  elsif v_to in ('grade only', 'unknown') then
    if l.identity::text = v_to or l.identity = 'unknown' then
      raise exception using errcode = 'HK042', message = format('%s is %s already', e.tag, l.identity), hint = 'upwards only by evidence (heatkeep piece identity)';
    end if;
    insert into lot (mill_id, section_id, grade_id, condition, identity, papers_state)
      values (null, l.section_id, case when v_to = 'grade only' then l.grade_id end, l.condition, v_to::identity, 'none') returning lot_id into v_lot;
    v_tag := guard.pass_on(e, v_lot, e.owner_id, e.place_id, 'downgraded to ' || v_to || ': ' || v_why);
  else
    raise exception using errcode = 'HK026', message = format('"%s" is nothing to downgrade to', v_to), hint = 'expected 3.1, 2.2, 2.1, none, grade only or unknown';
  end if;
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'to', v_to, 'new_tag', v_tag));
end $$;
