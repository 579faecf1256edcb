-- Where pieces lie: put away, moved, strapped in bundles, sent to another site and received there.
create function api.put_away(p_request uuid, p_tag text, p_place text, p_true_at timestamptz default null,
                             p_device text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('put_away', p_request, jsonb_build_array(p_tag, p_place, guard.utc(p_true_at)), p_true_at, p_device);
  p piece;
  v_to place;
begin
  if v_again is not null then return v_again; end if;
  p := guard.piece_for_deed(p_tag);
  select * into v_to from place where place_id = guard.place(p_place);
  if p.length_nm = 0 or p.state in ('at saw', 'outside', 'in transit', 'missing') then
    raise exception using errcode = 'HK043', message = format('%s is %s: it cannot be put away', p.tag, p.state),
      hint = guard.way_back(p);
  elsif p.frozen or exists (select from stock_count where place_id = v_to.place_id and state in ('open', 'counted')) then
    raise exception using errcode = 'HK040', message = format('%s cannot be moved: %s is being counted', p.tag,
      case when p.frozen then 'its place' else v_to.name end), hint = 'wait until the count is approved';
  elsif p.quarantine is not null and v_to.kind not in ('quarantine', 'gate', 'scrap') then
    raise exception using errcode = 'HK040', message = format('%s is quarantined (%s): it is not put where metal is taken from', p.tag, p.quarantine),
      hint = 'put it in a place of kind quarantine; quality releases it';
  elsif v_to.kind = 'quarantine' and guard.blocked_words(p.piece_id) is null then
    raise exception using errcode = 'HK043', message = format('%s is free for use: it is not put in %s, where nothing is taken from', p.tag, v_to.name),
      hint = 'where something is wrong with it, say what: heatkeep quarantine, with the reason and the place';
  elsif exists (select from bundle where bundle_id = p.bundle_id and strapped) then
    raise exception using errcode = 'HK043', message = format('%s is strapped in bundle %s', p.tag, (select name from bundle where bundle_id = p.bundle_id)),
      hint = 'move the bundle, or open it first';
  end if;
  update piece set place_id = v_to.place_id, state = 'on rack' where piece_id = p.piece_id;
  return guard.end_deed(jsonb_build_object('tag', p.tag, 'place', v_to.name));
end $$;

create function guard.bundle(p_name text) returns book.bundle
language plpgsql volatile as $$
declare
  b bundle;
begin
  perform guard.lock_rows('bundle', array(select bundle_id from bundle where name = btrim(p_name) and strapped));
  select * into b from bundle where name = btrim(p_name) order by strapped desc nulls last, bundle_id desc limit 1;
  if b.bundle_id is null or b.strapped is not true then
    raise exception using errcode = 'HK026', message = format('no strapped bundle is called "%s"', p_name), hint = '`heatkeep bundle list` names them';
  end if;
  return b;
end $$;

-- {"bundle","tags":[...]}: loose bars strapped together; one heat, section, condition and owner, on one place.
create function api.make_bundle(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('make_bundle', p_request, p);
  v_name text;
  v_bundle bigint;
  e piece;
  f piece;
  t text;
begin
  if v_again is not null then return v_again; end if;
  v_name := guard.said(p, 'bundle', 'the name on the strap');
  if jsonb_array_length(coalesce(p -> 'tags', '[]')) < 2 then
    raise exception using errcode = 'HK026', message = 'a bundle has two bars or more';
  elsif exists (select from bundle where name = v_name and strapped) then
    raise exception using errcode = 'HK041', message = format('a strapped bundle is called %s already', v_name), hint = 'give this one another name';
  end if;
  perform guard.lock_tags(array(select jsonb_array_elements_text(p -> 'tags')));
  for t in select * from jsonb_array_elements_text(p -> 'tags') order by 1 loop
    e := guard.piece_for_deed(t);
    perform guard.free_to_change(e, 'bundled');
    f := coalesce(f, e);
    if e.lot_id <> f.lot_id or e.owner_id <> f.owner_id then
      raise exception using errcode = 'HK042', message = format('%s and %s are not the same metal: %s', f.tag, e.tag, (select
          string_agg(coalesce('heat ' || l.heat, 'no heat'), ' and ' order by l.lot_id) from lot l where l.lot_id in (e.lot_id, f.lot_id))),
        hint = 'one bundle is one heat, section, condition and owner';
    elsif e.place_id is distinct from f.place_id or e.bundle_id is not null and exists (select from bundle where bundle_id = e.bundle_id and strapped) then
      raise exception using errcode = 'HK043', message = format('%s lies in another place than %s, or is in a bundle already', e.tag, f.tag);
    end if;
  end loop;
  insert into bundle (lot_id, name, strapped) values (f.lot_id, v_name, true) returning bundle_id into v_bundle;
  update piece set bundle_id = v_bundle where tag in (select guard.tag_form(x) from jsonb_array_elements_text(p -> 'tags') x);
  return guard.end_deed(jsonb_build_object('bundle', v_name, 'bars', jsonb_array_length(p -> 'tags')));
end $$;

-- {"bundle"}: the strap is cut; from now on every bar is moved and counted by itself.
create function api.open_bundle(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('open_bundle', p_request, p);
  b bundle;
begin
  if v_again is not null then return v_again; end if;
  b := guard.bundle(guard.said(p, 'bundle', 'the name on the strap'));
  update bundle set strapped = false where bundle_id = b.bundle_id;
  return guard.end_deed(jsonb_build_object('bundle', b.name, 'tags', (select jsonb_agg(tag order by tag) from piece where bundle_id = b.bundle_id and length_nm > 0)));
end $$;

-- {"bundle","place"}: a strapped bundle moves as one.
create function api.move_bundle(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('move_bundle', p_request, p);
  b bundle;
  e piece;
  v_to place;
  v_count integer := 0;
begin
  if v_again is not null then return v_again; end if;
  b := guard.bundle(guard.said(p, 'bundle', 'the name on the strap'));
  select * into v_to from place where place_id = guard.place(guard.said(p, 'place', 'where it is put'));
  perform guard.lock_pieces(array(select piece_id from piece where bundle_id = b.bundle_id and length_nm > 0));
  for e in select * from piece where bundle_id = b.bundle_id and length_nm > 0 order by piece_id loop
    if e.state <> 'on rack' or e.frozen or e.quarantine is not null and v_to.kind not in ('quarantine', 'gate', 'scrap')
       or v_to.site_id <> (select site_id from place where place_id = e.place_id) then
      raise exception using errcode = 'HK043', message = format('bundle %s cannot be put in %s: %s is %s', b.name, v_to.name, e.tag,
        coalesce(guard.blocked_words(e.piece_id), case when e.state = 'on rack' then 'at another site' else e.state::text end));
    end if;
    update piece set place_id = v_to.place_id where piece_id = e.piece_id;
    v_count := v_count + 1;
  end loop;
  return guard.end_deed(jsonb_build_object('bundle', b.name, 'place', v_to.name, 'bars', v_count));
end $$;

-- {"tags":[...],"site","note"}: on the way to another site or van; in transit, it is nowhere else.
create function api.send_to_site(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('send_to_site', p_request, p);
  v_site site;
  v_from bigint;
  v_note text;
  e piece;
  t text;
begin
  if v_again is not null then return v_again; end if;
  v_note := guard.said(p, 'note', 'the number of the transfer note');
  select * into v_site from site where name = guard.said(p, 'site', 'the site it goes to');
  if v_site.site_id is null then
    raise exception using errcode = 'HK026', message = format('no site is called "%s"', p ->> 'site'), hint = '`heatkeep shop places` names the sites';
  elsif jsonb_array_length(coalesce(p -> 'tags', '[]')) = 0 then
    raise exception using errcode = 'HK026', message = 'say what is sent: tags is empty';
  end if;
  perform guard.lock_tags(array(select jsonb_array_elements_text(p -> 'tags')));
  for t in select * from jsonb_array_elements_text(p -> 'tags') order by 1 loop
    e := guard.piece_for_deed(t);
    perform guard.free_to_change(e, 'sent away');
    select site_id into v_from from place where place_id = e.place_id;
    if v_from = v_site.site_id then
      raise exception using errcode = 'HK043', message = format('%s is at %s already', e.tag, v_site.name);
    end if;
    perform guard.drop_promise(e.piece_id, 'sent to ' || v_site.name);
    insert into transfer (piece_id, from_site_id, to_site_id, note, sent_nm) values (e.piece_id, v_from, v_site.site_id, v_note, e.length_nm);
    update piece set state = 'in transit', place_id = null, bundle_id = null where piece_id = e.piece_id;
  end loop;
  return guard.end_deed(jsonb_build_object('note', v_note, 'sent', jsonb_array_length(p -> 'tags')));
end $$;

-- {"tag","place","length_nm","doubt_nm"?,"measured_with"?}: arrived and measured; a difference is named unexplained.
create function api.receive_transfer(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('receive_transfer', p_request, p);
  e piece;
  v_to place;
  t transfer;
begin
  if v_again is not null then return v_again; end if;
  e := guard.piece_for_deed(guard.said(p, 'tag', 'the tag that is read'));
  select * into t from transfer where piece_id = e.piece_id and received_nm is null;
  select * into v_to from place where place_id = guard.place(guard.said(p, 'place', 'where it is put'));
  if t.transfer_id is null or e.state <> 'in transit' then
    raise exception using errcode = 'HK043', message = format('%s is not on its way: it is %s', e.tag, e.state), hint = '`heatkeep transfer list` names what is';
  elsif t.to_site_id <> v_to.site_id then
    raise exception using errcode = 'HK043', message = format('%s was sent to %s; %s is at another site', e.tag,
      (select name from site where site_id = t.to_site_id), v_to.name);
  end if;
  perform guard.said(p, 'length_nm', 'the length as measured on arrival');
  perform guard.measure(e, p, format('transfer %s: arrived shorter or longer than sent', t.note));
  update piece set state = 'on rack', place_id = v_to.place_id where piece_id = e.piece_id;
  update transfer set received_nm = (p ->> 'length_nm')::bigint where transfer_id = t.transfer_id;
  return guard.end_deed(jsonb_build_object('tag', e.tag, 'place', v_to.name, 'sent_nm', t.sent_nm,
    'difference_nm', (p ->> 'length_nm')::bigint - t.sent_nm, 'warning', guard.device_words(p ->> 'measured_with')));
end $$;

create view api.bundles as
  select b.name as bundle, b.strapped, l.heat, w.name as place, count(p.piece_id) as bars, sum(p.length_nm)::bigint as length_nm, array_agg(p.tag order by p.tag) as tags
    from book.bundle b join book.lot l using (lot_id) join book.piece p using (bundle_id) left join book.place w on w.place_id = p.place_id
    where p.length_nm > 0 group by b.bundle_id, b.name, b.strapped, l.heat, w.name;
create view api.transfers as
  select t.note, p.tag, a.name as from_site, b.name as to_site, t.sent_nm, t.received_nm, t.received_nm - t.sent_nm as difference_nm
    from book.transfer t join book.piece p using (piece_id) join book.site a on a.site_id = t.from_site_id join book.site b on b.site_id = t.to_site_id;
