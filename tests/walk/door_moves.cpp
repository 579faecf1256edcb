#include "tests/walk/moves.h"

namespace heatkeep {

std::vector<Move> DoorMoves() {
  return {
      {"receive_delivery", 40, R"(
select jsonb_build_object('note', pg_temp.word('N'), 'supplier', 'Vandrek', 'purchase_order', pg_temp.one('{P1,P2}'), 'lines',
  (select jsonb_agg(pg_temp.metal() || jsonb_build_object('line', i::text, 'length_nm', pg_temp.mm(300, 6000), 'count', pg_temp.upto(3), 'slip_count', pg_temp.upto(3), 'slip_line', i::text,
    'place', pg_temp.one('{B1-1,B1-1,GATE,B3}'), 'papers_state', pg_temp.one('{none,awaited,none}'), 'owner', pg_temp.one('{"","","",Ister}'), 'ends', pg_temp.upto(3) - 1, 'doubt_nm', 0,
    'kind', 'bar', 'mark', pg_temp.one('{last,first,unknown}'), 'order_line', pg_temp.one('{1,""}'), 'read_from', pg_temp.one('{metal,metal,metal,tag,slip}'))) from generate_series(1, pg_temp.upto(2)) i)))"},
      {"open_balance", 6, R"(
select jsonb_build_object('name', pg_temp.word('OB'), 'lines', jsonb_build_array(pg_temp.metal() || jsonb_build_object('line', '1', 'length_nm', pg_temp.mm(200, 3000), 'count', 1,
  'place', 'B3', 'papers_state', 'none', 'ends', 1, 'kind', 'drop', 'mark', 'none', 'old_tag', pg_temp.word('X')))))"},
      {"sign_opening", 3, R"(select jsonb_build_object('name', note) from book.receipt where kind = 'opening' order by random() limit 1)"},
      {"decide_over", 4, R"(
select jsonb_build_object('supplier', 'Vandrek', 'note', note, 'line', line, 'keep', random() < 0.5, 'reason', 'as it comes') from book.receipt_line join book.receipt using (receipt_id)
  where over_count is not null order by over_by is not null, random() limit 1)"},
      {"expect_delivery", 4, R"(
select jsonb_build_object('purchase_order', pg_temp.one('{P1,P2,P3}'), 'supplier', 'Vandrek', 'lines', jsonb_build_array((pg_temp.metal() - 'heat') || jsonb_build_object('line',
  pg_temp.one('{1,2,3,4,5,6,7,8}'), 'length_nm', pg_temp.mm(3000, 6000), 'quantity', pg_temp.upto(9), 'due', '2030-01-01'))))"},
      {"promise_expected", 4, R"(
select jsonb_build_object('purchase_order', purchase_order, 'purchase_line', e.line, 'order', l."order", 'line', l.line, 'bars', pg_temp.upto(3)) from book.purchase_line e join w_line l
  on l.section_id = e.section_id order by random() limit 1)"},
      {"file_document", 10, R"(
select jsonb_build_object('issuer', mill, 'number', pg_temp.word('C'), 'type', pg_temp.one('{3.1,3.1,2.2}'), 'issued_on', '2026-01-02', 'file_base64', 'iVBORw0KGgoAAAANSUhEUg==', 'lots', jsonb_build_array(
  jsonb_build_object('heat', heat, 'section', section, 'condition', condition, 'grade', grade, 'heat_analysis', jsonb_build_object('C', pg_temp.one('{410000,900000}')),
  'tests', '[{"property": "Rm", "value_milli": 900000, "unit": "MPa"}]'::jsonb))) from w_piece where awaited order by random() limit 1)"},
      {"file_papers", 5, R"(
select jsonb_build_object('issuer', mill, 'number', pg_temp.word('C'), 'type', '3.1', 'issued_on', '2026-01-02', 'lots', jsonb_build_array(
  jsonb_build_object('heat', heat, 'section', section, 'condition', condition, 'grade', grade))) from w_piece where awaited order by random() limit 1)"},
      {"accept_document", 6, R"(
select jsonb_build_object('issuer', 'Vandrek', 'number', number) from book.document order by accepted_by is not null, random() limit 1)"},
      {"replace_document", 4, R"(
select jsonb_build_object('issuer', 'Vandrek', 'number', d.number, 'type', pg_temp.one('{3.1,2.2}'), 'issued_on', '2026-02-02', 'reason', 'misprint', 'lots', jsonb_build_array(jsonb_build_object(
  'heat', l.heat, 'section', jsonb_build_object('shape', 'round', 'dim1_nm', s.dim1_nm, 'label', s.label), 'condition', l.condition, 'grade', g.designation)))
  from book.document d join book.document_lot using (document_id) join book.lot l using (lot_id) join book.section s using (section_id) join book.grade g using (grade_id) order by random() limit 1)"},
      {"pass_on_document", 4, R"(
select jsonb_build_object('issuer', 'Vandrek', 'number', d.number, 'note', h.note, 'rule', pg_temp.one('{EN 10204,ISO 10474}'), 'form', pg_temp.one('{original,copy}'), 'additional', 'we say 3 of 9')
  from book.document d join book.document_lot using (document_id) join w_stroke s using (lot_id) join book.shipment_line using (shipment_line_id) join book.shipment h using (shipment_id)
  where d.accepted_by is not null order by random() limit 1)"},
      {"attach_file", 4, R"(
select jsonb_build_object('issuer', i.name, 'number', d.number, 'file_base64', 'iVBORw0KGgoAAAANSUhEUg==') from book.document d join book.party i on i.party_id = d.issuer_id
  where d.file_sha256 is null order by random() limit 1)"},
      {"package_of", 2, R"(
select jsonb_build_object('note', note, 'without_files', true) from book.shipment where exists (select from guard.package_metal(null, note)) order by random() limit 1)"},
      {"keep_package", 4, R"(
select a.asked || jsonb_build_object('read', encode(sha256(convert_to(api.package_of(a.asked)::text, 'UTF8')), 'hex'), 'sha256', encode(sha256(convert_to(random()::text, 'UTF8')), 'hex'), 'pages', 3)
  from (select jsonb_build_object('note', note, 'without_files', random() < 0.7) as asked from book.shipment where exists (select from guard.package_metal(null, note)) order by random() limit 1) a)"},
      {"chase_papers", 3,
       R"(select jsonb_build_object('mill', mill, 'heat', heat, 'chase_on', '2030-01-01', 'words', 'asked') from w_piece where awaited order by random() limit 1)"},
      {"allow_at_risk", 4, R"(select mill, heat, 'cut at risk' from w_piece where awaited order by random() limit 1)"},
      {"define_limits", 2, R"(
select jsonb_build_array(jsonb_build_object('grade', '42CrMo4', 'element', pg_temp.one('{C,Mn,Cr}'), 'most', 800000, 'source', 'invented')))"},
      {"correct_limits", 2, R"(
select jsonb_build_object('reason', 'misread', 'limits', jsonb_build_array(jsonb_build_object('grade', '42CrMo4', 'element', element, 'most', 700000 + pg_temp.upto(300000), 'source', 'invented')))
  from book.grade_limit where replaced_in is null order by random() limit 1)"},
      {"add_photo", 3,
       R"(select jsonb_build_object('tag', tag, 'kind', 'mark', 'file_base64', 'iVBORw0KGgoAAAANSUhEUg==') from w_piece order by random() limit 1)"},
      {"reprint_label", 3,
       R"(select jsonb_build_object('tag', tag, 'why', 'torn', 'old_destroyed', true, 'scanned', tag) from w_piece order by random() limit 1)"},
      {"label_printed", 6,
       R"(select jsonb_build_object('jobs', jsonb_agg(job), 'printer', 'gate') from (select job from (select job from api.label_queue where not printed limit 40) w order by random() limit 3) q)"},
      {"label_failed", 3,
       R"(select jsonb_build_object('job', job, 'printer', 'gate', 'reason', 'no ribbon') from (select job from api.label_queue where not printed limit 40) w order by random() limit 1)"},
      {"found_piece", 4,
       R"(select jsonb_build_object('section', pg_temp.round_of(80), 'length_nm', pg_temp.mm(100, 900), 'marks', 'none', 'place', 'QUAR'))"},
      {"found_again", 5, R"(
select jsonb_build_object('tag', tag, 'read', coalesce(heat, tag), 'length_nm', len, 'place', 'B3') from w_piece where state in ('missing', 'written off') order by random() limit 1)"},
  };
}

}  // namespace heatkeep
