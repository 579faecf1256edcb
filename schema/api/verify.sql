-- Is the book whole? Everything here is computed from the happenings alone and held against the tables.
-- The digest of all chains' ends is the SHA-256 over these, in the order of chain and number.
create function guard.link_bytes(p_chain text, p_chain_id bigint, p_seq integer, p_hash bytea) returns bytea
language sql stable
return convert_to(p_chain || ' ' || p_chain_id || ' ' || p_seq || ' ', 'UTF8') || p_hash;

create function api.book_digest() returns table (digest text, happenings bigint)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  select encode(sha256(coalesce(string_agg(guard.link_bytes(chain, chain_id, seq, hash), ''::bytea order by chain collate "C", chain_id), ''::bytea)), 'hex'),
    coalesce(sum(seq), 0)::bigint from book.chain_end;
end;

-- The digest as it was when this happening was the last: to compare one that was kept outside.
create function guard.digest_at(p_last bigint) returns text
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select encode(sha256(coalesce(string_agg(guard.link_bytes(chain, chain_id, seq, hash), ''::bytea order by chain collate "C", chain_id), ''::bytea)), 'hex')
  from (select distinct on (chain, chain_id) chain, chain_id, seq, hash from book.happening where happening_id <= p_last order by chain, chain_id, seq desc) e);

-- The same for every seal, in one reading of the happenings: a link is the end of its chain for the seals from its own happening on
-- and before that of the next link. Seals are numbered in their order; of the links only those are kept that are an end for one.
create function guard.digests_at_seals() returns table (seal_id bigint, digest text)
language sql stable security definer set search_path = book, pg_catalog, pg_temp
begin atomic
  with seals as (select array_agg(distinct last_happening_id order by last_happening_id) as lasts from book.seal),
    link as (select chain, chain_id, seq, hash, happening_id, lead(happening_id) over (partition by chain, chain_id order by seq) as next from book.happening),
    ends as materialized (select guard.link_bytes(chain, chain_id, seq, hash) as bytes, row_number() over (order by chain collate "C", chain_id, seq) as place, first, last
      from link cross join seals cross join lateral (select width_bucket(happening_id - 1, lasts) + 1 as first,
        case when next is null then cardinality(lasts) else width_bucket(next - 1, lasts) end as last) n where first <= last)
  select s.seal_id, (select encode(sha256(coalesce(string_agg(bytes, ''::bytea order by place), ''::bytea)), 'hex') from ends
      where width_bucket(s.last_happening_id, lasts) between first and last)
    from book.seal s cross join seals;
end;

-- Rows of a chronicled table that differ from the replay of their happenings, or are on one side only.
create function guard.replay_differs(p_tbl text, p_key text) returns bigint
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp set timezone = 'UTC' as $$
declare
  v_count bigint;
begin
  execute format($q$
    with replay as (
      select row_id, jsonb_strip_nulls(jsonb_object_agg(j.key, j.value order by h.happening_id)) as state
        from book.happening h, jsonb_each(h.sets) j where h.tbl = %1$L group by row_id),
    present as (select (%2$I)::bigint as row_id, jsonb_strip_nulls(to_jsonb(t)) as state from book.%1$I t where %3$s)
    select count(*) from replay full join present using (row_id) where replay.state is distinct from present.state $q$,
    p_tbl, p_key, case p_tbl when 'party' then 'party_id <> 0' else 'true' end) into v_count;
  return v_count;
end $$;

create function api.verify_book() returns table ("check" text, ok boolean, detail text)
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp set timezone = 'UTC' as $$
declare
  v_bad bigint;
  v_all bigint;
  t record;
  v_tables text[] := '{}';
begin
  -- one snapshot: writers wait
  lock table happening in share mode;
  select count(*), count(*) filter (where hash is distinct from guard.happening_hash(previous, h) or seq <> place)
    into v_all, v_bad
    from (select happening as h, happening.hash, happening.seq,
        lag(happening.hash) over w as previous, row_number() over w as place
      from happening window w as (partition by chain, chain_id order by seq)) x;
  return query select 'chains of happenings', v_bad = 0, format('%s happenings, %s broken links', v_all, v_bad);
  select count(*) into v_bad from chain_end e
    full join (select distinct on (chain, chain_id) chain, chain_id, seq, hash from happening order by chain, chain_id, seq desc) l
      using (chain, chain_id) where (e.seq, e.hash) is distinct from (l.seq, l.hash);
  select count(*) into v_all from chain_end;
  return query select 'ends of chains', v_bad = 0, format('%s chains, %s with another end', v_all, v_bad);
  v_all := 0;
  for t in select * from guard.chronicled() loop
    v_bad := guard.replay_differs(t.tbl, t.key_column);
    v_all := v_all + v_bad;
    if v_bad > 0 then
      v_tables := v_tables || format('%s (%s)', t.tbl, v_bad);
    end if;
  end loop;
  return query select 'replay equals the present state', v_all = 0,
    case when v_all = 0 then format('%s tables', (select count(*) from guard.chronicled())) else 'rows differ in ' || array_to_string(v_tables, ', ') end;
  select count(*), count(*) filter (where made_length_nm <> length_nm + guard.piece_out_nm(piece_id)) into v_all, v_bad from piece;
  return query select 'metal balance of every piece', v_bad = 0, format('%s pieces, %s do not add up', v_all, v_bad);
  select count(*), count(*) filter (where length_in_nm <> rest_nm + guard.cut_out_nm(piece_id, cut_id)) into v_all, v_bad from cut where closed;
  return query select 'metal balance of every closed cut', v_bad = 0, format('%s cuts, %s do not add up', v_all, v_bad);
  select count(*) into v_bad from (
    select p.lot_id from piece p group by p.lot_id having
      (select sum(made_length_nm) from piece q where q.lot_id = p.lot_id and parent_id is null)
        <> sum(p.length_nm) + (select coalesce(sum(length_nm + kerf_nm), 0) from stroke s where s.lot_id = p.lot_id)
         + (select coalesce(sum(length_nm), 0) from metal_out o where o.lot_id = p.lot_id)) x;
  select count(*) into v_all from lot;
  return query select 'metal balance of every lot', v_bad = 0, format('%s lots, %s do not add up', v_all, v_bad);
  select count(*) into v_bad from promise r join piece p using (piece_id) where r.state = 'live' and p.length_nm = 0;
  select count(*) into v_all from promise where state = 'live';
  return query select 'promises are of metal that is there', v_bad = 0, format('%s live promises, %s of metal that is gone', v_all, v_bad);
  select count(*), count(*) filter (where s.digest <> d.digest) into v_all, v_bad from seal s join guard.digests_at_seals() d using (seal_id);
  return query select 'seals', v_bad = 0, format('%s seals, %s no longer agree', v_all, v_bad);
  select count(*) into v_bad from (values ('fsync'), ('full_page_writes'), ('data_checksums')) x (n) where current_setting(n) <> 'on';
  return query select 'the server keeps what it says', v_bad = 0, format('fsync %s, full_page_writes %s, data_checksums %s',
    current_setting('fsync'), current_setting('full_page_writes'), current_setting('data_checksums'));
end $$;

-- Takes the digest to be kept outside the book. Writers wait for the moment.
create function api.seal_book(p_request uuid) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('seal_book', p_request, 'null');
  s seal;
begin
  if v_again is not null then return v_again; end if;
  lock table happening in share mode;
  insert into seal (last_happening_id, digest, who)
    select coalesce(max(happening_id), 0), (select digest from api.book_digest()), session_user from happening returning * into s;
  return guard.end_deed(jsonb_build_object('seal', s.seal_id, 'last_happening', s.last_happening_id, 'digest', s.digest));
end $$;
