-- How a deed begins and ends. A request number is bound to login, deed and a digest of the arguments: the same
-- request again gets the first one's answer; a concurrent twin waits for it on the key.
-- Times go into the digest, and through a setting, as guard.utc writes them: as a text they would say what the session's DateStyle and TimeZone do.
-- Nothing here or in the deeds leans on how a session has set itself to read texts: what is parsed when it first runs holds no
-- backslash, which standard_conforming_strings would take otherwise (tests/malice).

create function guard.longest_text() returns integer
language sql immutable
return 10000;

create function guard.has_long_text(p text) returns boolean
language plpgsql immutable as $$
begin
  return exists (select from string_to_table(replace(p, chr(92) || '"', '__'), '"') s where length(s) > guard.longest_text());
end $$;

-- As they stand in a regular expression's brackets: characters that are not seen or turn the direction of writing, but for the controls below the space, which JSON writes behind a backslash.
create function guard.unseen() returns text
language sql immutable
return E'\u007f-\u009f\u200b\u200e\u200f\u202a-\u202e\u2060-\u206f\ufeff';

-- Whether a body may hold a text that nobody could read as it stands: read as one text, because thousands of lines come in one body. Yes
-- too where characters stand behind a backslash that JSON itself puts there, and where two texts were taken for one.
create function guard.may_be_unreadable(p text) returns boolean
language plpgsql immutable as $$
begin
  return p ~ ('[' || guard.unseen() || ']') or position(chr(92) in p) > 0 and p ~ (repeat(chr(92), 2) || '(u00|[bfnrt])') or length(p) > guard.longest_text() and guard.has_long_text(p);
end $$;

-- What is wrong with the first text of a body that nobody could read as it stands, in words; null where all are well. Files travel as
-- base64 and are none of it. Controls, line ends among them: a text stands on a label, in a code and in a row of a list, each one line;
-- only "raw", a line of a file as it was typed, may hold tabs and line ends. U+200B, 200E, 200F, 202A to 202E, 2060 to 206F and FEFF,
-- which are not seen or turn the direction: a heat with one of them looks like another.
create function guard.unreadable(p jsonb) returns text
language sql immutable
begin atomic
  select case when length(v) > guard.longest_text() then format('it has %s characters', length(v))
      else format('character U+%s in "%s"', lpad(upper(to_hex(ascii(substring(v from E'[\u0001-\u001f' || guard.unseen() || ']')))), 4, '0'),
        left(regexp_replace(v, E'[\u0001-\u001f' || guard.unseen() || ']', '?', 'g'), 40)) end
    from (select n #>> '{}' as v, false as one_line from jsonb_path_query(p, '$.** ? (@.type() == "string")') n
      union all select n #>> '{}', true from jsonb_path_query(p, 'strict $.** ? (@.type() == "object").keyvalue() ? (@.key != "raw").value ? (@.type() == "string")') n
      union all select n #>> '{}', true from jsonb_path_query(p, 'strict $.** ? (@.type() == "array")[*] ? (@.type() == "string")') n) t
    where length(v) > guard.longest_text() or v ~ (E'[\u0001-\u0008\u000b\u000c\u000e-\u001f' || guard.unseen() || ']')
      or one_line and v ~ E'[\t\n\r]'
    limit 1;
end;

create function guard.begin_deed(p_deed text, p_request uuid, p_args jsonb, p_true_at timestamptz default null,
                                 p_device text default null, p_reason text default null) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_args text := p_args::text;
  v_digest text := encode(sha256(convert_to(v_args, 'UTF8')), 'hex');
  v_before book.request;
  v_said jsonb := case when jsonb_typeof(p_args) = 'object' and p_args ? 'file_base64' then p_args - 'file_base64' end;  -- null: all of p_args
  v_unreadable text;
begin
  if p_request is null then
    raise exception using errcode = 'HK010', message = p_deed || ' needs a request number';
  end if;
  if p_args is null then
    raise exception using errcode = 'HK026', message = p_deed || ' is told nothing', hint = 'expected a JSON body';
  end if;
  -- an older picture of the book would not show a hold placed, or a line planned, since
  if current_setting('transaction_isolation') <> 'read committed' then
    raise exception using errcode = 'HK013', message = p_deed || ' is not done in a transaction that looks at an older book',
      hint = 'do deeds in read committed transactions';
  end if;
  if p_true_at > clock_timestamp() + interval '5 minutes' then
    raise exception using errcode = 'HK011', message = format('%s cannot have happened in the future (%s)', p_deed, p_true_at);
  end if;
  if p_true_at < timestamptz '1900-01-01' or v_args ilike '%infinity%' and p_args @? '$.** ? (@.type() == "string" && @ like_regex "^[[:space:]]*[+-]?infinity[[:space:]]*$" flag "i")' then
    raise exception using errcode = 'HK026', message = format('%s: there is no such day or time', p_deed), hint = 'expected a time from 1900 on, and no infinity in place of a day';
  end if;
  if guard.may_be_unreadable(concat_ws(' ', coalesce(v_said::text, v_args), to_json(p_device), to_json(p_reason))) then
    v_unreadable := guard.unreadable(jsonb_build_array(coalesce(v_said, p_args), p_device, p_reason));
  end if;
  if v_unreadable is not null then
    raise exception using errcode = 'HK026', message = format('%s: a text cannot be read as it stands (%s)', p_deed, v_unreadable),
      hint = format('expected one line of at most %s characters, each of them seen, and none that turns the direction of writing', guard.longest_text());
  end if;
  insert into request (request_id, who, deed, digest) values (p_request, session_user, p_deed, v_digest)
    on conflict (request_id) do nothing;
  if not found then
    select * into v_before from request where request_id = p_request;
    if v_before.who <> session_user or v_before.deed <> p_deed or v_before.digest <> v_digest then
      raise exception using errcode = 'HK012',
        message = format('request %s was used before for another deed (%s by %s)', p_request, v_before.deed, v_before.who),
        hint = 'use a new request number for a new deed';
    end if;
    return v_before.answer || '{"again": true}';
  end if;
  perform set_config('heatkeep.deed', p_deed, true), set_config('heatkeep.request', p_request::text, true), set_config('heatkeep.locked', '', true), set_config('heatkeep.conflicts', '', true),
    set_config('heatkeep.free', '', true), set_config('heatkeep.shortened', '', true),
    set_config('heatkeep.true_at', coalesce(guard.utc(p_true_at), ''), true),
    set_config('heatkeep.device', coalesce(p_device, ''), true),
    set_config('heatkeep.reason', coalesce(p_reason, ''), true);
  return null;
end $$;

create function guard.end_deed(p_answer jsonb) returns jsonb
language plpgsql volatile as $$
begin
  update request set answer = p_answer where request_id = guard.note('request')::uuid;
  perform set_config('heatkeep.deed', '', true);
  return p_answer;
end $$;

-- A refusal that must be remembered: logged and answered, not raised and rolled back.
create function guard.refuse(p_deed text, p_code text, p_words text) returns jsonb
language plpgsql volatile as $$
begin
  insert into refusal (who, deed, device, code, words) values (session_user, p_deed, guard.note('device'), p_code, p_words);
  return guard.end_deed(jsonb_build_object('refused', p_code, 'words', p_words));
end $$;

-- For a person to decide. The deed notes which it raised.
create function guard.raise_conflict(p_kind text, p_piece bigint, p_words text, p_report bigint default null) returns void
language plpgsql volatile as $$
declare
  v_id bigint;
begin
  insert into book.conflict (kind, piece_id, words, defect_report_id) values (p_kind, p_piece, p_words, p_report) returning conflict_id into v_id;
  perform set_config('heatkeep.conflicts', concat_ws(',', guard.note('conflicts'), v_id), true);
end $$;

-- The words of those that this deed raised about a piece.
create function guard.conflicts_raised(p_piece bigint) returns jsonb
language plpgsql stable as $$
begin
  if guard.note('conflicts') is null then
    return '[]';
  end if;
  return (select coalesce(jsonb_agg(words order by conflict_id), '[]') from book.conflict where conflict_id = any (string_to_array(guard.note('conflicts'), ',')::bigint[]) and piece_id = p_piece);
end $$;

-- The beginning of a deed whose body is one JSON object: "true_at", "device" and "reason" are read from it.
create function guard.begin_body(p_deed text, p_request uuid, p jsonb) returns jsonb
language plpgsql volatile as $$
begin
  if p is null or jsonb_typeof(p) <> 'object' then
    raise exception using errcode = 'HK026', message = p_deed || ' is told nothing', hint = 'expected a JSON object';
  end if;
  return guard.begin_deed(p_deed, p_request, p, (p ->> 'true_at')::timestamptz, p ->> 'device', nullif(btrim(p ->> 'reason'), ''));
end $$;

-- The words under this key; refused with `p_expected` where there are none.
create function guard.said(p jsonb, p_key text, p_expected text) returns text
language plpgsql stable as $$
begin
  if coalesce(btrim(p ->> p_key), '') = '' then
    raise exception using errcode = 'HK026', message = format('%s is missing', replace(p_key, '_', ' ')), hint = 'expected ' || p_expected;
  end if;
  return btrim(p ->> p_key);
end $$;

-- How late a happening was entered, in words; null when it was at once (an hour is).
create function guard.late_words(p_at timestamptz, p_true_at timestamptz, p_who text) returns text
language sql stable
return case when p_at - p_true_at >= interval '48 hours' then format('entered %s days later by %s', extract(epoch from p_at - p_true_at)::bigint / 86400, p_who)
  when p_at - p_true_at >= interval '1 hour' then format('entered %s h later by %s', extract(epoch from p_at - p_true_at)::bigint / 3600, p_who) end;
