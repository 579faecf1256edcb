#include "tests/walk/moves.h"

namespace heatkeep {

std::vector<Move> SawMoves() {
  return {
      {"pull", 45, R"(
select tag, coalesce((select w.name from book.plan q join book.saw w using (saw_id) where q.plan_id = f.plan_id), '1'), f.plan_id, null::text, null::text,
    pg_temp.one(array['', '', right(l.heat, 4), l.heat]), case when random() < 0.1 then p.length_nm - 2000000 end
  from book.promise r join book.piece p using (piece_id) join book.lot l using (lot_id) left join book.layout f using (layout_id)
  where r.state = 'live' and p.state = 'on rack' order by random() limit 1)"},
      {"pull_for_line", 10, R"(
select jsonb_build_object('tag', tag, 'saw', pg_temp.one('{1,2,3}'), 'order', "order", 'line', line, 'count', least(open, 2)) from w_piece p join w_line l on l.section_id = p.section_id
  and l.grade = p.grade and l.owner = p.owner and l.open > 0 where p.state = 'on rack' and p.len > l.len order by random() limit 1)"},
      // what the promise says as far as the bar goes, sometimes a reject, a slice or a piece for stock between; finished, or left in the
      // vice
      {"record_cut", 85, R"(
select jsonb_build_object('tag', tag, 'saw', saw, 'finish', finish, 'reason', 'as it went', 'already_cut', random() < 0.5, 'strokes', strokes, 'left',
    case when not finish then null when rest <= 0 then '{"fate": "none"}'::jsonb when rest >= 150000000 or owner_id <> 0 or random() < 0.3
      then jsonb_build_object('fate', 'drop', 'length_nm', rest - case when random() < 0.2 then 1000000 else 0 end, 'place', 'B3')
      else jsonb_build_object('fate', 'scrap', 'bin', case grade_id when 1 then 'bin 2' else 'bin 3' end) end)
  from (select *, length_nm - coalesce((select sum((s ->> 'count')::bigint * ((s ->> 'length_nm')::bigint + (s ->> 'kerf_nm')::bigint)) from jsonb_array_elements(strokes) s), 0) as rest from (
    select p.tag, p.length_nm, p.owner_id, t.grade_id, w.name as saw, random() < 0.7 as finish, jsonb_strip_nulls(jsonb_build_array(
        case when p.ends = 0 and not exists (select from book.cut q where q.piece_id = p.piece_id and not q.closed) then '{"class": "trim", "count": 1, "length_nm": 10000000, "kerf_nm": 2000000}'::jsonb
          else '{"class": "crop", "fault": "a burr", "count": 1, "length_nm": 1000000, "kerf_nm": 2000000}' end)
      || case when fits > 0 then jsonb_build_array(jsonb_build_object('class', 'good', 'order', c.order_no, 'line', c.line_no, 'count', least(n.count, fits), 'length_nm', c.length_nm, 'kerf_nm', 2000000))
        else '[]' end || case pg_temp.upto(8) when 1 then jsonb_build_array(jsonb_build_object('class', 'reject', 'order', c.order_no, 'line', c.line_no, 'count', 1, 'length_nm', c.length_nm - 3000000, 'kerf_nm', 2000000,
          'fault', 'out of square')) when 2 then '[{"class": "test slice", "count": 1, "length_nm": 8000000, "kerf_nm": 2000000, "lab": "B7"}]'
        when 3 then '[{"class": "stock", "count": 2, "length_nm": 20000000, "kerf_nm": 2000000, "place": "B3"}]' else '[]' end) as strokes
      from (select e.* from book.piece e join book.promise using (piece_id) where e.length_nm > 0 and e.state = 'at saw' and promise.state = 'live' order by random() limit 9) p
      join book.lot t using (lot_id) join book.promise r on r.piece_id = p.piece_id and r.state = 'live' join book.saw w on w.place_id = p.place_id
      join lateral (select cut_line_id, count from book.layout_cut k where k.layout_id = r.layout_id union all select r.cut_line_id, r.count where r.cut_line_id is not null) n on true
      join book.cut_line c on c.cut_line_id = n.cut_line_id cross join lateral (select (p.length_nm - 12000000) / (c.length_nm + 2000000) as fits) f
      where p.state = 'at saw' order by random() limit 1) a) b)"},
      {"make_up_bundle", 6, R"(
select jsonb_build_object('saw', w.name, 'tags', (select jsonb_agg(tag) from (select e.tag from book.promise r join book.piece e using (piece_id) join book.layout g using (layout_id)
    where r.state = 'live' and (g.plan_id = f.plan_id or random() < 0.1) and e.state in ('on rack', 'at saw') order by g.plan_id = f.plan_id desc, e.piece_id limit 1 + pg_temp.upto(3)) t))
  from (select g.plan_id from book.promise r join book.layout g using (layout_id) where r.state = 'live' group by 1 having count(*) > 1 order by random() limit 1) f
  join book.plan q using (plan_id) join book.saw w using (saw_id))"},
      // bars of a bundle that are at a saw; one of them now and then with a crop more
      {"record_bundle", 6, R"(
select jsonb_build_object('saw', saw, 'finish', finish, 'reason', 'as it went', 'already_cut', random() < 0.5, 'bars', jsonb_agg(jsonb_build_object('tag', tag, 'strokes', strokes) || case when finish
    then jsonb_build_object('left', case when rest <= 0 then '{"fate": "none"}' else jsonb_build_object('fate', 'drop', 'length_nm', rest, 'place', 'B3') end) else '{}' end))
  from (select *, length_nm - (select sum((s ->> 'count')::bigint * ((s ->> 'length_nm')::bigint + (s ->> 'kerf_nm')::bigint)) from jsonb_array_elements(strokes) s) as rest from (
    select p.tag, p.length_nm, w.name as saw, m.finish, jsonb_build_array('{"class": "trim", "count": 1, "length_nm": 10000000, "kerf_nm": 2000000}'::jsonb,
        jsonb_build_object('class', 'good', 'order', c.order_no, 'line', c.line_no, 'count', k.count, 'length_nm', c.length_nm, 'kerf_nm', 2000000))
      || case pg_temp.upto(6) when 1 then '[{"class": "crop", "fault": "a burr", "count": 1, "length_nm": 1000000, "kerf_nm": 2000000}]'::jsonb else '[]' end as strokes
      from (select u.saw_bundle_id, u.saw_id, random() < 0.7 as finish from book.piece e join book.saw_bundle_bar b using (piece_id) join book.saw_bundle u using (saw_bundle_id)
        where e.length_nm > 0 and e.state = 'at saw' order by random() limit 1) m join book.saw w using (saw_id) join book.saw_bundle_bar b using (saw_bundle_id)
      join book.piece p using (piece_id) join book.promise r on r.piece_id = p.piece_id and r.state = 'live' join book.layout_cut k on k.layout_id = r.layout_id join book.cut_line c on c.cut_line_id = k.cut_line_id
      where p.state = 'at saw' and k.seq = 1) a) b group by saw, finish)"},
      {"measure_at_saw", 5,
       R"(select tag, len - pg_temp.upto(3) * 1000000, 'the tape says so' from w_piece where state = 'at saw' order by random() limit 1)"},
      {"split_piece", 5, R"(
select jsonb_build_object('tag', tag, 'saw', '1', 'kerf_nm', 2000000, 'parts', jsonb_build_array(jsonb_build_object('length_nm', len / 2, 'place', 'B1-1', 'heat', coalesce(heat, 'NO HEAT')),
  jsonb_build_object('length_nm', len - len / 2 - 2000000, 'place', 'B3', 'heat', coalesce(heat, 'NO HEAT')))) from w_piece where state = 'on rack' and len > 1000000000 order by random() limit 1)"},
      {"take_test_slice", 3, R"(
select jsonb_build_object('tag', tag, 'saw', '1', 'length_nm', 10000000, 'kerf_nm', 2000000, 'lab', 'B7', 'place', 'B3') from w_piece where state = 'on rack' and len > 300000000 order by random() limit 1)"},
      {"first_piece", 3,
       R"(select jsonb_build_object('saw', '1', 'order', "order", 'line', line, 'measured_nm', len + (pg_temp.upto(3) - 1) * 1000000) from w_line order by random() limit 1)"},
      {"hand_over", 5, R"(
select jsonb_build_object('saw', w.name, 'tag', p.tag, 'words', 'as it stands', 'open', (select jsonb_agg(jsonb_build_object('order', order_no, 'line', line_no, 'why', 'shift ended'))
    from book.promise r left join book.layout_cut k using (layout_id) join book.cut_line c on c.cut_line_id = coalesce(k.cut_line_id, r.cut_line_id) where r.piece_id = p.piece_id and r.state = 'live'))
  from book.saw w left join book.piece p on p.place_id = w.place_id and p.state = 'at saw' order by random() limit 1)"},
      {"take_over", 5, R"(select name from book.saw join book.handover using (saw_id) where taken_by is null order by random() limit 1)"},
      {"report_defect", 3, R"(
select jsonb_build_object('tag', tag, 'kind', pg_temp.one('{pipe,crack,seam}'), 'at_nm', 10000000, 'to_nm', 30000000, 'from_end', pg_temp.one('{first,last}'), 'words', 'seen on the face')
  from w_piece where len > 30000000 order by random() limit 1)"},
      {"answer_defect", 8,
       R"(select defect_report_id, pg_temp.one('{cut on,cut on,cut on,stop}'), 'only that bar' from book.defect_report where answer is distinct from 'cut on' order by random() limit 1)"},
      {"report_half_cut", 2, R"(
select jsonb_build_object('tag', tag, 'saw', '1', 'at_nm', 10000000, 'kerf_nm', 2000000, 'cause', pg_temp.one('{blade broke,bar slipped}')) from w_piece where state in ('at saw', 'on rack')
  and len > 20000000 order by state, random() limit 1)"},
      {"fit_band", 2, R"(
select jsonb_build_object('saw', pg_temp.one('{1,2,3}'), 'width_nm', 34000000, 'thickness_nm', 1100000, 'kerf_nm', 1800000 + pg_temp.upto(3) * 100000, 'reason', 'worn'))"},
      {"take_tag_block", 2, R"(select pg_temp.one('{scanner 1,scanner 2,scanner 3}'), 'main', pg_temp.upto(20))"},
      {"send_offline", 12, R"(
select jsonb_build_object('device', d.name, 'seq', (select coalesce(max(seq), 0) + 1 from book.offline_deed o where o.device_id = d.device_id), 'request', gen_random_uuid(), 'true_at', now() - interval '1 hour') || b.deed
  from book.device d cross join lateral (select * from (
    select jsonb_build_object('deed', 'put_away', 'body', jsonb_build_object('tag', tag, 'place', 'B3')) as deed, random() as r from w_piece
    union all select jsonb_build_object('deed', 'pull', 'body', jsonb_build_object('tag', tag, 'saw', '1')), random() / 2 from api.promises where state = 'live'
    union all select jsonb_build_object('deed', 'record_cut', 'body', jsonb_build_object('tag', tag, 'saw', '1', 'finish', false, 'strokes',
      '[{"class": "crop", "fault": "a crack", "count": 1, "length_nm": 5000000, "kerf_nm": 2000000}]'::jsonb)), random() from w_piece where len > 90000000
    union all select jsonb_build_object('deed', 'scrap_piece', 'body', jsonb_build_object('tag', tag, 'bin', 'bin 2', 'reason', 'short')), random() * 4 from w_piece) x order by r limit 1) b
  where d.name like 'scanner%' order by random() limit 1)"},
  };
}

}  // namespace heatkeep
