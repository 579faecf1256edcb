-- Who looks at the book asks for the deeds of the last minutes: a notice sent with each would make all that write wait for one another.
create index request_at on book.request (at);
