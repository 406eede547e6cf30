import { type ChildProcess, fork } from "node:child_process";
import path from "node:path";
import { standaloneServer } from "./build-web";
import { refusal } from "./stage.mjs";

/** A running production server. */
export type ProductionServer = {
  /** Resolves with a reason when the server ends by itself. */
  readonly ended: Promise<string>;
  stop(): Promise<void>;
};

/** Starts the built pages on that port and resolves when they answer. */
export async function serveProduction(
  env: Record<string, string>,
  listen: { readonly host: string; readonly port: number },
): Promise<ProductionServer> {
  const child = fork(path.join(import.meta.dirname, "standalone-server.mjs"), [standaloneServer], {
    env: { ...env, NODE_ENV: "production", HOSTNAME: listen.host, PORT: String(listen.port) },
    execArgv: [],
    // In its own group, so that Ctrl-C reaches the starter alone, which then stops things in order.
    detached: process.platform !== "win32",
    stdio: ["ignore", "pipe", "pipe", "ipc"],
  });
  const ended = new Promise<string>((resolve) =>
    child.once("exit", (code, signal) => resolve(`the web server ended (${signal ?? code})`)),
  );
  const log = show(child);
  await answers(listen.host === "0.0.0.0" ? "127.0.0.1" : listen.host, listen.port, ended, log);
  return {
    ended,
    async stop() {
      child.kill("SIGTERM");
      const patience = setTimeout(() => child.kill("SIGKILL"), 5_000);
      await ended;
      clearTimeout(patience);
    },
  };
}

/** Errors go to our own error output; the server's greeting would repeat ours. */
function show(child: ChildProcess): () => string {
  let tail = "";
  child.stdout?.on("data", (chunk: Buffer) => {
    tail = (tail + chunk).slice(-2_000);
  });
  child.stderr?.on("data", (chunk: Buffer) => {
    tail = (tail + chunk).slice(-2_000);
    process.stderr.write(chunk);
  });
  return () => tail;
}

async function answers(host: string, port: number, ended: Promise<string>, log: () => string): Promise<void> {
  let failure: string | null = null;
  void ended.then((reason) => {
    failure = reason;
  });
  const name = host.includes(":") ? `[${host}]` : host;
  for (let waited = 0; waited < 30_000; waited += 50) {
    if (failure) {
      if (/EADDRINUSE/.test(log()))
        throw refusal(`Port ${port} was taken a moment ago: start again with another PORT.`);
      throw new Error(`${failure}\n${log()}`);
    }
    // Any answer will do: it proves that the server listens and has loaded.
    const answered = await fetch(`http://${name}:${port}/favicon.ico`, { redirect: "manual" }).then(
      () => true,
      () => false,
    );
    if (answered) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`the web server did not answer within 30 s\n${log()}`);
}
