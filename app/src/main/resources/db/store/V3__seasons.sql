-- Runs of the season, so that any node can show how far one is and what the best plan so far is.
create table season_run (
  id varchar(36) primary key,
  asked_by varchar(120) not null,
  asked_at bigint not null,
  ask text not null,
  state varchar(10) not null,
  stop_asked boolean not null,
  node varchar(120) not null,
  tries integer not null,
  started_at bigint,
  beat_at bigint,
  ended_at bigint,
  says varchar(1000) not null,
  spent_s double precision not null,
  cost double precision,
  bound double precision,
  plan text
);
create index season_run_when on season_run (asked_at);

-- What db-scheduler keeps (its documentation, table definition), with times as milliseconds on SQLite.
create table scheduled_tasks (
  task_name varchar(100) not null,
  task_instance varchar(100) not null,
  task_data bytea,
  execution_time timestamp with time zone not null,
  picked boolean not null,
  picked_by varchar(200),
  last_success timestamp with time zone,
  last_failure timestamp with time zone,
  consecutive_failures int,
  last_heartbeat timestamp with time zone,
  version bigint not null,
  priority smallint,
  primary key (task_name, task_instance)
);
create index execution_time_idx on scheduled_tasks (execution_time);
create index last_heartbeat_idx on scheduled_tasks (last_heartbeat);
