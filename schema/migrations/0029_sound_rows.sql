-- The checks of pieces and strokes, each table's in one function: the server reads a check from its text again for every statement, which was a tenth of
-- recording a stroke. They hold as they did, for every row however it is written, and a row that breaks one is refused under the same name.
create function book.unsound(p_table text, p_constraint text, p_expected text) returns boolean
language plpgsql stable as $$
begin
  raise check_violation using schema = 'book', table = p_table, constraint = p_constraint, message = p_expected;
end $$;

create function book.piece_is_sound(p book.piece) returns boolean
language plpgsql immutable as $$
begin
  return case
    when not (p.made_length_nm > 0 and p.length_nm between 0 and p.made_length_nm and p.doubt_nm >= 0)
      then book.unsound('piece', 'piece_lengths', 'a length made above 0, a length now from 0 to that, a doubt from 0')
    when not ((p.state::text in ('cut up', 'shipped', 'scrapped', 'returned', 'written off', 'passed on', 'reversed')) = (p.length_nm = 0))
      then book.unsound('piece', 'piece_gone_is_empty', 'length 0 where the piece is gone, and only there')
    when not (p.parent_id is null or p.parent_made_length_nm is not null and p.made_length_nm <= p.parent_made_length_nm)
      then book.unsound('piece', 'piece_no_longer_than_parent', 'a piece no longer than the one it came from')
    when not (p.ends between 0 and 2) then book.unsound('piece', 'piece_ends', '0, 1 or 2 square ends')
    when not (p.path[cardinality(p.path)] = p.piece_id and (p.parent_id is null) = (cardinality(p.path) = 1)
        and (p.parent_id is null or p.path[cardinality(p.path) - 1] = p.parent_id))
      then book.unsound('piece', 'piece_path', 'a path that ends in the piece and leads there from its parent')
    when not ((p.limit_papers is null) = (p.limit_words is null)) then book.unsound('piece', 'piece_limit', 'a limit of use with its reason')
    when not (p.before_id is null or p.parent_id is null and p.before_path[cardinality(p.before_path)] = p.before_id)
      then book.unsound('piece', 'piece_before', 'what it was before as the end of that path, and no parent')
    else true end;
end $$;

create function book.stroke_is_sound(s book.stroke) returns boolean
language plpgsql immutable as $$
begin
  return case
    when not (s.length_nm >= 0 and s.kerf_nm >= 0 and (s.length_nm + s.kerf_nm > 0 or s.reused_as_id is not null or s.not_cut is not null))
      then book.unsound('stroke', 'stroke_lengths', 'length and kerf from 0, one of them above it')
    when not (s.class <> 'good' or s.cut_line_id is not null and s.length_nm > 0)
      then book.unsound('stroke', 'stroke_good_has_line', 'a good piece with its line and a length')
    when not ((s.class in ('reject', 'crop')) = (s.fault is not null)) then book.unsound('stroke', 'stroke_fault', 'a fault for a reject or a crop, and only there')
    when not (s.shipment_line_id is null or s.class = 'good') then book.unsound('stroke', 'stroke_ships_good', 'good pieces only, of what is shipped')
    when not (s.reused_as_id is null or s.length_nm = 0)
      then book.unsound('stroke', 'stroke_reused_is_elsewhere', 'length 0 of what is a piece of its own again')
    when not (s.class = 'test slice' or s.lab is null) then book.unsound('stroke', 'stroke_lab', 'a laboratory for test slices only')
    when not (s.class = 'good' or s.reused_as_id is not null or s.recut_of_id is null)
      then book.unsound('stroke', 'stroke_recut_is_good', 'a good piece, of what was cut instead of a reject')
    when not ((s.saw_bundle_id is null) = (s.saw_stroke is null) and (s.saw_stroke is null or s.saw_stroke > 0 and s.kerf_nm > 0))
      then book.unsound('stroke', 'stroke_together', 'a bundle with the number of its stroke, from 1, and a kerf')
    when not (s.from_nm >= 0) then book.unsound('stroke', 'stroke_from', 'a beginning from 0')
    when not (s.not_cut is null or btrim(s.not_cut) <> '' and s.class = 'trim' and s.length_nm + s.kerf_nm = 0 and s.cut_line_id is null
        and s.recut_of_id is null and s.reused_as_id is null and s.shipment_line_id is null)
      then book.unsound('stroke', 'stroke_not_cut', 'a stroke with nothing in it that says how it came to be booked')
    else true end;
end $$;

alter table book.piece drop constraint piece_lengths, drop constraint piece_gone_is_empty, drop constraint piece_no_longer_than_parent, drop constraint piece_ends,
  drop constraint piece_path, drop constraint piece_limit, drop constraint piece_before, add constraint piece_is_sound check (book.piece_is_sound(piece));
alter table book.stroke drop constraint stroke_lengths, drop constraint stroke_good_has_line, drop constraint stroke_fault, drop constraint stroke_ships_good,
  drop constraint stroke_reused_is_elsewhere, drop constraint stroke_lab, drop constraint stroke_recut_is_good, drop constraint stroke_together, drop constraint stroke_from,
  drop constraint stroke_not_cut, add constraint stroke_is_sound check (book.stroke_is_sound(stroke));
