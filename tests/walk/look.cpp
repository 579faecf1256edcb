#include "tests/walk/moves.h"

namespace heatkeep {

const char* WordsSql() {
  return R"sql(
create or replace function pg_temp.word(p text) returns text language sql volatile as $$ select p || (random() * 1e9)::bigint $$;
create or replace function pg_temp.one(p text[]) returns text language sql volatile as $$ select p[1 + floor(random() * cardinality(p))::integer] $$;
create or replace function pg_temp.upto(p integer) returns integer language sql volatile as $$ select 1 + floor(random() * p)::integer $$;
create or replace function pg_temp.mm(p_from integer, p_to integer) returns bigint language sql volatile as $$
  select case when random() < 0.2 then floor((p_from + random() * (p_to - p_from)) * 1e6)::bigint
    else (p_from + floor(random() * (p_to - p_from)))::bigint * 1000000 end $$;
create or replace function pg_temp.round_of(p_mm integer) returns jsonb language sql immutable as $$
  select jsonb_build_object('shape', 'round', 'dim1_nm', p_mm * 1000000::bigint, 'label', 'round ' || p_mm) $$;
-- A lot as a clerk would name it: the heat decides the grade; new heats come as receipts do.
create or replace function pg_temp.metal() returns jsonb language sql volatile as $$
  select jsonb_build_object('mill', 'Vandrek', 'heat', 'H' || n, 'grade', case when n % 3 = 0 then '1.4404' else '42CrMo4' end, 'condition', '+QT',
    'section', pg_temp.round_of(case when random() < 0.8 then 80 else 50 end), 'read_from', 'metal')
    from (select floor(random() * 9)::integer + (select count(*) / 60 from book.receipt) as n) x $$;
)sql"
         R"sql(
-- What the walker sees of the book: some pieces, some at saws and promised, the last lines.
create temp table if not exists w_piece (tag text, piece_id bigint, lot_id bigint, len bigint, ends integer, version integer, owner text, state text,
  quarantine text, frozen boolean, place text, bundle text, heat text, mill text, grade text, condition text, identity text, papers text, awaited boolean, section jsonb, section_id bigint);
create temp table if not exists w_line (id bigint, "order" text, line text, len bigint, minus bigint, plus bigint, customer text, section_id bigint, grade text, condition text, owner text, papers text, open bigint);
-- what was cut lately, and a few strokes of any time
create or replace temp view w_stroke as (select * from book.stroke order by stroke_id desc limit 1500)
  union select s.* from (select 1 + floor(random() * (select max(stroke_id) from book.stroke))::bigint as stroke_id from generate_series(1, 300)) d join book.stroke s using (stroke_id);
)sql";
}

// Costs the same however large the book is.
const char* LookSql() {
  return R"sql(
truncate w_piece, w_line;
insert into w_piece
  select p.tag, p.piece_id, p.lot_id, p.length_nm, p.ends, p.version, o.name, p.state::text, p.quarantine, p.frozen, w.name, (select name from book.bundle b where b.bundle_id = p.bundle_id and strapped),
      l.heat, m.name, g.designation, l.condition, l.identity::text, l.papers::text, l.papers_state = 'awaited',
      jsonb_build_object('shape', s.shape, 'dim1_nm', s.dim1_nm, 'label', s.label), l.section_id
    from book.piece p join book.party o on o.party_id = p.owner_id join book.lot l using (lot_id) join book.section s using (section_id)
    left join book.party m on m.party_id = l.mill_id left join book.grade g using (grade_id) left join book.place w using (place_id)
    where p.piece_id in ((select n.piece_id from (select 1 + floor(random() * (select max(piece_id) from book.piece))::bigint as piece_id from generate_series(1, 600)) d
        join book.piece n using (piece_id) where n.length_nm > 0 or random() < 0.2 limit 200) union (select piece_id from book.piece order by piece_id desc limit 40)
      union (select piece_id from book.piece where length_nm > 0 and state in ('at saw', 'missing', 'outside', 'in transit') order by random() limit 80)
      union (select piece_id from book.promise where state = 'live' order by random() limit 60) union (select piece_id from book.cut where not closed order by random() limit 60));
insert into w_line
  select c.cut_line_id, c.order_no, c.line_no, c.length_nm + c.face_nm + c.aim_nm, c.tolerance_minus_nm, c.tolerance_plus_nm, k.name, c.section_id, g.designation, c.condition, o.name,
      c.papers::text, c.quantity - guard.line_cut(c.cut_line_id) - guard.line_planned(c.cut_line_id)
    from book.cut_line c join book.grade g using (grade_id) join book.party o on o.party_id = c.owner_id left join book.party k on k.party_id = c.customer_id
    where not c.cancelled order by c.cut_line_id desc limit 40;
)sql";
}

}  // namespace heatkeep
