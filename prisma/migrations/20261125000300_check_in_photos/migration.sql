-- The condition record's photos, by the address of each file.
ALTER TABLE "check_in" ADD COLUMN "photos" TEXT[];
