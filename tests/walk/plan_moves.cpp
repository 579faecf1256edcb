#include "tests/walk/moves.h"

namespace heatkeep {

std::vector<Move> PlanMoves() {
  return {
      {"add_cut_list", 14, R"(
select jsonb_build_object('name', pg_temp.word('L'), 'lines', (select jsonb_agg((pg_temp.metal() - 'heat') || jsonb_build_object('order', o, 'line', i::text,
    'customer', pg_temp.one('{Pallant,Drewe}'), 'length_nm', pg_temp.mm(80, 700), 'quantity', pg_temp.upto(12), 'tolerance_plus_nm', 1000000, 'condition', '', 'papers', pg_temp.one('{none,none,2.2,3.1}'),
    'one_heat', pg_temp.one('{"","",a}'), 'owner', 'ours')
    || case when random() < 0.25 then '{"owner": "Ister", "customer": "Ister"}' else '{}' end::jsonb) from generate_series(1, pg_temp.upto(3)) i)) from pg_temp.word('O') o)"},
      {"commit_plan", 45, R"(
select jsonb_build_object('aim', 'drops-first', 'saw', saw, 'bundled', false, 'kerf_nm', kerf_nm, 'trim_nm', trim_nm, 'grip_nm', grip_nm, 'status', 'proved', 'ended_by', 'proof', 'proof', 'by hand',
    'value', '{}'::jsonb, 'bound', '{}'::jsonb, 'shorts', '[]'::jsonb, 'layouts', jsonb_build_array(jsonb_build_object('tag', tag, 'version', version, 'length_nm', p_len, 'trim_nm', trim,
      'kerf_nm', kerf, 'left_nm', left_nm, 'left', case when left_nm = 0 then 'none' when left_nm >= 150000000 or owner <> 'ours' then 'drop' else 'scrap' end,
      'cuts', jsonb_build_array(jsonb_build_object('order', "order", 'line', line, 'count', n, 'length_nm', l_len)))))
  from (select *, p_len - trim - kerf - n * l_len as left_nm from (select *, n * kerf_nm + case when trim > 0 then kerf_nm else 0 end as kerf from (
    select w.saw, w.kerf_nm, w.trim_nm, w.grip_nm, p.tag, p.version, p.len as p_len, p.owner, l."order", l.line, l.len as l_len, least(l.open, pg_temp.upto(6)) as n,
        case when p.ends = 0 then w.trim_nm else 0 end as trim
      from (select * from w_piece where state = 'on rack' and len > 60000000 and quarantine is null and not frozen order by random() limit 15) p
      join w_line l on l.section_id = p.section_id and l.grade = p.grade and l.owner = p.owner and (l.papers <= p.papers or l.papers = 'none') and l.open > 0 cross join api.saws w) a) b) c
  where left_nm >= grip_nm order by random() limit 1)"},
      // two alike, to be cut together
      {"commit_plan", 10, R"(
select jsonb_build_object('aim', 'drops-first', 'saw', saw, 'bundled', true, 'kerf_nm', kerf_nm, 'trim_nm', trim_nm, 'grip_nm', grip_bundled_nm, 'status', 'proved', 'ended_by', 'proof', 'proof', 'by hand',
    'value', '{}'::jsonb, 'bound', '{}'::jsonb, 'shorts', '[]'::jsonb, 'layouts', (select jsonb_agg(jsonb_build_object('tag', p.tag, 'version', p.version, 'length_nm', p.len, 'trim_nm', d.trim,
      'kerf_nm', d.kerf, 'left_nm', d.left_nm, 'left', case when d.left_nm >= 150000000 or p.owner <> 'ours' then 'drop' else 'scrap' end,
      'cuts', jsonb_build_array(jsonb_build_object('order', d."order", 'line', d.line, 'count', d.n, 'length_nm', d.l_len)))) from w_piece p where p.tag = any (d.tags)))
  from (select *, p_len - trim - kerf - n * l_len as left_nm from (select *, n * kerf_nm + case when trim > 0 then kerf_nm else 0 end as kerf from (
    select w.saw, w.kerf_nm, w.trim_nm, w.grip_bundled_nm, g.tags, g.len as p_len, l."order", l.line, l.len as l_len, least(l.open / 2, pg_temp.upto(4)) as n, case when g.ends = 0 then w.trim_nm else 0 end as trim
      from (select section_id, grade, owner, papers, lot_id, len, ends, (array_agg(tag))[1:2] as tags from w_piece where state = 'on rack' and len > 60000000 and quarantine is null and not frozen
        group by 1, 2, 3, 4, 5, 6, 7 having count(*) > 1) g
      join w_line l on l.section_id = g.section_id and l.grade = g.grade and l.owner = g.owner and (l.papers <= g.papers or l.papers = 'none') and l.open > 1 cross join api.saws w) a) b where n > 0) d
  where left_nm >= grip_bundled_nm and left_nm > 0 order by random() limit 1)"},
      // a layout is let go and planned another way, on the same piece or none
      {"replan", 6, R"(
select jsonb_build_object('plan', q.plan_id, 'reason', 'the bar is bent', 'drop', jsonb_build_array(f.layout_no), 'saw', w.saw, 'bundled', q.bundled, 'kerf_nm', q.kerf_nm, 'trim_nm', q.trim_nm,
    'grip_nm', q.grip_nm, 'aim', q.aim, 'status', q.status, 'ended_by', q.ended_by, 'proof', q.proof, 'value', q.value, 'bound', q.bound, 'shorts', '[]'::jsonb, 'layouts', case when random() < 0.4 then '[]'::jsonb
    else jsonb_build_array(jsonb_build_object('tag', p.tag, 'version', p.version, 'length_nm', p.length_nm, 'trim_nm', f.trim_nm, 'kerf_nm', f.kerf_nm, 'left_nm', f.left_nm, 'left', f.left_fate, 'cuts',
      (select jsonb_agg(jsonb_build_object('order', c.order_no, 'line', c.line_no, 'count', k.count, 'length_nm', k.length_nm)) from book.layout_cut k join book.cut_line c using (cut_line_id)
        where k.layout_id = f.layout_id))) end)
  from book.plan q join book.layout f using (plan_id) join book.piece p using (piece_id) join book.saw s using (saw_id) join api.saws w on w.saw = s.name
  where f.state in ('promised', 'at saw') order by random() limit 1)"},
      {"report_missing", 4, R"(select tag, 'not where it should be' from w_piece where state = 'on rack' order by random() limit 1)"},
      {"cancel_plan", 4, R"(select plan_id, 'planned anew' from book.plan where state = 'live' order by random() limit 1)"},
      {"reserve", 12, R"(
select jsonb_build_object('tag', tag, 'order', "order", 'line', line, 'count', least(open, pg_temp.upto(3))) || case when random() < 0.2 then jsonb_build_object('until', now() + interval '1 second') else '{}' end
  from w_piece p join w_line l on l.section_id = p.section_id and l.grade = p.grade and l.owner = p.owner and l.open > 0 where p.state = 'on rack' and p.len > 3 * l.len order by random() limit 1)"},
      {"unreserve", 4,
       R"(select tag, 'the order can wait' from api.promises r join book.piece p using (tag) where r.state = 'live' and p.state <> 'at saw' order by random() limit 1)"},
      {"lapse_promises", 3, ""},
      {"change_order", 6, R"(
select jsonb_build_object('order', "order", 'line', line, 'quantity', pg_temp.upto(9) - 1, 'place', 'B3', 'reason', 'the customer wrote') from w_line order by random() limit 1)"},
      {"pieces_to_stock", 4, R"(
select jsonb_build_object('order', order_no, 'line', line_no, 'count', 1, 'place', 'B3', 'reason', 'one too many') from w_stroke join book.cut_line using (cut_line_id)
  where class = 'good' and shipment_line_id is null order by random() limit 1)"},
      {"not_cut", 6, R"(
select jsonb_build_object('tag', coalesce((select tag from book.piece q where q.from_cut_id = c.cut_id and c.closed order by piece_id desc limit 1), e.tag), 'count', pg_temp.upto(2), 'reason', 'pressed once more')
  from (select cut_id from w_stroke where class = 'good' order by random() limit 1) s join book.cut c using (cut_id) join book.piece e using (piece_id))"},
      {"reuse_reject", 5, R"(
select jsonb_build_object('reject', stroke_id, 'length_nm', s.length_nm - pg_temp.upto(3) + 1, 'place', 'B3', 'heat', coalesce(l.heat, 'NO HEAT'), 'reason', 'long enough for another')
  from w_stroke s join book.lot l using (lot_id) where class = 'reject' and reused_as_id is null order by random() limit 1)"},
      {"recut", 5, R"(
select jsonb_build_object('reject', r.stroke_id, 'tag', p.tag, 'agreed', '{"who": "the buyer", "writing": "letter"}'::jsonb) from (select s.* from w_stroke s
    where class = 'reject' and not exists (select from book.recut n where n.reject_id = s.stroke_id) order by random() limit 9) r join w_line l on l.id = r.cut_line_id
  join w_piece p on p.section_id = l.section_id and p.grade = l.grade and p.owner = l.owner where p.state = 'on rack' order by random() limit 1)"},
      {"record_consent", 4, R"(
select jsonb_build_object('order', "order", 'line', line, 'papers', '2.2', 'count', pg_temp.upto(4), 'agreed_by', 'the buyer', 'writing', 'letter', 'cost_cents', 0) from w_line order by random() limit 1)"},
      {"sign_consent", 4, R"(select consent_id from book.consent where signed_by is null order by random() limit 1)"},
      {"ship", 14, R"(
select jsonb_build_object('note', pg_temp.word('D'), 'customer', k.name, 'lines', jsonb_build_array(jsonb_build_object('order', c.order_no, 'line', c.line_no, 'count', 1 + (count(*) - 1) / 2)
    || case when random() < 0.5 then jsonb_build_object('heats', jsonb_agg(distinct l.heat)) else '{}' end))
  from w_stroke s join book.cut_line c using (cut_line_id) join book.party k on k.party_id = c.customer_id join book.lot l using (lot_id)
  where s.class = 'good' and s.shipment_line_id is null and not s.held group by k.name, c.order_no, c.line_no order by random() limit 1)"},
  };
}

}  // namespace heatkeep
