import { demoPassword, demoPeople } from "../../prisma/demo/load";
import { dataFolder } from "./repository.mjs";
import type { serviceAddress } from "./service-address.mjs";
import { stage } from "./stage.mjs";
import { type Service, startService } from "./start-service";

/** Runs until Ctrl-C or a stop signal; answers the exit code. */
export async function runService(address: ReturnType<typeof serviceAddress>): Promise<number> {
  const stop = new AbortController();
  const asked = new Promise<"asked">((resolve) => {
    stop.signal.addEventListener("abort", () => resolve("asked"));
  });
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.on(signal, () => stop.abort());

  let service: Service;
  try {
    service = await startService(dataFolder, address, new Date(), stop.signal);
  } catch (error) {
    if (!stop.signal.aborted) throw error;
    console.log("Stopped before it was ready.");
    return 130;
  }
  if (!stop.signal.aborted) greet(address.url);
  const reason = await Promise.race([asked, service.ended]);
  console.log();
  await stage("Stopping", () => service.stop());
  if (reason === "asked") return 0;
  console.error(
    `It stopped because ${reason}: start it again, and read the lines above if it happens again.`,
  );
  return 1;
}

function greet(url: string): void {
  console.log(`\nBuildproof is at ${url}   (Ctrl-C stops it)`);
  console.log("Demo sign-ins, all with the password", demoPassword);
  for (const person of demoPeople) {
    console.log(`  ${person.email.padEnd(28)} ${person.name}, ${person.roles.join(" and ")}`);
  }
  console.log();
}
