-- Why money went back; empty for money that came in.
ALTER TABLE "payment" ADD COLUMN "reason" TEXT NOT NULL DEFAULT '';

-- No more goes back than came in. The quote is held, so that two at once do not slip past each other.
CREATE FUNCTION guard_refund() RETURNS trigger
LANGUAGE plpgsql
AS $$
DECLARE
  held bigint;
BEGIN
  IF NEW.kind <> 'refund' THEN
    RETURN NEW;
  END IF;
  PERFORM id FROM quote WHERE id = NEW.quote_id FOR UPDATE;
  SELECT coalesce(sum(CASE WHEN kind = 'refund' THEN -amount_minor ELSE amount_minor END), 0) INTO held
  FROM payment WHERE quote_id = NEW.quote_id;
  IF NEW.amount_minor > held THEN
    RAISE EXCEPTION 'refund_within_received: no more goes back than was received';
  END IF;
  RETURN NEW;
END
$$;

CREATE TRIGGER guard_refund BEFORE INSERT ON payment
FOR EACH ROW EXECUTE FUNCTION guard_refund();
