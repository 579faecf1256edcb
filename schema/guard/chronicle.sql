-- Every change of a kept row becomes a happening: what the row got, who, when, under which deed.
-- A deed (guard.begin_deed) must be under way; the ledger itself takes rows from here only and never changes.
-- Hash of a happening: SHA-256 over the previous hash of its chain (nothing for the first), then the UTF-8 bytes
-- of the JSON array [chain, chain_id, seq, deed, tbl, row_id, sets, at, true_at, who, device, reason, request]
-- as PostgreSQL writes jsonb (keys sorted), times in UTC to the microsecond.
create function guard.utc(p_at timestamptz) returns text
language sql stable parallel safe
return to_char(p_at at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.US"Z"');

create function guard.link_hash(p_previous bytea, p_seq integer, p book.happening) returns bytea
language sql stable parallel safe
return sha256(coalesce(p_previous, ''::bytea) || convert_to(jsonb_build_array(
  p.chain, p.chain_id, p_seq, p.deed, p.tbl, p.row_id, p.sets, guard.utc(p.at), guard.utc(p.true_at),
  p.who, p.device, p.reason, p.request_id)::text, 'UTF8'));

create function guard.happening_hash(p_previous bytea, p book.happening) returns bytea
language sql stable parallel safe
return guard.link_hash(p_previous, p.seq, p);

create function guard.note(p_name text) returns text
language sql stable
return nullif(current_setting('heatkeep.' || p_name, true), '');

-- Whether this is told by a saw that was off the network. What a session sets by itself says nothing: the deed must be under way.
create function guard.told_later() returns boolean
language plpgsql stable as $$
begin
  return guard.note('told_later') is not null
    and exists (select from request where request_id = guard.note('told_later')::uuid and deed = 'send_offline' and who = session_user and answer is null);
end $$;

-- What is the same for all happenings of a statement: the deed (nothing that is kept changes without one), who, when, and where.
create function guard.noted(p_tbl text, p_chain text) returns book.happening
language plpgsql stable as $$
declare
  h book.happening;
begin
  h.deed := guard.note('deed');
  if h.deed is null then
    raise exception using errcode = 'HK002', constraint = 'only_by_deed',
      message = format('%s changes only through the deeds of the trade', p_tbl),
      hint = 'call the function of schema api that is named as the deed';
  end if;
  h.tbl := p_tbl;
  h.chain := p_chain;
  h.true_at := guard.note('true_at')::timestamptz;
  h.who := session_user;
  h.device := guard.note('device');
  h.reason := guard.note('reason');
  h.request_id := guard.note('request')::uuid;
  return h;
end $$;

-- The next link of its chain: it gets its number and its hash, and the end of the chain is moved on to it. p_begins: this is a chain's first.
create function guard.link(p_begins boolean, inout h book.happening)
language plpgsql volatile as $$
begin
  if not p_begins then
    update chain_end e set seq = e.seq + 1, hash = guard.link_hash(e.hash, e.seq + 1, h) where e.chain = h.chain and e.chain_id = h.chain_id returning e.seq, e.hash into h.seq, h.hash;
    if found then
      return;
    end if;
  end if;
  h.seq := 1;
  h.hash := guard.link_hash(null, h.seq, h);
  insert into chain_end (chain, chain_id, seq, hash) values (h.chain, h.chain_id, h.seq, h.hash);
end $$;

-- The rows that a statement put in, one after the other; where several follow each other in a chain, its end is moved on from the first to the last at once.
-- Trigger arguments: key column; chain; column that holds the chain's id.
create function guard.chronicle_fresh() returns trigger
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp set timezone = 'UTC' as $$
declare
  c_noted constant happening := guard.noted(tg_table_name, tg_argv[1]);
  -- a row that gives its chain its number begins it
  c_begins constant boolean := tg_argv[1] = tg_table_name and tg_argv[0] = tg_argv[2];
  v_row jsonb;
  v_chain bigint;
  v_behind boolean := false;
  v_all happening[] := '{}';
  h happening := c_noted;
begin
  for v_row in select to_jsonb(n) from fresh n loop
    v_chain := (v_row ->> tg_argv[2])::bigint;
    if v_behind and v_chain <> h.chain_id then
      update chain_end set seq = h.seq, hash = h.hash where chain = h.chain and chain_id = h.chain_id;
    end if;
    h.row_id := (v_row ->> tg_argv[0])::bigint;
    h.sets := jsonb_strip_nulls(v_row);
    h.at := clock_timestamp();
    h.true_at := coalesce(c_noted.true_at, h.at);
    v_behind := h.chain_id is not distinct from v_chain;
    if v_behind then
      h.seq := h.seq + 1;
      h.hash := guard.link_hash(h.hash, h.seq, h);
    else
      h.chain_id := v_chain;
      h := guard.link(c_begins, h);
    end if;
    v_all := v_all || h;
  end loop;
  insert into happening (chain, chain_id, seq, deed, tbl, row_id, sets, at, true_at, who, device, reason, request_id, hash)
    select chain, chain_id, seq, deed, tbl, row_id, sets, at, true_at, who, device, reason, request_id, hash from unnest(v_all);
  if v_behind then
    update chain_end set seq = h.seq, hash = h.hash where chain = h.chain and chain_id = h.chain_id;
  end if;
  return null;
end $$;

-- What a row that is changed got: p_sets, by column.
create function guard.changed(p_tbl text, p_chain text, p_chain_id bigint, p_row_id bigint, p_sets jsonb) returns void
language plpgsql volatile as $$
declare
  h happening := guard.noted(p_tbl, p_chain);
begin
  h.chain_id := p_chain_id;
  h.row_id := p_row_id;
  h.sets := p_sets;
  h.at := clock_timestamp();
  h.true_at := coalesce(h.true_at, h.at);
  h := guard.link(false, h);
  insert into happening (chain, chain_id, seq, deed, tbl, row_id, sets, at, true_at, who, device, reason, request_id, hash)
    values (h.chain, h.chain_id, h.seq, h.deed, h.tbl, h.row_id, h.sets, h.at, h.true_at, h.who, h.device, h.reason, h.request_id, h.hash);
end $$;

create function guard.ledger_takes_only_chronicles() returns trigger
language plpgsql as $$
begin
  if pg_catalog.pg_trigger_depth() > 1 and new.who = session_user then
    return new;
  end if;
  raise exception using errcode = 'HK003', constraint = 'ledger_only_grows',
    message = 'happenings are written by the book itself, under the login of the session';
end $$;

create function guard.only_grows() returns trigger
language plpgsql as $$
begin
  raise exception using errcode = 'HK003', constraint = 'ledger_only_grows',
    message = format('%s only grows: nothing in it is changed or taken out', tg_table_name),
    hint = 'put a mistake right by a reversing deed';
end $$;

create function guard.never_deleted() returns trigger
language plpgsql as $$
begin
  raise exception using errcode = 'HK004', constraint = 'nothing_is_deleted',
    message = format('nothing is deleted from %s', tg_table_name), hint = 'put a mistake right by a reversing deed';
end $$;

create trigger ledger_insert before insert on book.happening
  for each row execute function guard.ledger_takes_only_chronicles();
create trigger ledger_fixed before update or delete on book.happening
  for each row execute function guard.only_grows();
create trigger ledger_whole before truncate on book.happening
  for each statement execute function guard.only_grows();
create trigger seal_fixed before update or delete on book.seal
  for each row execute function guard.only_grows();
create trigger seal_whole before truncate on book.seal
  for each statement execute function guard.only_grows();
create trigger printed_record_fixed before update or delete on book.printed_record
  for each row execute function guard.only_grows();
create trigger printed_record_whole before truncate on book.printed_record
  for each statement execute function guard.only_grows();

-- Which tables are chronicled, and in which chain: the piece's own for all that happens to its metal.
create function guard.chronicled() returns table (tbl text, key_column text, chain text, chain_column text)
language sql immutable
begin atomic
  values ('party', 'party_id', 'party', 'party_id'), ('grade', 'grade_id', 'grade', 'grade_id'),
    ('grade_standin', 'grade_standin_id', 'grade', 'asked_grade_id'),
    ('section', 'section_id', 'section', 'section_id'),
    ('section_standin', 'section_standin_id', 'section', 'asked_section_id'),
    ('site', 'site_id', 'site', 'site_id'), ('device', 'device_id', 'device', 'device_id'),
    ('place', 'place_id', 'place', 'place_id'), ('saw', 'saw_id', 'saw', 'saw_id'),
    ('saw_band', 'saw_band_id', 'saw', 'saw_id'), ('saw_grip', 'saw_grip_id', 'saw', 'saw_id'),
    ('cutting_rate', 'cutting_rate_id', 'cutting_rate', 'cutting_rate_id'),
    ('setting', 'setting_id', 'setting', 'setting_id'), ('price', 'price_id', 'grade', 'grade_id'),
    ('keep_rule', 'keep_rule_id', 'keep_rule', 'keep_rule_id'),
    ('lot', 'lot_id', 'lot', 'lot_id'), ('heat_reading', 'heat_reading_id', 'lot', 'lot_id'),
    ('document', 'document_id', 'document', 'document_id'),
    ('document_lot', 'document_lot_id', 'document', 'document_id'), ('document_passed', 'document_passed_id', 'document', 'document_id'),
    ('analysis', 'analysis_id', 'document_lot', 'document_lot_id'),
    ('mechanical_test', 'mechanical_test_id', 'document_lot', 'document_lot_id'),
    ('receipt', 'receipt_id', 'receipt', 'receipt_id'), ('receipt_line', 'receipt_line_id', 'receipt', 'receipt_id'),
    ('bundle', 'bundle_id', 'bundle', 'bundle_id'), ('piece', 'piece_id', 'piece', 'piece_id'),
    ('defect_zone', 'defect_zone_id', 'piece', 'piece_id'), ('cut', 'cut_id', 'piece', 'piece_id'),
    ('stroke', 'stroke_id', 'piece', 'piece_id'), ('metal_out', 'metal_out_id', 'piece', 'piece_id'),
    ('promise', 'promise_id', 'piece', 'piece_id'),
    ('cut_list', 'cut_list_id', 'cut_list', 'cut_list_id'), ('cut_line', 'cut_line_id', 'cut_list', 'cut_list_id'),
    ('plan', 'plan_id', 'plan', 'plan_id'), ('layout', 'layout_id', 'plan', 'plan_id'),
    ('layout_cut', 'layout_cut_id', 'layout', 'layout_id'), ('plan_short', 'plan_short_id', 'plan', 'plan_id'),
    ('hold', 'hold_id', 'hold', 'hold_id'), ('conflict', 'conflict_id', 'conflict', 'conflict_id'),
    ('shipment', 'shipment_id', 'shipment', 'shipment_id'),
    ('shipment_line', 'shipment_line_id', 'shipment', 'shipment_id'),
    ('tag_block', 'tag_block_id', 'tag_block', 'tag_block_id'),
    ('scrap_bin', 'scrap_bin_id', 'scrap_bin', 'scrap_bin_id'), ('alloy_group', 'alloy_group_id', 'alloy_group', 'alloy_group_id'),
    ('scrap_ticket', 'scrap_ticket_id', 'scrap_bin', 'scrap_bin_id'), ('recut', 'recut_id', 'piece', 'piece_id'),
    ('open_piece', 'open_piece_id', 'layout', 'layout_id'), ('handover', 'handover_id', 'saw', 'saw_id'),
    ('first_piece', 'first_piece_id', 'saw', 'saw_id'), ('defect_report', 'defect_report_id', 'piece', 'piece_id'),
    ('consent', 'consent_id', 'cut_line', 'cut_line_id'), ('saw_capacity', 'saw_capacity_id', 'saw', 'saw_id'),
    ('offline_deed', 'offline_deed_id', 'device', 'device_id'),
    ('calibration', 'calibration_id', 'device', 'device_id'), ('grade_limit', 'grade_limit_id', 'grade', 'grade_id'),
    ('photo', 'photo_id', 'piece', 'piece_id'), ('piece_note', 'piece_note_id', 'piece', 'piece_id'),
    ('outside_trip', 'outside_trip_id', 'piece', 'piece_id'), ('transfer', 'transfer_id', 'piece', 'piece_id'),
    ('purchase_line', 'purchase_line_id', 'purchase_line', 'purchase_line_id'),
    ('expected_promise', 'expected_promise_id', 'purchase_line', 'purchase_line_id'),
    ('customer_return', 'customer_return_id', 'customer_return', 'customer_return_id'),
    ('stock_count', 'stock_count_id', 'stock_count', 'stock_count_id'),
    ('count_line', 'count_line_id', 'stock_count', 'stock_count_id'),
    ('label_job', 'label_job_id', 'piece', 'piece_id'),
    ('saw_bundle', 'saw_bundle_id', 'saw', 'saw_id'), ('saw_bundle_bar', 'saw_bundle_bar_id', 'piece', 'piece_id'),
    ('certificate_package', 'certificate_package_id', 'certificate_package', 'certificate_package_id'),
    ('limit_correction', 'limit_correction_id', 'limit_correction', 'limit_correction_id'), ('mechanical_limit', 'mechanical_limit_id', 'grade', 'grade_id'),
    ('product_deviation', 'product_deviation_id', 'product_deviation', 'product_deviation_id');
end;

-- Each table has a function that looks which of its columns changed, written out column by column: told apart in JSON, a row of thirty columns cost a thirtieth of recording a stroke.
do $$
declare
  t record;
  v_looks text;
begin
  for t in select * from guard.chronicled() loop
    select string_agg(format('  if new.%1$I is distinct from old.%1$I then v_sets := v_sets || jsonb_build_object(%1$L, new.%1$I); end if;', attname), E'\n' order by attnum) into v_looks
      from pg_attribute where attrelid = format('book.%I', t.tbl)::regclass and attnum > 0 and not attisdropped;
    execute format($function$create function guard.chronicle_%1$s() returns trigger
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp set timezone = 'UTC' as $body$
declare
  v_sets jsonb := '{}';
begin
%6$s%2$s
  if v_sets <> '{}' then
    perform guard.changed(%1$L, %3$L, new.%4$I, new.%5$I, v_sets);
  else
    perform guard.noted(%1$L, %3$L);  -- nothing is written outside a deed, not even what was there
  end if;
  return null;
end $body$ $function$, t.tbl, v_looks, t.chain, t.chain_column, t.key_column, case when t.tbl = 'piece' then E'  if new.version = old.version then return null; end if;  -- guard.told_by_strokes\n' end);
    -- 'a_' : written down before any other trigger may add happenings of its own
    execute format('create trigger a_chronicle_fresh after insert on book.%I referencing new table as fresh for each statement
      execute function guard.chronicle_fresh(%L, %L, %L)', t.tbl, t.key_column, t.chain, t.chain_column);
    execute format('create trigger a_chronicle after update on book.%I for each row execute function guard.chronicle_%1$s()', t.tbl);
    execute format('create trigger kept before delete on book.%I for each row execute function guard.never_deleted()', t.tbl);
    execute format('create trigger kept_whole before truncate on book.%I for each statement
      execute function guard.never_deleted()', t.tbl);
  end loop;
end $$;
