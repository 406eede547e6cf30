-- A clock that was left running is set right: by whom, when and why. What it was before is in the audit record.
ALTER TABLE "clock_entry" ADD COLUMN "corrected_at" TIMESTAMPTZ(6);
ALTER TABLE "clock_entry" ADD COLUMN "corrected_by_id" UUID;
ALTER TABLE "clock_entry" ADD COLUMN "corrected_because" TEXT NOT NULL DEFAULT '';

ALTER TABLE clock_entry ADD CONSTRAINT correction_has_its_reason
  CHECK ((corrected_at IS NULL) = (corrected_by_id IS NULL) AND (corrected_at IS NULL) = (corrected_because = ''));
