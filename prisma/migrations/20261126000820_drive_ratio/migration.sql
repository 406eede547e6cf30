-- The ratio that engine and hubs have to keep to, and how far they strayed: a run that slipped says nothing of the engine.
ALTER TABLE "dyno_session" ADD COLUMN "gear_ratio" DOUBLE PRECISION,
ADD COLUMN "final_drive" DOUBLE PRECISION;
ALTER TABLE "dyno_run" ADD COLUMN "slip_pct" DOUBLE PRECISION;
