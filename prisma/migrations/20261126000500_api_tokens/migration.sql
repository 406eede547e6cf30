CREATE TABLE "api_token" (
    "id" UUID NOT NULL,
    "workshop_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "token_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(6) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "created_by_id" UUID NOT NULL,
    "last_used_at" TIMESTAMPTZ(6),
    "revoked_at" TIMESTAMPTZ(6),

    CONSTRAINT "api_token_pkey" PRIMARY KEY ("id")
);

CREATE UNIQUE INDEX "api_token_token_hash_key" ON "api_token"("token_hash");
CREATE UNIQUE INDEX "api_token_workshop_id_id_key" ON "api_token"("workshop_id", "id");
ALTER TABLE "api_token" ADD CONSTRAINT "api_token_workshop_id_fkey" FOREIGN KEY ("workshop_id") REFERENCES "workshop"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

ALTER TABLE api_token ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_workshop ON api_token
  USING (workshop_id = (SELECT current_workshop())) WITH CHECK (workshop_id = (SELECT current_workshop()));
GRANT SELECT, INSERT, UPDATE, DELETE ON api_token TO buildproof_app;

-- What a token is, before any workshop is known; notes its use, at most once a minute.
CREATE FUNCTION use_api_token(wanted_hash text, used_at timestamptz)
RETURNS TABLE (token_id uuid, revoked boolean)
LANGUAGE sql SECURITY DEFINER SET search_path = public, pg_temp
AS $$
  UPDATE api_token SET last_used_at = use_api_token.used_at
  WHERE token_hash = wanted_hash AND revoked_at IS NULL
    AND (last_used_at IS NULL OR last_used_at < use_api_token.used_at - interval '1 minute');
  SELECT id, revoked_at IS NOT NULL FROM api_token WHERE token_hash = wanted_hash
$$;

REVOKE EXECUTE ON FUNCTION use_api_token FROM PUBLIC;
GRANT EXECUTE ON FUNCTION use_api_token TO buildproof_app;
