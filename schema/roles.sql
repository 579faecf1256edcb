-- The roles of a server that holds books. Cluster-wide, so they are made only where they are missing.
-- heatkeep_book owns everything and logs in nowhere; a person is a login that is a member of one or more groups.
do $$
declare
  v_role text;
begin
  foreach v_role in array array['heatkeep_book', 'heatkeep_clerk', 'heatkeep_planner', 'heatkeep_saw',
                                'heatkeep_quality', 'heatkeep_owner'] loop
    if not exists (select from pg_roles where rolname = v_role) then
      execute format('create role %I nologin', v_role);
    end if;
  end loop;
end $$;
