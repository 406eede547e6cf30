import { connect } from "node:net";
import type { Page } from "@playwright/test";
import { expect, signInAs, test } from "./fixtures";

const MEGABYTE = 1_000_000;

/** Readings that the operator could have typed; nothing in them is refused. */
const setUp = {
  kind: "baseline",
  code: "SAE_J1349:AUG2004",
  aspiration: "natural",
  barometerKPa: "99.2",
  airTempC: "31",
  relativeHumidityPct: "30",
  gear: "locked-converter",
  gearRatio: "1",
  finalDrive: "3.36",
  gearboxOilTempC: "88",
  rampRpmPerS: "400",
} as const;

test.describe("an upload that is refused early still tells its sender why", () => {
  test("a log that says it is beyond the limit, before a byte of it is read", async ({ page }) => {
    const answer = await sendThenRead(page, await importPath(page), { says: 160 * MEGABYTE, sends: 20 });
    expect(answer).toMatch(/^HTTP\/1.1 413[\s\S]+larger than 150 MB/);
  });

  test("a log that turns out to be beyond the limit", async ({ page }) => {
    test.slow();
    const answer = await sendThenRead(page, await importPath(page), { says: null, sends: 180 });
    expect(answer).toMatch(/^HTTP\/1.1 413[\s\S]+larger than 150 MB/);
  });

  test("a log that is wrong in its second line", async ({ page }) => {
    const head = "time_s,engine_rpm,hub_power_kw\n0,high,40\n";
    const answer = await sendThenRead(page, await importPath(page), {
      says: 12 * MEGABYTE,
      sends: 12,
      head,
    });
    expect(answer).toMatch(/^HTTP\/1.1 422[\s\S]+Line 2 has/);
  });

  test("a log whose set-up is refused", async ({ page }) => {
    const path = (await importPath(page)).replace("barometerKPa=99.2", "barometerKPa=992");
    const answer = await sendThenRead(page, path, { says: 12 * MEGABYTE, sends: 12 });
    expect(answer).toMatch(/^HTTP\/1.1 422[\s\S]+992 hPa are 99.2 kPa/);
  });

  test("a photo beyond its limit", async ({ page }) => {
    await signInAs(page, "technician");
    const answer = await sendThenRead(page, "/api/floor/photos", { says: 20 * MEGABYTE, sends: 20 });
    expect(answer).toMatch(/larger than 15 MB/);
  });

  test("an entry of the floor with a photo beyond its limit", async ({ page }) => {
    await signInAs(page, "technician");
    const answer = await sendThenRead(page, "/api/floor/entries", { says: 20 * MEGABYTE, sends: 20 });
    expect(answer).toMatch(/larger than 15 MB/);
  });
});

async function importPath(page: Page): Promise<string> {
  await signInAs(page, "technician");
  await page.goto("/dyno");
  const href = await page.getByRole("link", { name: "Baseline of " }).first().getAttribute("href");
  return `/api/dyno/import?${new URLSearchParams({ ...setUp, vehicleId: href?.split("/").at(-1) ?? "" })}`;
}

type Sent = {
  /** The length in its head; null sends in chunks, as somebody does who knows no length. */
  readonly says: number | null;
  /** Megabytes sent before anything is read. */
  readonly sends: number;
  readonly head?: string;
};

/** The most stubborn sender there is: it looks at the answer only when it has sent all it has. */
async function sendThenRead(page: Page, path: string, sent: Sent): Promise<string> {
  if (page.url() === "about:blank") await page.goto("/");
  const { hostname, port, host } = new URL(page.url());
  const cookie = (await page.context().cookies()).map(({ name, value }) => `${name}=${value}`).join("; ");
  const length = sent.says === null ? "Transfer-Encoding: chunked" : `Content-Length: ${sent.says}`;
  const head = `POST ${path} HTTP/1.1\r\nHost: ${host}\r\nCookie: ${cookie}\r\nContent-Type: text/csv\r\nConnection: close\r\n${length}\r\n\r\n`;
  const socket = connect(Number(port), hostname);
  let read = "";
  socket.pause();
  socket.on("data", (piece) => {
    read += piece.toString();
    // A sender that has its answer does not wait for the rest of what it said it would send.
    if (read.includes('"}')) socket.end();
  });
  socket.write(head);
  const row = "0.005,1800,40.0\n";
  const pieceAt = (index: number) => {
    const text = index === 0 ? (sent.head ?? "time_s,engine_rpm,hub_power_kw\n") : "";
    const piece = `${text}${row.repeat(MEGABYTE / row.length)}`.slice(0, MEGABYTE);
    return sent.says === null ? `${piece.length.toString(16)}\r\n${piece}\r\n` : piece;
  };
  const send = (index: number) => {
    if (index === sent.sends) socket.resume();
    else socket.write(pieceAt(index), () => send(index + 1));
  };
  send(0);
  return new Promise((resolve, reject) => {
    socket.on("error", reject);
    socket.on("close", () => resolve(read));
  });
}
