-- Is the book whole? Everything here is computed from the happenings alone and held against the tables.
-- The digest of all chains' ends is the SHA-256 over these, in the order of chain and number.
create function guard.link_bytes(p_chain text, p_chain_id bigint, p_seq integer, p_hash bytea) returns bytea
language sql stable
return convert_to(p_chain || ' ' || p_chain_id || ' ' || p_seq || ' ', 'UTF8') || p_hash;

create function api.book_digest() returns table (digest text, happenings bigint)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  -- kind by kind, read in the key's order: sorting a million links costs more than hashing them
  select encode(sha256(coalesce(string_agg(bytes, ''::bytea order by chain collate "C"), ''::bytea)), 'hex'), coalesce(sum(links), 0)::bigint
    from (select chain, string_agg(guard.link_bytes(chain, chain_id, seq, hash), ''::bytea) as bytes, sum(seq) as links
      from (select * from book.chain_end order by chain, chain_id) e group by chain) k;
end;

-- The ends of all chains as they were when this happening was the last, from the happenings alone: the links before it, counted, then looked up.
create function guard.ends_at(p_last bigint) returns text
language sql stable security definer set search_path = book, pg_catalog, pg_temp set work_mem = '256MB'
begin atomic
  select encode(sha256(coalesce(string_agg(k.bytes, ''::bytea order by k.chain collate "C"), ''::bytea)), 'hex') from (
    select x.chain, string_agg(guard.link_bytes(x.chain, x.chain_id, x.seq, x.hash), ''::bytea) as bytes from (
      select h.chain, h.chain_id, h.seq, h.hash from (select n.chain, n.chain_id, max(n.seq) as seq from book.happening n where n.happening_id <= p_last group by 1, 2) e
        join book.happening h using (chain, chain_id, seq) order by h.chain, h.chain_id) x group by x.chain) k;
end;

-- A seal is linked to the one before it: SHA-256 over the digest of that one, the ends of all chains as they are at the seal (text in UTF-8 both), and
-- the hashes of all happenings from the one to the other: SHA-256 over those of each 65 536 numbers, in their order. So the ledger is read once for however
-- many seals there are.
create function guard.seal_digest(p_before text, p_ends text, p_hashes bytea) returns text
language sql immutable
return encode(sha256(convert_to(coalesce(p_before, '') || coalesce(p_ends, ''), 'UTF8') || coalesce(p_hashes, ''::bytea)), 'hex');

create function guard.hashes_between(p_after bigint, p_last bigint) returns bytea
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select string_agg(n.page, ''::bytea order by n.no) from (select h.happening_id / 65536 as no, sha256(string_agg(h.hash, ''::bytea order by h.happening_id)) as page
  from book.happening h where h.happening_id > p_after and h.happening_id <= p_last group by 1) n);

-- The digest of a seal after this happening, from the happenings alone: to compare one that was kept outside.
create function guard.digest_at(p_last bigint) returns text
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  b seal;
begin
  select * into b from seal where last_happening_id < p_last order by seal_id desc limit 1;
  return guard.seal_digest(b.digest, guard.ends_at(p_last), guard.hashes_between(coalesce(b.last_happening_id, 0), p_last));
end $$;

-- What the happenings say of every seal, in one reading of them; of those that were taken before seals were linked, what the ends of the chains say.
create function guard.digests_at_seals() returns table (seal_id bigint, digest text)
language plpgsql stable as $$
declare
  v_lasts bigint[] := (select array_agg(distinct last_happening_id order by last_happening_id) from seal);
begin
  return query
    with between_seals as (select n.i, string_agg(n.page, ''::bytea order by n.no) as hashes
        from (select width_bucket(h.happening_id - 1, v_lasts) as i, h.happening_id / 65536 as no, sha256(string_agg(h.hash, ''::bytea order by h.happening_id)) as page
          from happening h where h.happening_id <= v_lasts[cardinality(v_lasts)] group by 1, 2) n group by n.i),
      linked as (select s.*, lag(s.digest) over w as before, lag(s.last_happening_id) over w as since from seal s window w as (order by s.seal_id))
    select l.seal_id, case when not l.linked then guard.ends_at(l.last_happening_id)
        else guard.seal_digest(l.before, l.ends, case when l.last_happening_id is distinct from l.since then b.hashes end) end
      from linked l left join between_seals b on b.i = width_bucket(l.last_happening_id - 1, v_lasts);
end $$;

-- What a row's happenings set, one after the other. They are given in the order in which they happened.
create aggregate guard.replayed(jsonb) (sfunc = jsonb_concat, stype = jsonb, parallel = safe);

-- What strokes took off a piece since its length was told last (guard.told_by_strokes).
create function guard.or_from_0(p_sum bigint, p_told boolean, p_nm bigint) returns bigint
language sql immutable parallel safe
return case when p_told then 0 else p_sum + p_nm end;
create aggregate guard.taken_since(p_told boolean, p_nm bigint) (sfunc = guard.or_from_0, stype = bigint, initcond = '0', parallel = safe);

-- The query for what the happenings say of the rows of a chronicled table (row_id, state); p_rows: only of these rows.
create function guard.replay_query(p_tbl text, p_rows text) returns text
language plpgsql stable as $$
begin
  if p_tbl = 'piece' then
    return format($q$
      select row_id, jsonb_strip_nulls(said || jsonb_build_object('length_nm', (said ->> 'length_nm')::bigint - taken)) as state from (
        select row_id, guard.replayed(sets) filter (where tbl = 'piece') as said,
            guard.taken_since(tbl = 'piece', (sets ->> 'length_nm')::bigint + (sets ->> 'kerf_nm')::bigint) filter (where tbl = 'stroke' or sets ? 'length_nm') as taken
          from (select * from (select chain_id as row_id, happening_id, tbl, sets from book.happening
              where chain = 'piece' and (tbl = 'piece' and row_id = chain_id or tbl = 'stroke' and sets ? 'stroke_id')) o where %s order by row_id, happening_id) h group by row_id) h $q$, p_rows);
  end if;
  return format($q$
    select row_id, jsonb_strip_nulls(guard.replayed(sets)) as state
      from (%3$s (select row_id, sets from book.happening where tbl = %1$L and (%2$s) order by row_id, happening_id)) h group by row_id $q$,
    p_tbl, p_rows,
    -- the shop itself is there from the beginning: no happening made it
    case when p_tbl = 'party' and p_rows = 'true' then format('select 0::bigint as row_id, %L::jsonb as sets union all',
      '{"party_id": 0, "name": "ours", "is_mill": false, "is_supplier": false, "is_customer": false}') end);
end $$;

-- Rows of a chronicled table that differ from the replay of their happenings, or are on one side only. p_since: only rows to which
-- something happened after that happening.
create function guard.replay_differs(p_tbl text, p_key text, p_since bigint default 0) returns bigint
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp set timezone = 'UTC' as $$
declare
  v_count bigint;
  v_rows text := case when p_since = 0 then 'true'
    when p_tbl = 'piece' then format('row_id in (select chain_id from book.happening where chain = %L and happening_id > %s)', p_tbl, p_since)
    else format('row_id in (select row_id from book.happening where tbl = %L and happening_id > %s)', p_tbl, p_since) end;
begin
  execute format($q$
    with replay as (%1$s),
    present as (select * from (select (%2$I)::bigint as row_id, jsonb_strip_nulls(to_jsonb(t)) as state from book.%3$I t) t where (%4$s) %5$s)
    select count(*) from replay full join present using (row_id) where replay.state is distinct from present.state $q$,
    guard.replay_query(p_tbl, v_rows), p_key, p_tbl, v_rows, case when p_tbl = 'party' and p_since > 0 then 'and row_id <> 0' end) into v_count;
  return v_count;
end $$;

create function guard.verify_replay(p_since bigint) returns table ("check" text, ok boolean, detail text)
language plpgsql stable as $$
declare
  v_bad bigint;
  v_tables text[] := '{}';
  v_count integer := 0;
  t record;
begin
  for t in select * from guard.chronicled() c where p_since = 0 or exists (select from happening h where h.happening_id > p_since and (h.tbl = c.tbl or c.tbl = 'piece' and h.chain = 'piece')) loop
    v_bad := guard.replay_differs(t.tbl, t.key_column, p_since);
    v_count := v_count + 1;
    if v_bad > 0 then
      v_tables := v_tables || format('%s (%s)', t.tbl, v_bad);
    end if;
  end loop;
  return query select 'replay equals the present state', v_tables = '{}', case when v_tables = '{}' then v_count || ' tables' else 'rows differ in ' || array_to_string(v_tables, ', ') end;
end $$;

-- Every file that a document or a photo names, read through: it is there, and its bytes have the digest it was filed under. A happening
-- has that digest, not the bytes.
create function guard.verify_files() returns table ("check" text, ok boolean, detail text)
language sql stable
begin atomic
  select 'files byte for byte', x.bad = 0, format('%s files, %s are not what was filed or are gone', x.n, x.bad)
    from (select count(*) as n, count(*) filter (where f.sha256 is null or encode(sha256(f.bytes), 'hex') <> n.sha256) as bad
      from (select file_sha256 as sha256 from book.document where file_sha256 is not null union select sha256 from book.photo) n left join book.document_file f using (sha256)) x;
end;

create function guard.verify_promises_and_server() returns table ("check" text, ok boolean, detail text)
language sql stable
begin atomic
  select 'promises are of metal that is there', x.bad = 0, format('%s live promises, %s of metal that is gone', x.n, x.bad)
    from (select count(*) as n, count(*) filter (where p.length_nm = 0) as bad from book.promise r join book.piece p using (piece_id) where r.state = 'live') x
  union all
  select 'the server keeps what it says', not exists (select from (values ('fsync'), ('full_page_writes'), ('data_checksums')) x (n) where current_setting(n) <> 'on'),
    format('fsync %s, full_page_writes %s, data_checksums %s', current_setting('fsync'), current_setting('full_page_writes'), current_setting('data_checksums'));
end;

-- All of it, as it was when this began: everybody goes on working meanwhile.
create function api.verify_book() returns table ("check" text, ok boolean, detail text)
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp set timezone = 'UTC' set work_mem = '256MB' as $$
declare
  v_bad bigint;
  v_all bigint;
begin
  select count(*), count(*) filter (where h.hash is distinct from guard.happening_hash(b.hash, h) or (h.seq > 1) = (b.seq is null)) into v_all, v_bad
    from happening h left join happening b on b.chain = h.chain and b.chain_id = h.chain_id and b.seq = h.seq - 1;
  return query select 'chains of happenings', v_bad = 0, format('%s happenings, %s broken links', v_all, v_bad);
  select count(*) into v_bad from chain_end e
    full join (select h.chain, h.chain_id, max(h.seq) as seq from happening h group by 1, 2) l using (chain, chain_id)
    left join happening h on h.chain = l.chain and h.chain_id = l.chain_id and h.seq = l.seq where (e.seq, e.hash) is distinct from (h.seq, h.hash);
  select count(*) into v_all from chain_end;
  return query select 'ends of chains', v_bad = 0, format('%s chains, %s with another end', v_all, v_bad);
  return query select * from guard.verify_replay(0);
  select count(*), count(*) filter (where p.made_length_nm <> p.length_nm + coalesce(o.nm, 0)) into v_all, v_bad from piece p left join (
    select x.piece_id, sum(x.nm)::bigint as nm from (select s.piece_id, s.length_nm + s.kerf_nm as nm from stroke s
      union all select c.parent_id, c.made_length_nm from piece c where c.parent_id is not null union all select m.piece_id, m.length_nm from metal_out m) x group by 1) o using (piece_id);
  return query select 'metal balance of every piece', v_bad = 0, format('%s pieces, %s do not add up', v_all, v_bad);
  select count(*), count(*) filter (where c.length_in_nm <> c.rest_nm + coalesce(o.nm, 0)) into v_all, v_bad from cut c left join (
    select x.cut_id, x.piece_id, sum(x.nm)::bigint as nm from (select s.cut_id, s.piece_id, s.length_nm + s.kerf_nm as nm from stroke s
      union all select d.from_cut_id, d.parent_id, d.made_length_nm from piece d where d.from_cut_id is not null
      union all select m.cut_id, m.piece_id, m.length_nm from metal_out m where m.cut_id is not null) x group by 1, 2) o using (cut_id, piece_id) where c.closed;
  return query select 'metal balance of every closed cut', v_bad = 0, format('%s cuts, %s do not add up', v_all, v_bad);
  select count(*) into v_bad from (select x.lot_id from (select p.lot_id, case when p.parent_id is null then p.made_length_nm else 0 end - p.length_nm as nm from piece p
      union all select s.lot_id, - s.length_nm - s.kerf_nm from stroke s union all select o.lot_id, - o.length_nm from metal_out o) x group by 1 having sum(x.nm) <> 0) y;
  select count(*) into v_all from lot;
  return query select 'metal balance of every lot', v_bad = 0, format('%s lots, %s do not add up', v_all, v_bad);
  select count(*), count(*) filter (where s.digest <> d.digest) into v_all, v_bad from seal s join guard.digests_at_seals() d using (seal_id);
  -- the ends of the chains are in the digests; the last of them is counted out again
  v_bad := v_bad + coalesce((select (s.ends <> guard.ends_at(s.last_happening_id))::integer from seal s where s.ends is not null order by s.seal_id desc limit 1), 0);
  return query select 'seals', v_bad = 0, format('%s seals, %s no longer agree', v_all, v_bad);
  return query select * from guard.verify_files();
  return query select * from guard.verify_promises_and_server();
  return query select * from guard.verify_made();
end $$;

-- Takes the digest to be kept outside the book. Writers wait for the moment.
create function api.seal_book(p_request uuid) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('seal_book', p_request, 'null');
  b seal;
  s seal;
begin
  if v_again is not null then return v_again; end if;
  lock table happening in share mode;
  select * into b from seal order by seal_id desc limit 1;
  s.last_happening_id := (select coalesce(max(happening_id), 0) from happening);
  s.ends := (select digest from api.book_digest());
  insert into seal (last_happening_id, linked, ends, digest, who)
    values (s.last_happening_id, true, s.ends, guard.seal_digest(b.digest, s.ends, guard.hashes_between(coalesce(b.last_happening_id, 0), s.last_happening_id)), session_user) returning * into s;
  return guard.end_deed(jsonb_build_object('seal', s.seal_id, 'last_happening', s.last_happening_id, 'digest', s.digest));
end $$;
