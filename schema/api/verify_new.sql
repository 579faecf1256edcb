-- What was written since the last seal, and whether the book is as that seal says: done every day where verify_book is done now and then.
-- It looks at the chains, rows, pieces, cuts and lots to which something happened since; a row that was changed behind the book's back and has no
-- new happening, and a link below a chain's end at the seal, are for verify_book.

-- The chains that went on after this happening, and where they ended with it; null where they began later.
create function guard.chains_since(p_since bigint) returns table (chain text, chain_id bigint, seq integer, hash bytea)
language sql stable
begin atomic
  select f.chain, f.chain_id, b.seq, b.hash from (select h.chain, h.chain_id, min(h.seq) as seq from book.happening h where h.happening_id > p_since group by 1, 2) f
    -- offset 0: chain by chain through the key, however many they may be
    left join lateral (select x.seq, x.hash from book.happening x where x.chain = f.chain and x.chain_id = f.chain_id and x.seq = f.seq - 1 offset 0) b on true;
end;

-- ends_at, told from the ends of the chains as they are kept: those that did not go on since ended then as they do now.
create function guard.digest_from_ends(p_since bigint) returns text
language sql stable
begin atomic
  with since as materialized (select * from guard.chains_since(p_since))
  select encode(sha256(coalesce(string_agg(k.bytes, ''::bytea order by k.chain collate "C"), ''::bytea)), 'hex') from (
    select x.chain, string_agg(guard.link_bytes(x.chain, x.chain_id, x.seq, x.hash), ''::bytea) as bytes from (
      select e.chain, e.chain_id, case when s.chain is null then e.seq else s.seq end as seq, case when s.chain is null then e.hash else s.hash end as hash
        from book.chain_end e left join since s using (chain, chain_id) where s.chain is null or s.seq is not null order by e.chain, e.chain_id) x group by x.chain) k;
end;

create function api.verify_new() returns table ("check" text, ok boolean, detail text)
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp set timezone = 'UTC' set work_mem = '64MB' as $$
declare
  v_seal seal;
  v_before seal;
  v_ends text;
  v_since bigint;
  v_bad bigint;
  v_all bigint;
  v_pieces bigint[];
begin
  select * into v_seal from seal order by seal_id desc limit 1;
  v_since := coalesce(v_seal.last_happening_id, 0);
  if v_seal.seal_id is not null then
    v_ends := case when v_seal.linked then v_seal.ends else v_seal.digest end;
    select * into v_before from seal where seal_id < v_seal.seal_id order by seal_id desc limit 1;
    v_bad := (v_ends <> guard.digest_from_ends(v_since) or v_seal.linked
      and v_seal.digest <> guard.seal_digest(v_before.digest, v_seal.ends, guard.hashes_between(coalesce(v_before.last_happening_id, 0), v_since)))::integer;
    return query select 'the last seal', v_bad = 0, format('seal %s after happening %s%s', v_seal.seal_id, v_since, case when v_bad > 0 then ' does not agree with the ends of the chains, or with what was written since the seal before' end);
  end if;
  select count(*), count(*) filter (where h.hash is distinct from guard.happening_hash(b.hash, h) or (h.seq > 1) = (b.seq is null)) into v_all, v_bad
    from happening h left join happening b on b.chain = h.chain and b.chain_id = h.chain_id and b.seq = h.seq - 1 where h.happening_id > v_since;
  return query select 'chains of happenings', v_bad = 0, format('%s happenings since, %s broken links', v_all, v_bad);
  select count(*), count(*) filter (where (e.seq, e.hash) is distinct from (h.seq, h.hash)) into v_all, v_bad
    from (select n.chain, n.chain_id, max(n.seq) as seq from happening n where n.happening_id > v_since group by 1, 2) l
    left join happening h using (chain, chain_id, seq) left join chain_end e using (chain, chain_id);
  return query select 'ends of chains', v_bad = 0, format('%s chains, %s with another end', v_all, v_bad);
  return query select * from guard.verify_replay(v_since);
  v_pieces := array(select distinct h.chain_id from happening h where h.happening_id > v_since and h.chain = 'piece');
  select count(*), count(*) filter (where p.made_length_nm <> p.length_nm + guard.piece_out_nm(p.piece_id)) into v_all, v_bad from piece p where p.piece_id = any (v_pieces);
  return query select 'metal balance of every piece', v_bad = 0, format('%s pieces, %s do not add up', v_all, v_bad);
  select count(*), count(*) filter (where c.length_in_nm <> c.rest_nm + guard.cut_out_nm(c.piece_id, c.cut_id)) into v_all, v_bad from cut c where c.piece_id = any (v_pieces) and c.closed;
  return query select 'metal balance of every closed cut', v_bad = 0, format('%s cuts, %s do not add up', v_all, v_bad);
  select count(*), count(*) filter (where x.nm <> 0) into v_all, v_bad from (select distinct p.lot_id from piece p where p.piece_id = any (v_pieces)) l
    cross join lateral (select coalesce((select sum(case when p.parent_id is null then p.made_length_nm else 0 end - p.length_nm) from piece p where p.lot_id = l.lot_id), 0)
      - coalesce((select sum(s.length_nm + s.kerf_nm) from stroke s where s.lot_id = l.lot_id), 0) - coalesce((select sum(o.length_nm) from metal_out o where o.lot_id = l.lot_id), 0) as nm) x;
  return query select 'metal balance of every lot', v_bad = 0, format('%s lots, %s do not add up', v_all, v_bad);
  return query select * from guard.verify_promises_and_server();
  return query select * from guard.verify_made();
end $$;
