-- The shop as the owner sets it up: everybody it deals with, places, saws, settings, prices and rules from a date.
create function api.define_grade(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('define_grade', p_request, p);
  v_new integer;
begin
  if v_again is not null then return v_again; end if;
  insert into grade (designation, number, uns, family, standard, density_kg_m3, density_source, source, evidence)
    select designation, number, uns, family, standard, density_kg_m3, density_source, source, evidence
      from jsonb_populate_recordset(null::grade, p) n
      where not exists (select from grade g where g.designation = n.designation);
  get diagnostics v_new = row_count;
  return guard.end_deed(jsonb_build_object('added', v_new));
end $$;

-- {"parties": [{"name","mill","supplier","customer"}], "sites": [{"site","letter","offline_letter"}],
--  "places": [{"place","site","kind","bay","level","walk","max_length_nm","max_mass_g"}],
--  "saws": [{"saw","place","max_section_nm","band","kerf_nm","trim_nm","grip_nm","grip_bundle_nm"}]}; known ones stay.
create function api.define_shop(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('define_shop', p_request, p);
  s jsonb;
  v_saw bigint;
begin
  if v_again is not null then return v_again; end if;
  insert into party (name, is_mill, is_supplier, is_customer)
    select n ->> 'name', coalesce((n ->> 'mill')::boolean, false), coalesce((n ->> 'supplier')::boolean, false),
        coalesce((n ->> 'customer')::boolean, false)
      from jsonb_array_elements(p -> 'parties') n
    on conflict (name) do update set is_mill = party.is_mill or excluded.is_mill,
      is_supplier = party.is_supplier or excluded.is_supplier, is_customer = party.is_customer or excluded.is_customer;
  insert into site (name, letter, offline_letter)
    select n ->> 'site', n ->> 'letter', n ->> 'offline_letter' from jsonb_array_elements(p -> 'sites') n
      where not exists (select from site where name = n ->> 'site');
  if exists (select from site a join site b on a.letter = b.offline_letter) then
    raise exception using errcode = 'HK041', message = 'a letter for the book''s tags and one for devices'' tags are the same',
      hint = 'give every site a letter, and an offline letter, that no other site has';
  end if;
  insert into place (name, site_id, kind, bay, level, walk, max_length_nm, max_mass_g)
    select n ->> 'place', (select site_id from site where name = n ->> 'site'), (n ->> 'kind')::place_kind, n ->> 'bay',
        (n ->> 'level')::integer, coalesce((n ->> 'walk')::integer, 0), (n ->> 'max_length_nm')::bigint, (n ->> 'max_mass_g')::bigint
      from jsonb_array_elements(p -> 'places') n where not exists (select from place where name = n ->> 'place');
  for s in select * from jsonb_array_elements(p -> 'saws') loop
    continue when exists (select from saw where name = s ->> 'saw');
    insert into saw (name, place_id, max_section_nm)
      values (s ->> 'saw', guard.place(s ->> 'place'), (s ->> 'max_section_nm')::bigint) returning saw_id into v_saw;
    insert into saw_band (saw_id, band, kerf_nm, fitted_from)
      values (v_saw, s ->> 'band', (s ->> 'kerf_nm')::bigint, now());
    insert into saw_grip (saw_id, bundled, grip_nm, trim_nm)
      values (v_saw, false, (s ->> 'grip_nm')::bigint, (s ->> 'trim_nm')::bigint),
             (v_saw, true, coalesce((s ->> 'grip_bundle_nm')::bigint, (s ->> 'grip_nm')::bigint), (s ->> 'trim_nm')::bigint);
  end loop;
  return guard.end_deed(jsonb_build_object('places', (select count(*) from place), 'saws', (select count(*) from saw)));
end $$;

-- {"settings": {name: value}, "prices": [{"grade","section"?,"cents_per_tonne","scrap_cents_per_tonne","from"}],
--  "keep": [{"grade"?,"section"?,"keep_nm","from"}], "rates": [{"saw"?,"family","mm2_per_min","from"}]}; section as in
-- guard.section. The past is not rewritten: each counts from its date on.
create function api.set_rules(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('set_rules', p_request, p);
  v_wrong text;
begin
  if v_again is not null then return v_again; end if;
  select string_agg(format('"%s"', key), ', ' order by key) into v_wrong from jsonb_object_keys(coalesce(p -> 'settings', '{}')) key
    where key not in (select name from guard.setting_names());
  if v_wrong is not null then
    raise exception using errcode = 'HK026', message = format('no setting is called %s', v_wrong),
      hint = 'expected ' || (select string_agg(name, ', ' order by name) from guard.setting_names());
  end if;
  select string_agg(format('%s "%s" (%s)', key, value, w.expected), ', ' order by key) into v_wrong
    from jsonb_each_text(coalesce(p -> 'settings', '{}')) cross join lateral guard.setting_wrong(key, coalesce(value, '')) w (expected) where w.expected is not null;
  if v_wrong is not null then
    raise exception using errcode = 'HK026', message = format('settings that cannot be: %s', v_wrong),
      hint = 'expected an amount in its range, whole where the range counts 0, 1; currency three letters (ISO 4217), EUR; time_zone a name of the IANA list, Europe/Berlin; ' || (select string_agg(names || ' ' || array_to_string(words, ' or '), '; ' order by names) from
        (select string_agg(name, ' and ' order by name) as names, words from guard.setting_names() where words is not null group by words) w);
  end if;
  v_wrong := guard.rules_twice(p);
  if v_wrong is not null then
    raise exception using errcode = 'HK041', message = v_wrong, hint = 'give the new one a later date; what was decided before it stays as it was';
  end if;
  insert into setting (name, value, valid_from) select key, value, now() from jsonb_each_text(coalesce(p -> 'settings', '{}'));
  insert into price (grade_id, section_id, cents_per_tonne, scrap_cents_per_tonne, valid_from)
    select guard.grade(n ->> 'grade'), case when jsonb_typeof(n -> 'section') = 'object' then guard.section(n -> 'section') end,
        (n ->> 'cents_per_tonne')::bigint, (n ->> 'scrap_cents_per_tonne')::bigint, coalesce((n ->> 'from')::timestamptz, now())
      from jsonb_array_elements(p -> 'prices') n;
  insert into keep_rule (grade_id, section_id, keep_nm, valid_from)
    select case when n ->> 'grade' is not null then guard.grade(n ->> 'grade') end,
        case when jsonb_typeof(n -> 'section') = 'object' then guard.section(n -> 'section') end,
        (n ->> 'keep_nm')::bigint, coalesce((n ->> 'from')::timestamptz, now())
      from jsonb_array_elements(p -> 'keep') n;
  insert into cutting_rate (saw_id, family, mm2_per_min, valid_from)
    select case when n ->> 'saw' is not null then guard.saw(n ->> 'saw') end, n ->> 'family', (n ->> 'mm2_per_min')::bigint,
        coalesce((n ->> 'from')::timestamptz, now())
      from jsonb_array_elements(p -> 'rates') n;
  return guard.end_deed('{"done": true}');
end $$;

-- Prices and keep rules of the body that are in the book from the same day on, or that would count for days that
-- have passed under a later one; in words, or null.
create function guard.rules_twice(p jsonb) returns text
language sql volatile
begin atomic
  with said as (
    select 'price' as what, guard.grade(n ->> 'grade') as grade_id, case when jsonb_typeof(n -> 'section') = 'object' then guard.section(n -> 'section') end as section_id,
        coalesce((n ->> 'from')::timestamptz, now()) as valid_from, n from jsonb_array_elements(p -> 'prices') n
    union all
    select 'keep rule', case when n ->> 'grade' is not null then guard.grade(n ->> 'grade') end,
        case when jsonb_typeof(n -> 'section') = 'object' then guard.section(n -> 'section') end, coalesce((n ->> 'from')::timestamptz, now()), n
      from jsonb_array_elements(p -> 'keep') n),
  known as (
    select 'price' as what, grade_id, section_id, valid_from from book.price
    union all select 'keep rule', grade_id, section_id, valid_from from book.keep_rule)
  select string_agg(format('a %s of %s %s is in the book from %s on already', s.what, coalesce(s.n ->> 'grade', 'every grade'),
      coalesce(s.n -> 'section' ->> 'label', 'in every section'), to_char(k.valid_from, 'YYYY-MM-DD HH24:MI')), '; ')
    from said s join known k on k.what = s.what and k.grade_id is not distinct from s.grade_id and k.section_id is not distinct from s.section_id
    where k.valid_from = s.valid_from or (k.valid_from > s.valid_from and k.valid_from <= now() - interval '1 second');
end;

-- Every setting there is: one of these words, or an amount from the least to the most, whole where it is counted with as such; the currency
-- has its three letters, the time zone its name in the IANA list.
create function guard.setting_names() returns table (name text, words text[], lowest numeric, highest numeric, whole boolean)
language sql immutable
begin atomic
  values ('cents_per_extra_heat', null::text[], 0::numeric, 1000000000::numeric, true), ('cents_per_pull', null, 0, 1000000000, true), ('cents_per_return', null, 0, 1000000000, true),
    ('cents_per_setup', null, 0, 1000000000, true), ('cents_per_shelf_year', null, 0, 1000000000, true),
    ('cents_plain_choice', null, 0, 1000000000, true), ('chase_days', null, 0, 3650, true), ('count_limit_cents', null, 0, 1000000000000, true), ('document_mb', null, 0, 1000, false),
    ('lift_limit_g', null, 0, 1000000000, true), ('mass_mismatch_percent', null, 0, 100, false), ('photo_bytes', null, 0, 1000000000, true), ('promise_hours', null, 0.25, 8760, false),
    ('rest_slack_nm', null, 0, 1000000000, true), ('saw_cents_per_minute', null, 0, 1000000000, true), ('shift_first_hour', null, 0, 23.75, false), ('shift_hours', null, 1, 24, false), ('tape_doubt_nm', null, 0, 1000000000, true),
    ('currency', null, null, null, null), ('time_zone', null, null, null, null),
    ('heat_read_back', '{yes,no}', null, null, null), ('judging_by_rounding', '{yes,no}', null, null, null), ('two_person_release', '{yes,no}', null, null, null), ('validators_named', '{yes,no}', null, null, null),
    ('label_paper', '{100x50,62x29,a4,letter}', null, null, null), ('label_code', '{data-matrix,qr}', null, null, null), ('label_dpi', '{203,300,600}', null, null, null);
end;

-- What is wrong with a value for this setting, as what is expected in its place; null where it may be.
create function guard.setting_wrong(p_name text, p_value text) returns text
language plpgsql stable as $$
declare
  n record;
begin
  select * into n from guard.setting_names() where name = p_name;
  if n.words is not null then
    return case when p_value = any (n.words) then null else array_to_string(n.words, ' or ') end;
  elsif p_name = 'time_zone' then
    return case when exists (select from pg_timezone_names z where z.name = p_value) then null else 'Europe/Berlin' end;
  elsif n.lowest is null then
    return case when p_value ~ '^[A-Z]{3}$' then null else 'EUR' end;
  elsif p_value !~ (case when n.whole then '^[0-9]{1,15}$' else '^[0-9]{1,15}([.][0-9]{1,6})?$' end) or p_value::numeric not between n.lowest and n.highest then
    return format(case when n.whole then '%s, %s ... %s' else '%s ... %s' end, variadic case when n.whole then array[n.lowest, n.lowest + 1, n.highest] else array[n.lowest, n.highest] end);
  end if;
  return null;
end $$;

-- What may be cut in a grade's place (one direction), signed by the person of quality who calls this.
create function api.allow_grade(p_request uuid, p_asked text, p_offered text, p_reason text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('allow_grade', p_request, jsonb_build_array(p_asked, p_offered, p_reason), null, null, p_reason);
begin
  if v_again is not null then return v_again; end if;
  insert into grade_standin (asked_grade_id, offered_grade_id, signed_by, reason)
    values (guard.grade(p_asked), guard.grade(p_offered), session_user, p_reason) on conflict do nothing;
  return guard.end_deed('{"done": true}');
end $$;

-- A larger section that may be cut in a section's place, as {"shape","dim1_nm",...} both; one direction only.
create function api.allow_section(p_request uuid, p_asked jsonb, p_offered jsonb, p_reason text) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_deed('allow_section', p_request, jsonb_build_array(p_asked, p_offered, p_reason), null, null, p_reason);
  v_asked bigint;
  v_offered bigint;
  a section;
  o section;
begin
  if v_again is not null then return v_again; end if;
  v_asked := guard.section(p_asked);
  v_offered := guard.section(p_offered);
  select * into a from section where section_id = v_asked;
  select * into o from section where section_id = v_offered;
  if o.shape <> a.shape or o.dim1_nm < a.dim1_nm or o.dim2_nm < a.dim2_nm or o.thickness_nm < a.thickness_nm or o.area_um2 <= a.area_um2 then
    raise exception using errcode = 'HK026', message = format('%s cannot be cut in place of %s', o.label, a.label),
      hint = 'a larger section of the same shape may';
  end if;
  insert into section_standin (asked_section_id, offered_section_id, signed_by, reason)
    values (a.section_id, o.section_id, session_user, p_reason) on conflict do nothing;
  return guard.end_deed('{"done": true}');
end $$;

create view api.section_standins as
  select a.label as asked, o.label as offered, signed_by, reason
    from book.section_standin n join book.section a on a.section_id = n.asked_section_id
    join book.section o on o.section_id = n.offered_section_id;
create view api.grades as
  select designation, number, uns, family, standard, density_kg_m3, density_source, source, evidence from book.grade;
create view api.grade_standins as
  select a.designation as asked, o.designation as offered, signed_by, reason
    from book.grade_standin n join book.grade a on a.grade_id = n.asked_grade_id
    join book.grade o on o.grade_id = n.offered_grade_id;
create view api.parties as
  select name, is_mill, is_supplier, is_customer from book.party where party_id <> 0;
create view api.places as
  select p.name as place, s.name as site, p.kind::text, p.bay, p.level, p.walk, p.max_length_nm, p.max_mass_g
    from book.place p join book.site s using (site_id);
create view api.saws as
  select w.name as saw, p.name as place, w.max_section_nm, b.band, b.kerf_nm, g.grip_nm, g.trim_nm, gb.grip_nm as grip_bundled_nm, w.bundle_bars
    from book.saw w join book.place p using (place_id)
    join book.saw_grip g on g.saw_id = w.saw_id and not g.bundled
    join book.saw_grip gb on gb.saw_id = w.saw_id and gb.bundled
    join lateral (select band, kerf_nm from book.saw_band where saw_id = w.saw_id and fitted_from <= now()
      order by fitted_from desc limit 1) b on true;
create view api.settings_now as
  select distinct on (name) name, value, valid_from from book.setting where valid_from <= now() order by name, valid_from desc;
-- Every price and keep rule there ever was, with who set it and when.
create view api.rules as
  select 'price' as rule, g.designation as grade, x.label as section, p.cents_per_tonne as value, p.scrap_cents_per_tonne as scrap, p.valid_from, h.who, h.at,
      to_char(p.cents_per_tonne / 100000.0, 'FM999999990.00') || ' a kg, scrap ' || to_char(p.scrap_cents_per_tonne / 100000.0, 'FM999999990.00') as words
    from book.price p join book.grade g using (grade_id) left join book.section x using (section_id)
    left join book.happening h on h.tbl = 'price' and h.row_id = p.price_id and h.sets ? 'price_id'
  union all
  select 'keep', g.designation, x.label, k.keep_nm, null, k.valid_from, h.who, h.at, trim_scale(k.keep_nm / 1e6::numeric) || ' mm'
    from book.keep_rule k left join book.grade g using (grade_id) left join book.section x using (section_id)
    left join book.happening h on h.tbl = 'keep_rule' and h.row_id = k.keep_rule_id and h.sets ? 'keep_rule_id'
  union all
  select 'setting ' || s.name, null, null, null, null, s.valid_from, h.who, h.at, s.value
    from book.setting s left join book.happening h on h.tbl = 'setting' and h.row_id = s.setting_id and h.sets ? 'setting_id';
