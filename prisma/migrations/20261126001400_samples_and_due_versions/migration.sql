-- Builds that every change of the catalogue is tried on before it is published.
-- CreateTable
CREATE TABLE "sample_build" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "build_id" UUID NOT NULL,
    "marked_by_id" UUID NOT NULL,
    "marked_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "sample_build_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "sample_build_workshop_id_id_key" ON "sample_build"("workshop_id", "id");

-- CreateIndex
CREATE UNIQUE INDEX "sample_build_build_id_key" ON "sample_build"("build_id");

-- AddForeignKey
ALTER TABLE "sample_build" ADD CONSTRAINT "sample_build_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "sample_build" ADD CONSTRAINT "sample_build_workshop_id_build_id_fkey" FOREIGN KEY ("workshop_id", "build_id") REFERENCES "build"("workshop_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

ALTER TABLE sample_build ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_workshop ON sample_build USING (workshop_id = (SELECT current_workshop())) WITH CHECK (workshop_id = (SELECT current_workshop()));
GRANT SELECT, INSERT, UPDATE, DELETE ON sample_build TO buildproof_app;

-- Versions of the catalogue whose day has come by the calendar of their workshop's site, and in whose name each is
-- published; for the service, which then acts inside that workshop as anybody does.
CREATE FUNCTION due_catalogue_versions(asked_at timestamptz)
RETURNS TABLE (workshop_id uuid, version_id uuid, revision integer, person_id uuid, session_counter integer)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp
AS $$
  SELECT v.workshop_id, v.id, v.revision, p.id, p.session_counter
  FROM catalogue_version v
  JOIN person p ON p.id = v.published_by_id
  CROSS JOIN LATERAL (SELECT s.time_zone FROM site s WHERE s.workshop_id = v.workshop_id ORDER BY s.name LIMIT 1) place
  WHERE v.state = 'scheduled' AND v.publish_on <= (asked_at AT TIME ZONE place.time_zone)::date
  ORDER BY v.publish_on, v.created_at
$$;

REVOKE EXECUTE ON FUNCTION due_catalogue_versions FROM PUBLIC;
GRANT EXECUTE ON FUNCTION due_catalogue_versions TO buildproof_app;
