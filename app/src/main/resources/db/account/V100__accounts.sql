-- Who signs in, what they may, what they changed. The same text for SQLite and PostgreSQL; times are milliseconds since 1970.
create table account (
  id varchar(36) primary key,
  name varchar(80) not null unique,
  full_name varchar(120) not null,
  role varchar(20) not null,
  password varchar(200),
  locked boolean not null,
  created_at bigint not null,
  version integer not null
);

-- Only the hash of a link is kept: whoever reads the database cannot use one.
create table one_time_link (
  token_hash varchar(64) primary key,
  account_id varchar(36) not null references account (id) on delete cascade,
  expires_at bigint not null,
  used_at bigint
);

create table sign_in_count (
  counted varchar(200) primary key,
  failures integer not null,
  first_at bigint not null,
  last_at bigint not null
);

create table audit (
  id varchar(36) primary key,
  at bigint not null,
  account_id varchar(36) not null,
  who varchar(120) not null,
  address varchar(64) not null,
  deed varchar(80) not null,
  subject varchar(200) not null,
  detail text not null
);
create index audit_at on audit (at);
create index audit_subject on audit (subject);

create table spring_session (
  primary_id char(36) not null,
  session_id char(36) not null,
  creation_time bigint not null,
  last_access_time bigint not null,
  max_inactive_interval int not null,
  expiry_time bigint not null,
  principal_name varchar(100),
  constraint spring_session_pk primary key (primary_id)
);
create unique index spring_session_ix1 on spring_session (session_id);
create index spring_session_ix2 on spring_session (expiry_time);
create index spring_session_ix3 on spring_session (principal_name);

create table spring_session_attributes (
  session_primary_id char(36) not null,
  attribute_name varchar(200) not null,
  attribute_bytes bytea not null,
  constraint spring_session_attributes_pk primary key (session_primary_id, attribute_name),
  constraint spring_session_attributes_fk foreign key (session_primary_id)
    references spring_session (primary_id) on delete cascade
);
