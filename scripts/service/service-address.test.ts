import { describe, expect, test } from "vitest";
import { namesFor, serviceAddress } from "./service-address.mjs";

describe("where the service is served", () => {
  test("is this machine alone over http, unless something else is asked for", () => {
    expect(serviceAddress({})).toMatchObject({
      host: "127.0.0.1",
      port: 3000,
      isSecure: false,
      url: "http://localhost:3000",
    });
  });

  test("is https as soon as other machines may reach it", () => {
    expect(serviceAddress({ HOST: "192.168.1.4", PORT: "8443" })).toMatchObject({
      host: "192.168.1.4",
      isSecure: true,
      url: "https://192.168.1.4:8443",
    });
  });

  test("is plain http behind a proxy, whose address people type", () => {
    const address = serviceAddress({ HOST: "0.0.0.0", PUBLIC_URL: "https://jobs.workshop.example/" });
    expect(address).toMatchObject({
      isSecure: false,
      isBehindProxy: true,
      url: "https://jobs.workshop.example",
    });
  });

  test.each(["0", "70000", "3000.5", "http"])("refuses the port %s", (PORT) => {
    expect(() => serviceAddress({ PORT })).toThrow(`PORT is "${PORT}": give a whole number from 1 to 65535.`);
  });

  test("has a certificate for the loopback names as well", () => {
    expect(namesFor("192.168.1.4")).toEqual(["localhost", "127.0.0.1", "192.168.1.4"]);
  });
});
