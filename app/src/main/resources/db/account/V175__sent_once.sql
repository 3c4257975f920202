-- Forms that were sent, by the key each form carries: sending the same one again writes nothing. Keys are kept for some weeks.
create table sent_once (
  sent_key varchar(36) primary key,
  account_id varchar(36) not null,
  at bigint not null
);
create index sent_once_at on sent_once (at);
