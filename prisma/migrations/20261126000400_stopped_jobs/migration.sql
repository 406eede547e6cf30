-- When and why a job was stopped last, and how it was taken up again. Earlier stops are in the audit record.
ALTER TABLE "job" ADD COLUMN "stopped_at" TIMESTAMPTZ(6);
ALTER TABLE "job" ADD COLUMN "stopped_because" TEXT NOT NULL DEFAULT '';
ALTER TABLE "job" ADD COLUMN "resumed_at" TIMESTAMPTZ(6);
ALTER TABLE "job" ADD COLUMN "resumed_because" TEXT NOT NULL DEFAULT '';

-- Jobs stopped before this have their reason in the audit record only.
UPDATE job j SET stopped_at = e.at, stopped_because = e.after ->> 'stoppedBecause'
FROM (
  SELECT DISTINCT ON (entity_id) entity_id, at, after FROM audit_event
  WHERE use_case = 'jobs.stop' AND entity = 'job' AND after ? 'stoppedBecause'
  ORDER BY entity_id, at DESC
) e
WHERE e.entity_id = j.id;
