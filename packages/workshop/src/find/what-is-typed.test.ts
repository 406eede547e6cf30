import { describe, expect, test } from "vitest";
import { likeLiteral, whatIsTyped } from "./what-is-typed";

describe("what is typed into the search", () => {
  test.each(["1042", "quote 1042", "#1042", "Job 1042"])("%s asks for a number", (text) => {
    expect(whatIsTyped(text).number).toBe("1042");
  });

  test("a plate has letters and digits, with or without its space", () => {
    expect(whatIsTyped("1ab 2cd")).toMatchObject({ looksLikePlate: true, compact: "1AB2CD" });
    expect(whatIsTyped("Okafor").looksLikePlate).toBe(false);
    expect(whatIsTyped("1042").looksLikePlate).toBe(false);
  });

  test("eleven and more characters of a VIN's alphabet look like a VIN", () => {
    expect(whatIsTyped("1M8GDM9AXKP042788").looksLikeVin).toBe(true);
    expect(whatIsTyped("1m8gdm9a xkp0").looksLikeVin).toBe(true);
    // I, O and Q are in no VIN (ISO 3779).
    expect(whatIsTyped("1O8GDM9AXKP042788").looksLikeVin).toBe(false);
  });

  test("a per cent sign is a per cent sign", () => {
    expect(likeLiteral("50%_\\")).toBe("50\\%\\_\\\\");
  });
});
