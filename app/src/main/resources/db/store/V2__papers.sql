-- Photos and documents by their place in the yard, such as documents/heron/engine-plate.jpg. Never overwritten: one that is
-- taken away stays with its day.
create table attachment (
  id varchar(36) primary key,
  name varchar(200) not null,
  boat_id varchar(120) not null,
  content_type varchar(120) not null,
  size bigint not null,
  sha256 varchar(64) not null,
  content bytea not null,
  by_whom varchar(120) not null,
  at bigint not null,
  taken_away_by varchar(120),
  taken_away_at bigint
);
create index attachment_of on attachment (boat_id);
create index attachment_named on attachment (name);

-- Estimates sent to owners. Only the hash of a link's secret is kept: whoever reads the database cannot use one.
create table owner_link (
  secret_hash varchar(64) primary key,
  boat_id varchar(120) not null,
  visit varchar(200) not null,
  estimate text not null,
  made_by varchar(120) not null,
  made_at bigint not null,
  expires_at bigint not null,
  withdrawn_at bigint,
  answered_at bigint
);
create index owner_link_of on owner_link (boat_id);

-- What the owner said of each line, once, with name and time.
create table owner_answer (
  secret_hash varchar(64) not null references owner_link (secret_hash),
  line varchar(200) not null,
  accepted boolean not null,
  said_by varchar(120) not null,
  at bigint not null,
  note varchar(1000) not null,
  constraint owner_answer_once primary key (secret_hash, line)
);
