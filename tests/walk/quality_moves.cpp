#include "tests/walk/moves.h"

namespace heatkeep {

std::vector<Move> QualityMoves() {
  return {
      {"quarantine", 4, R"(select tag, 'heat unreadable', pg_temp.one('{QUAR,NULL}') from w_piece order by random() limit 1)"},
      {"release", 14,
       R"(select tag, 'analysed again', pg_temp.one('{"","",3.1}') from w_piece where quarantine is not null order by random() limit 1)"},
      {"place_hold", 4, R"(
select scope, case scope when 'heat' then heat when 'certificate' then (select number from book.document order by random() limit 1) when 'receipt' then (select note from book.receipt where kind = 'delivery'
    order by random() limit 1) else tag end, case when scope in ('certificate', 'receipt') then 'Vandrek' end, 'letter of the mill'
  from w_piece, pg_temp.one('{heat,lot,piece,piece,certificate,receipt}') scope where heat is not null order by random() limit 1)"},
      {"lift_hold", 12,
       R"(select hold_id, 'second letter' from book.hold where lifted_by is null and condemned_by is null order by random() limit 1)"},
      {"condemn_hold", 1,
       R"(select jsonb_build_object('hold_id', hold_id, 'reason', 'third letter') from book.hold where lifted_by is null and scope = 'piece' order by random() limit 1)"},
      {"close_conflict", 10,
       R"(select conflict_id, 'looked at', random() < 0.5 from book.conflict where closed_by is null order by random() limit 1)"},
      {"correct_receipt", 4, R"(
select p.tag, pg_temp.metal() || '{"papers_state": "none"}', pg_temp.one('{ours,Ister,ours}'), 'the clerk read another bundle' from w_piece p join book.piece b using (piece_id)
  where b.parent_id is null and p.heat is not null order by random() limit 1)"},
      {"reverse_receipt", 2, R"(
select jsonb_build_object('note', r.note, 'supplier', s.name, 'reason', 'the slip of another lorry') from book.receipt r left join book.party s on s.party_id = r.supplier_id
  where r.kind <> 'found' order by random() limit 1)"},
      {"downgrade", 4,
       R"(select jsonb_build_object('tag', tag, 'to', pg_temp.one('{none,2.2,grade only,unknown}'), 'reason', 'the mark was cut off') from w_piece where state = 'on rack' order by random() limit 1)"},
      {"reestablish_identity", 8, R"(
select jsonb_build_object('tag', p.tag, 'result', 'half a stencil') || case when m.tag is not null and random() < 0.5 then jsonb_build_object('method', 'mark', 'as_tag', m.tag)
    when random() < 0.5 then jsonb_build_object('method', 'analysis', 'grade', '42CrMo4') else jsonb_build_object('method', 'custody', 'lot', pg_temp.metal()) end
  from w_piece p left join w_piece m on m.state = 'missing' and m.section_id = p.section_id where p.identity <> 'heat' and p.state = 'on rack' order by random() limit 1)"},
      {"allow_grade", 1, R"(select '42CrMo4', 'C45E', 'signed by us')"},
      {"allow_section", 1, R"(select pg_temp.round_of(50), pg_temp.round_of(80), 'signed by us')"},
      {"add_device", 2, R"(select jsonb_build_object('device', pg_temp.one('{tape 1,tape 2,readout 3}'), 'kind', 'tape', 'site', 'main'))"},
      {"calibrate_device", 2, R"(
select jsonb_build_object('device', name, 'calibrated_on', current_date - pg_temp.upto(900), 'due_on', '2030-01-01', 'doubt_nm', pg_temp.upto(2000000), 'certificate', 'K7') from book.device
  where kind is not null order by random() limit 1)"},
      {"seal_book", 1, ""},
  };
}

std::vector<Move> ShopMoves() {
  return {
      {"define_grade", 1, R"(
select jsonb_build_array(jsonb_build_object('designation', pg_temp.word('G'), 'family', 'steel', 'standard', 'EN', 'density_kg_m3', 7850, 'density_source', 'invented', 'source', 'invented', 'evidence', 'none')))"},
      {"define_shop", 1,
       R"(select jsonb_build_object('parties', jsonb_build_array(jsonb_build_object('name', pg_temp.word('Party '), 'customer', true)), 'places',
  jsonb_build_array(jsonb_build_object('place', pg_temp.word('R'), 'site', 'main', 'kind', 'rack'))))"},
      {"define_bins", 1,
       R"(select jsonb_build_object('bins', jsonb_build_array(jsonb_build_object('bin', pg_temp.word('bin '), 'group', 'spare'))))"},
      {"set_rules", 1,
       R"(select jsonb_build_object('settings', jsonb_build_object('cents_per_pull', pg_temp.upto(900)::text), 'prices', jsonb_build_array(jsonb_build_object('grade', '42CrMo4',
  'cents_per_tonne', 160000, 'scrap_cents_per_tonne', 25000))))"},
      {"set_saw", 1, R"(select jsonb_build_object('saw', pg_temp.one('{1,2}'), 'cents_per_hour', pg_temp.upto(9000)))"},
      {"trace", 3, R"(select 'piece', tag from w_piece order by random() limit 1)"},
      {"metal_balance", 3, R"(select 'heat', heat from w_piece where heat is not null order by random() limit 1)"},
      {"record_of", 1, R"(select 'piece', tag, null, repeat('a', 64) from w_piece order by random() limit 1)"},
      {"keep_record", 2, R"(
select jsonb_build_object('kind', 'piece', 'subject', t.tag, 'content', repeat('a', 64), 'ends', r.ends::jsonb)
  from (select tag from w_piece order by random() limit 1) t, api.record_of('piece', t.tag, null, repeat('a', 64)) r)"},
      {"look_up", 3, R"(select tag from w_piece order by random() limit 1)"},
      {"check_record", 2, R"(select digest from book.printed_record order by random() limit 1)"},
      {"order_heats", 2, R"(select "order" from w_line order by random() limit 1)"},
      {"recall_list", 1, R"(select 'piece', tag from w_piece order by random() limit 1)"},
      {"preview_hold", 1, R"(select 'heat', heat from w_piece where heat is not null order by random() limit 1)"},
      {"labels_to_print", 1, R"(select tag from w_piece order by random() limit 1)"},
      {"file_bytes", 1, R"(select sha256 from book.document_file order by random() limit 1)"},
      {"book_digest", 1, ""},
      {"verify_book", 1, ""},
      {"verify_new", 1, ""},
      {"whoami", 1, ""},
      {"my_actions", 1, ""},
      {"schema_version", 1, ""},
  };
}

}  // namespace heatkeep
