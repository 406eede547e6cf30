-- CreateEnum
CREATE TYPE "invoice_kind" AS ENUM ('invoice', 'credit_note');

-- AlterTable
ALTER TABLE "customer" ADD COLUMN     "tax_number" TEXT NOT NULL DEFAULT '';

-- CreateTable
CREATE TABLE "invoice" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "kind" "invoice_kind" NOT NULL,
    "quote_id" UUID NOT NULL,
    "version_id" UUID NOT NULL,
    "credits_id" UUID,
    "reason" TEXT NOT NULL DEFAULT '',
    "issued_on" DATE NOT NULL,
    "due_on" DATE NOT NULL,
    "currency" TEXT NOT NULL,
    "net_minor" BIGINT NOT NULL,
    "tax_minor" BIGINT NOT NULL,
    "gross_minor" BIGINT NOT NULL,
    "prepaid_minor" BIGINT NOT NULL DEFAULT 0,
    "content" JSONB NOT NULL,
    "issued_by_id" UUID NOT NULL,
    "issued_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "invoice_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "invoice_workshop_id_quote_id_idx" ON "invoice"("workshop_id", "quote_id");

-- CreateIndex
CREATE UNIQUE INDEX "invoice_workshop_id_id_key" ON "invoice"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "invoice_workshop_id_number_key" ON "invoice"("workshop_id", "number");

-- AddForeignKey
ALTER TABLE "invoice" ADD CONSTRAINT "invoice_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "invoice" ADD CONSTRAINT "invoice_workshop_id_quote_id_fkey" FOREIGN KEY ("workshop_id", "quote_id") REFERENCES "quote"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "invoice" ADD CONSTRAINT "invoice_workshop_id_version_id_fkey" FOREIGN KEY ("workshop_id", "version_id") REFERENCES "quote_version"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "invoice" ADD CONSTRAINT "invoice_workshop_id_credits_id_fkey" FOREIGN KEY ("workshop_id", "credits_id") REFERENCES "invoice"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "invoice" ADD CONSTRAINT "invoice_workshop_id_issued_by_id_fkey" FOREIGN KEY ("workshop_id", "issued_by_id") REFERENCES "person"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

ALTER TABLE invoice ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_workshop ON invoice
  USING (workshop_id = (SELECT current_workshop())) WITH CHECK (workshop_id = (SELECT current_workshop()));
GRANT SELECT, INSERT ON invoice TO buildproof_app;
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON invoice FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER append_only_truncate BEFORE TRUNCATE ON invoice FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

ALTER TABLE invoice
  ADD CONSTRAINT invoice_adds_up CHECK (gross_minor = net_minor + tax_minor AND gross_minor > 0),
  ADD CONSTRAINT credit_note_has_its_reason
    CHECK ((kind = 'credit_note') = (credits_id IS NOT NULL) AND (kind = 'credit_note') = (reason <> ''));

-- Numbers follow one another; the invoice that is credited is held, so that two at once do not slip past each other.
CREATE FUNCTION guard_invoice() RETURNS trigger
LANGUAGE plpgsql
AS $$
DECLARE
  last integer;
  left_minor bigint;
BEGIN
  SELECT max(number) INTO last FROM invoice WHERE workshop_id = NEW.workshop_id;
  IF last IS NOT NULL AND NEW.number <> last + 1 THEN
    RAISE EXCEPTION 'invoice_numbers_follow: the next number is %', last + 1;
  END IF;
  IF NEW.kind = 'credit_note' THEN
    PERFORM pg_advisory_xact_lock(hashtextextended(NEW.credits_id::text, 0));
    SELECT i.gross_minor - coalesce((SELECT sum(c.gross_minor) FROM invoice c WHERE c.credits_id = i.id), 0)
      INTO left_minor FROM invoice i WHERE i.id = NEW.credits_id AND i.kind = 'invoice';
    IF left_minor IS NULL OR NEW.gross_minor > left_minor THEN
      RAISE EXCEPTION 'credit_within_invoice: no more is credited than was invoiced';
    END IF;
  END IF;
  RETURN NEW;
END
$$;

CREATE TRIGGER guard_invoice BEFORE INSERT ON invoice
FOR EACH ROW EXECUTE FUNCTION guard_invoice();
