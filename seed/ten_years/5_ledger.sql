-- The ten-year book, part 5: the happenings get their numbers in the order of time, their places in their chains and their hashes, by the very
-- function the triggers use; the ends of the chains, the requests and a seal a day follow. Then what is used next is set, and what helped goes.
create function ten_years.linked(p_state bytea, p_before bytea, p book.happening) returns bytea
language sql stable
return guard.happening_hash(coalesce(p_state, p_before), p);
create aggregate ten_years.link (bytea, book.happening) (sfunc = ten_years.linked, stype = bytea);

create function ten_years.write_part(p_part text) returns bigint
language plpgsql as $$
declare
  v_count bigint;
  v_before bigint := (select coalesce(max(happening_id), 0) from book.happening);
  v_seal book.seal;
  v_ends text;
  v_day record;
begin
  execute format($q$
    insert into book.happening (happening_id, chain, chain_id, seq, deed, tbl, row_id, sets, at, true_at, who, device, reason, request_id, hash) overriding system value
      select (h).happening_id, (h).chain, (h).chain_id, (h).seq, (h).deed, (h).tbl, (h).row_id, (h).sets, (h).at, (h).true_at, (h).who, null, null, (h).request_id, ten_years.link(hash, h) over w
        from (select row(x.happening_id, x.chain, x.chain_id, coalesce(e.seq, 0) + x.place, x.deed, x.tbl, x.row_id, x.sets, x.at, x.at, x.who, null, null, x.request_id, null)::book.happening as h, e.hash
            from (select n.*, %2$s + row_number() over (order by at, ord, chain, chain_id) as happening_id, row_number() over (partition by chain, chain_id order by at, ord) as place from ten_years.%1$I n) x
            left join book.chain_end e using (chain, chain_id)) y
        window w as (partition by (h).chain, (h).chain_id order by (h).seq)
        order by (h).happening_id $q$, p_part, v_before);
  get diagnostics v_count = row_count;
  insert into book.chain_end (chain, chain_id, seq, hash)
    select distinct on (chain, chain_id) chain, chain_id, seq, hash from book.happening where happening_id > v_before order by chain, chain_id, seq desc
    on conflict (chain, chain_id) do update set seq = excluded.seq, hash = excluded.hash;
  insert into book.request (request_id, who, deed, digest, answer, at)
    select request_id, min(who), min(deed), encode(sha256(request_id::text::bytea), 'hex'), jsonb_build_object('rows', count(*)), min(at)
      from book.happening where happening_id > v_before group by 1 order by min(happening_id);
  -- a seal a day; the ends of all chains, which take a second, with the last of the part
  for v_day in select max(happening_id) as last, max(at) as at from book.happening where happening_id > v_before group by at::date order by 1 loop
    select * into v_seal from book.seal order by seal_id desc limit 1;
    v_ends := case when v_day.last = v_before + v_count then (select digest from api.book_digest()) end;
    insert into book.seal (last_happening_id, linked, ends, digest, at, who)
      values (v_day.last, true, v_ends, guard.seal_digest(v_seal.digest, v_ends, guard.hashes_between(coalesce(v_seal.last_happening_id, 0), v_day.last)), v_day.at + interval '1 second', 'ines');
  end loop;
  execute format('drop table ten_years.%I', p_part);
  return v_before + v_count;
end $$;
