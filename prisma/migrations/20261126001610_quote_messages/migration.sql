-- CreateTable
CREATE TABLE "quote_message" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "quote_id" UUID NOT NULL,
    "version_id" UUID NOT NULL,
    "from_customer" BOOLEAN NOT NULL,
    "text" TEXT NOT NULL,
    "person_id" UUID,
    "at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "quote_message_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "quote_message_workshop_id_quote_id_at_idx" ON "quote_message"("workshop_id", "quote_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "quote_message_workshop_id_id_key" ON "quote_message"("workshop_id", "id");

-- AddForeignKey
ALTER TABLE "quote_message" ADD CONSTRAINT "quote_message_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote_message" ADD CONSTRAINT "quote_message_workshop_id_quote_id_fkey" FOREIGN KEY ("workshop_id", "quote_id") REFERENCES "quote"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote_message" ADD CONSTRAINT "quote_message_workshop_id_version_id_fkey" FOREIGN KEY ("workshop_id", "version_id") REFERENCES "quote_version"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "quote_message" ADD CONSTRAINT "quote_message_workshop_id_person_id_fkey" FOREIGN KEY ("workshop_id", "person_id") REFERENCES "person"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

ALTER TABLE quote_message ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_workshop ON quote_message
  USING (workshop_id = (SELECT current_workshop())) WITH CHECK (workshop_id = (SELECT current_workshop()));
GRANT SELECT, INSERT ON quote_message TO buildproof_app;
CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON quote_message FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER append_only_truncate BEFORE TRUNCATE ON quote_message FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
ALTER TABLE quote_message ADD CONSTRAINT an_answer_has_its_person CHECK (from_customer = (person_id IS NULL));
