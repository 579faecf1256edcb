#include "tests/schema/years_book.h"

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace heatkeep {
namespace {

std::string ReadSeed(const std::string& name) {
  std::ifstream in(std::string(HEATKEEP_SEED) + "/ten_years/" + name + ".sql");
  std::ostringstream text;
  if (!(text << in.rdbuf())) throw std::runtime_error("seed/ten_years/" + name + ".sql cannot be read");
  return text.str();
}

void Fill(Connection& admin) {
  admin.ExecuteScript(
      "set session_replication_role = replica; set timezone = 'UTC'; set work_mem = '64MB'; set jit = off; set client_min_messages = warning; set ten_years.bars = 5213");
  for (const char* part : {"1_shop", "2_lives", "3_rows", "4_happenings", "5_ledger"}) admin.ExecuteScript(ReadSeed(part));
  const Result parts = admin.Execute(
      "select relname::text as part from pg_class where relnamespace = 'ten_years'::regnamespace and relname ~ '^happening_' order by length(relname), relname");
  for (const Row row : parts) admin.Execute("select ten_years.write_part($1)", {row.Text("part")});
  admin.ExecuteScript(ReadSeed("6_ready"));
}

constexpr const char* kWords = R"sql(
select w.* from (select p.tag from book.piece p where p.length_nm > 0 and p.kind = 'drop' order by p.piece_id desc limit 1) t
  cross join lateral (select * from (values ('tag', t.tag)) v (what, word)
    union all (select 'bar', tag from book.piece where state = 'cut up' and kind = 'bar' order by piece_id desc limit 1)
    union all (select unnest(array['heat', 'mill']), unnest(array[heat, name]) from (select l.heat, m.name from book.lot l join book.party m on m.party_id = l.mill_id join book.piece p using (lot_id)
      group by l.lot_id, l.heat, m.name order by count(*) desc, l.lot_id limit 1) x)
    union all (select unnest(array['order', 'order_line', 'list', 'customer']), unnest(array[c.order_no, c.line_no, n.name, u.name]) from (select * from book.cut_line c
      where exists (select from book.stroke s where s.cut_line_id = c.cut_line_id and s.shipment_line_id is null) order by c.cut_line_id desc limit 1) c
      join book.cut_list n using (cut_list_id) join book.party u on u.party_id = c.customer_id)
    union all (select unnest(array['plan', 'plan_bar', 'plan_saw']), unnest(array[plan_id::text, tag, saw_id::text]) from (select f.plan_id, p.tag, q.saw_id from book.plan q join book.layout f using (plan_id)
      join book.piece p using (piece_id) where q.state = 'live' order by 1 desc, p.piece_id limit 1) x)
    union all (select unnest(array['place', 'grade', 'section']), unnest(array[w.name, g.designation, x.label]) from book.piece p join book.place w using (place_id) join book.lot using (lot_id)
      join book.grade g using (grade_id) join book.section x using (section_id) where p.tag = t.tag)
    union all select 'document', max(number) from book.document
    union all select 'note', max(note) from book.receipt
    union all select 'saw', '1'
    union all (select unnest(array['line_order', 'line_no', 'line_nm', 'line_bar', 'line_place']), unnest(array[order_no, line_no, nm, tag, name]) from (select c.order_no, c.line_no, c.length_nm::text as nm, p.tag, w.name from book.cut_line c
      join book.lot l using (section_id, grade_id, condition) join book.piece p using (lot_id) join book.place w using (place_id)
      where p.length_nm > 5 * c.length_nm and p.kind = 'bar' and not exists (select from book.promise r where r.piece_id = p.piece_id and r.state = 'live')
        and not exists (select from book.hold h where h.heat = l.heat and h.lifted_by is null) and guard.line_planned(c.cut_line_id) + guard.line_cut(c.cut_line_id) < c.quantity
      order by c.cut_line_id desc, p.piece_id limit 1) x)) w)sql";

}  // namespace

const std::string& TablesOfYears() {
  static const std::string tables =
      "'piece', 'happening', 'stroke', 'cut', 'layout', 'layout_cut', 'promise', 'metal_out', 'label_job', 'cut_line', 'chain_end', 'request', 'receipt_line', 'heat_reading', "
      "'analysis', 'mechanical_test', 'plan', 'shipment_line'";
  return tables;
}

YearsBook::YearsBook() {
  Connection admin = book.Admin();
  Fill(admin);
  admin.Execute("analyze");
  // the columns that name other rows of those tables have a hundred times as many values too
  admin.ExecuteScript(
      "update pg_class set reltuples = reltuples * 100 where relnamespace = 'book'::regnamespace and (relname in (" + TablesOfYears() +
      ") or oid in (select indexrelid from pg_index i join pg_class t on t.oid = i.indrelid where t.relname in (" + TablesOfYears() +
      ")));"
      "update pg_statistic s set stadistinct = stadistinct * 100 from pg_class t join pg_attribute a on a.attrelid = t.oid where s.starelid = t.oid and s.staattnum = a.attnum"
      "  and t.relnamespace = 'book'::regnamespace and t.relname in (" +
      TablesOfYears() +
      ") and stadistinct > 1"
      "  and a.attname in ('lot_id', 'plan_id', 'receipt_id', 'receipt_line_id', 'cut_line_id', 'cut_list_id', 'shipment_id', 'shipment_line_id', 'document_id', 'chain_id', 'order_no')");
  for (const Row row : admin.Execute(kWords)) words[row.Text("what")] = row.Text("word");
}

}  // namespace heatkeep
