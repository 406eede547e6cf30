import { describe, expect, test } from "vitest";
import { type OrderedAccess, type OrderedOperation, orderSteps } from "./order-steps";

const piece = (code: string, needs: string[] = []): OrderedAccess<string> => ({
  code,
  name: code,
  needs,
  out: [`${code} off`],
  back: [`${code} on`],
});
const operation = (code: string, access: string[]): OrderedOperation<string> => ({
  code,
  name: code,
  access,
  steps: [code],
});
const order = (operations: OrderedOperation<string>[], access: OrderedAccess<string>[]) =>
  orderSteps(operations, access).map(({ step }) => step);

describe("the order of a job card", () => {
  test("takes shared access work off once, before the first operation, and puts it back once, after the last", () => {
    expect(
      order(
        [operation("blower", ["front"]), operation("plugs", []), operation("cooler", ["front"])],
        [piece("front")],
      ),
    ).toEqual(["front off", "blower", "plugs", "cooler", "front on"]);
  });

  test("takes off first what is in the way, and puts it back last", () => {
    expect(order([operation("blower", ["front"])], [piece("front", ["tray"]), piece("tray")])).toEqual([
      "tray off",
      "front off",
      "blower",
      "front on",
      "tray on",
    ]);
  });

  test("leaves the undertray off while anything above it is still open", () => {
    expect(
      order(
        [operation("pin", ["tray"]), operation("cooler", ["front"])],
        [piece("front", ["tray"]), piece("tray")],
      ),
    ).toEqual(["tray off", "pin", "front off", "cooler", "front on", "tray on"]);
  });

  test("lays out nothing that no operation needs", () => {
    expect(order([operation("flash", [])], [piece("front")])).toEqual(["flash"]);
  });

  test("refuses access work that needs itself or that is not there", () => {
    const round = [piece("front", ["tray"]), piece("tray", ["front"])];
    expect(() => order([operation("blower", ["front"])], round)).toThrow(RangeError);
    expect(() => order([operation("blower", ["roof"])], [])).toThrow("no access work roof");
  });
});
