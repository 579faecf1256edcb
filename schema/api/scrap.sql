-- Scrap: bins by alloy group, pieces thrown in, and the dealer's weighed ticket.

-- {"groups": [{"family","group"}], "bins": [{"bin","group"}]}: known ones stay.
create function api.define_bins(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('define_bins', p_request, p);
begin
  if v_again is not null then return v_again; end if;
  insert into alloy_group (family, alloy_group) select n ->> 'family', n ->> 'group' from jsonb_array_elements(p -> 'groups') n on conflict (family) do nothing;
  insert into scrap_bin (name, alloy_group) select n ->> 'bin', n ->> 'group' from jsonb_array_elements(p -> 'bins') n on conflict (name) do nothing;
  return guard.end_deed(jsonb_build_object('bins', (select count(*) from scrap_bin)));
end $$;

-- A whole piece goes to scrap: {"tag","bin","reason","instruction"?}. Held metal is evidence and stays until it is condemned; a customer's needs the written instruction.
create function api.scrap_piece(p_request uuid, p jsonb, p_true_at timestamptz default null, p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('scrap_piece', p_request, p || jsonb_build_object('true_at', guard.utc(p_true_at)), p_true_at, p_device, p ->> 'reason');
  e piece;
  v_words text;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(p ->> 'tag');
  v_words := coalesce(guard.evidence_words(e.piece_id), case when guard.hold_words(e.piece_id) is null then guard.quarantine_words(e.piece_id) end, case when e.frozen then 'its place is being counted' end);
  perform guard.refuse_away(e, 'scrapped');
  if v_words is not null then
    raise exception using errcode = 'HK040', message = format('%s is not scrapped: %s', e.tag, v_words), hint = 'it is evidence until quality closes the case';
  elsif guard.taken_words(e) is not null then
    raise exception using errcode = 'HK043', message = format('%s is not scrapped: %s', e.tag, guard.taken_words(e)), hint = 'let the promise go first';
  elsif coalesce(btrim(p ->> 'reason'), '') = '' then
    raise exception using errcode = 'HK026', message = 'scrapping says why';
  elsif e.owner_id <> 0 and coalesce(btrim(p ->> 'instruction'), '') = '' then
    raise exception using errcode = 'HK026', message = format('%s belongs to %s: name their written instruction', e.tag, (select name from party where party_id = e.owner_id));
  end if;
  insert into metal_out (piece_id, lot_id, owner_id, class, length_nm, reason, scrap_bin_id)
    values (e.piece_id, e.lot_id, e.owner_id, 'scrap', e.length_nm, concat_ws('; ', p ->> 'reason', p ->> 'instruction'), guard.bin_for(p ->> 'bin', e.lot_id, true));
  update piece set length_nm = 0, state = 'scrapped', place_id = null where piece_id = e.piece_id;
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'bin', p ->> 'bin', 'mass_g', guard.lot_mass_g(e.lot_id, e.length_nm)));
end $$;

-- {"bin","dealer","ticket","mass_g","cents_per_tonne"}: a bin is emptied, weighed by the dealer. Metal that is held now, and not condemned, does not leave.
create function api.scrap_ticket(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('scrap_ticket', p_request, p);
  b scrap_bin;
  v_held text;
  v_out bigint[];
  v_book bigint;
  v_id bigint;
  v_mass bigint := (p ->> 'mass_g')::bigint;
begin
  if v_again is not null then return v_again; end if;
  perform guard.lock_rows('scrap_bin', array(select scrap_bin_id from scrap_bin where name = p ->> 'bin'));
  select * into b from scrap_bin where name = p ->> 'bin';
  if b.scrap_bin_id is null then
    raise exception using errcode = 'HK026', message = format('no scrap bin is called "%s"', p ->> 'bin'), hint = '`heatkeep saw scrap-bins` names them';
  elsif v_mass > 1000000000 or (p ->> 'cents_per_tonne')::bigint > 1000000000 then
    -- one such ticket would make every sum over the tickets fail
    raise exception using errcode = 'HK026', message = format('a ticket of %s g at %s cents a tonne cannot be scrap that was weighed', v_mass, p ->> 'cents_per_tonne'),
      hint = 'expected at most 1000 t, and 10 000 000 a tonne';
  elsif coalesce(btrim(p ->> 'ticket'), '') = '' or coalesce(v_mass, 0) <= 0 or p ->> 'cents_per_tonne' is null then
    raise exception using errcode = 'HK026', message = 'a ticket has a number, a weighed mass and a price';
  elsif exists (select from scrap_ticket where dealer_id = guard.party(p ->> 'dealer') and ticket = p ->> 'ticket') then
    raise exception using errcode = 'HK041', message = format('ticket %s of %s is in the book already', p ->> 'ticket', p ->> 'dealer');
  end if;
  v_out := array(select metal_out_id from metal_out where scrap_bin_id = b.scrap_bin_id and scrap_ticket_id is null);
  perform guard.lock_pieces(array(select piece_id from metal_out where metal_out_id = any (v_out)));
  select string_agg(distinct format('%s (%s)', e.tag, guard.evidence_words(e.piece_id)), '; ') into v_held
    from metal_out o join piece e using (piece_id) where o.metal_out_id = any (v_out) and guard.evidence_words(e.piece_id) is not null;
  if v_held is not null then
    raise exception using errcode = 'HK040', message = format('bin %s holds evidence: %s', b.name, v_held), hint = 'take it out and keep it apart until quality closes the case';
  end if;
  select coalesce(sum(guard.mass_g(o.length_nm, x.area_um2, g.density_kg_m3)), 0) into v_book
    from metal_out o join lot l using (lot_id) join section x using (section_id) left join grade g using (grade_id)
    where o.metal_out_id = any (v_out);
  insert into scrap_ticket (scrap_bin_id, dealer_id, ticket, mass_g, book_mass_g, cents_per_tonne, named)
    values (b.scrap_bin_id, guard.party(p ->> 'dealer'), p ->> 'ticket', v_mass, v_book, (p ->> 'cents_per_tonne')::bigint, session_user) returning scrap_ticket_id into v_id;
  update metal_out set scrap_ticket_id = v_id where metal_out_id = any (v_out);
  return guard.end_deed(jsonb_build_object('ticket', p ->> 'ticket', 'bin', b.name, 'mass_g', v_mass, 'book_mass_g', v_book, 'other_g', v_mass - v_book,
    'cents', round(v_mass::numeric * (p ->> 'cents_per_tonne')::bigint / 1000000)));
end $$;

create view api.scrap_bins as
  select b.name as bin, b.alloy_group, coalesce(sum(guard.mass_g(o.length_nm, x.area_um2, g.density_kg_m3)), 0)::bigint as mass_g, count(o.metal_out_id) as pieces
    from book.scrap_bin b left join book.metal_out o on o.scrap_bin_id = b.scrap_bin_id and o.scrap_ticket_id is null
    left join book.lot l using (lot_id) left join book.section x using (section_id) left join book.grade g using (grade_id) group by b.scrap_bin_id, b.name, b.alloy_group;
create view api.scrap_tickets as
  select t.ticket, d.name as dealer, b.name as bin, b.alloy_group, t.mass_g, t.book_mass_g, t.cents_per_tonne, t.named
    from book.scrap_ticket t join book.scrap_bin b using (scrap_bin_id) join book.party d on d.party_id = t.dealer_id;
