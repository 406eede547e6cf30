import { buildWhenStale } from "./build-web";
import { loadDemoWhenEmpty } from "./load-demo-when-empty";
import { openServiceDatabase } from "./open-service-database";
import { type ProductionServer, serveProduction } from "./serve-production";
import { serveTablets } from "./serve-tablets";
import type { serviceAddress } from "./service-address.mjs";
import { serviceEnvironment } from "./service-environment";
import { stage } from "./stage.mjs";

/** The whole service, running. */
export type Service = {
  readonly url: string;
  readonly ownerUrl: string;
  readonly ended: Promise<string>;
  stop(): Promise<void>;
};

/**
 * Brings everything up in order: database, tables, demo, pages, server. What was begun is stopped
 * again when a later stage fails.
 * @param anchor the day the demo is made around, when it has to be loaded
 * @param signal gives up between two stages when it is aborted
 */
export async function startService(
  folder: string,
  address: ReturnType<typeof serviceAddress>,
  anchor: Date,
  signal?: AbortSignal,
): Promise<Service> {
  const stops: (() => Promise<void>)[] = [];
  const stop = async () => {
    for (const each of stops.splice(0).reverse()) await each();
  };
  try {
    const database = await openServiceDatabase(folder);
    stops.push(database.close);
    signal?.throwIfAborted();
    await loadDemoWhenEmpty(folder, database.ownerUrl, anchor);
    signal?.throwIfAborted();
    await buildWhenStale();
    signal?.throwIfAborted();
    const env = serviceEnvironment(folder, database.appUrl, address);
    const server = await stage<ProductionServer>("Starting the web server", (say) =>
      address.isSecure ? serveTablets(folder, env, address, say) : serveProduction(env, address),
    );
    stops.push(server.stop);
    return { url: address.url, ownerUrl: database.ownerUrl, ended: server.ended, stop };
  } catch (error) {
    await stop();
    throw error;
  }
}
