-- Where a site lies above the sea: its air is thinner by as much, and so is what an engine makes there.
ALTER TABLE "site" ADD COLUMN "altitude_m" INTEGER NOT NULL DEFAULT 0,
ADD CONSTRAINT "site_altitude_on_earth" CHECK ("altitude_m" BETWEEN -400 AND 4500);
