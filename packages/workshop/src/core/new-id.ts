import { v7 } from "uuid";

/** A new id: UUIDv7 (RFC 9562), so that rows made later sort later. */
export function newId(): string {
  return v7();
}
