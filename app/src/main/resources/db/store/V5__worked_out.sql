-- What was worked out from the texts, kept to be there at the next start. Follows from them, may be emptied at any time, stands in
-- no backup and is covered by no proof. made_from stands for all that the content was worked out from.
create table worked_out (
  kind varchar(20) not null,
  name varchar(200) not null,
  made_from varchar(64) not null,
  content bytea not null,
  primary key (kind, name)
);
