-- Tries are counted here, so that a restart or a second process does not forget them.
CREATE TABLE "counted_try" (
    "key" TEXT NOT NULL,
    "tries" INTEGER NOT NULL,
    "ends_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "counted_try_pkey" PRIMARY KEY ("key")
);

CREATE INDEX "counted_try_ends_at_idx" ON "counted_try"("ends_at");

-- No policy at all: it belongs to no workshop and is reached through the functions below only.
ALTER TABLE counted_try ENABLE ROW LEVEL SECURITY;

-- Counts one try in one statement, so that two at once are two. A stretch that is over begins anew.
CREATE FUNCTION count_try(counted text, seconds integer, tried_at timestamptz)
RETURNS TABLE (tries integer, ends_at timestamptz)
LANGUAGE sql SECURITY DEFINER SET search_path = public, pg_temp
AS $$
  DELETE FROM counted_try WHERE key IN (
    SELECT key FROM counted_try WHERE ends_at < tried_at - interval '1 day' LIMIT 100 FOR UPDATE SKIP LOCKED);
  INSERT INTO counted_try AS held (key, tries, ends_at)
  VALUES (counted, 1, tried_at + make_interval(secs => seconds))
  ON CONFLICT (key) DO UPDATE SET
    tries = CASE WHEN held.ends_at <= tried_at THEN 1 ELSE held.tries + 1 END,
    ends_at = CASE WHEN held.ends_at <= tried_at THEN excluded.ends_at ELSE held.ends_at END
  RETURNING held.tries, held.ends_at
$$;

CREATE FUNCTION tries_counted(counted text, asked_at timestamptz)
RETURNS integer
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp
AS $$
  SELECT coalesce((SELECT held.tries FROM counted_try held WHERE held.key = counted AND held.ends_at > asked_at), 0)
$$;

REVOKE EXECUTE ON FUNCTION count_try, tries_counted FROM PUBLIC;
GRANT EXECUTE ON FUNCTION count_try, tries_counted TO buildproof_app;
