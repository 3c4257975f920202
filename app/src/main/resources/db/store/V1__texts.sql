-- The yard's texts. The same statements run on SQLite and PostgreSQL; times are milliseconds since 1970, UTC.

-- Every change of every text, one row each: added, never changed, never deleted. A row of kind 'whole' says the text anew, one of
-- kind 'tail' what was added at its end, one of kind 'gone' that it was taken away. Each row's chain_hash covers the row and the
-- chain_hash before it, so that a later alteration of any row shows.
create table shelf_change (
  seq bigint primary key,
  name varchar(200) not null,
  version integer not null,
  kind varchar(5) not null,
  text text not null,
  text_hash varchar(64) not null,
  chain_hash varchar(64) not null,
  by_whom varchar(120) not null,
  at bigint not null,
  why varchar(300) not null,
  constraint shelf_change_once unique (name, version)
);
create index shelf_change_of on shelf_change (name, seq);

-- Where each text stands now: follows from shelf_change and is checked against it.
create table shelf_text (
  name varchar(200) primary key,
  folder varchar(200) not null,
  version integer not null,
  first_seq bigint not null,
  last_seq bigint not null,
  gone boolean not null
);
create index shelf_text_in on shelf_text (folder);

-- The last change. Whoever writes holds this one row.
create table shelf_head (
  id integer primary key,
  seq bigint not null,
  chain_hash varchar(64) not null
);
insert into shelf_head (id, seq, chain_hash) values (1, 0, '');
