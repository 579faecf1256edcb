-- What a word that was scanned or typed could be. Everything that bears it, the likeliest first; nothing is guessed beyond a tag's form.
create function api.look_up(p_text text) returns table (kind text, name text, mill text, words text)
language plpgsql stable security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_text text := btrim(p_text);
  v_tag text := guard.tag_form(v_text);
begin
  return query
    select 'piece'::text, p.tag, null::text, format('%s, %s', p.kind, case when p.length_nm > 0 then coalesce(w.name, p.state::text) else p.state::text end)
      from piece p left join place w using (place_id) where p.tag = v_tag or p.old_tag = v_text;
  return query
    select 'heat'::text, l.heat, m.name, string_agg(distinct concat_ws(' ', x.label, g.designation, l.condition), '; ')
      from lot l left join party m on m.party_id = l.mill_id left join grade g using (grade_id) join section x using (section_id)
      where l.heat = v_text group by l.heat, m.name order by m.name;
  return query
    select 'order'::text, c.order_no, null::text, coalesce(min(k.name), '') from cut_line c left join party k on k.party_id = c.customer_id
      where c.order_no = v_text group by c.order_no;
  return query select 'place'::text, w.name, null::text, w.kind::text from place w where w.name = v_text;
  return query
    select distinct 'document'::text, d.number, i.name, d.type::text from document d join party i on i.party_id = d.issuer_id where d.number = v_text;
  return query select 'cut list'::text, t.name, null::text, ''::text from cut_list t where t.name = v_text;
  return query select 'note'::text, s.note, null::text, k.name from shipment s join party k on k.party_id = s.customer_id where s.note = v_text;
end $$;
