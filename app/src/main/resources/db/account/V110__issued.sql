-- Job cards and estimates as they were issued. Content is JSON; it is written once and never changed.
create table job_card (
  id varchar(140) primary key,
  boat_id varchar(120) not null,
  boat_name varchar(200) not null,
  first_day varchar(10) not null,
  last_day varchar(10) not null,
  content text not null,
  issued_at bigint not null,
  issued_by varchar(120) not null,
  finished_at bigint,
  finished_by varchar(120),
  spent_min integer
);
create index job_card_when on job_card (first_day);
create index job_card_boat on job_card (boat_id);

-- What has been written on a card so far, until it is recorded.
create table job_card_note (
  card_id varchar(140) not null references job_card (id),
  field varchar(160) not null,
  says varchar(2000) not null,
  said_by varchar(120) not null,
  at bigint not null,
  constraint job_card_note_once primary key (card_id, field)
);

-- Only the hash of the secret in an owner's link is kept: whoever reads the database cannot use one.
create table estimate (
  id varchar(36) primary key,
  boat_id varchar(120) not null,
  boat_name varchar(200) not null,
  content text not null,
  made_at bigint not null,
  made_by varchar(120) not null,
  secret_hash varchar(64) unique,
  expires_at bigint not null,
  withdrawn_at bigint,
  answered_at bigint,
  answered_by varchar(120),
  recorded_at bigint
);
create index estimate_made on estimate (made_at);
create index estimate_boat on estimate (boat_id);

-- What the owner said of each line, once.
create table estimate_answer (
  estimate_id varchar(36) not null references estimate (id),
  line integer not null,
  accepted boolean not null,
  constraint estimate_answer_once primary key (estimate_id, line)
);
