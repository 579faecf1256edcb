-- Labels: what is printed for a piece, again whenever it is asked for.

-- What the label of a piece says. Never without a heat, or NO HEAT.
create function guard.label(p_piece bigint) returns jsonb
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return (select jsonb_build_object('tag', e.tag, 'grade', g.designation, 'number', g.number, 'condition', l.condition, 'section', x.label,
    'length_nm', e.length_nm, 'mass_g', guard.mass_g(e.length_nm, x.area_um2, g.density_kg_m3), 'heat', guard.heat_word(l.lot_id),
    'document', guard.document_words(l.lot_id), 'owner', case when e.owner_id <> 0 then 'OWNED BY ' || upper(o.name) end,
    'limits', guard.blocked_words(e.piece_id), 'parent', (select tag from book.piece q where q.piece_id = e.parent_id),
    'place', w.name, 'from', (select string_agg(distinct case d.kind when 'pipe' then 'from piped bar' else 'from a bar with ' || d.kind end, ', ')
      from book.defect_report d where d.piece_id = any (e.path)))
  from book.piece e join book.lot l using (lot_id) left join book.grade g using (grade_id) join book.section x using (section_id)
  join book.party o on o.party_id = e.owner_id left join book.place w using (place_id) where e.piece_id = p_piece);

create function api.label(p_tag text) returns jsonb
language sql stable security definer set search_path = book, pg_catalog, pg_temp
return guard.label((select piece_id from book.piece where tag = upper(regexp_replace(p_tag, '[\s\-]', '', 'g'))));
