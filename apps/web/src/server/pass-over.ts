interface PassOverLimits {
  /** No more than this is read for nothing. */
  readonly mostBytes: number;
  /** A sender that is silent for this long has stopped. */
  readonly silenceMs: number;
}

/**
 * Reads what is left of a refused upload and throws it away. A connection that is closed while bytes still come
 * is reset, and with it goes the answer that the sender has not read yet: many senders read only after sending.
 */
export async function passOver(
  body: ReadableStream<Uint8Array>,
  { mostBytes, silenceMs }: PassOverLimits,
): Promise<void> {
  const reader = body.getReader();
  let passed = 0;
  try {
    while (passed < mostBytes) {
      const chunk = await orSilence(reader.read(), silenceMs);
      if (chunk === null || chunk.done) return;
      passed += chunk.value.byteLength;
    }
  } catch {
    // The sender has gone: there is nobody left to answer.
  } finally {
    // A reader that still waits gives its bytes up here; the connection closes right after.
    reader.releaseLock();
  }
}

async function orSilence<Value>(read: Promise<Value>, silenceMs: number): Promise<Value | null> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const silence = new Promise<null>((resolve) => {
    timer = setTimeout(resolve, silenceMs, null);
  });
  try {
    return await Promise.race([read, silence]);
  } finally {
    clearTimeout(timer);
  }
}
