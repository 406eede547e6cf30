/** Once a server of this process has started: what is done at a time of its own, without anybody asking. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  const { startTimedWork } = await import("./server/timed-work");
  startTimedWork();
}
