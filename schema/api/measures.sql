-- Measuring: the register of tapes, readouts and scales with their calibrations, and lengths put right.

-- {"device","kind","site"}: tape, readout, scale, scanner or analyser.
create function api.add_device(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('add_device', p_request, p);
  v_name text;
  v_kind text;
  v_site bigint;
begin
  if v_again is not null then return v_again; end if;
  v_name := guard.said(p, 'device', 'what it is called, as written on it');
  v_kind := guard.said(p, 'kind', 'tape, readout, scale, scanner or analyser');
  select site_id into v_site from site where name = guard.said(p, 'site', 'the site it is used at');
  if v_site is null or v_kind not in ('tape', 'readout', 'scale', 'scanner', 'analyser') then
    raise exception using errcode = 'HK026', message = format('no such site (%s) or kind (%s)', p ->> 'site', v_kind),
      hint = 'kind: tape, readout, scale, scanner or analyser';
  elsif exists (select from device where name = v_name and kind is not null) then
    raise exception using errcode = 'HK041', message = format('a device is called "%s" already', v_name), hint = 'give this one another name, or calibrate that one';
  end if;
  insert into device (name, kind, site_id) values (v_name, v_kind, v_site) on conflict (name) do update set kind = excluded.kind;
  return guard.end_deed(jsonb_build_object('device', v_name));
end $$;

-- {"device","calibrated_on","due_on","doubt_nm","certificate"}: from now on its doubt is that of every length read from it.
create function api.calibrate_device(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('calibrate_device', p_request, p);
  v_device bigint;
begin
  if v_again is not null then return v_again; end if;
  v_device := guard.device(guard.said(p, 'device', 'its name'));
  if (p ->> 'calibrated_on')::date > current_date or (p ->> 'due_on')::date <= (p ->> 'calibrated_on')::date
     or coalesce((p ->> 'doubt_nm')::bigint, -1) < 0 then
    raise exception using errcode = 'HK026', message = 'a calibration has a day that has been, a later day it is due again, and a doubt of 0 or more';
  elsif exists (select from calibration where device_id = v_device and calibrated_on = (p ->> 'calibrated_on')::date) then
    raise exception using errcode = 'HK041', message = format('%s was calibrated on %s already', p ->> 'device', p ->> 'calibrated_on');
  end if;
  insert into calibration (device_id, calibrated_on, due_on, doubt_nm, certificate)
    values (v_device, guard.said(p, 'calibrated_on', 'a date')::date, guard.said(p, 'due_on', 'a date')::date, (p ->> 'doubt_nm')::bigint,
      guard.said(p, 'certificate', 'the number of the calibration certificate'));
  return guard.end_deed(jsonb_build_object('device', p ->> 'device', 'due_on', p ->> 'due_on'));
end $$;

-- Measured again: the difference is named unexplained, with the cause and who measured. The doubt: as said, else the
-- device's. Held metal is not edited, but what is being cut is measured where it is.
create function api.correct_length(p_request uuid, p_tag text, p_length_nm bigint, p_doubt_nm bigint, p_cause text,
                                   p_device text default null, p_measured_with text default null, p_true_at timestamptz default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('correct_length', p_request, jsonb_build_array(p_tag, p_length_nm, p_doubt_nm, p_cause, p_measured_with, p_true_at),
    p_true_at, p_device, p_cause);
  p piece;
  v_cut bigint;
begin
  if v_again is not null then return v_again; end if;
  if coalesce(btrim(p_cause), '') = '' then
    raise exception using errcode = 'HK026', message = 'a corrected length names its cause', hint = 'for example: measured again, the first reading was of another bar';
  end if;
  p := guard.piece_for_deed(p_tag);
  select cut_id into v_cut from cut where piece_id = p.piece_id and not closed;
  if v_cut is null then
    perform guard.free_to_change(p, 'corrected');
  end if;
  -- what is missing from a piece that is being cut belongs to that cut's balance
  perform guard.set_measured(p, p_length_nm, case when p_measured_with is null then p_doubt_nm else guard.doubt_nm(p_doubt_nm, p_measured_with) end, v_cut, p_cause);
  if p_measured_with is not null then
    update piece set measured_with = guard.device(p_measured_with) where piece_id = p.piece_id;
  end if;
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'difference_nm', p_length_nm - p.length_nm,
    'doubt_nm', (select doubt_nm from piece where piece_id = p.piece_id), 'warning', guard.device_words(p_measured_with)));
end $$;

create view api.devices as
  select d.name as device, d.kind, s.name as site, c.calibrated_on, c.due_on, c.doubt_nm, c.certificate,
      d.kind is not null and d.kind not in ('scanner') and coalesce(c.due_on < current_date, true) as overdue
    from book.device d join book.site s using (site_id)
    left join lateral (select * from book.calibration where device_id = d.device_id order by calibrated_on desc limit 1) c on true;
