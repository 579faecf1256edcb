-- Deeds that a device did off the network: each is done once, in the device's own order, under the login that did it. What cannot be booked as it
-- was told is kept with its words and becomes a conflict for a person: nothing that was done at a saw is thrown away.

-- {"device","seq","deed","request","body","true_at"}: answers {"outcome": "done" or "conflict", "answer" or "words"}.
create function api.send_offline(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('send_offline', p_request, p, (p ->> 'true_at')::timestamptz, p ->> 'device');
  v_device bigint := (select device_id from device where name = p ->> 'device');
  v_seq bigint := (p ->> 'seq')::bigint;
  v_last bigint;
  v_body jsonb := coalesce(p -> 'body', '{}');
  v_deed text := p ->> 'deed';
  v_answer jsonb;
  v_words text;
  v_tag text;
begin
  if v_again is not null then return v_again; end if;
  if v_device is null then
    raise exception using errcode = 'HK025', message = format('no device is called "%s"', p ->> 'device'), hint = 'take a block of tag numbers with it first';
  end if;
  perform guard.lock_rows('device', array[v_device]);
  select coalesce(max(seq), 0) into v_last from offline_deed where device_id = v_device;
  if v_seq is distinct from v_last + 1 then
    raise exception using errcode = 'HK409', message = format('number %s of %s does not follow number %s, the last that is here', p ->> 'seq', p ->> 'device', v_last),
      hint = case when v_seq > v_last then 'send what lies between first' else 'it was sent before, as another request' end;
  end if;
  perform set_config('heatkeep.told_later', p_request::text, true);
  begin
    v_answer := guard.do_offline(v_deed, (p ->> 'request')::uuid, v_body, (p ->> 'true_at')::timestamptz, p ->> 'device');
    set constraints all immediate;
    v_words := v_answer ->> 'words';
    if not v_answer ? 'refused' then v_words := null; end if;
  exception when others then
    if sqlstate not like 'HK%' and sqlstate not like '23%' and sqlstate not like '22%' then raise; end if;
    v_words := sqlerrm;
  end;
  set constraints all deferred;
  perform set_config('heatkeep.deed', 'send_offline', true), set_config('heatkeep.request', p_request::text, true), set_config('heatkeep.reason', '', true),
    set_config('heatkeep.told_later', '', true);
  if v_words is not null then
    v_tag := guard.tag_form(coalesce(v_body ->> 'tag', v_body -> 'bars' -> 0 ->> 'tag', v_body -> 'tags' ->> 0));
    perform guard.raise_conflict('off the network', (select piece_id from piece where tag = v_tag),
      format('%s of %s, number %s of %s: %s', v_deed, coalesce(v_tag, '?'), v_seq, p ->> 'device', v_words));
  end if;
  insert into offline_deed (device_id, seq, deed, body, request_id, outcome, words)
    values (v_device, v_seq, v_deed, v_body, (p ->> 'request')::uuid, case when v_words is null then 'done' else 'conflict' end, v_words);
  return guard.end_deed(jsonb_strip_nulls(jsonb_build_object('seq', v_seq, 'outcome', case when v_words is null then 'done' else 'conflict' end, 'answer', v_answer, 'words', v_words)));
end $$;

-- The deeds of a saw that are done off the network. What was cut there has been cut: it is told as a fact.
create function guard.do_offline(p_deed text, p_request uuid, p jsonb, p_at timestamptz, p_device text) returns jsonb
language plpgsql volatile as $$
begin
  case p_deed
    when 'pull' then return api.pull(p_request, p ->> 'tag', p ->> 'saw', (p ->> 'plan')::bigint, p_at, p_device, p ->> 'heat_read', (p ->> 'measured_nm')::bigint);
    when 'pull_for_line' then return api.pull_for_line(p_request, p, p_at, p_device);
    when 'record_cut' then return api.record_cut(p_request, '{"already_cut": true}' || p || jsonb_build_object('reason',
      coalesce(p ->> 'reason', 'cut off the network at ' || p_device)), p_at, p_device);
    when 'make_up_bundle' then return api.make_up_bundle(p_request, p, p_at, p_device);
    when 'record_bundle' then return api.record_bundle(p_request, '{"already_cut": true}' || p || jsonb_build_object('reason',
      coalesce(p ->> 'reason', 'cut off the network at ' || p_device)), p_at, p_device);
    when 'split_piece' then return api.split_piece(p_request, p, p_at, p_device);
    when 'put_away' then return api.put_away(p_request, p ->> 'tag', p ->> 'place', p_at, p_device);
    when 'first_piece' then return api.first_piece(p_request, p, p_at, p_device);
    when 'hand_over' then return api.hand_over(p_request, p, p_at, p_device);
    when 'report_defect' then return api.report_defect(p_request, p, p_at, p_device);
    when 'report_half_cut' then return api.report_half_cut(p_request, p, p_at, p_device);
    when 'scrap_piece' then return api.scrap_piece(p_request, p, p_at, p_device);
    when 'fit_band' then return api.fit_band(p_request, p, p_at, p_device);
    else raise exception using errcode = 'HK026', message = format('"%s" is not done off the network', p_deed);
  end case;
end $$;

create view api.offline_deeds as
  select d.name as device, o.seq, o.deed, coalesce(o.body ->> 'tag', o.body -> 'bars' -> 0 ->> 'tag', o.body -> 'tags' ->> 0) as tag, o.outcome, o.words
    from book.offline_deed o join book.device d using (device_id);
