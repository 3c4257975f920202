-- Tokens by which other programs ask in a person's name. Only hashes are kept; a calendar token opens calendars and nothing else.
create table api_token (
  id varchar(36) primary key,
  account_id varchar(36) not null references account (id) on delete cascade,
  token_hash varchar(64) not null unique,
  kind varchar(20) not null,
  name varchar(80) not null,
  created_at bigint not null,
  expires_at bigint not null,
  used_on varchar(10)
);
create index api_token_account on api_token (account_id);
