import { pathToFileURL } from "node:url";
import { guardForwarding } from "./trusted-forwarding.mjs";

// Runs the production server and ends with the process that started it, however that one ends:
// the channel between the two closes even after kill -9.
process.on("disconnect", () => process.exit(0));
guardForwarding();
await import(pathToFileURL(process.argv[2]).href);
