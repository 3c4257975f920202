-- Tables that were looked at and not yet taken in. Each belongs to whoever sent it and is thrown away after a day.
create table table_draft (
  id varchar(36) primary key,
  account_id varchar(36) not null,
  kind varchar(20) not null,
  name varchar(200) not null,
  content text not null,
  at bigint not null
);
