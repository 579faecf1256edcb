-- Holds: from that moment nothing of it is promised, pulled, cut or shipped; all descendants at once, later ones too.

-- p_scope: heat (of one mill or of all), lot (by the tag of a piece of it), piece (with all that comes from it),
-- certificate (p_mill its issuer) or receipt (p_mill the supplier, p_ref the note).

-- What such a hold would name; refused where the book knows no such thing.
create function guard.hold_asked(p_scope text, p_ref text, p_mill text) returns book.hold
language plpgsql stable as $$
declare
  v_mill bigint := case when coalesce(p_mill, '') <> '' then guard.party(p_mill) end;
  h hold;
begin
  if p_scope = 'heat' then
    h.heat := (select heat from lot where heat = p_ref and (v_mill is null or mill_id = v_mill) limit 1);
    h.mill_id := v_mill;
  elsif p_scope in ('piece', 'lot') then
    select case p_scope when 'piece' then piece_id end, case p_scope when 'lot' then lot_id end into h.piece_id, h.lot_id from guard.piece_of(p_ref);
  elsif p_scope = 'certificate' then
    select document_id into h.document_id from document where number = p_ref and issuer_id = v_mill order by version desc limit 1;
  elsif p_scope = 'receipt' then
    select receipt_id into h.receipt_id from receipt where note = p_ref and supplier_id is not distinct from v_mill
      order by reversed_by is not null, receipt_id desc limit 1;
  else
    raise exception using errcode = 'HK026', message = format('"%s" cannot be held; expected heat, lot, piece, certificate or receipt', p_scope);
  end if;
  if coalesce(h.heat, h.piece_id::text, h.lot_id::text, h.document_id::text, h.receipt_id::text) is null then
    raise exception using errcode = 'HK026', message = case p_scope when 'heat' then format('no lot has heat "%s"', p_ref) || coalesce('; it looks like heat ' || guard.heats_like(p_ref), '')
      else format('the book knows no %s "%s" of %s', p_scope, p_ref, coalesce(p_mill, 'nobody')) end,
      hint = '`heatkeep stock` names what is here, `heatkeep receipt list` what came, `heatkeep papers list` the documents';
  end if;
  h.scope := p_scope;
  return h;
end $$;

-- Every piece, here or gone, that a hold is about, with what the same metal went on as under another tag.
create function guard.held_pieces(h book.hold) returns table (piece_id bigint)
language sql stable
begin atomic
  with told as (
    select p.piece_id from book.piece p join book.lot l using (lot_id) where (h).heat is not null and l.heat = (h).heat and ((h).mill_id is null or l.mill_id = (h).mill_id)
    union select p.piece_id from book.piece p where p.lot_id = (h).lot_id
    union select p.piece_id from book.piece p where p.path @> array[(h).piece_id] or p.before_path @> array[(h).piece_id]
    union select p.piece_id from book.piece p join book.document_lot n using (lot_id) where n.document_id = (h).document_id
    union select p.piece_id from book.piece p join book.receipt_line r using (receipt_line_id) where r.receipt_id = (h).receipt_id)
  select t.piece_id from told t
  union select p.piece_id from book.piece p where p.before_path && array(select t.piece_id from told t);
end;

-- The lots whose metal a hold is about, also those it went on in under another tag.
create function guard.held_lots(h book.hold) returns bigint[]
language sql stable
return (select array_agg(distinct lot_id) from (
  select p.lot_id from guard.held_pieces(h) n join book.piece p using (piece_id)
  union select l.lot_id from book.lot l where l.lot_id = (h).lot_id or (l.heat = (h).heat and ((h).mill_id is null or l.mill_id = (h).mill_id))
  union select n.lot_id from book.document_lot n where n.document_id = (h).document_id) x);

-- Heats that look like the one held are named, and not held. Live promises of it fall; what is at a saw is named in the answer, to be stopped, and so is every plan that lacks metal now.
create function api.place_hold(p_request uuid, p_scope text, p_ref text, p_mill text, p_reason text, p_true_at timestamptz default null,
                               p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('place_hold', p_request, jsonb_build_array(p_scope, p_ref, p_mill, p_reason, guard.utc(p_true_at)), p_true_at, p_device, p_reason);
  v_lots bigint[];
  v_pieces bigint[];
  v_lacking jsonb;
  h hold;
begin
  if v_again is not null then return v_again; end if;
  h := guard.hold_asked(p_scope, p_ref, p_mill);
  v_lots := guard.held_lots(h);
  -- the lots alone: against promises, pulls and cuts under way, and against pieces that are born meanwhile
  perform guard.lock_lots(v_lots, true);
  perform guard.lock_pieces(array(select piece_id from guard.held_pieces(h) n join piece using (piece_id) where length_nm > 0), true);
  insert into hold (scope, heat, mill_id, lot_id, piece_id, document_id, receipt_id, reason, held_by)
    values (h.scope, h.heat, h.mill_id, h.lot_id, h.piece_id, h.document_id, h.receipt_id, p_reason, session_user) returning * into h;
  select array_agg(piece_id) into v_pieces from guard.held_pieces(h) n join piece using (piece_id) where length_nm > 0;
  v_lacking := guard.plans_lacking(v_pieces);
  perform guard.drop_promise(n, 'held: ' || p_reason) from unnest(v_pieces) n;
  return guard.end_deed(jsonb_build_object('hold_id', h.hold_id, 'pieces', coalesce(cardinality(v_pieces), 0), 'plans', v_lacking,
    'look_alikes', guard.heats_like(h.heat),
    'at_saw', (select coalesce(jsonb_agg(tag order by tag), '[]') from piece where piece_id = any (v_pieces) and state = 'at saw')));
end $$;

create function guard.live_hold(p_hold bigint) returns book.hold
language plpgsql volatile as $$
declare
  h hold;
begin
  perform guard.lock_rows('hold', array[p_hold]);
  select * into h from hold where hold_id = p_hold;
  if h.hold_id is null or h.lifted_by is not null then
    raise exception using errcode = 'HK043', message = format('hold %s is not a live hold', p_hold), hint = '`heatkeep hold list` names them';
  elsif h.condemned_by is not null then
    raise exception using errcode = 'HK043', message = format('hold %s was condemned by %s: the metal is not used any more', p_hold, h.condemned_by),
      hint = 'scrap it or return it to whom it came from';
  end if;
  return h;
end $$;

create function api.lift_hold(p_request uuid, p_hold bigint, p_evidence text, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('lift_hold', p_request, jsonb_build_array(p_hold, p_evidence, guard.utc(p_true_at)), p_true_at, p_device, p_evidence);
begin
  if v_again is not null then return v_again; end if;
  if coalesce(btrim(p_evidence), '') = '' then
    raise exception using errcode = 'HK026', message = 'lifting a hold names its evidence';
  end if;
  perform guard.live_hold(p_hold);
  update hold set lifted_by = session_user, lifting_words = p_evidence where hold_id = p_hold;
  return guard.end_deed(jsonb_build_object('hold_id', p_hold));
end $$;

-- {"hold_id","reason"}: what is held is never used any more; it stays stopped and leaves as scrap or to whom it came from.
create function api.condemn_hold(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('condemn_hold', p_request, p);
  v_words text;
  h hold;
begin
  if v_again is not null then return v_again; end if;
  v_words := guard.said(p, 'reason', 'the evidence for it');
  h := guard.live_hold((guard.said(p, 'hold_id', 'the number of a live hold'))::bigint);
  update hold set condemned_by = session_user, condemned_words = v_words where hold_id = h.hold_id;
  return guard.end_deed(jsonb_build_object('hold_id', h.hold_id,
    'pieces', (select count(*) from guard.held_pieces(h) join piece using (piece_id) where length_nm > 0)));
end $$;

create view api.holds as
  select h.hold_id, h.scope::text, coalesce(h.heat, p.tag, d.number, r.note, 'lot of ' || (select heat from book.lot l where l.lot_id = h.lot_id)) as ref,
      coalesce(m.name, i.name, s.name) as mill, h.reason, h.held_by, h.lifted_by, h.lifting_words, h.condemned_by, h.condemned_words
    from book.hold h left join book.party m on m.party_id = h.mill_id left join book.piece p using (piece_id)
    left join book.document d on d.document_id = h.document_id left join book.party i on i.party_id = d.issuer_id
    left join book.receipt r on r.receipt_id = h.receipt_id left join book.party s on s.party_id = r.supplier_id;
