-- When the customer said no, and why where they said so.
ALTER TABLE "quote_version" ADD COLUMN "declined_at" TIMESTAMPTZ(6);
ALTER TABLE "quote_version" ADD COLUMN "declined_because" TEXT NOT NULL DEFAULT '';

-- Versions declined before this kept both in the audit record only.
ALTER TABLE quote_version DISABLE TRIGGER guard_quote_version;
UPDATE quote_version v SET declined_at = e.at, declined_because = coalesce(e.after ->> 'reason', '')
FROM audit_event e
WHERE e.use_case = 'quotes.decline' AND e.entity = 'quote-version' AND e.entity_id = v.id AND v.status = 'declined';
ALTER TABLE quote_version ENABLE TRIGGER guard_quote_version;

-- An issued version still keeps its content; only the no itself brings its day and its reason.
CREATE OR REPLACE FUNCTION guard_quote_version() RETURNS trigger
LANGUAGE plpgsql
AS $$
DECLARE
  may_change text[] := ARRAY['status', 'revision'];
BEGIN
  IF TG_OP = 'DELETE' THEN
    IF OLD.status <> 'draft' THEN
      RAISE EXCEPTION 'issued_version_is_final: an issued quote version is never deleted';
    END IF;
    RETURN OLD;
  END IF;
  IF OLD.status = 'issued' AND NEW.status = 'declined' THEN
    may_change := may_change || ARRAY['declined_at', 'declined_because'];
  END IF;
  IF OLD.status <> 'draft' AND (to_jsonb(NEW) - may_change) <> (to_jsonb(OLD) - may_change) THEN
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
