-- The metal balance, to the nanometre, at every commit, for every piece that was touched:
--   made_length = length now + strokes (length + kerf) + drops made from it + metal that left otherwise
-- and for a closed cut: length in = its strokes + its drop + what left it during the cut + what stays on the piece.
create function guard.piece_out_nm(p_piece bigint) returns bigint
language plpgsql stable as $$
begin
  return (select coalesce(sum(nm), 0) from (select length_nm + kerf_nm as nm from book.stroke where piece_id = p_piece
    union all select made_length_nm from book.piece where parent_id = p_piece
    union all select length_nm from book.metal_out where piece_id = p_piece) o);
end $$;

create function guard.check_balance(p_piece bigint) returns void
language plpgsql stable as $$
declare
  v_tag text;
  v_made bigint;
  v_length bigint;
  v_out bigint := guard.piece_out_nm(p_piece);
begin
  select tag, made_length_nm, length_nm into v_tag, v_made, v_length from piece where piece_id = p_piece;
  if v_made <> v_length + v_out then
    raise exception using errcode = 'HK030', constraint = 'metal_balance',
      message = format('the metal of %s does not add up: it was %s nm, %s nm are there and %s nm went', v_tag, v_made, v_length, v_out),
      hint = 'name what is missing as unexplained, with a reason and a name';
  end if;
end $$;

-- Where its length stays as it was, only if a stroke was booked in the same transaction: that leaves the adding up to a piece that is written after it.
create function guard.balance_of_changed_piece() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  if (new.length_nm, new.made_length_nm) is not distinct from (old.length_nm, old.made_length_nm) then
    if not exists (select from piece p join stroke s using (piece_id) where p.piece_id = new.piece_id and s.xmin = p.xmin) then
      return null;
    end if;
  end if;
  perform guard.check_balance(new.piece_id);
  return null;
end $$;

create function guard.balance_of_piece() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  perform guard.check_balance(new.piece_id);
  return null;
end $$;

create function guard.balance_of_parent() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  perform guard.check_balance(new.parent_id);
  return null;
end $$;

-- What came off in a cut came off the piece that was cut.
create function guard.cut_out_nm(p_piece bigint, p_cut bigint) returns bigint
language plpgsql stable as $$
begin
  return (select coalesce(sum(nm), 0) from (select length_nm + kerf_nm as nm from book.stroke where cut_id = p_cut
    union all select made_length_nm from book.piece where parent_id = p_piece and from_cut_id = p_cut
    union all select length_nm from book.metal_out where piece_id = p_piece and cut_id = p_cut) o);
end $$;

create function guard.check_cut(p_cut bigint, p_piece bigint) returns void
language plpgsql stable as $$
declare
  c cut;
  v_out bigint;
begin
  select * into c from cut where cut_id = p_cut;
  if c.piece_id <> p_piece then
    raise exception using errcode = 'HK031', constraint = 'identity_stays',
      message = 'what came off in a cut came off the piece that was cut, not off another';
  elsif not c.closed then
    return;
  end if;
  v_out := guard.cut_out_nm(c.piece_id, c.cut_id);
  if c.length_in_nm <> v_out + c.rest_nm then
    raise exception using errcode = 'HK030', constraint = 'metal_balance',
      message = format('the cut does not add up: %s nm went in, %s nm came off and %s nm stay',
        c.length_in_nm, v_out, c.rest_nm);
  end if;
end $$;

create function guard.balance_of_cut() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  perform guard.check_cut(new.cut_id, new.piece_id);
  return null;
end $$;

-- Both for the strokes a transaction books in one cut, at the last of them: each asks whether another follows it. A piece that was written after it, in the
-- same transaction, is added up by its own trigger.
create function guard.balance_of_strokes() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_followed boolean := false;
  v_piece_follows boolean := false;
begin
  if tg_op = 'INSERT' then
    select exists (select from stroke s where s.cut_id = o.cut_id and s.xmin = o.xmin and (s.cmin::text::bigint, s.stroke_id) > (o.cmin::text::bigint, o.stroke_id)),
        p.xmin = o.xmin and p.cmin::text::bigint > o.cmin::text::bigint
      into v_followed, v_piece_follows from stroke o join piece p using (piece_id) where o.stroke_id = new.stroke_id;
  end if;
  if v_followed then
    return null;
  elsif not v_piece_follows then
    perform guard.check_balance(new.piece_id);
  end if;
  perform guard.check_cut(new.cut_id, new.piece_id);
  return null;
end $$;

create function guard.balance_of_drops_cut() returns trigger
language plpgsql security definer set search_path = book, pg_catalog, pg_temp as $$
begin
  perform guard.check_cut(new.from_cut_id, new.parent_id);
  return null;
end $$;

create constraint trigger balance after insert on book.piece
  deferrable initially deferred for each row execute function guard.balance_of_piece();
create constraint trigger balance_changed after update on book.piece
  deferrable initially deferred for each row execute function guard.balance_of_changed_piece();
create constraint trigger balance_of_parent after insert on book.piece
  deferrable initially deferred for each row when (new.parent_id is not null) execute function guard.balance_of_parent();
create constraint trigger balance_of_parent_changed after update of made_length_nm on book.piece
  deferrable initially deferred for each row when (new.parent_id is not null) execute function guard.balance_of_parent();
create constraint trigger balance after insert or update on book.stroke
  deferrable initially deferred for each row execute function guard.balance_of_strokes();
create constraint trigger balance after insert or update on book.metal_out
  deferrable initially deferred for each row execute function guard.balance_of_piece();
create constraint trigger balance_of_cut after insert or update on book.cut
  deferrable initially deferred for each row execute function guard.balance_of_cut();
create constraint trigger balance_of_cut after insert or update on book.metal_out
  deferrable initially deferred for each row when (new.cut_id is not null) execute function guard.balance_of_cut();
create constraint trigger balance_of_drops_cut after insert on book.piece
  deferrable initially deferred for each row when (new.from_cut_id is not null) execute function guard.balance_of_drops_cut();
