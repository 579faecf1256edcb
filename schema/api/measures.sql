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
  v_again jsonb := guard.begin_deed('correct_length', p_request, jsonb_build_array(p_tag, p_length_nm, p_doubt_nm, p_cause, p_measured_with, guard.utc(p_true_at)),
    p_true_at, p_device, p_cause);
  p piece;
begin
  if v_again is not null then return v_again; end if;
  if coalesce(btrim(p_cause), '') = '' then
    raise exception using errcode = 'HK026', message = 'a corrected length names its cause', hint = 'for example: measured again, the first reading was of another bar';
  end if;
  p := guard.piece_for_deed(p_tag);
  if guard.open_cut(p.piece_id) is null then
    perform guard.free_to_change(p, 'corrected');
  end if;
  perform guard.set_measured(p, p_length_nm, case when p_measured_with is null then p_doubt_nm else guard.doubt_nm(p_doubt_nm, p_measured_with) end, null, p_cause, p_measured_with);
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'difference_nm', p_length_nm - p.length_nm,
    'doubt_nm', (select doubt_nm from piece where piece_id = p.piece_id), 'warning', guard.device_words(p_measured_with)));
end $$;

create view api.devices as
  select d.name as device, d.kind, s.name as site, c.calibrated_on, c.due_on, c.doubt_nm, c.certificate,
      d.kind is not null and d.kind not in ('scanner') and coalesce(c.due_on < current_date, true) as overdue
    from book.device d join book.site s using (site_id)
    left join lateral (select * from book.calibration where device_id = d.device_id order by calibrated_on desc limit 1) c on true;

-- Who measured what: one line a length that was measured otherwise than the book said, a drop measured against the arithmetic of
-- its cut included. difference_nm: measured less book; below 0 the metal is shorter than written, and that much is unexplained.
create view api.measured_lengths as
  select coalesce(h.true_at, h.at) as at, h.who, coalesce(d.name, 'not said') as measured_with, h.device as told_by, h.deed, t.tag, t.kind::text, m.name as mill,
      l.heat, x.label as section, g.designation as grade, v.nm + o.length_nm as book_nm, v.nm as measured_nm, -o.length_nm as difference_nm, o.reason
    from book.metal_out o join book.happening h on h.tbl = 'metal_out' and h.row_id = o.metal_out_id and h.sets ? 'metal_out_id'
    join book.piece e on e.piece_id = o.piece_id
    -- what the piece was set to next by the same deed: 0 where its rest was measured, which then is a piece or scrap of its own
    left join lateral (select nullif((n.sets ->> 'length_nm')::bigint, 0) as nm from book.happening n where n.tbl = 'piece' and n.row_id = o.piece_id
      and n.request_id = h.request_id and n.happening_id > h.happening_id and n.sets ? 'length_nm' order by n.happening_id limit 1) a on true
    left join lateral (select c.piece_id, c.made_length_nm as nm from book.happening n join book.piece c on n.tbl = 'piece' and c.piece_id = n.row_id
      where n.request_id = h.request_id and n.happening_id < h.happening_id and n.sets ? 'piece_id' and c.from_cut_id = o.cut_id
      order by n.happening_id desc limit 1) r on a.nm is null
    left join lateral (select s.length_nm as nm from book.metal_out s where s.cut_id = o.cut_id and s.class = 'scrap') w on a.nm is null and r.nm is null
    cross join lateral (select coalesce(a.nm, r.nm, w.nm) as nm) v
    join book.piece t on t.piece_id = coalesce(r.piece_id, e.piece_id)
    left join lateral (select (n.sets ->> 'measured_with')::bigint as device_id from book.happening n where n.tbl = 'piece' and n.row_id = t.piece_id
      and n.sets ? 'measured_with' and (n.happening_id < h.happening_id or n.request_id = h.request_id) order by n.happening_id desc limit 1) y on true
    left join book.device d on d.device_id = y.device_id
    join book.lot l on l.lot_id = o.lot_id left join book.party m on m.party_id = l.mill_id join book.section x using (section_id) left join book.grade g using (grade_id)
    where o.class = 'unexplained' and v.nm is not null;
