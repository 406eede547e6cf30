import { type Database, openDatabase } from "@buildproof/database";

/** Opens the workshop's data for an application, as the role that owns nothing. */
export function openWorkshopDatabase(appUrl: string): Database {
  return openDatabase({ appUrl, max: 10 });
}
