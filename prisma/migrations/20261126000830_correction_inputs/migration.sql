-- What the factor was worked out from beside the air, so that it can be worked out again and under other codes.
ALTER TABLE "dyno_session" ADD COLUMN "aspiration" TEXT,
ADD COLUMN "fuel_mg_per_l_per_cycle" DOUBLE PRECISION,
ADD COLUMN "boost_ratio" DOUBLE PRECISION;
