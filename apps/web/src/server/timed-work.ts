import { publishDue } from "@buildproof/workshop";
import { house } from "./house";

const EVERY_MS = 60_000;

/**
 * Publishes the versions of catalogues whose day has come, minute by minute. Several processes may do so at once:
 * the first to publish a version does, the others find it published. It keeps no process alive.
 */
export function startTimedWork(): void {
  if (!process.env.DATABASE_APP_URL || !process.env.BUILDPROOF_FILES) return;
  let isAtWork = false;
  const work = async () => {
    if (isAtWork) return;
    isAtWork = true;
    try {
      await publishDue({ ...house(), now: () => new Date() });
    } catch (error) {
      // Tried again in a minute; what is due stays due.
      console.warn("Versions of the catalogue that are due could not be published now:", error);
    } finally {
      isAtWork = false;
    }
  };
  setInterval(work, EVERY_MS).unref();
}
