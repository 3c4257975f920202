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
