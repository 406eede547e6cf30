import path from "node:path";
import { localSecrets } from "../../packages/database/src/setup/index";
import type { serviceAddress } from "./service-address.mjs";

/** Photos, logs, certificates and documents lie beside the database. */
export function filesFolder(folder: string): string {
  return process.env.BUILDPROOF_FILES ?? path.join(folder, "files");
}

/** What the web process needs to know. It never learns the owner's address. */
export function serviceEnvironment(
  folder: string,
  appUrl: string,
  address: ReturnType<typeof serviceAddress>,
): Record<string, string> {
  const { DATABASE_URL: _owner, ...inherited } = process.env;
  return {
    ...definedOnly(inherited),
    DATABASE_APP_URL: appUrl,
    BUILDPROOF_FILES: filesFolder(folder),
    NEXTAUTH_SECRET: process.env.NEXTAUTH_SECRET ?? localSecrets(folder).signingSecret,
    NEXTAUTH_URL: address.url,
    // Without a proxy in front, people may use any name or address this machine has.
    ...(address.isBehindProxy ? {} : { AUTH_TRUST_HOST: "true" }),
    NEXT_TELEMETRY_DISABLED: "1",
  };
}

function definedOnly(env: NodeJS.ProcessEnv): Record<string, string> {
  const kept: Record<string, string> = {};
  for (const [name, value] of Object.entries(env)) if (value !== undefined) kept[name] = value;
  return kept;
}
