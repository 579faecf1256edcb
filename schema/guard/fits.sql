-- The arithmetic of a layout and what may be cut from what, stated a second time for the book: it re-checks
-- every plan before it promises metal. Both answer null when it is right, else why not.

-- p_cuts: the lengths of all cuts in cutting order, kerf not included. A trim cut (rough first end, trim > 0) costs trim + kerf.
-- X = length - trim cut - sum of cuts - (n - 1) kerf is what is left before the last cut, less the last cut:
--   X = 0        no last cut: the rest is the piece; the far end must be square (or trim 0), and at least grip long
--   0 < X <= k   the blade runs off the end, the last kerf is X; only with grip 0 and a good far end
--   X > k        a full kerf, X - k is left: at least grip; with grip 0 and a rough far end at least trim
-- From a doubtful length only the last case is planned, on length - doubt.
create function guard.layout_fits(p_length bigint, p_doubt bigint, p_ends integer, p_trim bigint, p_kerf bigint,
  p_grip bigint, p_cuts bigint[], p_trim_claimed bigint, p_kerf_claimed bigint, p_left_claimed bigint) returns text
language plpgsql immutable as $$
declare
  v_n integer := coalesce(cardinality(p_cuts), 0);
  v_cuts bigint := coalesce((select sum(c) from unnest(p_cuts) c), 0);
  v_trim bigint := case when p_ends = 0 then p_trim else 0 end;
  v_trim_kerf bigint := case when p_ends = 0 and p_trim > 0 then p_kerf else 0 end;
  v_rough_far boolean := p_ends < 2 and p_trim > 0;
  x bigint;
  v_kerf bigint;
  v_left bigint;
begin
  if v_n = 0 or (select min(c) from unnest(p_cuts) c) <= 0 then
    return 'a layout has at least one cut, and every cut a length';
  end if;
  x := p_length - v_trim - v_trim_kerf - v_cuts - (v_n - 1) * p_kerf;
  if x < 0 then
    return format('the cuts need %s nm more than there is', -x);
  elsif x = 0 and p_doubt = 0 and not v_rough_far then
    if p_cuts[v_n] < p_grip then
      return 'the last piece is shorter than the grip';
    end if;
    v_kerf := v_trim_kerf + (v_n - 1) * p_kerf;
    v_left := 0;
  elsif x <= p_kerf and x > 0 and p_doubt = 0 and p_grip = 0 and not v_rough_far then
    v_kerf := v_trim_kerf + (v_n - 1) * p_kerf + x;
    v_left := 0;
  else
    v_kerf := v_trim_kerf + v_n * p_kerf;
    v_left := x - p_kerf;
    if v_left - p_doubt < 0 then
      return format('the cuts need %s nm more than is sure', p_doubt - v_left);
    elsif v_left - p_doubt < p_grip then
      return format('only %s nm are sure to stay in the vice; the grip is %s nm', v_left - p_doubt, p_grip);
    elsif p_grip = 0 and v_rough_far and v_left - p_doubt < p_trim then
      return 'the far end is rough: at least the trim must be left of it';
    end if;
  end if;
  if (p_trim_claimed, p_kerf_claimed, p_left_claimed) is distinct from (v_trim, v_kerf, v_left) then
    return format('trim, kerf and what is left should be %s, %s and %s nm, not %s, %s and %s',
      v_trim, v_kerf, v_left, p_trim_claimed, p_kerf_claimed, p_left_claimed);
  end if;
  return null;
end $$;

-- Whether the customer has taken this grade, section or these papers for the line in writing. Section needs nobody else; grade
-- and papers are signed by quality.
create function guard.consented(p_line bigint, p_grade bigint, p_section bigint, p_papers book.papers) returns boolean
language plpgsql stable as $$
begin
  return (select exists (select from book.consent where cut_line_id = p_line
  and (p_section is not null or signed_by is not null)
  and (grade_id = p_grade or section_id = p_section or papers <= p_papers)));
end $$;

-- Why this lot and owner may not serve this line; null when they may. (Holds and promises are guard.blocked_words'.)
create function guard.may_not_serve(p_lot bigint, p_owner bigint, c book.cut_line) returns text
language plpgsql stable as $$
declare
  v_grade bigint;
  v_section bigint;
  v_condition text;
  v_identity book.identity;
  v_papers book.papers;
  v_at_risk boolean;
begin
  select grade_id, section_id, condition, identity, papers, papers_state = 'awaited' and at_risk_by is not null
    into v_grade, v_section, v_condition, v_identity, v_papers, v_at_risk from book.lot where lot_id = p_lot;
  if c.cancelled then
    return 'the line is cancelled';
  elsif v_grade is null then
    return 'its grade is not known';
  end if;
  if v_grade <> c.grade_id then
    if not exists (select from book.grade_standin where asked_grade_id = c.grade_id and offered_grade_id = v_grade) and not guard.consented(c.cut_line_id, v_grade, null, null) then
      return 'another grade';
    end if;
  end if;
  if v_section <> c.section_id then
    if not exists (select from book.section_standin where asked_section_id = c.section_id and offered_section_id = v_section) and not guard.consented(c.cut_line_id, null, v_section, null) then
      return 'another section';
    end if;
  end if;
  if c.condition <> '' and c.condition <> v_condition then
    return 'another condition';
  elsif p_owner <> c.owner_id then
    return 'another owner';
  end if;
  if v_papers < c.papers and not v_at_risk then
    if not guard.consented(c.cut_line_id, null, null, v_papers) then
      return 'its papers are weaker than asked for';
    end if;
  end if;
  return case when (c.one_heat is not null or c.max_heats is not null) and v_identity <> 'heat' then 'its heat is not known' end;
end $$;
