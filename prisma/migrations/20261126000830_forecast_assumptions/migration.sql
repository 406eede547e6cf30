-- What a build assumes otherwise than usual, by name: value, reason, who and when.
ALTER TABLE "build" ADD COLUMN "assumptions" JSONB NOT NULL DEFAULT '{}';

-- The forecast a version rested on, with its assumptions; kept like the rest of it once it is issued.
ALTER TABLE "quote_version" ADD COLUMN "forecast" JSONB;
