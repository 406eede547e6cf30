import { createServer } from "node:http";
import { type AddressInfo, connect } from "node:net";
import { Readable } from "node:stream";
import { afterEach, describe, expect, test, vi } from "vitest";
import { passOver } from "./pass-over";

const MEGABYTE = 1_000_000;

/** A body in pieces of a megabyte, which remembers how many were asked for. */
function bodyOf(pieces: number) {
  const asked = { pieces: 0 };
  const body = new ReadableStream<Uint8Array>(
    {
      pull(controller) {
        asked.pieces += 1;
        if (asked.pieces > pieces) controller.close();
        else controller.enqueue(new Uint8Array(MEGABYTE));
      },
    },
    { highWaterMark: 0 },
  );
  return { body, asked };
}

describe("what is left of a refused upload", () => {
  afterEach(() => {
    vi.useRealTimers();
  });

  test("is read to its end, so that the sender comes to reading the answer", async () => {
    const { body, asked } = bodyOf(5);
    await passOver(body, { mostBytes: 100 * MEGABYTE, silenceMs: 1_000 });
    expect(asked.pieces).toBe(6);
  });

  test("is read no further than the limit, however much is sent", async () => {
    const { body, asked } = bodyOf(1_000);
    await passOver(body, { mostBytes: 3 * MEGABYTE, silenceMs: 1_000 });
    expect(asked.pieces).toBe(3);
  });

  test("is not waited for when the sender falls silent", async () => {
    vi.useFakeTimers();
    const silent = new ReadableStream<Uint8Array>({ pull: () => new Promise(() => {}) });
    const passed = passOver(silent, { mostBytes: MEGABYTE, silenceMs: 5_000 });
    await vi.advanceTimersByTimeAsync(5_000);
    await expect(passed).resolves.toBeUndefined();
  });

  test("is forgotten when the sender has gone", async () => {
    const gone = new ReadableStream<Uint8Array>({
      pull: (controller) => controller.error(new Error("reset")),
    });
    await expect(passOver(gone, { mostBytes: MEGABYTE, silenceMs: 1_000 })).resolves.toBeUndefined();
  });

  test("lets a sender that reads only after sending still have its answer", async () => {
    const server = createServer((request, response) => {
      response.writeHead(413, { connection: "close" }).write("too large");
      const body = Readable.toWeb(request) as ReadableStream<Uint8Array>; // Node's own bytes.
      passOver(body, { mostBytes: 100 * MEGABYTE, silenceMs: 1_000 }).then(() => response.end());
    });
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const { port } = server.address() as AddressInfo; // It listens on a port, not on a pipe.
    await expect(sendThenRead(port, 30)).resolves.toMatch(/^HTTP\/1.1 413/);
    server.close();
  });
});

/** Sends every megabyte before it looks at what came back. */
function sendThenRead(port: number, megabytes: number): Promise<string> {
  const socket = connect(port, "127.0.0.1");
  let read = "";
  socket.pause();
  socket.on("data", (piece) => {
    read += piece.toString();
  });
  socket.write(`POST / HTTP/1.1\r\nHost: x\r\nContent-Length: ${megabytes * MEGABYTE}\r\n\r\n`);
  const send = (left: number) => {
    if (left === 0) socket.resume();
    else socket.write(new Uint8Array(MEGABYTE), () => send(left - 1));
  };
  send(megabytes);
  return new Promise((resolve, reject) => {
    socket.on("error", reject);
    socket.on("end", () => resolve(read));
  });
}
