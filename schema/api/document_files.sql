-- The file of a document that was typed without it.

-- {"issuer","number","file_base64"}: the paper itself joins the typed values of its newest version. A document that has a file
-- keeps it: another one is a new version.
create function api.attach_file(p_request uuid, p jsonb) returns jsonb
language plpgsql volatile security definer set search_path = book, pg_catalog, pg_temp as $$
declare
  v_again jsonb := guard.begin_body('attach_file', p_request, p);
  d document;
  v_bytes bytea;
  v_sha text;
begin
  if v_again is not null then return v_again; end if;
  perform guard.said(p, 'file_base64', 'the bytes of the file, base64');
  d := guard.document_for_deed(p ->> 'issuer', p ->> 'number');
  if d.file_sha256 is not null then
    raise exception using errcode = 'HK041', message = format('document %s version %s has its file (SHA-256 %s)', d.number, d.version, d.file_sha256),
      hint = 'a file is never changed; a corrected one from its issuer is a new version';
  end if;
  perform guard.document_stands(jsonb_build_object('file_base64', p -> 'file_base64'));
  v_bytes := decode(p ->> 'file_base64', 'base64');
  v_sha := guard.keep_file(v_bytes);
  update document set file_sha256 = v_sha where document_id = d.document_id;
  return guard.end_deed(jsonb_build_object('number', d.number, 'version', d.version, 'file_sha256', v_sha, 'bytes', length(v_bytes)));
end $$;

-- Every version of a document, once.
create view api.document_versions as
  select i.name as issuer, d.number, d.version, d.type::text, d.issued_on, d.filed_by, d.accepted_by, d.reason, d.file_sha256, length(f.bytes) as bytes, guard.document_media(f.bytes) as media,
      (select max(o.version) from book.document o where o.replaces_id = d.document_id and o.accepted_by is not null) as replaced_by
    from book.document d join book.party i on i.party_id = d.issuer_id left join book.document_file f on f.sha256 = d.file_sha256;
