-- Tag numbers: site letter, digits, and the check character of ISO/IEC 7064, system MOD 37,36 (hybrid, 0-9 A-Z):
-- P starts at 36; for every character S = (P + value) mod 36, or 36 for 0; P = 2 S mod 37; the check character c
-- makes (P + c) mod 36 = 1.
create function guard.tag_check(p_body text) returns text
language plpgsql immutable as $$
declare
  v_p integer := 36;
  v_s integer;
  c text;
begin
  foreach c in array string_to_array(p_body, null) loop
    v_s := (v_p + strpos('0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ', c) - 1) % 36;
    v_p := (case v_s when 0 then 36 else v_s end * 2) % 37;
  end loop;
  return substr('0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ', ((37 - v_p) % 36) + 1, 1);
end $$;

create function guard.tag_of(p_letter text, p_number bigint) returns text
language plpgsql immutable as $$
declare
  v_body text := p_letter || lpad(p_number::text, greatest(6, length(p_number::text)), '0');
begin
  return v_body || guard.tag_check(v_body);
end $$;

create function guard.new_tag(p_site bigint) returns text
language plpgsql volatile as $$
begin
  return guard.tag_of((select letter from site where site_id = p_site), nextval('book.tag_number'));
end $$;

-- A tag that a device gave out itself: well formed, with the site's offline letter, from a block of that device.
create function guard.offline_tag(p_tag text, p_device text) returns text
language plpgsql stable as $$
declare
  v_tag text := upper(btrim(p_tag));
begin
  if v_tag !~ '^[A-Z][0-9]{6,}[0-9A-Z]$' or guard.tag_check(left(v_tag, -1)) <> right(v_tag, 1) then
    raise exception using errcode = 'HK024', message = format('"%s" is not a well formed tag', p_tag);
  end if;
  if not exists (select from tag_block b join device d using (device_id) join site s using (site_id)
      where d.name = p_device and s.offline_letter = left(v_tag, 1)
        and substr(v_tag, 2, length(v_tag) - 2)::bigint between b.first_no and b.last_no) then
    raise exception using errcode = 'HK025', message = format('tag %s is not from a block of device "%s"', v_tag, p_device);
  end if;
  return v_tag;
end $$;
