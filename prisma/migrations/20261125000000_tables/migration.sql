-- The tables as prisma/schema describes them.

-- CreateEnum
CREATE TYPE "inspection_outcome" AS ENUM ('passed', 'failed');

-- CreateEnum
CREATE TYPE "step_kind" AS ENUM ('tick', 'measurement', 'torque', 'photo', 'serial', 'hold_point');

-- CreateEnum
CREATE TYPE "pick" AS ENUM ('at_most_one', 'exactly_one', 'at_least_one');

-- CreateEnum
CREATE TYPE "rule_kind" AS ENUM ('needs', 'excludes', 'capacity');

-- CreateEnum
CREATE TYPE "fuel_kind" AS ENUM ('petrol', 'e10', 'e85', 'diesel');

-- CreateEnum
CREATE TYPE "dyno_kind" AS ENUM ('baseline', 'step', 'proof');

-- CreateEnum
CREATE TYPE "verdict_outcome" AS ENUM ('kept', 'missed', 'not_demonstrated');

-- CreateEnum
CREATE TYPE "role" AS ENUM ('desk', 'manager', 'technician', 'owner');

-- CreateEnum
CREATE TYPE "job_status" AS ENUM ('waiting', 'booked', 'checked_in', 'in_work', 'in_proof', 'done_not_for_road', 'done_unpaid', 'ready', 'handed_over', 'stopped');

-- CreateEnum
CREATE TYPE "resource_kind" AS ENUM ('dyno', 'hoist', 'person');

-- CreateEnum
CREATE TYPE "quote_status" AS ENUM ('draft', 'issued', 'accepted', 'declined', 'lapsed', 'superseded');

-- CreateEnum
CREATE TYPE "tax_category" AS ENUM ('S', 'Z', 'E', 'O');

-- CreateEnum
CREATE TYPE "payment_kind" AS ENUM ('deposit', 'balance', 'refund');

-- CreateTable
CREATE TABLE "build" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "customer_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "goal" TEXT NOT NULL,
    "wanted_by" DATE,
    "package_code" TEXT,
    "revision" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "build_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "build_item" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "build_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "quantity" INTEGER NOT NULL DEFAULT 1,
    "position" INTEGER NOT NULL,

    CONSTRAINT "build_item_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "inspection" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "build_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "done_at" TIMESTAMPTZ(6) NOT NULL,
    "done_by_id" UUID NOT NULL,
    "odometer_km" INTEGER NOT NULL,
    "leak_down_worst_pct" DOUBLE PRECISION NOT NULL,
    "leak_down_spread_pct" DOUBLE PRECISION NOT NULL,
    "fuel_trim_worst_pct" DOUBLE PRECISION NOT NULL,
    "misfire_codes" BOOLEAN NOT NULL,
    "cooling_sound" BOOLEAN NOT NULL,
    "outcome" "inspection_outcome" NOT NULL,
    "reasons" TEXT[],
    "note" TEXT NOT NULL DEFAULT '',
    "valid_until" DATE NOT NULL,
    "valid_to_odometer_km" INTEGER NOT NULL,

    CONSTRAINT "inspection_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "item" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "system" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "maker" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "price_minor" BIGINT NOT NULL,
    "cost_minor" BIGINT NOT NULL,
    "lead_days" INTEGER NOT NULL DEFAULT 0,
    "in_stock" INTEGER NOT NULL DEFAULT 0,
    "mass_kg" DOUBLE PRECISION NOT NULL DEFAULT 0,
    "returnable" BOOLEAN NOT NULL DEFAULT true,
    "one_use" BOOLEAN NOT NULL DEFAULT false,
    "warranty_months" INTEGER NOT NULL DEFAULT 12,
    "serialised" BOOLEAN NOT NULL DEFAULT false,
    "fits" TEXT[],
    "operations" TEXT[],
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "item_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "access_work" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "hours" DECIMAL(6,2) NOT NULL,
    "rate" TEXT NOT NULL,
    "needs" TEXT[],
    "steps" JSONB NOT NULL,

    CONSTRAINT "access_work_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "operation" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "hours" DECIMAL(6,2) NOT NULL,
    "rate" TEXT NOT NULL,
    "access" TEXT[],
    "place" TEXT NOT NULL,
    "skill" TEXT NOT NULL,
    "stage" TEXT NOT NULL,
    "position" INTEGER NOT NULL DEFAULT 0,

    CONSTRAINT "operation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "procedure_step" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "operation_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "text" TEXT NOT NULL,
    "kind" "step_kind" NOT NULL,
    "unit" TEXT NOT NULL DEFAULT '',
    "low" DOUBLE PRECISION,
    "target" DOUBLE PRECISION,
    "high" DOUBLE PRECISION,
    "cautions" TEXT[],
    "one_use_part" TEXT NOT NULL DEFAULT '',
    "signer" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "procedure_step_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "item_group" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "pick" "pick" NOT NULL,
    "items" TEXT[],
    "position" INTEGER NOT NULL,

    CONSTRAINT "item_group_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "rule" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "kind" "rule_kind" NOT NULL,
    "when" JSONB,
    "then" JSONB,
    "quantity" TEXT,
    "unit" TEXT,
    "link" TEXT,
    "base_fact" TEXT,
    "supply" JSONB,
    "demand" JSONB,
    "reserve_pct" DOUBLE PRECISION,
    "because" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "safety" BOOLEAN NOT NULL DEFAULT false,
    "models" TEXT[],
    "position" INTEGER NOT NULL,

    CONSTRAINT "rule_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "package" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "outcome" TEXT NOT NULL,
    "models" TEXT[],
    "items" TEXT[],
    "promise" JSONB,
    "assumptions" TEXT[],
    "exclusions" TEXT[],
    "cautions" TEXT[],
    "position" INTEGER NOT NULL,

    CONSTRAINT "package_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "obligation" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "title" TEXT NOT NULL,
    "because" TEXT NOT NULL,
    "source" TEXT NOT NULL,
    "evidence_kind" TEXT NOT NULL,
    "signatory" TEXT NOT NULL DEFAULT '',
    "safety" BOOLEAN NOT NULL DEFAULT false,
    "blocks_hand_over" BOOLEAN NOT NULL,
    "position" INTEGER NOT NULL,

    CONSTRAINT "obligation_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "evidence" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "obligation_id" UUID NOT NULL,
    "sha256" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "signatory_name" TEXT NOT NULL DEFAULT '',
    "uploaded_by_id" UUID,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "evidence_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "hand_over" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "odometer_km" INTEGER NOT NULL,
    "received_by" TEXT NOT NULL,
    "follow_up_on" DATE,
    "note" TEXT NOT NULL DEFAULT '',
    "person_id" UUID,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "hand_over_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "customer" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "phone" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "address" TEXT NOT NULL DEFAULT '',
    "notes" TEXT NOT NULL DEFAULT '',
    "revision" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "customer_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "vehicle_model" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "engine" TEXT NOT NULL,
    "facts" JSONB NOT NULL,
    "figures" JSONB NOT NULL,

    CONSTRAINT "vehicle_model_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "vehicle" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "customer_id" UUID NOT NULL,
    "vehicle_model_id" UUID NOT NULL,
    "vin" TEXT NOT NULL,
    "plate" TEXT NOT NULL,
    "odometer_km" INTEGER NOT NULL,
    "fuel_kind" "fuel_kind" NOT NULL,
    "fuel_octane" INTEGER,
    "uses" TEXT[],
    "already_fitted" TEXT NOT NULL DEFAULT '',
    "revision" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "vehicle_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dyno_session" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "build_id" UUID,
    "job_id" UUID,
    "kind" "dyno_kind" NOT NULL,
    "standard" TEXT NOT NULL,
    "edition" TEXT NOT NULL,
    "barometer_kPa" DOUBLE PRECISION NOT NULL,
    "air_temp_c" DOUBLE PRECISION NOT NULL,
    "relative_humidity_pct" DOUBLE PRECISION NOT NULL,
    "factor" DOUBLE PRECISION NOT NULL,
    "factor_valid" BOOLEAN NOT NULL,
    "warnings" TEXT[],
    "gear" TEXT NOT NULL,
    "gearbox_oil_temp_c" DOUBLE PRECISION,
    "ramp_rpm_per_s" DOUBLE PRECISION,
    "smoothing_rpm" DOUBLE PRECISION NOT NULL,
    "operator_id" UUID,
    "done_at" TIMESTAMPTZ(6) NOT NULL,
    "source_sha256" TEXT NOT NULL,
    "source_name" TEXT NOT NULL,
    "row_count" INTEGER NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "dyno_session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "dyno_run" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "dyno_session_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "observed_peak_kw" DOUBLE PRECISION NOT NULL,
    "peak_kw" DOUBLE PRECISION NOT NULL,
    "peak_kw_at_rpm" DOUBLE PRECISION NOT NULL,
    "peak_nm" DOUBLE PRECISION NOT NULL,
    "peak_nm_at_rpm" DOUBLE PRECISION NOT NULL,
    "mean_kw" DOUBLE PRECISION NOT NULL,
    "curve" JSONB NOT NULL,
    "warnings" TEXT[],
    "excluded_because" TEXT,

    CONSTRAINT "dyno_run_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "verdict" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "baseline_id" UUID NOT NULL,
    "proof_id" UUID NOT NULL,
    "outcome" "verdict_outcome" NOT NULL,
    "promised_low_kw" DOUBLE PRECISION NOT NULL,
    "promised_high_kw" DOUBLE PRECISION NOT NULL,
    "measured_kw" DOUBLE PRECISION NOT NULL,
    "gain_kw" DOUBLE PRECISION NOT NULL,
    "spread_pct" DOUBLE PRECISION NOT NULL,
    "sentence" TEXT NOT NULL,
    "person_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "verdict_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "stored_file" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "sha256" TEXT NOT NULL,
    "media_type" TEXT NOT NULL,
    "size_bytes" BIGINT NOT NULL,
    "name" TEXT NOT NULL,
    "uploaded_by_id" UUID,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "stored_file_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "workshop" (
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "workshop_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "site" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "time_zone" TEXT NOT NULL,
    "currency" TEXT NOT NULL,
    "jurisdiction" TEXT NOT NULL,
    "tax_number" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "phone" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "design_ambient_c" DOUBLE PRECISION NOT NULL,
    "labour_rate_minor_per_hour" BIGINT NOT NULL,
    "labour_cost_minor_per_hour" BIGINT NOT NULL,
    "dyno_rate_minor_per_hour" BIGINT NOT NULL,
    "dyno_cost_minor_per_hour" BIGINT NOT NULL,
    "quote_valid_days" INTEGER NOT NULL DEFAULT 30,
    "deposit_share_pct" INTEGER NOT NULL DEFAULT 30,
    "discount_limit_pct" INTEGER NOT NULL DEFAULT 5,

    CONSTRAINT "site_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "person" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "password_hash" TEXT NOT NULL,
    "roles" "role"[],
    "skills" TEXT[],
    "session_counter" INTEGER NOT NULL DEFAULT 0,
    "active" BOOLEAN NOT NULL DEFAULT true,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "person_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_in_attempt" (
    "id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "succeeded" BOOLEAN NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "sign_in_attempt_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "counter" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "series" TEXT NOT NULL,
    "next" INTEGER NOT NULL,

    CONSTRAINT "counter_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "audit_event" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "actor_kind" TEXT NOT NULL,
    "actor_id" UUID,
    "actor_name" TEXT NOT NULL,
    "use_case" TEXT NOT NULL,
    "entity" TEXT NOT NULL,
    "entity_id" UUID,
    "before" JSONB,
    "after" JSONB,
    "request_id" TEXT NOT NULL,

    CONSTRAINT "audit_event_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "completed_request" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "actor_id" UUID NOT NULL,
    "key" UUID NOT NULL,
    "use_case" TEXT NOT NULL,
    "request_hash" TEXT NOT NULL,
    "reply" JSONB NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "completed_request_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "job" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "quote_id" UUID NOT NULL,
    "version_id" UUID NOT NULL,
    "build_id" UUID NOT NULL,
    "customer_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "package_code" TEXT,
    "status" "job_status" NOT NULL DEFAULT 'waiting',
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "started_at" TIMESTAMPTZ(6),
    "finished_at" TIMESTAMPTZ(6),
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "job_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "goods_in" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "complete" BOOLEAN NOT NULL,
    "missing" TEXT NOT NULL DEFAULT '',
    "counted_by_id" UUID,
    "counted_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "goods_in_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "gate_override" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "point" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "person_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "gate_override_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "resource" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "kind" "resource_kind" NOT NULL,
    "name" TEXT NOT NULL,
    "person_id" UUID,
    "max_mass_kg" DOUBLE PRECISION,
    "inspected_until" DATE,
    "position" INTEGER NOT NULL,

    CONSTRAINT "resource_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "booking" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "resource_id" UUID NOT NULL,
    "work" TEXT NOT NULL,
    "starts_at" TIMESTAMPTZ(6) NOT NULL,
    "ends_at" TIMESTAMPTZ(6) NOT NULL,
    "cancelled_at" TIMESTAMPTZ(6),
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "booking_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "check_in" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "odometer_km" INTEGER NOT NULL,
    "keys" INTEGER NOT NULL,
    "fuel_octane" INTEGER,
    "ethanol_pct" DOUBLE PRECISION,
    "condition" TEXT NOT NULL,
    "told" TEXT[],
    "person_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "check_in_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "job_step" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "operation_code" TEXT NOT NULL,
    "operation_name" TEXT NOT NULL,
    "text" TEXT NOT NULL,
    "kind" "step_kind" NOT NULL,
    "unit" TEXT NOT NULL DEFAULT '',
    "low" DOUBLE PRECISION,
    "target" DOUBLE PRECISION,
    "high" DOUBLE PRECISION,
    "cautions" TEXT[],
    "one_use_part" TEXT NOT NULL DEFAULT '',
    "signer" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "job_step_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "step_entry" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "step_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "value" DOUBLE PRECISION,
    "text" TEXT NOT NULL DEFAULT '',
    "photo_sha256" TEXT,
    "within_limits" BOOLEAN,
    "person_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "recorded_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "step_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "fault" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "step_id" UUID,
    "sentence" TEXT NOT NULL,
    "photo_sha256" TEXT,
    "raised_by_id" UUID NOT NULL,
    "raised_at" TIMESTAMPTZ(6) NOT NULL,
    "cleared_at" TIMESTAMPTZ(6),
    "cleared_because" TEXT NOT NULL DEFAULT '',

    CONSTRAINT "fault_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "clock_entry" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "operation_code" TEXT NOT NULL,
    "started_at" TIMESTAMPTZ(6) NOT NULL,
    "stopped_at" TIMESTAMPTZ(6),

    CONSTRAINT "clock_entry_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "job_cost" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "job_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "description" TEXT NOT NULL,
    "amount_minor" BIGINT NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "job_cost_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "quote" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "build_id" UUID NOT NULL,
    "customer_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "quote_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "quote_version" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "quote_id" UUID NOT NULL,
    "version_no" INTEGER NOT NULL,
    "status" "quote_status" NOT NULL DEFAULT 'draft',
    "valid_until" DATE NOT NULL,
    "issued_at" TIMESTAMPTZ(6),
    "issued_by_id" UUID,
    "currency" TEXT NOT NULL,
    "net_minor" BIGINT NOT NULL DEFAULT 0,
    "tax_minor" BIGINT NOT NULL DEFAULT 0,
    "gross_minor" BIGINT NOT NULL DEFAULT 0,
    "discount_minor" BIGINT NOT NULL DEFAULT 0,
    "deposit_minor" BIGINT NOT NULL DEFAULT 0,
    "non_returnable_minor" BIGINT NOT NULL DEFAULT 0,
    "labour_hours" DECIMAL(8,2) NOT NULL DEFAULT 0,
    "saved_hours" DECIMAL(8,2) NOT NULL DEFAULT 0,
    "dyno_hours" DECIMAL(8,2) NOT NULL DEFAULT 0,
    "promise" JSONB,
    "selection" JSONB NOT NULL,
    "goal" TEXT NOT NULL DEFAULT '',
    "inclusions" TEXT[],
    "exclusions" TEXT[],
    "assumptions" TEXT[],
    "cautions" TEXT[],
    "note" TEXT NOT NULL DEFAULT '',
    "revision" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "quote_version_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "quote_line" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "version_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "description" TEXT NOT NULL,
    "quantity" DECIMAL(14,6) NOT NULL,
    "unit" TEXT NOT NULL,
    "unit_price_minor" BIGINT NOT NULL,
    "unit_cost_minor" BIGINT NOT NULL,
    "discount_pct" DECIMAL(5,2) NOT NULL DEFAULT 0,
    "tax_category" "tax_category" NOT NULL,
    "net_minor" BIGINT NOT NULL,
    "tax_minor" BIGINT NOT NULL,
    "gross_minor" BIGINT NOT NULL,

    CONSTRAINT "quote_line_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "customer_link" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "version_id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(6) NOT NULL,
    "revoked_at" TIMESTAMPTZ(6),
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID,

    CONSTRAINT "customer_link_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "acceptance" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "version_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "at" TIMESTAMPTZ(6) NOT NULL,
    "address" TEXT NOT NULL,
    "statement" TEXT NOT NULL,

    CONSTRAINT "acceptance_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "payment" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "quote_id" UUID NOT NULL,
    "kind" "payment_kind" NOT NULL,
    "amount_minor" BIGINT NOT NULL,
    "method" TEXT NOT NULL,
    "reference" TEXT NOT NULL DEFAULT '',
    "received_on" DATE NOT NULL,
    "recorded_by_id" UUID,
    "recorded_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "payment_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "build_workshop_id_id_key" ON "build"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "build_workshop_id_number_key" ON "build"("workshop_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "build_item_workshop_id_id_key" ON "build_item"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "build_item_build_id_item_id_key" ON "build_item"("build_id", "item_id");

-- CreateIndex
CREATE UNIQUE INDEX "inspection_workshop_id_id_key" ON "inspection"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "item_workshop_id_id_key" ON "item"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "item_workshop_id_code_key" ON "item"("workshop_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "access_work_workshop_id_id_key" ON "access_work"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "access_work_workshop_id_code_key" ON "access_work"("workshop_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "operation_workshop_id_id_key" ON "operation"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "operation_workshop_id_code_key" ON "operation"("workshop_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "procedure_step_workshop_id_id_key" ON "procedure_step"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "procedure_step_operation_id_position_key" ON "procedure_step"("operation_id", "position");

-- CreateIndex
CREATE UNIQUE INDEX "item_group_workshop_id_id_key" ON "item_group"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "item_group_workshop_id_code_key" ON "item_group"("workshop_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "rule_workshop_id_id_key" ON "rule"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "rule_workshop_id_code_key" ON "rule"("workshop_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "package_workshop_id_id_key" ON "package"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "package_workshop_id_code_key" ON "package"("workshop_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "obligation_workshop_id_id_key" ON "obligation"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "obligation_job_id_code_key" ON "obligation"("job_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "evidence_workshop_id_id_key" ON "evidence"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "hand_over_workshop_id_id_key" ON "hand_over"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "hand_over_workshop_id_job_id_key" ON "hand_over"("workshop_id", "job_id");

-- CreateIndex
CREATE INDEX "customer_workshop_id_name_idx" ON "customer"("workshop_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "customer_workshop_id_id_key" ON "customer"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "vehicle_model_workshop_id_id_key" ON "vehicle_model"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "vehicle_model_workshop_id_code_key" ON "vehicle_model"("workshop_id", "code");

-- CreateIndex
CREATE INDEX "vehicle_workshop_id_plate_idx" ON "vehicle"("workshop_id", "plate");

-- CreateIndex
CREATE UNIQUE INDEX "vehicle_workshop_id_id_key" ON "vehicle"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "vehicle_workshop_id_vin_key" ON "vehicle"("workshop_id", "vin");

-- CreateIndex
CREATE INDEX "dyno_session_workshop_id_vehicle_id_idx" ON "dyno_session"("workshop_id", "vehicle_id");

-- CreateIndex
CREATE INDEX "dyno_session_workshop_id_job_id_idx" ON "dyno_session"("workshop_id", "job_id");

-- CreateIndex
CREATE UNIQUE INDEX "dyno_session_workshop_id_id_key" ON "dyno_session"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "dyno_run_workshop_id_id_key" ON "dyno_run"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "dyno_run_dyno_session_id_number_key" ON "dyno_run"("dyno_session_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "verdict_workshop_id_id_key" ON "verdict"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "stored_file_workshop_id_id_key" ON "stored_file"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "stored_file_workshop_id_sha256_key" ON "stored_file"("workshop_id", "sha256");

-- CreateIndex
CREATE UNIQUE INDEX "site_workshop_id_id_key" ON "site"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "person_email_key" ON "person"("email");

-- CreateIndex
CREATE UNIQUE INDEX "person_workshop_id_id_key" ON "person"("workshop_id", "id");

-- CreateIndex
CREATE INDEX "sign_in_attempt_email_at_idx" ON "sign_in_attempt"("email", "at");

-- CreateIndex
CREATE INDEX "sign_in_attempt_address_at_idx" ON "sign_in_attempt"("address", "at");

-- CreateIndex
CREATE UNIQUE INDEX "counter_workshop_id_id_key" ON "counter"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "counter_workshop_id_series_key" ON "counter"("workshop_id", "series");

-- CreateIndex
CREATE INDEX "audit_event_workshop_id_entity_entity_id_at_idx" ON "audit_event"("workshop_id", "entity", "entity_id", "at");

-- CreateIndex
CREATE INDEX "audit_event_workshop_id_at_idx" ON "audit_event"("workshop_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "audit_event_workshop_id_id_key" ON "audit_event"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "completed_request_workshop_id_id_key" ON "completed_request"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "completed_request_workshop_id_actor_id_key_key" ON "completed_request"("workshop_id", "actor_id", "key");

-- CreateIndex
CREATE INDEX "job_workshop_id_status_idx" ON "job"("workshop_id", "status");

-- CreateIndex
CREATE UNIQUE INDEX "job_workshop_id_id_key" ON "job"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "job_workshop_id_number_key" ON "job"("workshop_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "goods_in_workshop_id_id_key" ON "goods_in"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "gate_override_workshop_id_id_key" ON "gate_override"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "resource_workshop_id_id_key" ON "resource"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "resource_workshop_id_name_key" ON "resource"("workshop_id", "name");

-- CreateIndex
CREATE INDEX "booking_workshop_id_starts_at_idx" ON "booking"("workshop_id", "starts_at");

-- CreateIndex
CREATE INDEX "booking_workshop_id_job_id_idx" ON "booking"("workshop_id", "job_id");

-- CreateIndex
CREATE UNIQUE INDEX "booking_workshop_id_id_key" ON "booking"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "check_in_workshop_id_id_key" ON "check_in"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "check_in_workshop_id_job_id_key" ON "check_in"("workshop_id", "job_id");

-- CreateIndex
CREATE UNIQUE INDEX "job_step_workshop_id_id_key" ON "job_step"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "job_step_job_id_position_key" ON "job_step"("job_id", "position");

-- CreateIndex
CREATE INDEX "step_entry_workshop_id_job_id_idx" ON "step_entry"("workshop_id", "job_id");

-- CreateIndex
CREATE INDEX "step_entry_step_id_recorded_at_idx" ON "step_entry"("step_id", "recorded_at");

-- CreateIndex
CREATE UNIQUE INDEX "step_entry_workshop_id_id_key" ON "step_entry"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "fault_workshop_id_id_key" ON "fault"("workshop_id", "id");

-- CreateIndex
CREATE INDEX "clock_entry_workshop_id_job_id_idx" ON "clock_entry"("workshop_id", "job_id");

-- CreateIndex
CREATE UNIQUE INDEX "clock_entry_workshop_id_id_key" ON "clock_entry"("workshop_id", "id");

-- CreateIndex
CREATE INDEX "job_cost_workshop_id_job_id_idx" ON "job_cost"("workshop_id", "job_id");

-- CreateIndex
CREATE UNIQUE INDEX "job_cost_workshop_id_id_key" ON "job_cost"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "quote_workshop_id_id_key" ON "quote"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "quote_workshop_id_number_key" ON "quote"("workshop_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "quote_version_workshop_id_id_key" ON "quote_version"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "quote_version_quote_id_version_no_key" ON "quote_version"("quote_id", "version_no");

-- CreateIndex
CREATE UNIQUE INDEX "quote_line_workshop_id_id_key" ON "quote_line"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "quote_line_version_id_position_key" ON "quote_line"("version_id", "position");

-- CreateIndex
CREATE UNIQUE INDEX "customer_link_token_hash_key" ON "customer_link"("token_hash");

-- CreateIndex
CREATE UNIQUE INDEX "customer_link_workshop_id_id_key" ON "customer_link"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "acceptance_workshop_id_id_key" ON "acceptance"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "acceptance_workshop_id_version_id_key" ON "acceptance"("workshop_id", "version_id");

-- CreateIndex
CREATE UNIQUE INDEX "payment_workshop_id_id_key" ON "payment"("workshop_id", "id");

-- AddForeignKey
ALTER TABLE "build" ADD CONSTRAINT "build_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "build" ADD CONSTRAINT "build_workshop_id_customer_id_fkey" FOREIGN KEY ("workshop_id", "customer_id") REFERENCES "customer"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "build" ADD CONSTRAINT "build_workshop_id_vehicle_id_fkey" FOREIGN KEY ("workshop_id", "vehicle_id") REFERENCES "vehicle"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "build_item" ADD CONSTRAINT "build_item_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "build_item" ADD CONSTRAINT "build_item_workshop_id_build_id_fkey" FOREIGN KEY ("workshop_id", "build_id") REFERENCES "build"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "build_item" ADD CONSTRAINT "build_item_workshop_id_item_id_fkey" FOREIGN KEY ("workshop_id", "item_id") REFERENCES "item"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "inspection" ADD CONSTRAINT "inspection_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "inspection" ADD CONSTRAINT "inspection_workshop_id_build_id_fkey" FOREIGN KEY ("workshop_id", "build_id") REFERENCES "build"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "inspection" ADD CONSTRAINT "inspection_workshop_id_vehicle_id_fkey" FOREIGN KEY ("workshop_id", "vehicle_id") REFERENCES "vehicle"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "inspection" ADD CONSTRAINT "inspection_workshop_id_done_by_id_fkey" FOREIGN KEY ("workshop_id", "done_by_id") REFERENCES "person"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "item" ADD CONSTRAINT "item_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "access_work" ADD CONSTRAINT "access_work_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "operation" ADD CONSTRAINT "operation_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "procedure_step" ADD CONSTRAINT "procedure_step_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "procedure_step" ADD CONSTRAINT "procedure_step_workshop_id_operation_id_fkey" FOREIGN KEY ("workshop_id", "operation_id") REFERENCES "operation"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "item_group" ADD CONSTRAINT "item_group_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "rule" ADD CONSTRAINT "rule_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "package" ADD CONSTRAINT "package_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "obligation" ADD CONSTRAINT "obligation_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "obligation" ADD CONSTRAINT "obligation_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "evidence" ADD CONSTRAINT "evidence_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "evidence" ADD CONSTRAINT "evidence_workshop_id_obligation_id_fkey" FOREIGN KEY ("workshop_id", "obligation_id") REFERENCES "obligation"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "hand_over" ADD CONSTRAINT "hand_over_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "hand_over" ADD CONSTRAINT "hand_over_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "customer" ADD CONSTRAINT "customer_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "vehicle_model" ADD CONSTRAINT "vehicle_model_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "vehicle" ADD CONSTRAINT "vehicle_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "vehicle" ADD CONSTRAINT "vehicle_workshop_id_customer_id_fkey" FOREIGN KEY ("workshop_id", "customer_id") REFERENCES "customer"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "vehicle" ADD CONSTRAINT "vehicle_workshop_id_vehicle_model_id_fkey" FOREIGN KEY ("workshop_id", "vehicle_model_id") REFERENCES "vehicle_model"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "dyno_session" ADD CONSTRAINT "dyno_session_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "dyno_session" ADD CONSTRAINT "dyno_session_workshop_id_vehicle_id_fkey" FOREIGN KEY ("workshop_id", "vehicle_id") REFERENCES "vehicle"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "dyno_session" ADD CONSTRAINT "dyno_session_workshop_id_build_id_fkey" FOREIGN KEY ("workshop_id", "build_id") REFERENCES "build"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "dyno_session" ADD CONSTRAINT "dyno_session_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "dyno_run" ADD CONSTRAINT "dyno_run_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "dyno_run" ADD CONSTRAINT "dyno_run_workshop_id_dyno_session_id_fkey" FOREIGN KEY ("workshop_id", "dyno_session_id") REFERENCES "dyno_session"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "verdict" ADD CONSTRAINT "verdict_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "verdict" ADD CONSTRAINT "verdict_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "stored_file" ADD CONSTRAINT "stored_file_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "site" ADD CONSTRAINT "site_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "person" ADD CONSTRAINT "person_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "counter" ADD CONSTRAINT "counter_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "audit_event" ADD CONSTRAINT "audit_event_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "completed_request" ADD CONSTRAINT "completed_request_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_workshop_id_quote_id_fkey" FOREIGN KEY ("workshop_id", "quote_id") REFERENCES "quote"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_workshop_id_version_id_fkey" FOREIGN KEY ("workshop_id", "version_id") REFERENCES "quote_version"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_workshop_id_build_id_fkey" FOREIGN KEY ("workshop_id", "build_id") REFERENCES "build"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_workshop_id_customer_id_fkey" FOREIGN KEY ("workshop_id", "customer_id") REFERENCES "customer"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "job" ADD CONSTRAINT "job_workshop_id_vehicle_id_fkey" FOREIGN KEY ("workshop_id", "vehicle_id") REFERENCES "vehicle"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "goods_in" ADD CONSTRAINT "goods_in_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "goods_in" ADD CONSTRAINT "goods_in_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gate_override" ADD CONSTRAINT "gate_override_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "gate_override" ADD CONSTRAINT "gate_override_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "resource" ADD CONSTRAINT "resource_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "resource" ADD CONSTRAINT "resource_workshop_id_person_id_fkey" FOREIGN KEY ("workshop_id", "person_id") REFERENCES "person"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "booking" ADD CONSTRAINT "booking_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "booking" ADD CONSTRAINT "booking_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "booking" ADD CONSTRAINT "booking_workshop_id_resource_id_fkey" FOREIGN KEY ("workshop_id", "resource_id") REFERENCES "resource"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "check_in" ADD CONSTRAINT "check_in_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "check_in" ADD CONSTRAINT "check_in_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "job_step" ADD CONSTRAINT "job_step_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "job_step" ADD CONSTRAINT "job_step_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "step_entry" ADD CONSTRAINT "step_entry_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "step_entry" ADD CONSTRAINT "step_entry_workshop_id_step_id_fkey" FOREIGN KEY ("workshop_id", "step_id") REFERENCES "job_step"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "step_entry" ADD CONSTRAINT "step_entry_workshop_id_person_id_fkey" FOREIGN KEY ("workshop_id", "person_id") REFERENCES "person"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "fault" ADD CONSTRAINT "fault_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "fault" ADD CONSTRAINT "fault_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "clock_entry" ADD CONSTRAINT "clock_entry_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "clock_entry" ADD CONSTRAINT "clock_entry_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "clock_entry" ADD CONSTRAINT "clock_entry_workshop_id_person_id_fkey" FOREIGN KEY ("workshop_id", "person_id") REFERENCES "person"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "job_cost" ADD CONSTRAINT "job_cost_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "job_cost" ADD CONSTRAINT "job_cost_workshop_id_job_id_fkey" FOREIGN KEY ("workshop_id", "job_id") REFERENCES "job"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote" ADD CONSTRAINT "quote_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote" ADD CONSTRAINT "quote_workshop_id_build_id_fkey" FOREIGN KEY ("workshop_id", "build_id") REFERENCES "build"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote" ADD CONSTRAINT "quote_workshop_id_customer_id_fkey" FOREIGN KEY ("workshop_id", "customer_id") REFERENCES "customer"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote" ADD CONSTRAINT "quote_workshop_id_vehicle_id_fkey" FOREIGN KEY ("workshop_id", "vehicle_id") REFERENCES "vehicle"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote_version" ADD CONSTRAINT "quote_version_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote_version" ADD CONSTRAINT "quote_version_workshop_id_quote_id_fkey" FOREIGN KEY ("workshop_id", "quote_id") REFERENCES "quote"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote_line" ADD CONSTRAINT "quote_line_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote_line" ADD CONSTRAINT "quote_line_workshop_id_version_id_fkey" FOREIGN KEY ("workshop_id", "version_id") REFERENCES "quote_version"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "customer_link" ADD CONSTRAINT "customer_link_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "customer_link" ADD CONSTRAINT "customer_link_workshop_id_version_id_fkey" FOREIGN KEY ("workshop_id", "version_id") REFERENCES "quote_version"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "acceptance" ADD CONSTRAINT "acceptance_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "acceptance" ADD CONSTRAINT "acceptance_workshop_id_version_id_fkey" FOREIGN KEY ("workshop_id", "version_id") REFERENCES "quote_version"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "payment" ADD CONSTRAINT "payment_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "payment" ADD CONSTRAINT "payment_workshop_id_quote_id_fkey" FOREIGN KEY ("workshop_id", "quote_id") REFERENCES "quote"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;
