import { randomBytes } from "node:crypto";
import path from "node:path";
import { SetupRefusal } from "../setup/setup-refusal";
import { readLocalFile, writeLocalFile } from "./local-file";

/** Secrets of this installation, made on the first start and never in the repository. */
export type LocalSecrets = {
  /** Owner of the embedded database: migrates. */
  readonly ownerPassword: string;
  /** The application's database role: serves. */
  readonly applicationPassword: string;
  /** Signs sign-in sessions and customer links. */
  readonly signingSecret: string;
};

const names = ["ownerPassword", "applicationPassword", "signingSecret"] as const;

/** Reads `secrets.json` in the folder, making what is missing. */
export function localSecrets(folder: string): LocalSecrets {
  const file = path.join(folder, "secrets.json");
  let kept: unknown;
  try {
    kept = readLocalFile(file);
  } catch {
    throw new SetupRefusal(
      `The file ${file} cannot be read as JSON: restore it from a backup, since the database was made with the passwords in it.`,
    );
  }
  const found = new Map<string, string>();
  for (const [name, value] of Object.entries(kept ?? {})) {
    if (typeof value === "string" && value !== "") found.set(name, value);
  }
  const complete = names.every((name) => found.has(name));
  const secret = (name: string) => found.get(name) ?? randomBytes(24).toString("base64url");
  const secrets = {
    ownerPassword: secret("ownerPassword"),
    applicationPassword: secret("applicationPassword"),
    signingSecret: secret("signingSecret"),
  };
  if (!complete) writeLocalFile(file, secrets);
  return secrets;
}
