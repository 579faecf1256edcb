-- Who may do what. The only place for privileges: everything is taken away first, then given a role at a time.
-- heatkeep_book owns all; tables stay closed to everybody else.
do $$
begin
  execute format('revoke all on database %I from public', current_database());
  execute format('grant connect on database %I to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner',
    current_database());
end $$;
-- Large objects are none of the book's, and anybody could fill the disk with them. Only a superuser can close that door; on a server where
-- the keeper of the book is none, whoever is does it once (client/book/ADMINISTRATOR.md).
do $$
declare
  v_door text;
begin
  if not (select rolsuper from pg_roles where rolname = current_user) then return; end if;
  foreach v_door in array array['lo_creat(integer)', 'lo_create(oid)', 'lo_from_bytea(oid, bytea)', 'lo_put(oid, bigint, bytea)', 'lowrite(integer, bytea)', 'lo_open(oid, integer)'] loop
    execute format('revoke execute on function pg_catalog.%s from public', v_door);
  end loop;
end $$;
revoke all on schema public, book, guard, api from public;
revoke all on all tables in schema book, api from public, heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
revoke all on all sequences in schema book from public, heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
revoke all on all functions in schema book, guard, api from public;
alter default privileges for role heatkeep_book revoke execute on functions from public;

grant usage on schema api to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;

-- Everybody: who am I, what is there, what is it, where is it from; and anybody may start a quarantine.
grant execute on function api.schema_version(), api.whoami(), api.my_actions(), api.quarantine(uuid, text, text, text, timestamptz, text),
  api.trace(text, text, text), api.metal_balance(text, text, text), api.book_digest()
  to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
grant select on api.grades, api.grade_standins, api.section_standins, api.parties, api.places, api.saws, api.settings_now, api.stock_on_hand, api.piece_history, api.deeds_lately,
  api.receipts, api.documents, api.holds, api.cut_lines, api.plans, api.plan_layouts, api.plan_cuts, api.plan_shorts, api.measured_lengths, api.stands_against
  to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
-- What the views compute with; schema guard itself stays closed, so nobody calls them otherwise.
grant execute on function guard.mass_g(bigint, bigint, integer), guard.document_words(bigint), guard.blocked_words(bigint),
  guard.line_cut(bigint), guard.line_planned(bigint), guard.keep_nm(bigint, bigint), guard.reasons_against(bigint, bigint, bigint, bigint, text), guard.stopped_words(bigint)
  to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;

-- Clerk: receives, puts away, measures.
grant execute on function api.receive_delivery(uuid, jsonb, text), api.put_away(uuid, text, text, timestamptz, text),
  api.correct_length(uuid, text, bigint, bigint, text, text, text, timestamptz), api.open_balance(uuid, jsonb) to heatkeep_clerk;

-- Planner: cut lists, plans, shipping, conflicts.
grant execute on function api.add_cut_list(uuid, jsonb), api.commit_plan(uuid, jsonb), api.cancel_plan(uuid, bigint, text), api.ship(uuid, jsonb),
  api.correct_length(uuid, text, bigint, bigint, text, text, text, timestamptz), api.put_away(uuid, text, text, timestamptz, text) to heatkeep_planner;
grant select on api.candidates, api.conflicts, api.refusals to heatkeep_planner;

-- Planner and saw: a plan that went wrong is mended where it is noticed.
grant execute on function api.replan(uuid, jsonb), api.report_missing(uuid, text, text),
  api.measure_at_saw(uuid, text, bigint, text, text) to heatkeep_planner, heatkeep_saw;
grant select on api.candidates, api.plan_metal, api.line_heats, api.past_lines to heatkeep_planner, heatkeep_saw;

-- Saw: pulls, cuts, puts back.
grant execute on function api.pull(uuid, text, text, bigint, timestamptz, text, text, bigint), api.record_cut(uuid, jsonb, timestamptz, text),
  api.put_away(uuid, text, text, timestamptz, text), api.take_tag_block(uuid, text, text, integer),
  api.correct_length(uuid, text, bigint, bigint, text, text, text, timestamptz) to heatkeep_saw;
grant execute on function api.pull_for_line(uuid, jsonb, timestamptz, text), api.split_piece(uuid, jsonb, timestamptz, text),
  api.first_piece(uuid, jsonb, timestamptz, text), api.hand_over(uuid, jsonb, timestamptz, text), api.take_over(uuid, text),
  api.report_half_cut(uuid, jsonb, timestamptz, text), api.scrap_piece(uuid, jsonb, timestamptz, text), api.fit_band(uuid, jsonb, timestamptz, text),
  api.make_up_bundle(uuid, jsonb, timestamptz, text), api.record_bundle(uuid, jsonb, timestamptz, text),
  api.pieces_to_stock(uuid, jsonb), api.not_cut(uuid, jsonb), api.send_offline(uuid, jsonb) to heatkeep_saw;
grant execute on function api.split_piece(uuid, jsonb, timestamptz, text) to heatkeep_clerk;

-- What the lead decides about the saw's work: who gets which piece, what becomes of what was cut.
grant execute on function api.reserve(uuid, jsonb), api.unreserve(uuid, text, text), api.lapse_promises(uuid), api.reuse_reject(uuid, jsonb),
  api.pieces_to_stock(uuid, jsonb), api.not_cut(uuid, jsonb), api.change_order(uuid, jsonb), api.recut(uuid, jsonb), api.answer_defect(uuid, bigint, text, text),
  api.record_consent(uuid, jsonb), api.scrap_piece(uuid, jsonb, timestamptz, text), api.scrap_ticket(uuid, jsonb) to heatkeep_planner;
grant execute on function api.sign_consent(uuid, bigint), api.answer_defect(uuid, bigint, text, text), api.take_test_slice(uuid, jsonb, timestamptz, text),
  api.scrap_ticket(uuid, jsonb) to heatkeep_quality;
grant execute on function api.report_defect(uuid, jsonb, timestamptz, text)
  to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
grant execute on function api.define_bins(uuid, jsonb), api.set_saw(uuid, jsonb) to heatkeep_owner;
grant select on api.promises, api.rejects, api.open_pieces, api.handovers, api.first_pieces, api.defects, api.defect_zones, api.scrap_bins, api.scrap_tickets,
  api.consents, api.cutting_rates, api.shipped_rates, api.plan_sawing, api.saw_bands, api.sections_too_large, api.saw_rules, api.saw_bundles, api.offline_deeds
  to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
grant execute on function guard.zone_ahead(book.piece, bigint, bigint), guard.defect_words(bigint), guard.rate(bigint, text), guard.shipped_rates(),
  guard.band_on(bigint, timestamptz), guard.too_large_words(book.saw, book.section) to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;

-- Quality: papers, holds, releases, identity.
grant execute on function api.file_document(uuid, jsonb), api.allow_at_risk(uuid, text, text, text, timestamptz, text), api.release(uuid, text, text, text, timestamptz, text),
  api.place_hold(uuid, text, text, text, text, timestamptz, text), api.lift_hold(uuid, bigint, text, timestamptz, text), api.close_conflict(uuid, bigint, text, boolean), api.correct_receipt(uuid, text, jsonb, text, text, timestamptz, text),
  api.allow_grade(uuid, text, text, text), api.allow_section(uuid, jsonb, jsonb, text), api.verify_book(), api.verify_new(), api.seal_book(uuid) to heatkeep_quality;
grant select on api.conflicts, api.refusals to heatkeep_quality;

-- Owner: the shop, settings, prices; reads all.
grant execute on function api.define_grade(uuid, jsonb), api.define_shop(uuid, jsonb), api.set_rules(uuid, jsonb), api.verify_book(), api.verify_new(),
  api.seal_book(uuid) to heatkeep_owner;
grant select on all tables in schema api to heatkeep_owner;

-- The stock side. Anybody: what is damaged, found without a mark or photographed, and what is known of it.
grant execute on function api.record_damage(uuid, jsonb), api.found_piece(uuid, jsonb), api.add_photo(uuid, jsonb), api.file_bytes(text), api.labels_to_print(text)
  to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
grant select on api.label_queue, api.cut_batches, api.bundles, api.transfers, api.devices, api.photos, api.piece_notes, api.claims, api.papers_awaited, api.waiting_for_papers,
  api.expected, api.outside_trips, api.customer_returns, api.counts, api.look_alikes, api.customer_property, api.rules
  to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
grant select on api.count_differences, api.stock_value to heatkeep_planner, heatkeep_quality, heatkeep_owner;
grant execute on function guard.is_here(book.piece_state), guard.stop_words(text, boolean, boolean), guard.heat_word(bigint), guard.hold_words(bigint), guard.held_numbers(text), guard.quarantine_words(bigint), guard.papers_of(bigint), guard.limit_words(bigint), guard.late_words(timestamptz, timestamptz, text),
  guard.delivered(text, text), guard.put_right_words(text), guard.worth_cents(bigint, bigint), guard.count_differences(bigint)
  to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
-- Clerk: bundles, other sites, what turns up, labels, counting, papers to be filed and chased, metal that goes back.
grant execute on function api.make_bundle(uuid, jsonb), api.open_bundle(uuid, jsonb), api.move_bundle(uuid, jsonb), api.send_to_site(uuid, jsonb),
  api.receive_transfer(uuid, jsonb), api.found_again(uuid, jsonb), api.reprint_label(uuid, jsonb), api.count_seen(uuid, jsonb),
  api.label_printed(uuid, jsonb), api.label_failed(uuid, jsonb),
  api.file_papers(uuid, jsonb), api.chase_papers(uuid, jsonb), api.customer_return(uuid, jsonb), api.return_to_supplier(uuid, jsonb) to heatkeep_clerk;
-- Saw: bundles and labels.
grant execute on function api.label_printed(uuid, jsonb), api.label_failed(uuid, jsonb), api.open_bundle(uuid, jsonb), api.make_bundle(uuid, jsonb), api.reprint_label(uuid, jsonb) to heatkeep_saw;
-- Planner: what is ordered and came over, whole pieces that leave, places that are counted.
grant execute on function api.decide_over(uuid, jsonb), api.sign_opening(uuid, jsonb), api.expect_delivery(uuid, jsonb), api.promise_expected(uuid, jsonb),
  api.sell(uuid, jsonb), api.return_to_owner(uuid, jsonb), api.buy_over(uuid, jsonb), api.send_outside(uuid, jsonb), api.freeze_place(uuid, jsonb),
  api.unfreeze_place(uuid, jsonb), api.approve_count(uuid, jsonb) to heatkeep_planner;
-- Quality: papers accepted and replaced, limits, identity, downgrades, condemned metal, the register of devices.
grant execute on function api.sign_opening(uuid, jsonb), api.accept_document(uuid, jsonb), api.replace_document(uuid, jsonb), api.define_limits(uuid, jsonb), api.correct_limits(uuid, jsonb),
  api.chase_papers(uuid, jsonb), api.condemn_hold(uuid, jsonb), api.downgrade(uuid, jsonb), api.reestablish_identity(uuid, jsonb),
  api.send_outside(uuid, jsonb), api.back_from_outside(uuid, jsonb), api.return_to_supplier(uuid, jsonb), api.add_device(uuid, jsonb),
  api.calibrate_device(uuid, jsonb), api.reverse_receipt(uuid, jsonb) to heatkeep_quality;
-- Owner: differences above the limit, metal that is lost.
grant execute on function api.approve_count(uuid, jsonb), api.write_off(uuid, jsonb), api.define_limits(uuid, jsonb), api.add_device(uuid, jsonb) to heatkeep_owner;
-- Papers passed on, and the values they say.
grant execute on function api.pass_on_document(uuid, jsonb) to heatkeep_quality, heatkeep_planner;
grant select on api.documents_passed, api.document_values, api.document_verdicts, api.grade_limits, api.mechanical_limits, api.product_deviations
  to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
grant execute on function guard.verdicts(bigint) to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
grant select on api.limit_changes, api.accepted_before to heatkeep_quality, heatkeep_owner;
grant execute on function guard.wrong_words(bigint), guard.range_words(text, bigint, smallint, bigint, smallint, text), guard.ranges_meet(bigint, bigint, bigint, bigint)
  to heatkeep_quality, heatkeep_owner;
grant execute on function guard.size_nm(bigint), guard.stands(bigint) to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
-- What a word that was scanned or typed could be.
grant execute on function api.look_up(text) to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
-- Records that are printed and asked about again; a recall's list, and what a hold would stop.
grant execute on function api.record_of(text, text, text, text), api.keep_record(uuid, jsonb), api.check_record(text, text, jsonb), api.order_heats(text)
  to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
grant execute on function api.recall_list(text, text, text), api.preview_hold(text, text, text) to heatkeep_planner, heatkeep_quality, heatkeep_owner;
-- Certificate packages: made and looked at by quality. The file of a document that was typed.
grant execute on function api.package_of(jsonb), api.keep_package(uuid, jsonb), api.attach_file(uuid, jsonb) to heatkeep_quality;
grant select on api.certificate_packages to heatkeep_quality, heatkeep_owner;
grant select on api.document_versions to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
grant execute on function guard.document_media(bytea) to heatkeep_clerk, heatkeep_planner, heatkeep_saw, heatkeep_quality, heatkeep_owner;
-- Month end: lists with worths, yield, what to buy, scrap.
grant select on api.stock_worth, api.own_pieces, api.yield_by_month, api.to_buy, api.scrap_by_group to heatkeep_planner, heatkeep_owner;
grant execute on function guard.price_now(bigint, bigint, boolean) to heatkeep_planner, heatkeep_saw, heatkeep_owner;
