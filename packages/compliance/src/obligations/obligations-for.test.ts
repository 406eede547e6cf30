import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type BuildTrait, buildTraits } from "./obligation";
import { obligationRules } from "./obligation-rules";
import { obligationsFor } from "./obligations-for";

const codes = (country: string, traits: readonly BuildTrait[]) =>
  obligationsFor(country, new Set(traits)).map((obligation) => obligation.code);

describe("what a job has to show", () => {
  test("a blower in Australia asks for the authority's approval, and warns without holding the vehicle", () => {
    const [approval] = obligationsFor("AU", new Set(["forced-induction"])).filter(
      ({ code }) => code === "forced-induction-approval",
    );
    expect(approval).toMatchObject({ basis: "law-to-confirm", blocksHandOver: false, safety: false });
    expect(approval?.source).toContain("Confirm with the authority or a licensed signatory");
  });

  test("a certificate that the quote includes holds the vehicle until it is there", () => {
    expect(obligationsFor("AU", new Set(["certificate-promised"]))).toContainEqual(
      expect.objectContaining({
        code: "engineering-certificate",
        evidenceKind: "certificate",
        blocksHandOver: true,
      }),
    );
  });

  test("trim alone asks for the invoice only", () => {
    expect(codes("AU", [])).toEqual(["tax-invoice"]);
  });

  test("the law of one country is not asked for in another", () => {
    expect(codes("AE", ["forced-induction"])).toContain("modified-vehicle-certificate");
    expect(codes("AE", ["forced-induction"])).not.toContain("forced-induction-approval");
    expect(codes("NZ", ["forced-induction", "torque-steps"])).toEqual([
      "torque-record",
      "readiness-monitors",
    ]);
  });
});

describe("the rules as a whole", () => {
  test("law that has to be confirmed never holds a vehicle, and safety always does", () => {
    for (const country of ["AU", "AE", "NZ"]) {
      for (const obligation of obligationsFor(country, new Set(buildTraits))) {
        if (obligation.basis === "law-to-confirm") expect(obligation.blocksHandOver).toBe(false);
        if (obligation.basis === "safety") expect(obligation.blocksHandOver && obligation.safety).toBe(true);
      }
    }
  });

  test("each has its own code, says why, and names a source", () => {
    expect(new Set(obligationRules.map((rule) => rule.code)).size).toBe(obligationRules.length);
    for (const rule of obligationRules) {
      expect(rule.because.length).toBeGreaterThan(30);
      expect(rule.source.length).toBeGreaterThan(10);
    }
  });

  test("more done to a vehicle never asks for less", () => {
    fc.assert(
      fc.property(fc.subarray([...buildTraits]), fc.subarray([...buildTraits]), (some, more) => {
        const few = codes("AU", some);
        const many = codes("AU", [...some, ...more]);
        return few.every((code) => many.includes(code));
      }),
    );
  });
});
