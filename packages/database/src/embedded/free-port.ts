import { randomInt } from "node:crypto";
import { createServer } from "node:net";

/** Whether something could listen on the port at that address now. */
export function isPortFree(port: number, host = "127.0.0.1"): Promise<boolean> {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once("error", () => resolve(false));
    probe.listen(port, host, () => probe.close(() => resolve(true)));
  });
}

/** A free loopback port below the range the system hands out for outgoing connections. */
export async function freePort(): Promise<number> {
  for (let attempt = 0; attempt < 200; attempt += 1) {
    const port = randomInt(20_000, 32_000);
    if (await isPortFree(port)) return port;
  }
  throw new Error("no free port between 20000 and 32000");
}
