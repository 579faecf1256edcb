-- Every deed refuses in our own codes and words: what a table, a type or a key has against a value inside the body of a
-- deed becomes HK026 (HK041 where it is in the book already), with what is wrong and what is expected. Errors that are
-- nobody's argument (a deadlock, a lost server, a fault of ours) go through as they are.
create function guard.say_in_words(p_deed text, p_state text, p_message text, p_column text, p_constraint text, p_detail text) returns void
language plpgsql stable as $$
declare  -- of the server's own line: Key (saw_id, fitted_from)=(1, 2026-02-03) already exists.
  v_key text := replace(substring(p_detail from '^Key [(](.*?)[)]='), '_', ' ');
  v_value text := substring(p_detail from '^Key [(].*?[)]=[(](.*?)[)] (?:already|is not|conflicts)');
  v_table text := replace(substring(p_detail from 'in table "(.*)"[.]$'), '_', ' ');
begin
  raise exception using
    errcode = case when p_state in ('23505', '23P01') then 'HK041' else 'HK026' end,
    constraint = p_constraint,
    message = p_deed || ': ' || case
      when p_state = '23502' then format('%s is missing', p_column)
      when p_state in ('23505', '23P01') then 'this is in the book already'
      when p_state = '23503' then 'something is named that is not in the book'
      when p_state = '23514' then format('an amount or a word is out of range (%s)', replace(p_constraint, '_', ' '))
      when p_state = '21000' then 'the same thing is named twice'
      when p_state = '54000' then 'a text is too long'
      else format('a value cannot be read: %s', p_message) end,
    hint = case
      when p_state = '23514' then 'expected ' || coalesce((select pg_get_constraintdef(oid) from pg_constraint
        where conname = p_constraint and connamespace = 'book'::regnamespace limit 1), p_message)
      when v_value is not null and p_state in ('23505', '23P01') then format('the one with %s = %s is there', v_key, v_value)
      when v_value is not null and v_table is not null then format('there is no %s with %s = %s', v_table, v_key, v_value)
      else 'lengths are whole nanometres, masses grams, money cents; the deed''s own lines say what it takes' end;
end $$;

-- Puts that around the body of every function with a request number, or that is told JSON; they are made anew with every migration.
do $$
declare
  f record;
begin
  for f in select p.oid, p.proname, p.prosrc from pg_proc p join pg_language l on l.oid = p.prolang
      where pronamespace = 'api'::regnamespace and l.lanname = 'plpgsql' and (proargtypes[0] = 'uuid'::regtype or 'jsonb'::regtype = any (proargtypes)) loop
    execute replace(pg_get_functiondef(f.oid), f.prosrc, format(E'\ndeclare\n  w_column text; w_constraint text; w_detail text;\nbegin\n%s;
exception when data_exception or integrity_constraint_violation or cardinality_violation or program_limit_exceeded then
  get stacked diagnostics w_column = column_name, w_constraint = constraint_name, w_detail = pg_exception_detail;
  perform guard.say_in_words(%L, sqlstate, sqlerrm, w_column, w_constraint, w_detail);
end ', f.prosrc, f.proname));
  end loop;
end $$;
