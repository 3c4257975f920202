-- How cost and bound of a run went while it was worked on, and why there is no plan, both as the desk writes them.
alter table season_run add column course text;
alter table season_run add column refused text;
