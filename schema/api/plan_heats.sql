-- Lines that limit their heats, over all plans and cuts.

-- Heats that a line with a wish about heats has metal of: what was cut, and what is promised to be cut.
create view api.line_heats as
  select l.name as cut_list, c.cut_list_id, c.cut_line_id, c.order_no, c.line_no, c.one_heat, c.max_heats, m.name as mill, t.heat,
      coalesce(m.name || ' ' || t.heat, 'lot ' || t.lot_id) as of_heat, u.plan_id, u.layout_no
    from book.cut_line c join book.cut_list l using (cut_list_id)
    join lateral (select * from guard.line_metal n where n.cut_line_id = c.cut_line_id offset 0) u on true
    join book.lot t on t.lot_id = u.lot_id left join book.party m on m.party_id = t.mill_id
    where c.one_heat is not null or c.max_heats is not null;

-- Refuses a plan whose layouts give a line more heats than it asks for, what is cut or planned of it elsewhere included.
create function guard.require_heats_asked(p_plan bigint) returns void
language plpgsql stable as $$
declare
  v_words text;
  v_lists bigint[] := array(select distinct c.cut_list_id from layout f join layout_cut k using (layout_id) join cut_line c using (cut_line_id) where f.plan_id = p_plan);
begin
  select string_agg(words, '; ') into v_words from (
    select format('one heat is asked for %s', string_agg(distinct format('order %s line %s', order_no, line_no), ', ')) as words
      from api.line_heats where cut_list_id = any (v_lists) and one_heat is not null group by cut_list_id, one_heat
      having bool_or(plan_id = p_plan) and count(distinct of_heat) > greatest(1, count(distinct of_heat) filter (where plan_id is distinct from p_plan))
    union all
    select format('order %s line %s may come from %s heats', order_no, line_no, max_heats)
      from api.line_heats where cut_list_id = any (v_lists) and max_heats is not null group by cut_line_id, order_no, line_no, max_heats
      having bool_or(plan_id = p_plan) and count(distinct of_heat)
        > greatest(max_heats, count(distinct of_heat) filter (where plan_id is distinct from p_plan))) x;
  if v_words is not null then
    raise exception using errcode = 'HK042', message = v_words;
  end if;
end $$;
