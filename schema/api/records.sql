-- Printed records. A record's digest = SHA-256 over the UTF-8 text of the JSON array [content, ends] as PostgreSQL writes
-- jsonb: content is the SHA-256 of what the record says, ends are the chains of happenings it stands on, [chain, id, seq,
-- hash] each, in order of chain and id. It is kept as a row (book.printed_record) and can be asked about at any time.

-- Every chain that a record of these pieces stands on: their own, their lots, receipts, documents, holds, orders, shipments,
-- and whatever gives them a name.
create function guard.record_chains(p_pieces bigint[], p_order text) returns table (chain text, chain_id bigint)
language plpgsql stable rows 200 as $$
declare
  v_lots bigint[] := array(select distinct e.lot_id from piece e where e.piece_id = any (p_pieces));
  v_receipts bigint[] := array(select distinct l.receipt_id from receipt_line l
    where l.receipt_line_id = any (array(select e.receipt_line_id from piece e where e.piece_id = any (p_pieces))));
  v_documents bigint[] := array(select distinct d.document_id from document_lot d where d.lot_id = any (v_lots));
  v_lines bigint[] := array(select distinct s.cut_line_id from stroke s where s.piece_id = any (p_pieces) and s.cut_line_id is not null);
  v_shipments bigint[] := array(select l.shipment_id from shipment_line l
      where l.shipment_line_id = any (array(select s.shipment_line_id from stroke s where s.piece_id = any (p_pieces)))
    union select o.shipment_id from metal_out o where o.piece_id = any (p_pieces) and o.shipment_id is not null);
begin
  return query
    select 'piece', e.piece_id from piece e where e.piece_id = any (p_pieces)
    union select 'place', e.place_id from piece e where e.piece_id = any (p_pieces) and e.place_id is not null
    union select 'lot', n from unnest(v_lots) n
    union select 'party', l.mill_id from lot l where l.lot_id = any (v_lots) and l.mill_id is not null
    union select 'grade', l.grade_id from lot l where l.lot_id = any (v_lots) and l.grade_id is not null
    union select 'section', l.section_id from lot l where l.lot_id = any (v_lots)
    union select 'receipt', n from unnest(v_receipts) n
    union select 'party', r.supplier_id from receipt r where r.receipt_id = any (v_receipts) and r.supplier_id is not null
    union select 'document', n from unnest(v_documents) n
    union select 'cut_list', c.cut_list_id from cut_line c where c.cut_line_id = any (v_lines) and (p_order is null or c.order_no = p_order)
    union select 'shipment', n from unnest(v_shipments) n
    union select 'party', h.customer_id from shipment h where h.shipment_id = any (v_shipments)
    union select 'hold', o.hold_id from hold o where o.heat = any (array(select l.heat from lot l where l.lot_id = any (v_lots))) or o.lot_id = any (v_lots)
      or o.piece_id = any (p_pieces) or o.document_id = any (v_documents) or o.receipt_id = any (v_receipts);
end $$;

-- The chains as they end now.
create function guard.record_ends(p_pieces bigint[], p_order text) returns jsonb
language sql stable
return (select coalesce(jsonb_agg(jsonb_build_array(n.chain, n.chain_id, n.seq, encode(n.hash, 'hex')) order by n.chain collate "C", n.chain_id), '[]')
  from guard.record_chains(p_pieces, p_order) c join book.chain_end n using (chain, chain_id));

create function guard.record_digest(p_content text, p_ends jsonb) returns text
language sql immutable
return encode(sha256(convert_to(jsonb_build_array(p_content, p_ends)::text, 'UTF8')), 'hex');

-- What a record of this says it stands on: p_kind as api.trace takes it, or 'recall heat', 'recall lot', ... as holds are
-- asked for. happenings: how many they are. Nothing is kept yet.
create function api.record_of(p_kind text, p_name text, p_mill text, p_content text) returns table (digest text, ends text, happenings bigint)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  with x as materialized (select guard.record_ends(case when p_kind like 'recall %' then guard.recall_pieces(substr(p_kind, 8), p_name, p_mill)
        else guard.trace_pieces(p_kind, p_name, p_mill) end, case when p_kind = 'order' then p_name end) as ends)
  select guard.record_digest(p_content, x.ends), x.ends::text, (select coalesce(sum((n -> 2)::bigint), 0)::bigint from jsonb_array_elements(x.ends) n) from x;
end;

-- How a chain differs from what was said of it: a happening changed, one gone, another end. Computed from the happenings
-- alone, from the first one on.
create function guard.chain_breaks(p_ends jsonb) returns table (chain text, chain_id bigint, words text)
language sql stable set timezone = 'UTC'
begin atomic
  with said as (select n ->> 0 as chain, (n ->> 1)::bigint as chain_id, (n ->> 2)::integer as seq, n ->> 3 as hash from jsonb_array_elements(p_ends) n),
  seen as (
    select h.chain, h.chain_id, h.seq, h.hash, h.deed, s.seq as last,
        h.hash is distinct from guard.happening_hash(lag(h.hash) over w, h) or h.seq <> row_number() over w as broken
      from said s join book.happening h using (chain, chain_id) where h.seq <= s.seq window w as (partition by h.chain, h.chain_id order by h.seq)),
  first as (select distinct on (chain, chain_id) chain, chain_id, seq, deed from seen where broken order by chain, chain_id, seq)
  select s.chain, s.chain_id, case
      when f.seq is not null then format('happening %s (%s) of %s %s is not as it was written', f.seq, f.deed, s.chain, s.chain_id)
      when e.seq is null then format('happening %s of %s %s is gone', s.seq, s.chain, s.chain_id)
      else format('the happenings of %s %s were written anew: they end otherwise than the record says', s.chain, s.chain_id) end
    from said s left join first f using (chain, chain_id) left join seen e on e.chain = s.chain and e.chain_id = s.chain_id and e.seq = e.last
    where f.seq is not null or e.seq is null or encode(e.hash, 'hex') is distinct from s.hash
    order by s.chain collate "C", s.chain_id;
end;

-- {"kind","subject","mill"?,"content","ends"}: as api.record_of answered them. Only what the ledger says is kept; the same
-- record twice is one row.
create function api.keep_record(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('keep_record', p_request, p);
  v_digest text;
  v_wrong text;
begin
  if v_again is not null then return v_again; end if;
  if jsonb_typeof(p -> 'ends') is distinct from 'array' or guard.said(p, 'content', 'the SHA-256 of what the record says') !~ '^[0-9a-f]{64}$' then
    raise exception using errcode = 'HK026', message = 'a record names what it says and the chains it stands on', hint = 'as api.record_of answers them';
  end if;
  select words into v_wrong from guard.chain_breaks(p -> 'ends') limit 1;
  if v_wrong is not null then
    raise exception using errcode = 'HK026', message = 'the ledger does not say what the record stands on: ' || v_wrong, hint = 'run heatkeep book verify';
  end if;
  v_digest := guard.record_digest(p ->> 'content', p -> 'ends');
  if not exists (select from printed_record where digest = v_digest) then
    insert into printed_record (digest, kind, subject, mill, content, ends, printed_by)
      values (v_digest, guard.said(p, 'kind', 'what it is'), guard.said(p, 'subject', 'of what it is'), p ->> 'mill', p ->> 'content', p -> 'ends', session_user);
  end if;
  return guard.end_deed(jsonb_build_object('digest', v_digest));
end $$;

-- A record's digest, with what its file says (ends, content) where there is a file. verdict: 'unchanged' (all it stands on is in
-- the book as it was), 'changed' (something is not; wrong says what), 'altered' (the file does not say what was printed) or
-- 'unknown' (the book has kept no such record). later: what has happened to the same chains since, by deed.
create function api.check_record(p_digest text, p_content text default null, p_ends jsonb default null) returns jsonb
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_digest text := lower(regexp_replace(p_digest, '[^0-9A-Fa-f]', '', 'g'));
  v_ends jsonb;
  v_wrong jsonb := '[]';
  r printed_record;
begin
  if length(v_digest) <> 64 then
    raise exception using errcode = 'HK026', message = format('"%s" is no digest of a record', left(p_digest, 80)), hint = 'expected the 64 characters 0-9 and a-f from the record''s foot';
  end if;
  select * into r from printed_record where digest = v_digest order by printed_record_id limit 1;
  v_ends := coalesce(r.ends, p_ends);
  if p_ends is not null and guard.record_digest(p_content, p_ends) <> v_digest then
    return jsonb_build_object('verdict', 'altered', 'digest', v_digest, 'kept', r.digest is not null, 'wrong', jsonb_build_array('the file does not say what was printed under this digest'));
  elsif r.digest is not null and guard.record_digest(r.content, r.ends) <> v_digest then
    v_wrong := jsonb_build_array('what the book kept of this record was changed');
    v_ends := coalesce(p_ends, r.ends);
  end if;
  v_wrong := v_wrong || (select coalesce(jsonb_agg(words), '[]') from guard.chain_breaks(v_ends));
  return jsonb_build_object('verdict', case when v_wrong <> '[]' then 'changed' when r.digest is null then 'unknown' else 'unchanged' end, 'digest', v_digest,
    'kept', r.digest is not null, 'kind', r.kind, 'subject', r.subject, 'mill', r.mill, 'printed_at', guard.utc(r.printed_at), 'printed_by', r.printed_by,
    'chains', jsonb_array_length(v_ends), 'happenings', (select sum((n -> 2)::bigint) from jsonb_array_elements(v_ends) n), 'wrong', v_wrong,
    'later', (select coalesce(jsonb_object_agg(deed, n), '{}') from (select h.deed, count(*) n from jsonb_array_elements(v_ends) x join happening h
      on h.chain = x ->> 0 and h.chain_id = (x ->> 1)::bigint and h.seq > (x ->> 2)::integer group by h.deed) y));
end $$;
