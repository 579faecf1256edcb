#include "tests/walk/whole.h"

#include <chrono>

namespace heatkeep {
namespace {

struct Rule {
  const char* words;
  const char* offenders;  // a row each, with a column w
};

constexpr Rule kRules[] = {
    {"a piece is promised twice", "select tag as w from api.promises where state = 'live' group by tag having count(*) > 1"},
    // a place that is being counted gives nothing, but what was promised stays promised
    {"a live promise is of held or quarantined metal, or of metal whose papers are awaited",
     "select format('%s (%s, %s)', e.tag, e.state, guard.blocked_words(e.piece_id)) as w from api.promises r join book.piece e using (tag) join book.lot l using (lot_id)"
     " where r.state = 'live' and e.state <> 'at saw' and (guard.hold_words(e.piece_id) is not null or guard.quarantine_words(e.piece_id) is not null"
     " or (l.papers_state = 'awaited' and l.at_risk_by is null))"},
    {"a live promise is of metal that is gone",
     "select e.tag as w from api.promises r join book.piece e using (tag) where r.state = 'live' and e.length_nm = 0"},
    {"a plan wants a piece that is not promised to it",
     "select f.layout_id::text as w from book.layout f where f.state = 'promised' and not exists (select from book.promise r where r.layout_id = f.layout_id and r.state = 'live')"},
    {"a child is of another lot or owner than its parent",
     "select c.tag as w from book.piece c join book.piece p on p.piece_id = c.parent_id where (c.lot_id, c.owner_id) is distinct from (p.lot_id, p.owner_id)"},
    {"a cut piece, or metal that left, is of another lot or owner than its piece",
     "select p.tag as w from (select piece_id, lot_id, owner_id from book.stroke union all select piece_id, lot_id, owner_id from book.metal_out union all select piece_id, lot_id, owner_id from book.cut) s"
     " join book.piece p using (piece_id) where (s.lot_id, s.owner_id) is distinct from (p.lot_id, p.owner_id)"},
    {"a piece is frozen though nobody counts its place",
     "select tag as w from book.piece p where frozen and length_nm > 0 and not exists (select from book.stock_count c where c.place_id = p.place_id and c.state in ('open', 'counted'))"},
    {"a piece is longer than its parent was",
     "select c.tag as w from book.piece c join book.piece p on p.piece_id = c.parent_id where c.made_length_nm > p.made_length_nm"},
    {"a held piece was shipped",
     "select stroke_id::text as w from book.stroke where held and shipment_line_id is not null and class = 'good'"},
    // the lists look for holds only where one of them names the metal; asked of every piece the answer is the same
    {"a list says otherwise than the piece itself what holds it",
     "select m.tag as w from guard.metal m where m.held is distinct from guard.hold_words(m.piece_id) or m.blocked is distinct from guard.blocked_words(m.piece_id)"},
    {"a list says otherwise than the line itself what is cut or planned of it",
     "select order_no || ' ' || line_no as w from guard.line_now where (cut, planned) is distinct from (guard.line_cut(cut_line_id), guard.line_planned(cut_line_id))"},
    {"a piece is in a bundle of another lot",
     "select tag as w from book.piece p join book.bundle b using (bundle_id) where b.lot_id <> p.lot_id"},
    {"unexplained metal has no name or no reason",
     "select metal_out_id::text as w from book.metal_out where class = 'unexplained' and (coalesce(btrim(named), '') = '' or coalesce(btrim(reason), '') = '')"},
    {"metal that went on under another tag came out longer or shorter",
     "select n.tag as w from book.piece n join book.metal_out o on o.piece_id = n.before_id and o.class = 'passed on' where n.made_length_nm <> o.length_nm"},
    {"more was shipped of a line than was cut good for it",
     "select c.order_no as w from book.cut_line c where (select count(*) from book.stroke s where s.cut_line_id = c.cut_line_id and s.shipment_line_id is not null)"
     " > (select count(*) from book.stroke s where s.cut_line_id = c.cut_line_id and s.class = 'good')"},
};

}  // namespace

Wholeness LookWhetherWhole(SmallShop& shop) {
  Wholeness whole;
  const auto start = std::chrono::steady_clock::now();
  whole.broken = shop.Broken();
  whole.verify_ms = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::steady_clock::now() - start).count();
  for (const Rule& rule : kRules)
    for (const Row row : shop.admin.Execute(rule.offenders)) whole.broken.push_back(std::string(rule.words) + ": " + row.Text("w"));
  // Every view can still be read, every column of every line.
  for (const Row view :
       shop.admin.Execute("select relname::text as n from pg_class where relnamespace = 'api'::regnamespace and relkind = 'v'")) {
    const DbError error = Refusal([&] { shop.owner.Execute("select sum(length(v::text)) from api." + view.Text("n") + " v"); });
    if (!error.sqlstate.empty()) whole.broken.push_back("api." + view.Text("n") + " cannot be read: " + error.message);
  }
  // Every heat, added up here from the lines people look at: what came in is what is there and what went.
  for (const Row heat : shop.admin.Execute("select distinct heat from book.lot where heat is not null")) {
    std::map<std::int64_t, std::pair<std::int64_t, std::int64_t>> lots;  // in, out
    for (const Row row : shop.quality.Execute("select lot_id, is_in, length_nm from api.metal_balance('heat', $1)", {heat.Text("heat")}))
      (row.Bool("is_in") ? lots[row.Int("lot_id")].first : lots[row.Int("lot_id")].second) += row.Int("length_nm");
    for (const auto& [lot, sides] : lots)
      if (sides.first != sides.second)
        whole.broken.push_back("heat " + heat.Text("heat") + ", lot " + std::to_string(lot) + ": " + std::to_string(sides.first) +
                               " nm came in, " + std::to_string(sides.second) + " nm are accounted for");
    // and once more from the rows themselves, over the heat
    const Row rows = shop.admin
                         .Execute(R"sql(
        with of_heat as (select piece_id, parent_id, made_length_nm, length_nm from book.piece join book.lot using (lot_id) where heat = $1)
        select (select coalesce(sum(made_length_nm), 0) from of_heat where parent_id is null)::bigint as came,
          ((select coalesce(sum(length_nm), 0) from of_heat) + (select coalesce(sum(length_nm + kerf_nm), 0) from book.stroke where piece_id in (select piece_id from of_heat))
            + (select coalesce(sum(length_nm), 0) from book.metal_out where piece_id in (select piece_id from of_heat)))::bigint as went)sql",
                                  {heat.Text("heat")})
                         .Only();
    std::int64_t in = 0;
    for (const auto& [lot, sides] : lots) in += sides.first;
    if (rows.Int("came") != rows.Int("went") || rows.Int("came") != in)
      whole.broken.push_back("heat " + heat.Text("heat") + ": " + std::to_string(rows.Int("came")) + " nm came, " +
                             std::to_string(rows.Int("went")) + " nm are or went, the view says " + std::to_string(in));
    ++whole.heats;
  }
  return whole;
}

}  // namespace heatkeep
