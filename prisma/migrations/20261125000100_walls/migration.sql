-- What the schema language cannot say: what the database itself refuses.

CREATE EXTENSION IF NOT EXISTS btree_gist;
CREATE EXTENSION IF NOT EXISTS pg_trgm;

-- The application's role owns nothing and sees one workshop at a time. The set-up gives it its password.
DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'buildproof_app') THEN
    CREATE ROLE buildproof_app NOLOGIN NOSUPERUSER NOBYPASSRLS NOCREATEDB NOCREATEROLE;
  END IF;
END
$$;

-- 1. Each row belongs to a workshop, and only that workshop's transactions see it.

CREATE FUNCTION current_workshop() RETURNS uuid
LANGUAGE sql STABLE
AS $$ SELECT nullif(current_setting('app.workshop_id', true), '')::uuid $$;

GRANT USAGE ON SCHEMA public TO buildproof_app;

DO $$
DECLARE
  owned record;
BEGIN
  FOR owned IN
    SELECT c.table_name FROM information_schema.columns c
    WHERE c.table_schema = 'public' AND c.column_name = 'workshop_id'
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', owned.table_name);
    EXECUTE format(
      'CREATE POLICY own_workshop ON %I USING (workshop_id = (SELECT current_workshop())) WITH CHECK (workshop_id = (SELECT current_workshop()))',
      owned.table_name);
    EXECUTE format('GRANT SELECT, INSERT, UPDATE, DELETE ON %I TO buildproof_app', owned.table_name);
  END LOOP;
END
$$;

ALTER TABLE workshop ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_workshop ON workshop USING (id = (SELECT current_workshop()));
GRANT SELECT ON workshop TO buildproof_app;

-- No policy at all: reached through the functions below only.
ALTER TABLE sign_in_attempt ENABLE ROW LEVEL SECURITY;

-- 2. What must be known before a workshop is: who signs in, and what a link opens.

CREATE FUNCTION sign_in_person(wanted_email text)
RETURNS TABLE (person_id uuid, workshop_id uuid, password_hash text, active boolean, session_counter integer)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp
AS $$
  SELECT p.id, p.workshop_id, p.password_hash, p.active, p.session_counter
  FROM person p WHERE p.email = lower(wanted_email)
$$;

CREATE FUNCTION record_sign_in_attempt(attempt_id uuid, tried_email text, tried_address text, did_succeed boolean, tried_at timestamptz)
RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = public, pg_temp
AS $$
  INSERT INTO sign_in_attempt (id, email, address, succeeded, at)
  VALUES (attempt_id, lower(tried_email), tried_address, did_succeed, tried_at)
$$;

-- Failures since the given instant; for the account only those after its last success.
CREATE FUNCTION sign_in_failures(tried_email text, tried_address text, since timestamptz)
RETURNS TABLE (by_account bigint, by_address bigint)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp
AS $$
  SELECT
    (SELECT count(*) FROM sign_in_attempt a
      WHERE a.email = lower(tried_email) AND NOT a.succeeded AND a.at > since
        AND a.at > coalesce((SELECT max(s.at) FROM sign_in_attempt s WHERE s.email = lower(tried_email) AND s.succeeded), '-infinity')),
    (SELECT count(*) FROM sign_in_attempt a WHERE a.address = tried_address AND NOT a.succeeded AND a.at > since)
$$;

CREATE FUNCTION customer_link_target(wanted_hash text)
RETURNS TABLE (link_id uuid, workshop_id uuid, version_id uuid, expires_at timestamptz, revoked_at timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp
AS $$
  SELECT l.id, l.workshop_id, l.version_id, l.expires_at, l.revoked_at
  FROM customer_link l WHERE l.token_hash = wanted_hash
$$;

REVOKE EXECUTE ON FUNCTION sign_in_person, record_sign_in_attempt, sign_in_failures, customer_link_target FROM PUBLIC;
GRANT EXECUTE ON FUNCTION sign_in_person, record_sign_in_attempt, sign_in_failures, customer_link_target TO buildproof_app;

-- 3. What is written once and never changed.

CREATE FUNCTION refuse_change() RETURNS trigger
LANGUAGE plpgsql
AS $$
BEGIN
  RAISE EXCEPTION 'append_only: % keeps what was written', TG_TABLE_NAME;
END
$$;

DO $$
DECLARE
  kept text;
BEGIN
  FOREACH kept IN ARRAY ARRAY['audit_event', 'step_entry', 'acceptance', 'gate_override', 'goods_in', 'inspection',
    'payment', 'verdict', 'check_in', 'hand_over', 'dyno_session', 'evidence']
  LOOP
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION refuse_change()', kept);
    EXECUTE format('CREATE TRIGGER append_only_truncate BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', kept);
    EXECUTE format('REVOKE UPDATE, DELETE, TRUNCATE ON %I FROM buildproof_app', kept);
  END LOOP;
END
$$;

-- 4. An issued version of a quote keeps its content; its status moves forward only.

CREATE FUNCTION guard_quote_version() RETURNS trigger
LANGUAGE plpgsql
AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN
    IF OLD.status <> 'draft' THEN
      RAISE EXCEPTION 'issued_version_is_final: an issued quote version is never deleted';
    END IF;
    RETURN OLD;
  END IF;
  IF OLD.status <> 'draft' AND (to_jsonb(NEW) - 'status' - 'revision') <> (to_jsonb(OLD) - 'status' - 'revision') THEN
    RAISE EXCEPTION 'issued_version_is_final: an issued quote version keeps its content';
  END IF;
  IF NEW.status <> OLD.status THEN
    IF (OLD.status, NEW.status) NOT IN (
      ('draft', 'issued'), ('draft', 'superseded'),
      ('issued', 'accepted'), ('issued', 'declined'), ('issued', 'lapsed'), ('issued', 'superseded'),
      ('accepted', 'superseded')
    ) THEN
      RAISE EXCEPTION 'quote_version_status: a quote version cannot go from % to %', OLD.status, NEW.status;
    END IF;
    IF OLD.status = 'accepted' AND EXISTS (SELECT FROM job WHERE version_id = OLD.id AND started_at IS NOT NULL) THEN
      RAISE EXCEPTION 'started_job_keeps_its_quote: the accepted quote of a started job does not change';
    END IF;
  END IF;
  RETURN NEW;
END
$$;

CREATE TRIGGER guard_quote_version BEFORE UPDATE OR DELETE ON quote_version
FOR EACH ROW EXECUTE FUNCTION guard_quote_version();

CREATE FUNCTION guard_quote_line() RETURNS trigger
LANGUAGE plpgsql
AS $$
DECLARE
  owner_status quote_status;
BEGIN
  SELECT status INTO owner_status FROM quote_version WHERE id = coalesce(NEW.version_id, OLD.version_id);
  IF owner_status <> 'draft' THEN
    RAISE EXCEPTION 'issued_version_is_final: the lines of an issued quote version do not change';
  END IF;
  RETURN coalesce(NEW, OLD);
END
$$;

CREATE TRIGGER guard_quote_line BEFORE INSERT OR UPDATE OR DELETE ON quote_line
FOR EACH ROW EXECUTE FUNCTION guard_quote_line();

-- At most one version of a quote is issued or accepted.
ALTER TABLE quote_version ADD CONSTRAINT one_live_version
  EXCLUDE USING btree (quote_id WITH =) WHERE (status IN ('issued', 'accepted'));

-- 5. One resource, one stretch of time, one booking; one person, one clock.

ALTER TABLE booking
  ADD CONSTRAINT booking_takes_time CHECK (starts_at < ends_at),
  ADD CONSTRAINT no_double_booking
    EXCLUDE USING gist (resource_id WITH =, tstzrange(starts_at, ends_at) WITH &&) WHERE (cancelled_at IS NULL);

ALTER TABLE clock_entry
  ADD CONSTRAINT clock_runs_forward CHECK (stopped_at IS NULL OR started_at <= stopped_at),
  ADD CONSTRAINT one_clock_per_person
    EXCLUDE USING gist (person_id WITH =, tstzrange(started_at, stopped_at) WITH &&);

-- 6. No hand-over with an open obligation, and no handed-over job without a hand-over.

CREATE FUNCTION guard_hand_over() RETURNS trigger
LANGUAGE plpgsql
AS $$
BEGIN
  IF EXISTS (
    SELECT FROM obligation o
    WHERE o.job_id = NEW.job_id AND (o.safety OR o.blocks_hand_over)
      AND NOT EXISTS (SELECT FROM evidence e WHERE e.obligation_id = o.id)
  ) THEN
    RAISE EXCEPTION 'open_obligation: an obligation of this job is still open';
  END IF;
  RETURN NEW;
END
$$;

CREATE TRIGGER guard_hand_over BEFORE INSERT ON hand_over
FOR EACH ROW EXECUTE FUNCTION guard_hand_over();

CREATE FUNCTION guard_job_status() RETURNS trigger
LANGUAGE plpgsql
AS $$
BEGIN
  IF NEW.status = 'handed_over' AND NOT EXISTS (SELECT FROM hand_over h WHERE h.job_id = NEW.id) THEN
    RAISE EXCEPTION 'handed_over_by_hand_over: a job is handed over by its hand-over only';
  END IF;
  RETURN NEW;
END
$$;

CREATE TRIGGER guard_job_status BEFORE UPDATE OF status ON job
FOR EACH ROW EXECUTE FUNCTION guard_job_status();

-- 7. Figures that cannot be.

ALTER TABLE build_item ADD CONSTRAINT quantity_is_positive CHECK (quantity > 0);
ALTER TABLE quote_line
  ADD CONSTRAINT line_quantity_is_positive CHECK (quantity > 0),
  ADD CONSTRAINT line_adds_up CHECK (gross_minor = net_minor + tax_minor);
ALTER TABLE quote_version ADD CONSTRAINT version_adds_up CHECK (gross_minor = net_minor + tax_minor);
ALTER TABLE payment ADD CONSTRAINT payment_is_positive CHECK (amount_minor > 0);
ALTER TABLE item ADD CONSTRAINT price_is_not_negative CHECK (price_minor >= 0 AND cost_minor >= 0);
ALTER TABLE vehicle ADD CONSTRAINT odometer_is_not_negative CHECK (odometer_km >= 0);
ALTER TABLE person ADD CONSTRAINT email_is_lower_case CHECK (email = lower(email));

-- 8. Finding anything: by part of a name, a plate, a number.

CREATE INDEX customer_name_search ON customer USING gin (lower(name) gin_trgm_ops);
CREATE INDEX vehicle_plate_search ON vehicle USING gin (lower(plate) gin_trgm_ops);
CREATE INDEX vehicle_vin_search ON vehicle USING gin (lower(vin) gin_trgm_ops);
