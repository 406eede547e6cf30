import type { Quantity } from "./quantity";

/** A moment, in milliseconds since 1970-01-01T00:00:00Z. It has no time zone; showing it needs one. */
export type Instant = Quantity<"Instant">;

/** An IANA time zone name, such as Australia/Adelaide. */
export type TimeZoneName = string;
