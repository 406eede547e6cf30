import { statfsSync } from "node:fs";

/**
 * Says what is being done and, when it is done, how long it took.
 * @template T
 * @param {string} name
 * @param {(say: (line: string) => void) => Promise<T>} work
 * @returns {Promise<T>}
 */
export async function stage(name, work) {
  const begun = performance.now();
  let broken = false;
  process.stdout.write(`${name} …`);
  const say = (line) => {
    process.stdout.write(`${broken ? "" : "\n"}  ${line}\n`);
    broken = true;
  };
  try {
    const result = await work(say);
    process.stdout.write(`${broken ? "  …" : ""} ${seconds(performance.now() - begun)}\n`);
    return result;
  } catch (error) {
    process.stdout.write(" failed\n");
    throw error;
  }
}

/** An error whose message is the one sentence a person needs; printed without a stack. */
export function refusal(sentence) {
  return Object.assign(new Error(sentence), { name: "SetupRefusal" });
}

/** Prints why it went no further and answers the exit code. */
export function explain(error) {
  const text = error instanceof Error ? `${error.message}\n${String(error.cause ?? "")}` : String(error);
  if (error instanceof Error && error.name === "SetupRefusal") console.error(error.message);
  else if (/ENOSPC|No space left on device/i.test(text)) console.error(diskFull);
  else console.error(error);
  return 1;
}

/** Refuses early when the disk cannot hold what is about to be written. */
export function needSpace(folder, megabytes) {
  const { bavail, bsize } = statfsSync(folder);
  const free = Math.floor((bavail * bsize) / 1e6);
  if (free < megabytes) {
    throw refusal(
      `Only ${free} MB are free on the disk of ${folder} and about ${megabytes} MB are needed: free some space and start again.`,
    );
  }
}

const diskFull = "The disk is full: free some space and start again; what was already saved is kept.";

function seconds(milliseconds) {
  return `${(milliseconds / 1000).toFixed(1)} s`;
}
