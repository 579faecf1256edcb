#include "tests/walk/moves.h"

namespace heatkeep {

std::vector<Move> RackMoves() {
  return {
      {"put_away", 20,
       R"(select tag, case when quarantine is null then pg_temp.one('{B1-1,B1-2,B1-3,B3,GATE}') else 'QUAR' end from w_piece where state = 'on rack' order by random() limit 1)"},
      {"make_bundle", 8, R"(
select jsonb_build_object('bundle', pg_temp.word('S'), 'tags', jsonb_agg(tag)) from (select tag, lot_id from w_piece where state = 'on rack' and bundle is null and owner = 'ours') t
  group by lot_id having count(*) between 2 and 9 order by random() limit 1)"},
      {"open_bundle", 4, R"(select jsonb_build_object('bundle', bundle) from w_piece where bundle is not null order by random() limit 1)"},
      {"move_bundle", 4,
       R"(select jsonb_build_object('bundle', bundle, 'place', pg_temp.one('{B1-1,GATE,B3}')) from w_piece where bundle is not null order by random() limit 1)"},
      {"send_to_site", 5, R"(
select jsonb_build_object('tags', jsonb_build_array(tag), 'site', case when place like 'VAN%' then 'main' else 'van' end, 'note', pg_temp.word('T')) from w_piece where state = 'on rack' order by random() limit 1)"},
      {"receive_transfer", 8, R"(
select jsonb_build_object('tag', tag, 'place', pg_temp.one('{VAN-1,B1-1,B3}'), 'length_nm', len - pg_temp.upto(3) + 1) from w_piece where state = 'in transit' order by random() limit 1)"},
      {"correct_length", 8,
       R"(select tag, len - (pg_temp.upto(5) - 1) * 1000000, 1000000, 'measured again', null, pg_temp.one('{tape 1,NULL}') from w_piece order by random() limit 1)"},
      {"freeze_place", 3, R"(select jsonb_build_object('place', pg_temp.one('{B3,VAN-1,VAN-1,B1-2,B1-2}')))"},
      {"unfreeze_place", 2, R"(
select jsonb_build_object('place', name, 'reason', 'tomorrow') from book.stock_count join book.place using (place_id) where state in ('open', 'counted') order by random() limit 1)"},
      {"count_seen", 9, R"(
select jsonb_build_object('place', w.name, 'done', random() < 0.7, 'seen', coalesce((select jsonb_agg(case when random() < 0.06
    then jsonb_build_object('section', pg_temp.round_of(80), 'length_nm', pg_temp.mm(100, 500), 'marks', 'half a stencil')
    else jsonb_build_object('tag', tag, 'length_nm', length_nm - (pg_temp.upto(3) - 1)) end) from book.piece p where p.place_id = w.place_id and length_nm > 0 and random() < 0.9
      and not exists (select from book.count_line n where n.stock_count_id = c.stock_count_id and n.piece_id = p.piece_id)), '[]'))
  from book.stock_count c join book.place w using (place_id) where state = 'open' order by random() limit 1)"},
      {"approve_count", 9, R"(
select jsonb_build_object('place', name, 'words', 'looked under the rack') from book.stock_count join book.place using (place_id) where state = 'counted' order by random() limit 1)"},
      {"write_off", 5,
       R"(select jsonb_build_object('tag', tag, 'reason', 'not found in a month') from w_piece where state = 'missing' order by random() limit 1)"},
      {"record_damage", 3, R"(
select jsonb_build_object('tag', tag, 'kind', pg_temp.one('{bent,dented,cracked}'), 'usable', random() < 0.7, 'words', '3 mm out', 'from_nm', pg_temp.mm(0, 50), 'to_nm', pg_temp.mm(51, 90))
  from w_piece order by random() limit 1)"},
      {"sell", 5, R"(
select jsonb_build_object('tags', jsonb_build_array(tag), 'order', 'X1', 'customer', pg_temp.one('{Pallant,Drewe}'), 'note', pg_temp.word('D'), 'papers', papers, 'papers_sent', true)
  from w_piece where state = 'on rack' and owner = 'ours' and quarantine is null order by random() limit 1)"},
      {"customer_return", 6, R"(
select jsonb_build_object('customer', c.name, 'note', pg_temp.word('B'), 'reason', 'bought twice', 'identity', 'our tag', 'held_by', c.name)
    || case when o.piece_id is not null then jsonb_build_object('tag', (select tag from book.piece p where p.piece_id = o.piece_id), 'length_nm', o.length_nm, 'place', 'QUAR')
      else (select jsonb_build_object('order', order_no, 'line', line_no, 'count', 1) from book.shipment_line join book.cut_line using (cut_line_id) where shipment_id = h.shipment_id limit 1) end
  from book.shipment h join book.party c on c.party_id = h.customer_id left join book.metal_out o using (shipment_id) order by random() limit 1)"},
      {"return_to_supplier", 2, R"(
select jsonb_build_object('tag', tag, 'note', pg_temp.word('R'), 'claim', 'K1', 'reason', 'not as ordered') from w_piece where quarantine is not null and state = 'on rack' order by random() limit 1)"},
      {"return_to_owner", 4, R"(
select jsonb_build_object('tag', tag, 'note', pg_temp.word('R'), 'fate', pg_temp.one('{returned,scrapped}'), 'writing', 'signed') from w_piece where owner <> 'ours' order by random() limit 1)"},
      {"buy_over", 4,
       R"(select jsonb_build_object('tag', tag, 'writing', 'letter of March', 'cents_per_tonne', 90000) from w_piece where owner <> 'ours' order by random() limit 1)"},
      {"send_outside", 4, R"(
select jsonb_build_object('tag', tag, 'party', 'Hardening works', 'process', pg_temp.one('{heat treatment,test}'), 'note', pg_temp.word('H')) from w_piece where state = 'on rack' order by random() limit 1)"},
      {"back_from_outside", 7, R"(
select jsonb_build_object('tag', tag, 'place', 'B1-1', 'length_nm', len - 1000, 'condition', pg_temp.one('{+N,+QT,+A}')) from w_piece where state = 'outside' order by random() limit 1)"},
      {"scrap_piece", 5, R"(
select jsonb_build_object('tag', tag, 'bin', pg_temp.one('{bin 2,bin 3}'), 'reason', 'too short', 'instruction', pg_temp.one('{"",their letter}')) from w_piece
  where state = 'on rack' order by len, random() limit 1)"},
      {"scrap_ticket", 3,
       R"(select jsonb_build_object('bin', pg_temp.one('{bin 2,bin 3}'), 'dealer', 'Kestholm', 'ticket', pg_temp.word('W'), 'mass_g', pg_temp.upto(90000), 'cents_per_tonne', 25000))"},
  };
}

}  // namespace heatkeep
