-- Measured lengths: what was read, how far it may be off, and with what.

create function guard.device(p_name text) returns bigint
language plpgsql stable as $$
declare
  v_id bigint;
begin
  select device_id into v_id from device where name = btrim(p_name);
  if v_id is null then
    raise exception using errcode = 'HK026', message = format('no tape, readout or scanner is called "%s"', p_name),
      hint = '`heatkeep device list` names them, `heatkeep device add` enters one';
  end if;
  return v_id;
end $$;

-- The doubt of what was measured: as said, else that of the device's newest calibration, else the shop's tape.
create function guard.doubt_nm(p_said bigint, p_device text) returns bigint
language plpgsql stable as $$
begin
  return coalesce(p_said, case when coalesce(p_device, '') <> '' then (select doubt_nm from calibration where device_id = guard.device(p_device)
    order by calibrated_on desc limit 1) end, guard.setting('tape_doubt_nm', '1000000')::bigint);
end $$;

-- What is wrong with the device that was measured with; null when nothing.
create function guard.device_words(p_device text) returns text
language sql stable
return (select case when c.device_id is null then format('%s was never calibrated', d.name)
    when c.due_on < current_date then format('the calibration of %s ended on %s: calibrate it, then measure again', d.name, c.due_on) end
  from book.device d left join lateral (select * from book.calibration where device_id = d.device_id order by calibrated_on desc limit 1) c on true
  where d.name = btrim(p_device));

-- The cut of a piece that was begun and is not finished; null where none is.
create function guard.open_cut(p_piece bigint) returns bigint
language plpgsql stable as $$
begin
  return (select cut_id from cut where piece_id = p_piece and not closed);
end $$;

-- Whether anything came off in this cut yet: a stroke, or a piece of its own that cost no kerf.
create function guard.cut_has_taken(p_cut bigint) returns boolean
language plpgsql stable as $$
begin
  return exists (select from stroke where cut_id = p_cut and not_cut is null) or exists (select from cut c join piece e on e.parent_id = c.piece_id and e.from_cut_id = c.cut_id where c.cut_id = p_cut);
end $$;

-- {"length_nm","doubt_nm"?,"measured_with"?}: books a piece as measured; the difference is named unexplained.
create function guard.measure(p book.piece, m jsonb, p_cause text) returns void
language plpgsql volatile as $$
begin
  perform guard.set_measured(p, (m ->> 'length_nm')::bigint, guard.doubt_nm((m ->> 'doubt_nm')::bigint, m ->> 'measured_with'), null, p_cause, m ->> 'measured_with');
end $$;

-- Refuses a length that the piece cannot have. Where a bar came longer than it was booked, its receipt is put right.
create function guard.check_measured(p book.piece, p_length_nm bigint) returns void
language plpgsql stable as $$
begin
  if p_length_nm <= 0 or p_length_nm > p.made_length_nm then
    raise exception using errcode = 'HK034', message = format('%s cannot measure %s mm: it is %s and was made %s mm long',
      p.tag, trim_scale(p_length_nm / 1e6::numeric), p.state, trim_scale(p.made_length_nm / 1e6::numeric)),
      hint = case when guard.as_received(p) then 'measure again; where it came longer than it was booked, quality puts its receipt right: heatkeep correct receipt, with the length'
        else 'measure again; no piece is longer than it ever was. Where a piece was booked that was not cut before it, take it back: heatkeep saw take-back' end;
  end if;
end $$;

-- A bar that was never cut and never had another tag.
create function guard.as_received(p book.piece) returns boolean
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return p.kind = 'bar' and p.length_nm > 0 and p.parent_id is null and p.before_id is null and not exists (select from book.cut where piece_id = p.piece_id);

-- The difference to what was written is named unexplained, with the cause and who measured; the piece says with what (null: not said). It belongs
-- to the cut that is told (p_cut), else to the one that is open, whose balance must hold it.
create function guard.set_measured(p book.piece, p_length_nm bigint, p_doubt_nm bigint, p_cut bigint, p_cause text, p_with text default null) returns void
language plpgsql volatile as $$
begin
  perform guard.check_measured(p, case when p.length_nm > 0 then p_length_nm else 0 end);
  if p_length_nm <> p.length_nm then
    insert into metal_out (piece_id, lot_id, owner_id, cut_id, class, length_nm, reason, named)
      values (p.piece_id, p.lot_id, p.owner_id, coalesce(p_cut, guard.open_cut(p.piece_id)), 'unexplained', p.length_nm - p_length_nm, p_cause, session_user);
  end if;
  update piece set length_nm = p_length_nm, doubt_nm = coalesce(p_doubt_nm, doubt_nm),
    measured_with = case when coalesce(btrim(p_with), '') <> '' then guard.device(p_with) end where piece_id = p.piece_id;
end $$;

