-- Words that are scanned or typed anywhere are looked up by themselves.
create index document_number on book.document (number);  -- a certificate's number, of whichever issuer
