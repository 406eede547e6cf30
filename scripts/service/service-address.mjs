import { createServer } from "node:net";
import { networkInterfaces } from "node:os";
import { refusal } from "./stage.mjs";

/** What PORT, HOST and PUBLIC_URL ask for. Loopback and plain http unless told otherwise. */
export function serviceAddress(env = process.env) {
  const port = Number(env.PORT || 3000);
  if (!Number.isInteger(port) || port < 1 || port > 65_535) {
    throw refusal(`PORT is "${env.PORT}": give a whole number from 1 to 65535.`);
  }
  const host = env.HOST || "127.0.0.1";
  const isLocal = host === "127.0.0.1" || host === "localhost" || host === "::1";
  const publicUrl = env.PUBLIC_URL ? outerAddress(env.PUBLIC_URL) : null;
  const isSecure = !isLocal && publicUrl === null;
  const shown = isLocal ? "localhost" : isEveryAddress(host) ? (ownAddresses()[0] ?? "localhost") : host;
  const url =
    publicUrl ?? `${isSecure ? "https" : "http"}://${shown.includes(":") ? `[${shown}]` : shown}:${port}`;
  return { port, host: isLocal ? "127.0.0.1" : host, isSecure, isBehindProxy: publicUrl !== null, url };
}

/** Every name and address a tablet may reach this machine by. */
export function namesFor(host) {
  return [...new Set(["localhost", "127.0.0.1", ...(isEveryAddress(host) ? ownAddresses() : [host])])];
}

/** Refuses with one sentence when something already listens there. */
export async function checkPort({ port, host }) {
  const error = await new Promise((resolve) => {
    const probe = createServer();
    probe.once("error", resolve);
    probe.listen(port, host, () => probe.close(() => resolve(null)));
  });
  if (!error) return;
  if (error.code === "EADDRINUSE") {
    throw refusal(
      `Port ${port} is taken by another program (perhaps Buildproof already runs): stop it, or start with PORT=${port === 3000 ? 3001 : port + 1} npm start.`,
    );
  }
  if (error.code === "EACCES")
    throw refusal(`Port ${port} needs administrator rights: choose one above 1023 with PORT.`);
  if (error.code === "EADDRNOTAVAIL" || error.code === "ENOTFOUND") {
    throw refusal(
      `HOST is "${host}", which is not an address of this machine: use 0.0.0.0 for all of its addresses.`,
    );
  }
  throw error;
}

function outerAddress(text) {
  const address = URL.canParse(text) ? new URL(text) : null;
  if (!address || !/^https?:$/.test(address.protocol)) {
    throw refusal(
      `PUBLIC_URL is "${text}": give the address people type, such as https://jobs.workshop.example.`,
    );
  }
  return address.origin;
}

function isEveryAddress(host) {
  return host === "0.0.0.0" || host === "::";
}

function ownAddresses() {
  return Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter((address) => address.family === "IPv4" && !address.internal)
    .map((address) => address.address);
}
