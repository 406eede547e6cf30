import { execFileSync, spawnSync } from "node:child_process";
import { SetupRefusal } from "../setup/setup-refusal";

/** The operating-system account the server runs under when we ourselves are root. */
export type ServerUser = { readonly name: string; readonly uid: number; readonly gid: number };

/** PostgreSQL refuses to run as root; anyone else runs it as themselves. */
export function serverUser(): ServerUser | null {
  if (process.getuid?.() !== 0) return null;
  const existing = lookUp("postgres");
  if (existing) return existing;
  spawnSync("useradd", ["--system", "--user-group", "--no-create-home", "--shell", "/bin/false", "postgres"]);
  const made = lookUp("postgres");
  if (made) return made;
  throw new SetupRefusal(
    "PostgreSQL does not run as root and no account called postgres could be made: run `useradd --system postgres`, or start as an ordinary user.",
  );
}

function lookUp(name: string): ServerUser | null {
  try {
    const id = (flag: string) =>
      Number(execFileSync("id", [flag, name], { stdio: ["ignore", "pipe", "ignore"] }));
    return { name, uid: id("-u"), gid: id("-g") };
  } catch {
    return null;
  }
}
