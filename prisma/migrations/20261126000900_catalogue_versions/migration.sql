-- CreateEnum
CREATE TYPE "catalogue_version_state" AS ENUM ('draft', 'scheduled', 'published');

-- CreateEnum
CREATE TYPE "catalogue_part" AS ENUM ('item', 'group', 'rule', 'package', 'operation', 'access');

-- AlterTable
ALTER TABLE "item" ADD COLUMN     "component" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "retired" BOOLEAN NOT NULL DEFAULT false,
ADD COLUMN     "supplier" TEXT NOT NULL DEFAULT '';

-- AlterTable
ALTER TABLE "package" ADD COLUMN     "choices" JSONB NOT NULL DEFAULT '[]',
ADD COLUMN     "options" TEXT[] DEFAULT ARRAY[]::TEXT[];

-- CreateTable
CREATE TABLE "item_document" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "file_id" UUID NOT NULL,
    "title" TEXT NOT NULL,
    "added_by_id" UUID NOT NULL,
    "added_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "item_document_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "catalogue_version" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "number" INTEGER,
    "title" TEXT NOT NULL,
    "state" "catalogue_version_state" NOT NULL DEFAULT 'draft',
    "publish_on" DATE,
    "created_by_id" UUID NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL,
    "published_by_id" UUID,
    "published_at" TIMESTAMPTZ(6),
    "revision" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "catalogue_version_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "catalogue_change" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "version_id" UUID NOT NULL,
    "part" "catalogue_part" NOT NULL,
    "code" TEXT NOT NULL,
    "before" JSONB,
    "after" JSONB,
    "changed_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "catalogue_change_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "item_document_workshop_id_id_key" ON "item_document"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "item_document_item_id_file_id_key" ON "item_document"("item_id", "file_id");

-- CreateIndex
CREATE UNIQUE INDEX "catalogue_version_workshop_id_id_key" ON "catalogue_version"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "catalogue_version_workshop_id_number_key" ON "catalogue_version"("workshop_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "catalogue_change_workshop_id_id_key" ON "catalogue_change"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "catalogue_change_version_id_part_code_key" ON "catalogue_change"("version_id", "part", "code");

-- AddForeignKey
ALTER TABLE "item_document" ADD CONSTRAINT "item_document_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "item_document" ADD CONSTRAINT "item_document_workshop_id_item_id_fkey" FOREIGN KEY ("workshop_id", "item_id") REFERENCES "item"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "item_document" ADD CONSTRAINT "item_document_workshop_id_file_id_fkey" FOREIGN KEY ("workshop_id", "file_id") REFERENCES "stored_file"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "catalogue_version" ADD CONSTRAINT "catalogue_version_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "catalogue_version" ADD CONSTRAINT "catalogue_version_workshop_id_created_by_id_fkey" FOREIGN KEY ("workshop_id", "created_by_id") REFERENCES "person"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "catalogue_version" ADD CONSTRAINT "catalogue_version_workshop_id_published_by_id_fkey" FOREIGN KEY ("workshop_id", "published_by_id") REFERENCES "person"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "catalogue_change" ADD CONSTRAINT "catalogue_change_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "catalogue_change" ADD CONSTRAINT "catalogue_change_workshop_id_version_id_fkey" FOREIGN KEY ("workshop_id", "version_id") REFERENCES "catalogue_version"("workshop_id", "id") ON DELETE CASCADE ON UPDATE RESTRICT;

DO $$
DECLARE
  name text;
BEGIN
  FOREACH name IN ARRAY ARRAY['item_document', 'catalogue_version', 'catalogue_change'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', name);
    EXECUTE format('CREATE POLICY own_workshop ON %I USING (workshop_id = (SELECT current_workshop())) WITH CHECK (workshop_id = (SELECT current_workshop()))', name);
    EXECUTE format('GRANT SELECT, INSERT, UPDATE, DELETE ON %I TO buildproof_app', name);
  END LOOP;
END
$$;

ALTER TABLE catalogue_version
  ADD CONSTRAINT published_version_is_numbered CHECK ((state = 'published') = (number IS NOT NULL AND published_at IS NOT NULL AND published_by_id IS NOT NULL)),
  ADD CONSTRAINT scheduled_version_has_its_day CHECK (state <> 'scheduled' OR (publish_on IS NOT NULL AND published_by_id IS NOT NULL));
ALTER TABLE catalogue_change ADD CONSTRAINT change_changes CHECK (before IS DISTINCT FROM after);

-- What was published stays as it was: going back is a version of its own.
CREATE FUNCTION guard_catalogue_version() RETURNS trigger
LANGUAGE plpgsql
AS $$
BEGIN
  IF OLD.state = 'published' THEN
    RAISE EXCEPTION 'published_catalogue_is_final: a published version of the catalogue does not change';
  END IF;
  RETURN coalesce(NEW, OLD);
END
$$;

CREATE TRIGGER guard_catalogue_version BEFORE UPDATE OR DELETE ON catalogue_version
FOR EACH ROW EXECUTE FUNCTION guard_catalogue_version();

CREATE FUNCTION guard_catalogue_change() RETURNS trigger
LANGUAGE plpgsql
AS $$
BEGIN
  IF (SELECT state FROM catalogue_version WHERE id = coalesce(NEW.version_id, OLD.version_id)) = 'published' THEN
    RAISE EXCEPTION 'published_catalogue_is_final: the changes of a published version of the catalogue stay';
  END IF;
  RETURN coalesce(NEW, OLD);
END
$$;

CREATE TRIGGER guard_catalogue_change BEFORE INSERT OR UPDATE OR DELETE ON catalogue_change
FOR EACH ROW EXECUTE FUNCTION guard_catalogue_change();
