-- What the vehicle's heaviest trailer weighs on its own wheels, loaded; empty where it tows nothing or nobody said.
ALTER TABLE "vehicle" ADD COLUMN "trailer_gtm_kg" INTEGER;
